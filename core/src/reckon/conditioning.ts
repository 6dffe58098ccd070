import {
  type About,
  AEROBIC_TESTS,
  collegeRun,
  kcalPerMin,
  metMinutes,
  metsOf,
  mileAndHalfRun,
  mileWalk,
  moderateMinutes,
  pedallingOxygen,
  runningOxygen,
  steppingOxygen,
  stepTest,
  twelveMinuteRun,
  walkingOxygen,
} from "../equations/index.ts";
import { RUN_ENDS, type RunEnd } from "../model/index.ts";
import {
  ACTIVITY_METS,
  INTENSITY_MEASURES,
  type IntensityMeasure,
  intensityOf,
  metsByCode,
  nextRun,
  RUN_WALK_LEVELS,
  RUNS_OF_A_LEVEL,
  stepTestClass,
} from "../tables/index.ts";

import { kg } from "../units.ts";
import { PULSE } from "./pulse.ts";
import { type Asked, type Figure, type Given, NOT_STATED, type Reckoning } from "./reckoning.ts";

type Sex = "man" | "woman";
const SEX: Asked = { key: "sex", of: ["man", "woman"] };
const AGE: Asked = { key: "age", dimension: "years" };
const MASS: Asked = { key: "mass", dimension: "mass" };

/** So many weeks at least, when every run goes well: half an hour without a walk is the last level. */
function weeksLeft(level: number, runs: number | undefined): readonly Figure[] {
  if (runs === undefined) return [];
  if (!(Number.isInteger(runs) && runs >= 1 && runs <= 7))
    throw new RangeError(
      `Cannot tell the weeks as runs a week must be a whole number from 1 to 7: current value is ${runs}`,
    );
  const levels = RUN_WALK_LEVELS.rows.length - level;
  return [
    { what: "run-weeks-least", source: "ours", value: Math.ceil((levels * RUNS_OF_A_LEVEL) / runs), unit: "weeks" },
  ];
}

const runWalk: Reckoning = {
  name: "run-walk",
  asks: [
    { key: "level", dimension: "count" },
    { key: "end", of: RUN_ENDS },
    { key: "good", dimension: "count" },
    { key: "away", dimension: "count" },
    { key: "runs", dimension: "count", optional: true },
  ],
  about: () => [{ source: RUN_WALK_LEVELS.source, who: "adults who begin to run; levels repeat and are no dates" }],
  figures: (given) => {
    const { level, how } = nextRun(
      given.number("level"),
      given.word<RunEnd>("end"),
      given.number("good"),
      given.number("away"),
    );
    const { source } = RUN_WALK_LEVELS;
    return [
      { what: "run-level", source, value: level.level },
      { what: "run-bouts", source, value: level.bouts },
      { what: "run-bout", source, value: level.runS, unit: "s" },
      { what: "walk-bout", source, value: level.walkS, unit: "s" },
      { what: "run-how", source, value: how },
      ...weeksLeft(level.level, given.numberIf("runs")),
    ];
  },
};

const intensity: Reckoning = {
  name: "intensity",
  asks: [
    { key: "measure", of: INTENSITY_MEASURES },
    { key: "value", dimension: "count" },
  ],
  about: () => [{ source: "garber2011", who: "healthy adults" }],
  figures: (given) => [
    {
      what: "intensity",
      source: "garber2011",
      value: intensityOf(given.word<IntensityMeasure>("measure"), given.number("value")),
    },
  ],
};

const STEADY: readonly About[] = [{ source: "bushman2020", who: `${NOT_STATED}; a steady pace, gross cost` }];
const SPENT: readonly Asked[] = [
  { ...MASS, optional: true },
  { key: "time", dimension: "time", optional: true },
];

/** Oxygen, METs, and energy where a body mass is known: of the time given, or of a minute. */
function cost(given: Given, mlKgMin: number): readonly Figure[] {
  const mets = metsOf(mlKgMin);
  return [
    { what: "oxygen", source: "bushman2020", value: mlKgMin, unit: "mL/kg/min", decimals: 1 },
    { what: "mets", source: "bushman2020", value: mets, unit: "METs", decimals: 1 },
    ...spent(given, mets),
  ];
}

function spent(given: Given, mets: number): readonly Figure[] {
  const massKg = given.numberIf("mass");
  if (massKg === undefined) return [];
  const minutes = (given.numberIf("time") ?? 60) / 60;
  const what = given.numberIf("time") === undefined ? "energy-per-minute" : "energy";
  return [
    {
      what,
      source: "acsmGetp10",
      value: minutes * kcalPerMin(mets, massKg),
      unit: "kcal",
      decimals: what === "energy" ? 0 : 1,
    },
  ];
}

const walking: Reckoning = {
  name: "walking",
  asks: [{ key: "speed", dimension: "speed" }, { key: "grade", dimension: "share", optional: true }, ...SPENT],
  about: () => STEADY,
  figures: (given) => cost(given, walkingOxygen(given.number("speed"), (given.numberIf("grade") ?? 0) / 100)),
};
const running: Reckoning = {
  name: "running",
  asks: [{ key: "speed", dimension: "speed" }, { key: "grade", dimension: "share", optional: true }, ...SPENT],
  about: () => STEADY,
  figures: (given) => cost(given, runningOxygen(given.number("speed"), (given.numberIf("grade") ?? 0) / 100)),
};
const pedalling: Reckoning = {
  name: "pedalling",
  asks: [
    { key: "by", of: ["legs", "arms"] },
    { key: "work", dimension: "work" },
    MASS,
    { key: "time", dimension: "time", optional: true },
  ],
  about: () => STEADY,
  figures: (given) =>
    cost(given, pedallingOxygen(given.word<"legs" | "arms">("by"), given.number("work"), given.number("mass"))),
};
const stepping: Reckoning = {
  name: "stepping",
  asks: [{ key: "steps", dimension: "count" }, { key: "height", dimension: "length" }, ...SPENT],
  about: () => [
    ...STEADY,
    {
      source: "latin2001",
      who: "young adults",
      people: 55,
      miss: { kind: "standard error of estimate", from: 1.7, unit: "mL/kg/min", source: "latin2001" },
    },
  ],
  figures: (given) => cost(given, steppingOxygen(given.number("steps"), given.number("height") / 100)),
};

const activity: Reckoning = {
  name: "activity",
  asks: [{ key: "code", of: ACTIVITY_METS.rows.flatMap(({ in2024 }) => (in2024 ? [in2024.code] : [])) }, ...SPENT],
  about: () => [{ source: "herrmann2024", who: "adults, mean of groups", ageY: { from: 19, to: 59 } }],
  figures: (given) => {
    const mets = metsByCode(given.word("code"))!;
    return [{ what: "mets", source: "herrmann2024", value: mets, unit: "METs", decimals: 1 }, ...spent(given, mets)];
  },
};

const KINDS = ["walking", "moderate", "vigorous"] as const;
const activeWeek: Reckoning = {
  name: "active-week",
  asks: [
    AGE,
    ...KINDS.flatMap((kind): Asked[] => [
      { key: `${kind}-days`, dimension: "count", optional: true },
      { key: `${kind}-time`, dimension: "time", optional: true },
    ]),
  ],
  about: () => [{ source: "ipaq2005", who: "adults who answer for themselves", ageY: { from: 15, to: 69 } }],
  figures: (given) => {
    const spell = (kind: (typeof KINDS)[number]) => ({
      days: given.numberIf(`${kind}-days`) ?? 0,
      minutes: (given.numberIf(`${kind}-time`) ?? 0) / 60,
    });
    const [walk, moderate, vigorous] = [spell("walking"), spell("moderate"), spell("vigorous")];
    const { total, class: found } = metMinutes({ walking: walk, moderate, vigorous }, given.number("age"));
    const minutes = (each: typeof walk) => each.days * each.minutes;
    return [
      { what: "met-minutes", source: "ipaq2005", value: total, unit: "MET-min/week", decimals: 0 },
      { what: "activity-class", source: "ipaq2005", value: found },
      {
        what: "moderate-minutes",
        source: "who2020",
        value: moderateMinutes(minutes(walk) + minutes(moderate), minutes(vigorous)),
        unit: "min/week",
        decimals: 0,
      },
    ];
  },
};

function uptake(source: Figure["source"], value: number): Figure {
  return { what: "highest-oxygen", source, value, unit: "mL/kg/min", decimals: 1 };
}

const run12: Reckoning = {
  name: "run-12-minutes",
  asks: [{ key: "distance", dimension: "distance" }],
  about: () => [AEROBIC_TESTS["12-minute run"]],
  figures: (given) => [uptake("cooper1968", twelveMinuteRun(given.number("distance")))],
};
const runMileAndHalf: Reckoning = {
  name: "run-1.5-miles",
  asks: [
    { key: "time", dimension: "time" },
    { ...SEX, optional: true },
    { ...MASS, optional: true },
    { ...AGE, optional: true },
  ],
  about: () => [AEROBIC_TESTS["1.5-mile run"]],
  figures: (given) => {
    const minutes = given.number("time") / 60;
    const [sex, mass, age] = [given.wordIf<Sex>("sex"), given.numberIf("mass"), given.numberIf("age")];
    const known = sex !== undefined && mass !== undefined && age !== undefined && age >= 18 && age <= 29;
    return [
      uptake("acsmGetp10", mileAndHalfRun(minutes)),
      ...(known ? [uptake("george1993", collegeRun(sex, mass, minutes, age))] : []),
    ];
  },
};
const walkMile: Reckoning = {
  name: "walk-1-mile",
  asks: [SEX, MASS, AGE, { key: "time", dimension: "time" }, { key: "pulse", dimension: "pulse" }],
  about: () => [AEROBIC_TESTS["1-mile walk"]],
  figures: (given) => {
    const massKg = given.number("mass");
    const found = mileWalk({
      sex: given.word<Sex>("sex"),
      mass: kg(massKg),
      ageY: given.number("age"),
      minutes: given.number("time") / 60,
      bpm: given.number("pulse"),
    });
    return [
      uptake("kline1987", found.mlKgMin),
      { ...uptake("kline1987", (1000 * found.lMin) / massKg), what: "highest-oxygen-absolute-form" },
    ];
  },
};
const step3: Reckoning = {
  name: "step-3-minutes",
  asks: [SEX, { key: "pulse", dimension: "pulse" }, { ...AGE, optional: true }],
  about: () => [AEROBIC_TESTS["3-minute step"]],
  figures: (given) => {
    const sex = given.word<Sex>("sex");
    const found = stepTestClass(sex, given.numberIf("age") ?? Number.NaN, given.number("pulse"));
    return [
      uptake("mcardle1972", stepTest(sex, given.number("pulse"))),
      ...(found === undefined ? [] : [{ what: "step-class", source: "golding1986" as const, value: found }]),
    ];
  },
};

/** Pulse, oxygen, active minutes and field tests. */
export const CONDITIONING: readonly Reckoning[] = [
  runWalk,
  ...PULSE,
  intensity,
  walking,
  running,
  pedalling,
  stepping,
  activity,
  activeWeek,
  run12,
  runMileAndHalf,
  walkMile,
  step3,
];
