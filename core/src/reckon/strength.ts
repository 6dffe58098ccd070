import {
  daysToGood,
  FITNESS_FATIGUE,
  growthOfMoreSets,
  LOAD_STEP,
  mostSetsNext,
  nextLoadBand,
  ONE_REP_MAX_EQUATIONS,
  ONE_REP_MAX_TRIALS,
  oneRepMax,
  PRESS_PULL,
  percentAtSpeed,
  pressToPull,
  RESERVE_BIAS,
  REYNOLDS,
  reserveLeft,
  reynolds,
  volumeClass,
  WEEKLY_SETS_GROWTH,
} from "../equations/index.ts";
import {
  leanRowShare,
  MOVED_FORMS,
  type MovedForm,
  movedShare,
  percentFor,
  pushUpShareAt,
  REPS_AT_PERCENT_BOOK,
  REPS_AT_PERCENT_CHART,
  REPS_SPREAD,
  repsBracket,
  reserveMark,
  SEGMENT_MASSES,
} from "../tables/index.ts";
import { asLoad, kg, type Mass, type MassUnit, massOf } from "../units.ts";
import { DIMENSIONS } from "./quantity.ts";
import { type Figure, type Given, NOT_STATED, type Reckoning } from "./reckoning.ts";

/** A load in the unit it was written in, so that nothing is converted to and fro. */
function massIn(given: Given, key: string): { readonly mass: Mass; readonly unit: MassUnit } {
  const unit = given.unit(key) as MassUnit;
  return { mass: massOf({ value: given.number(key) / DIMENSIONS.mass[unit], unit }), unit };
}

function said(mass: Mass, unit: MassUnit): number {
  return asLoad(mass, unit).value;
}

const oneRepMaxReckoning: Reckoning = {
  name: "one-rep-max",
  asks: [
    { key: "load", dimension: "mass" },
    { key: "reps", dimension: "count" },
  ],
  about: () => [
    ...ONE_REP_MAX_EQUATIONS.map(({ source }) => ({ source, who: NOT_STATED })),
    ...ONE_REP_MAX_TRIALS.flatMap(({ source, people, sex, lift, errorKg }) =>
      errorKg === undefined
        ? []
        : [
            {
              source,
              people,
              who: `${sex}, ${lift}`,
              miss: { kind: "range" as const, ...errorKg, unit: "kg" as const, source },
            },
          ],
    ),
  ],
  figures: (given) => {
    const { mass, unit } = massIn(given, "load");
    const { low, high, typical } = oneRepMax(mass, given.number("reps"));
    const band: Figure = {
      what: typical === undefined ? "one-rep-max-band" : "one-rep-max",
      source: "mayhew1995",
      value: said(typical ?? low, unit),
      low: said(low, unit),
      high: said(high, unit),
      unit,
      decimals: 1,
    };
    if (typical === undefined) return [band];
    const reps = given.number("reps");
    const each = ONE_REP_MAX_EQUATIONS.map(({ name, source, times }) => {
      const value = reps === 1 ? said(mass, unit) : said(Math.round(mass * times(reps)) as Mass, unit);
      return { what: `by-${name}`, source, value, unit, decimals: 1 };
    });
    return [band, ...each];
  },
};

const fiveRepMax: Reckoning = {
  name: "five-rep-max",
  asks: [
    { key: "lift", of: ["bench press", "leg press"] },
    { key: "load", dimension: "mass" },
  ],
  about: (given) => [REYNOLDS[given.word<"bench press" | "leg press">("lift")]],
  figures: (given) => {
    const lift = given.word<"bench press" | "leg press">("lift");
    const { mass, unit } = massIn(given, "load");
    const best = reynolds(lift, mass);
    const miss = kg(REYNOLDS[lift].miss?.from ?? 0);
    const [low, high] = [Math.max(0, best - miss) as Mass, (best + miss) as Mass];
    return [
      {
        what: "one-rep-max",
        source: "reynolds2006",
        value: said(best, unit),
        low: said(low, unit),
        high: said(high, unit),
        unit,
        decimals: 1,
      },
    ];
  },
};

const repsAtPercent: Reckoning = {
  name: "reps-at-percent",
  asks: [{ key: "percent", dimension: "share" }],
  about: (given) => [
    { source: "nscaEssentialsTable", who: "one number for everybody; people differ widely around it" },
    ...REPS_SPREAD.filter(({ percent }) => percent === given.number("percent")).map(({ source, who, people }) => ({
      source,
      who,
      ...(people === undefined ? {} : { people }),
    })),
  ],
  figures: (given) => {
    const percent = given.number("percent");
    const tables = [REPS_AT_PERCENT_BOOK, REPS_AT_PERCENT_CHART].map((table): Figure => {
      const { least, most } = repsBracket(percent, table);
      return {
        what: "reps-allowed",
        source: table.source,
        value: least,
        low: least,
        ...(most === undefined ? {} : { high: most }),
        unit: "reps",
      };
    });
    const measured = REPS_SPREAD.filter((row) => row.percent === percent).map(
      ({ source, lift, mean, sd, range }): Figure => {
        const low = range?.from ?? mean - 2 * sd;
        const high = range?.to ?? mean + 2 * sd;
        return {
          what: `reps-measured-${lift.replace(" ", "-")}`,
          source,
          value: mean,
          low,
          high,
          unit: "reps",
          decimals: 1,
        };
      },
    );
    return [...tables, ...measured];
  },
};

const percentForReps: Reckoning = {
  name: "percent-for-reps",
  asks: [
    { key: "reps", dimension: "count" },
    { key: "left", dimension: "count", optional: true },
  ],
  about: () => [{ source: "nscaEssentialsTable", who: "one number for everybody; people differ widely around it" }],
  figures: (given) => {
    const reps = given.number("reps") + (given.numberIf("left") ?? 0);
    const found = [REPS_AT_PERCENT_BOOK, REPS_AT_PERCENT_CHART].flatMap((table): Figure[] => {
      const value = percentFor(reps, table);
      return value === undefined ? [] : [{ what: "percent-of-max", source: table.source, value, unit: "%" }];
    });
    if (found.length === 0)
      throw new RangeError(
        `Cannot tell a share of the 1RM as repetitions done and left must have a printed row: current value is ${reps}`,
      );
    return found;
  },
};

const reserve: Reckoning = {
  name: "reserve",
  asks: [{ key: "rating", dimension: "count" }],
  about: () => [{ source: "zourdos2016", who: "29 people who squat" }],
  figures: (given) => {
    const mark = reserveMark(given.number("rating"));
    if (mark?.left === undefined)
      throw new RangeError(
        `Cannot tell the reserve as the rating must be 5 or more, in whole or half points as printed: current value is ${given.number("rating")}`,
      );
    const { from, to } = mark.left;
    return [
      {
        what: mark.loadLeft ? "reps-left-and-load" : "reps-left",
        source: mark.source,
        value: from,
        low: from,
        high: to,
        unit: "reps",
      },
    ];
  },
};

const trueReserve: Reckoning = {
  name: "true-reserve",
  asks: [
    { key: "said", dimension: "count" },
    { key: "done", dimension: "count" },
  ],
  about: () => [RESERVE_BIAS],
  figures: (given) => {
    const { mean, low, high } = reserveLeft(given.number("said"), given.number("done"));
    return [{ what: "reps-left", source: "halperin2022", value: mean, low, high, unit: "reps", decimals: 2 }];
  },
};

const bodyShare: Reckoning = {
  name: "body-share",
  asks: [
    { key: "form", of: [...MOVED_FORMS, "push-up", "strap row"] },
    { key: "mass", dimension: "mass" },
    { key: "height", dimension: "length", optional: true },
    { key: "raised", of: ["hands", "feet"], optional: true },
    { key: "lean", dimension: "count", optional: true },
  ],
  about: (given) => {
    const form = given.word("form");
    if (form === "push-up")
      return [
        { source: "ebben2011", who: "14 men and 9 women, peak force; standing still others found more", people: 23 },
      ];
    if (form === "strap row") return [{ source: "melroseDawes2015", who: "students", people: 40 }];
    return Object.values(SEGMENT_MASSES).map(({ source }) => ({ source, who: "tables of segment masses" }));
  },
  figures: (given) => {
    const { mass, unit } = massIn(given, "mass");
    const moved = (share: number, source: Figure["source"], what = "mass-moved"): Figure => ({
      what,
      source,
      value: said(Math.round(mass * share) as Mass, unit),
      unit,
      decimals: 1,
    });
    const form = given.word<MovedForm | "push-up" | "strap row">("form");
    if (form === "push-up") {
      const height = given.numberIf("height") ?? 0;
      return [moved(pushUpShareAt(given.wordIf("raised") === "feet" ? -height : height), "ebben2011", "mass-on-hands")];
    }
    if (form === "strap row") {
      const share = leanRowShare(given.numberIf("lean") ?? Number.NaN);
      if (share === undefined)
        throw new RangeError(
          "Cannot tell the mass on the straps as the lean from upright must be 30, 45, 60 or 75 degrees",
        );
      return [moved(share, "melroseDawes2015", "mass-on-hands")];
    }
    return Object.values(SEGMENT_MASSES).map((table) => moved(movedShare(form, table), table.source));
  },
};

const nextLoad: Reckoning = {
  name: "next-load",
  asks: [{ key: "load", dimension: "mass" }],
  about: () => [
    {
      source: LOAD_STEP.source,
      who: "adults in good health; after 1 to 2 repetitions over the target in two sessions running",
    },
  ],
  figures: (given) => {
    const { mass, unit } = massIn(given, "load");
    const { low, high } = nextLoadBand(mass);
    return [
      {
        what: "next-load",
        source: LOAD_STEP.source,
        value: said(low, unit),
        low: said(low, unit),
        high: said(high, unit),
        unit,
        decimals: 1,
      },
    ];
  },
};

const weeklySets: Reckoning = {
  name: "weekly-sets",
  asks: [
    { key: "sets", dimension: "count" },
    { key: "more", dimension: "count", optional: true },
  ],
  about: () => [WEEKLY_SETS_GROWTH, { source: "bazValle2022", who: "trained young men" }],
  figures: (given) => {
    const sets = given.number("sets");
    const more = given.numberIf("more");
    return [
      { what: "volume-class", source: "bazValle2022", value: volumeClass(sets) },
      { what: "most-sets-next", source: "iusca2021", value: mostSetsNext(sets), unit: "sets" },
      ...(more === undefined
        ? []
        : [
            {
              what: "growth-of-more",
              source: "schoenfeld2017volume" as const,
              value: growthOfMoreSets(more).percent,
              unit: "%",
              decimals: 2,
            },
          ]),
    ];
  },
};

const pressPull: Reckoning = {
  name: "press-pull",
  asks: [
    { key: "press", dimension: "mass" },
    { key: "pull", dimension: "mass" },
  ],
  about: () => [
    {
      ...PRESS_PULL,
      miss: { kind: "standard deviation", from: PRESS_PULL.sdPercent, unit: "%", source: PRESS_PULL.source },
    },
  ],
  figures: (given) => [
    {
      what: "press-over-pull",
      source: PRESS_PULL.source,
      value: pressToPull(massIn(given, "press").mass, massIn(given, "pull").mass),
      unit: "%",
      decimals: 1,
    },
  ],
};

const barSpeed: Reckoning = {
  name: "bar-speed",
  asks: [{ key: "speed", dimension: "speed" }],
  about: () => [{ source: "gonzalezBadillo2010", who: "men, bench press; constants from memory", people: 120 }],
  figures: (given) => [
    {
      what: "percent-of-max",
      source: "gonzalezBadillo2010",
      value: percentAtSpeed(given.number("speed") / 60),
      unit: "%",
      decimals: 1,
    },
  ],
};

const MODELS = Object.keys(FITNESS_FATIGUE) as (keyof typeof FITNESS_FATIGUE)[];
const doseShape: Reckoning = {
  name: "dose-shape",
  asks: [{ key: "model", of: MODELS }],
  about: (given) => {
    const { source, who } = FITNESS_FATIGUE[given.word<(typeof MODELS)[number]>("model")];
    return [{ source, who: `${who}; holds for nobody else` }];
  },
  figures: (given) => {
    const model = FITNESS_FATIGUE[given.word<(typeof MODELS)[number]>("model")];
    const { good, best } = daysToGood(model);
    return [
      { what: "days-to-good", source: model.source, value: good, unit: "days", decimals: 1 },
      { what: "days-to-best", source: model.source, value: best, unit: "days", decimals: 1 },
    ];
  },
};

/** Loads, repetitions and sets. */
export const STRENGTH: readonly Reckoning[] = [
  oneRepMaxReckoning,
  fiveRepMax,
  repsAtPercent,
  percentForReps,
  reserve,
  trueReserve,
  bodyShare,
  nextLoad,
  weeklySets,
  pressPull,
  barSpeed,
  doseShape,
];
