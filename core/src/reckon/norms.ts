import { refuseOutside } from "../equations/index.ts";
import {
  chairStandNorm,
  oneLegStandMean,
  plankQuarter,
  plankZ,
  pushUpClass,
  usualHeelRaises,
} from "../tables/index.ts";
import type { Asked, Given, Reckoning } from "./reckoning.ts";

type Sex = "man" | "woman";
const SEX: Asked = { key: "sex", of: ["man", "woman"] };
const AGE: Asked = { key: "age", dimension: "years" };

/** More than anybody has been seen to do is a slip of the pen, as where results are read. Ours. */
const MOST = { stands: 60, pushUps: 150, heelRaises: 100 } as const;
function counted(given: Given, key: string, most: number): number {
  const count = given.number(key);
  refuseOutside("where a result stands", key, count, 0, most);
  return count;
}

const plank: Reckoning = {
  name: "plank",
  asks: [SEX, { key: "time", dimension: "time" }],
  about: () => [
    { source: "brighamChase2014", who: "students", people: 168 },
    { source: "strand2014", who: "students", people: 471 },
  ],
  figures: (given) => {
    const [sex, seconds] = [given.word<Sex>("sex"), given.number("time")];
    return [
      { what: "quarter", source: "brighamChase2014", value: plankQuarter(sex, seconds) },
      { what: "deviations-from-mean", source: "strand2014", value: plankZ(sex, seconds), decimals: 2 },
    ];
  },
};
const chairStand: Reckoning = {
  name: "chair-stand",
  asks: [SEX, AGE, { key: "stands", dimension: "count" }],
  about: () => [{ source: "rikliJones1999", who: "older people living at home", ageY: { from: 60, to: 94 } }],
  figures: (given) => {
    const middle = chairStandNorm(Math.floor(given.number("age")), given.word<Sex>("sex"));
    if (middle === undefined)
      throw new RangeError(
        `Cannot place chair stands as age must be from 60 to 94: current value is ${given.number("age")}`,
      );
    const stands = counted(given, "stands", MOST.stands);
    const value = stands < middle.from ? "lowest quarter" : stands > middle.to ? "highest quarter" : "middle half";
    return [
      { what: "quarter", source: "rikliJones1999", value },
      {
        what: "middle-half",
        source: "rikliJones1999",
        value: middle.from,
        low: middle.from,
        high: middle.to,
        unit: "reps",
      },
    ];
  },
};
const pushUps: Reckoning = {
  name: "push-ups",
  asks: [SEX, AGE, { key: "reps", dimension: "count" }],
  about: () => [
    {
      source: "csepPushUps",
      who: "men from the toes, women from the knees, without a time limit",
      ageY: { from: 15, to: 69 },
    },
  ],
  figures: (given) => {
    const found = pushUpClass(
      counted(given, "reps", MOST.pushUps),
      Math.floor(given.number("age")),
      given.word<Sex>("sex"),
    );
    if (found === undefined)
      throw new RangeError(
        `Cannot class push-ups as age must be from 15 to 69: current value is ${given.number("age")}`,
      );
    return [{ what: "push-up-class", source: "csepPushUps", value: found }];
  },
};
const heelRaises: Reckoning = {
  name: "heel-raises",
  asks: [SEX, AGE, { key: "reps", dimension: "count" }],
  about: () => [
    { source: "hebertLosier2017", who: "adults, one leg on a slope of 10°, 60 beats a minute", people: 566 },
  ],
  figures: (given) => {
    const usual = usualHeelRaises(given.word<Sex>("sex"), given.number("age"));
    if (usual === undefined)
      throw new RangeError(
        `Cannot place heel raises as age must be from 20 to 89: current value is ${given.number("age")}`,
      );
    return [
      { what: "usual-at-age", source: "hebertLosier2017", value: usual, unit: "reps" },
      {
        what: "percent-of-usual",
        source: "hebertLosier2017",
        value: (100 * counted(given, "reps", MOST.heelRaises)) / usual,
        unit: "%",
        decimals: 0,
      },
    ];
  },
};
const oneLeg: Reckoning = {
  name: "one-leg-stand",
  asks: [AGE],
  about: () => [
    { source: "bohannon2006", who: "older people of 22 studies", people: 3484, ageY: { from: 60, to: 99 } },
  ],
  figures: (given) => {
    const mean = oneLegStandMean(Math.floor(given.number("age")));
    if (mean === undefined)
      throw new RangeError(
        `Cannot tell the usual stand on one leg as age must be from 60 to 99: current value is ${given.number("age")}`,
      );
    return [{ what: "usual-at-age", source: "bohannon2006", value: mean, unit: "s", decimals: 1 }];
  },
};

/** Where the result of a test stands among other people. */
export const NORMS: readonly Reckoning[] = [plank, chairStand, pushUps, heelRaises, oneLeg];
