import {
  BETA_BLOCKED,
  HEART_RATE_EQUATIONS,
  type HeartRateEquation,
  type HeartRateEquationName,
  heartRateMax,
  pulseReserve,
  pulseTarget,
} from "../equations/index.ts";
import { intensityOf } from "../tables/index.ts";
import { type Asked, type Figure, type Given, NOT_STATED, type Reckoning } from "./reckoning.ts";

type Sex = "man" | "woman";
const SEX: Asked = { key: "sex", of: ["man", "woman"] };
const AGE: Asked = { key: "age", dimension: "years" };

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

/** Heart rates, and how hard an effort is by talking. */
export const PULSE: readonly Reckoning[] = [highestPulse, pulse, pulseShare, talkTest];
