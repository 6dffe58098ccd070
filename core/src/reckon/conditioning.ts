import {
  type About,
  AEROBIC_TESTS,
  BETA_BLOCKED,
  collegeRun,
  HEART_RATE_EQUATIONS,
  type HeartRateEquation,
  type HeartRateEquationName,
  heartRateMax,
  kcalPerMin,
  metMinutes,
  metsOf,
  mileAndHalfRun,
  mileWalk,
  moderateMinutes,
  pedallingOxygen,
  pulseReserve,
  pulseTarget,
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
import { type Asked, type Figure, type Given, NOT_STATED, type Reckoning } from "./reckoning.ts";

type Sex = "man" | "woman";
const SEX: Asked = { key: "sex", of: ["man", "woman"] };
const AGE: Asked = { key: "age", dimension: "years" };
const MASS: Asked = { key: "mass", dimension: "mass" };

/** Equations whose ages and sex take this person. */
function fitting(given: Given): readonly HeartRateEquationName[] {
  const age = given.number("age");
  const group = given.wordIf<Sex>("sex") === "woman" ? "women" : given.wordIf<Sex>("sex") === "man" ? "men" : undefined;
  return (Object.keys(HEART_RATE_EQUATIONS) as HeartRateEquationName[]).filter((name) => {
    const { ageY, sex }: HeartRateEquation = HEART_RATE_EQUATIONS[name];
    return age >= ageY.from && age <= ageY.to && (sex === undefined || sex === group);
  });
}

/** The one equation made on people whose heart a medicine slows: told with its error, and used for no target. */
function slowedHighest(age: number): readonly Figure[] {
  const { source, ageY, miss, bpm } = BETA_BLOCKED;
  if (!(age >= ageY.from && age <= ageY.to))
    throw new RangeError(
      `Cannot estimate the highest heart rate under a medicine that slows the heart as age must be from ${ageY.from} to ${ageY.to}: current value is ${age}. Use effort and talking`,
    );
  const value = bpm(age);
  const miss18 = miss?.from ?? 0;
  return [
    { what: "highest-pulse", source, value, low: value - miss18, high: value + miss18, unit: "bpm", decimals: 1 },
    { what: "pulse-no-target", source, value: "effort and talking" },
  ];
}

function highest(given: Given): readonly Figure[] {
  if (given.wordIf("slowed") === "yes") return slowedHighest(given.number("age"));
  const age = given.number("age");
  const names = fitting(given);
  if (names.length === 0)
    throw new RangeError(
      `Cannot estimate the highest heart rate as age must be from 18 to 89: current value is ${age}`,
    );
  return names.map((name) => {
    const { source, miss } = HEART_RATE_EQUATIONS[name];
    const value = heartRateMax(name, age);
    return {
      what: "highest-pulse",
      source,
      value,
      low: value - miss.from,
      high: value + miss.from,
      unit: "bpm",
      decimals: 0,
    };
  });
}

const highestPulse: Reckoning = {
  name: "highest-pulse",
  asks: [AGE, { ...SEX, optional: true }, { key: "slowed", of: ["yes", "no"], optional: true }],
  about: (given) =>
    given.wordIf("slowed") === "yes" ? [BETA_BLOCKED] : fitting(given).map((name) => HEART_RATE_EQUATIONS[name]),
  figures: highest,
};

const pulse: Reckoning = {
  name: "pulse-target",
  asks: [
    { key: "rest", dimension: "pulse" },
    { key: "percent", dimension: "share" },
    { key: "to", dimension: "share", optional: true },
    { key: "slowed", of: ["yes", "no"] },
    { key: "max", dimension: "pulse", optional: true },
    { ...AGE, optional: true },
    { key: "by", of: ["208 - 0.7 age", "220 - age"], optional: true },
  ],
  about: (given) =>
    given.numberIf("max") === undefined
      ? [HEART_RATE_EQUATIONS[byAge(given)]]
      : [{ source: "karvonen1957", who: "the highest rate was measured on this person" }],
  figures: (given) => {
    const measured = given.numberIf("max");
    const slowed = given.word("slowed") === "yes";
    const age = given.numberIf("age") ?? Number.NaN;
    if (measured === undefined && !slowed && Number.isNaN(age))
      throw new RangeError("Cannot set a pulse target as the age, or a measured highest heart rate, is missing");
    const bpm = measured ?? (slowed ? 0 : heartRateMax(byAge(given), age));
    const percent = given.number("percent");
    const at = (share: number) =>
      pulseTarget({ bpm, measured: measured !== undefined }, given.number("rest"), share / 100, slowed);
    const target = at(percent);
    const to = given.numberIf("to");
    if (to !== undefined && !(to > percent))
      throw new RangeError(`Cannot set a band as its upper share must be over ${percent} %: current value is ${to}`);
    const band = to === undefined ? [] : [bandOf(target.bpm, at(to).bpm)];
    return [
      ...(measured === undefined
        ? [
            {
              what: "highest-pulse",
              source: HEART_RATE_EQUATIONS[byAge(given)].source,
              value: bpm,
              unit: "bpm",
            } as const,
          ]
        : []),
      ...band,
      {
        what: "pulse-target",
        source: "karvonen1957",
        value: target.bpm,
        low: target.low,
        high: target.high,
        unit: "bpm",
        decimals: 1,
      },
      { what: "intensity", source: "garber2011", value: intensityOf("% reserve", percent) },
    ];
  },
};

function byAge(given: Given): "fox" | "tanaka" {
  return given.wordIf("by") === "220 - age" ? "fox" : "tanaka";
}

/** Whole beats, half up. */
function bandOf(from: number, to: number): Figure {
  const [low, high] = [Math.floor(from + 0.5), Math.floor(to + 0.5)];
  return { what: "pulse-band", source: "karvonen1957", value: low, low, high, unit: "bpm" };
}

const SPEECH = { "can sing": "light", "whole sentences": "moderate", "a few words": "vigorous" } as const;

const talkTest: Reckoning = {
  name: "talk-test",
  asks: [{ key: "can", of: Object.keys(SPEECH) }],
  about: () => [{ source: "practice", who: "anybody who can talk; also with a medicine that slows the heart" }],
  figures: (given) => [
    { what: "intensity", source: "practice", value: SPEECH[given.word<keyof typeof SPEECH>("can")] },
  ],
};

const pulseShare: Reckoning = {
  name: "pulse-share",
  asks: [
    { key: "pulse", dimension: "pulse" },
    { key: "rest", dimension: "pulse" },
    { key: "max", dimension: "pulse" },
  ],
  about: () => [{ source: "karvonen1957", who: NOT_STATED }],
  figures: (given) => {
    const max = { bpm: given.number("max"), measured: true };
    const percent = 100 * pulseReserve(max, given.number("rest"), given.number("pulse"));
    return [
      { what: "percent-of-reserve", source: "karvonen1957", value: percent, unit: "%", decimals: 0 },
      { what: "intensity", source: "garber2011", value: intensityOf("% reserve", percent) },
    ];
  },
};

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
  highestPulse,
  pulse,
  pulseShare,
  talkTest,
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
