import {
  ACTIVITY_FACTORS,
  type ActivityLevel,
  bodyMassIndex,
  dailyEnergy,
  densityFromFolds,
  densityFromFourFolds,
  energyAvailability,
  type FoldMethod,
  fatError,
  fatFromDensity,
  type Girths,
  lossRate,
  RESTING_ENERGY,
  type RestingEnergyName,
  restingEnergy,
  restingEnergyOfLean,
  SKINFOLDS,
  TAPE_FAT,
  tapeFat,
  waistHip,
  waistRisk,
} from "../equations/index.ts";
import { PROTEIN_PLATEAU, PROTEIN_RANGES, proteinGrams } from "../tables/index.ts";
import type { Asked, Figure, Given, Reckoning } from "./reckoning.ts";

type Sex = "man" | "woman";
const SEX: Asked = { key: "sex", of: ["man", "woman"] };
const AGE: Asked = { key: "age", dimension: "years" };
const MASS: Asked = { key: "mass", dimension: "mass" };
const HEIGHT: Asked = { key: "height", dimension: "length" };
const LEAN: Asked = { key: "lean", dimension: "mass", optional: true };

function facts(given: Given) {
  return {
    sex: given.word<Sex>("sex"),
    massKg: given.number("mass"),
    heightCm: given.number("height"),
    ageY: given.number("age"),
  };
}

/** How far over and under the measured figure the equation was in people with obesity. Source: mifflinEvidence. */
const MIFFLIN = { over: 1.09, under: 0.79 } as const;

/** Half the width in which 95 % of people lie, kcal a day. Source: rozaShizgal1984. */
const ROZA = { man: 213, woman: 201 } as const;

function bandOf(name: RestingEnergyName, value: number, sex: Sex): { readonly low?: number; readonly high?: number } {
  if (name === "mifflin") return { low: value / MIFFLIN.over, high: value / MIFFLIN.under };
  return name === "roza" ? { low: value - ROZA[sex], high: value + ROZA[sex] } : {};
}

function resting(given: Given): readonly Figure[] {
  const lean = given.numberIf("lean");
  const known = (Object.keys(RESTING_ENERGY) as RestingEnergyName[]).map((name): Figure => {
    const value = restingEnergy(name, facts(given));
    const band = bandOf(name, value, given.word<Sex>("sex"));
    return { what: "resting-energy", source: RESTING_ENERGY[name].source, value, ...band, unit: "kcal/d", decimals: 0 };
  });
  const byLean = (["1980", "1991"] as const).flatMap((edition): Figure[] =>
    lean === undefined
      ? []
      : [
          {
            what: "resting-energy",
            source: `cunningham${edition}`,
            value: restingEnergyOfLean(edition, lean),
            unit: "kcal/d",
            decimals: 0,
          },
        ],
  );
  return [...known, ...byLean];
}

const restingReckoning: Reckoning = {
  name: "resting-energy",
  asks: [SEX, MASS, HEIGHT, AGE, LEAN],
  about: () => Object.values(RESTING_ENERGY),
  figures: resting,
};
const daily: Reckoning = {
  name: "daily-energy",
  asks: [SEX, MASS, HEIGHT, AGE, { key: "life", of: Object.keys(ACTIVITY_FACTORS) }],
  about: () => [RESTING_ENERGY.mifflin, { source: "faoWhoUnu2001", who: "groups of people, and not single ones" }],
  figures: (given) => {
    const rest = restingEnergy("mifflin", facts(given));
    const value = dailyEnergy(rest, ACTIVITY_FACTORS[given.word<ActivityLevel>("life")]);
    const [low, high] = [(value / MIFFLIN.over) * 0.92, (value / MIFFLIN.under) * 1.08];
    return [{ what: "daily-energy", source: "activityFactors", value, low, high, unit: "kcal/d", decimals: 0 }];
  },
};
const available: Reckoning = {
  name: "energy-availability",
  asks: [
    { key: "eaten", dimension: "energy" },
    { key: "spent", dimension: "energy" },
    { key: "lean", dimension: "mass" },
  ],
  about: () => [{ source: "areta2021", who: "the cut at 30 comes from short trials in young, lean, sedentary women" }],
  figures: (given) => {
    const { kcalPerKg, low } = energyAvailability(given.number("eaten"), given.number("spent"), given.number("lean"));
    return [
      { what: "energy-availability", source: "areta2021", value: kcalPerKg, unit: "kcal/kg/d", decimals: 1 },
      { what: "energy-availability-class", source: "areta2021", value: low ? "under 30" : "30 or more" },
    ];
  },
};
const loss: Reckoning = {
  name: "loss-rate",
  asks: [
    { key: "before", dimension: "mass" },
    { key: "after", dimension: "mass" },
    { key: "weeks", dimension: "count" },
  ],
  about: () => [{ source: "acsm2001", who: "adults; pace of public guides" }],
  figures: (given) => {
    const { kgPerWeek, percentPerWeek, fast } = lossRate(
      given.number("before"),
      given.number("after"),
      given.number("weeks"),
    );
    return [
      { what: "loss-per-week", source: "acsm2001", value: kgPerWeek, unit: "kg/week", decimals: 2 },
      { what: "loss-percent-per-week", source: "acsm2001", value: percentPerWeek, unit: "%/week", decimals: 2 },
      {
        what: "loss-class",
        source: "ours",
        value: fast ? "faster than 1 % or 1 kg a week" : "not faster than 1 % and 1 kg a week",
      },
    ];
  },
};
const protein: Reckoning = {
  name: "protein",
  asks: [MASS],
  about: () => [{ source: "morton2018", who: "adults who train, 49 trials", people: 1863 }],
  figures: (given) => {
    const massKg = given.number("mass");
    const grams = (perKg: number) => proteinGrams(massKg, perKg);
    return [
      {
        what: "protein-plateau",
        source: "morton2018",
        value: grams(PROTEIN_PLATEAU),
        low: grams(1.03),
        high: grams(2.2),
        unit: "g/d",
        decimals: 0,
      },
      ...PROTEIN_RANGES.filter(({ meant }) => meant === "people who train").map(({ source, from, to }): Figure => {
        return {
          what: "protein-range",
          source,
          value: grams(from),
          low: grams(from),
          high: grams(to),
          unit: "g/d",
          decimals: 0,
        };
      }),
    ];
  },
};
const bmi: Reckoning = {
  name: "bmi",
  asks: [MASS, HEIGHT, AGE],
  about: () => [{ source: "whoBmi", who: "adults; says little of pregnant and very muscular people" }],
  figures: (given) => {
    const { value, class: found } = bodyMassIndex(given.number("mass"), given.number("height"), given.number("age"));
    return [
      { what: "bmi", source: "whoBmi", value, unit: "kg/m²", decimals: 1 },
      { what: "bmi-class", source: "whoBmi", value: found },
    ];
  },
};
const waist: Reckoning = {
  name: "waist",
  asks: [SEX, { key: "waist", dimension: "length" }, { key: "hip", dimension: "length", optional: true }],
  about: () => [{ source: "whoWaist2008", who: "adults; groups have cut-offs of their own" }],
  figures: (given) => {
    const sex = given.word<Sex>("sex");
    const hip = given.numberIf("hip");
    const both = hip === undefined ? undefined : waistHip(sex, given.number("waist"), hip);
    return [
      { what: "waist-risk", source: "whoWaist2008", value: waistRisk(sex, given.number("waist")) },
      ...(both === undefined
        ? []
        : [
            { what: "waist-hip", source: "whoWaist2008" as const, value: both.ratio, decimals: 2 },
            { what: "waist-hip-risk", source: "whoWaist2008" as const, value: both.risk },
          ]),
    ];
  },
};

function fat(source: Figure["source"], value: number, miss: number | undefined): Figure {
  return {
    what: "body-fat",
    source,
    value,
    ...(miss === undefined ? {} : { low: value - miss, high: value + miss }),
    unit: "%",
    decimals: 1,
  };
}

const folds: Reckoning = {
  name: "skinfolds",
  asks: [
    SEX,
    AGE,
    { key: "method", of: ["three folds", "four folds", "seven folds"] },
    { key: "sum", dimension: "length" },
  ],
  about: (given) =>
    given.word("method") === "four folds"
      ? [
          {
            source: "durninWomersley1974",
            who: "men and women; read 2 to 3 % of fat low in others",
            people: 481,
            ageY: { from: 16, to: 72 },
          },
        ]
      : [SKINFOLDS[given.word<Sex>("sex")]],
  figures: (given) => {
    const sex = given.word<Sex>("sex");
    const method = given.word<FoldMethod | "four folds">("method");
    const sumMm = 10 * given.number("sum");
    const density =
      method === "four folds"
        ? densityFromFourFolds(sex, sumMm, given.number("age"))
        : densityFromFolds(sex, method, sumMm, given.number("age"));
    const miss = method === "four folds" ? undefined : fatError(sex, method, density);
    return [
      {
        what: "body-density",
        source: method === "four folds" ? "durninWomersley1974" : SKINFOLDS[sex].source,
        value: density,
        unit: "kg/L",
        decimals: 4,
      },
      fat("siri1961", fatFromDensity("siri", density), miss),
      fat("brozek1963", fatFromDensity("brozek", density), miss),
    ];
  },
};
const tape: Reckoning = {
  name: "tape",
  asks: [
    SEX,
    AGE,
    HEIGHT,
    { key: "neck", dimension: "length" },
    { key: "waist", dimension: "length" },
    { key: "hip", dimension: "length", optional: true },
  ],
  about: (given) => [TAPE_FAT[given.word<Sex>("sex")]],
  figures: (given) => {
    const sex = given.word<Sex>("sex");
    const shared = { heightCm: given.number("height"), neckCm: given.number("neck") };
    const girths: Girths =
      sex === "man"
        ? { sex, ...shared, abdomenCm: given.number("waist") }
        : { sex, ...shared, waistCm: given.number("waist"), hipCm: given.numberIf("hip") ?? Number.NaN };
    return [fat("hodgdonFriedl1999", tapeFat(girths, given.number("age")), TAPE_FAT[sex].miss.from)];
  },
};

/** Energy and measures of the body. */
export const BODY: readonly Reckoning[] = [restingReckoning, daily, available, loss, protein, bmi, waist, folds, tape];
