import type { Day } from "../day.ts";
import type { Json, Reason } from "../model/index.ts";
import type { AssessmentTest } from "./tests.ts";

/** What assessment says. Each code names one sentence; its data are listed beside it. */
export const ASSESS_CODES = [
  /** test, note: the value as it was done */
  "assess/arms-score-zero",
  /** test, note: the full stands; one more is scored */
  "assess/half-way-counts",
  /** condition, before, now */
  "assess/other-conditions",
  /** test, from, to, unit, source: the middle half of an age */
  "assess/middle-half",
  /** test, from, unit, source */
  "assess/below-average",
  /** test, class, source */
  "assess/class",
  /** test, mean, unit, source */
  "assess/mean",
  /** test, edge, unit, source: talk to a doctor, no diagnosis */
  "assess/talk-to-doctor",
  /** test, age: no row for it */
  "assess/no-norm",
  /** test: its norm needs the sex, which was not said */
  "assess/sex-unknown",
  /** ladder, exercise, test, value, unit, side: the weaker one, where two differ */
  "assess/rung",
  /** exercise, least, unit: too few for a set of it */
  "assess/rung-below",
  /** exercise, amount, unit: its gate, shown in one set */
  "assess/rung-gate",
  /** exercise, seconds, least: a plank that it asks for was shorter */
  "assess/rung-plank",
  /** conditions: which the coach has to see */
  "assess/rung-conditions",
  /** edge, unit, source: from it on the next form */
  "assess/rung-edge",
  /** ladder, test, age, sex: or null: no printed row */
  "assess/rung-no-norm",
] as const;
export type AssessCode = (typeof ASSESS_CODES)[number];

export function reason(code: AssessCode, data: Readonly<Record<string, Json>> = {}): Reason {
  return { code, data };
}

/** One result of one test on one day. With sides, each is kept; they are never averaged. */
export interface TestResult {
  readonly test: string;
  readonly on: Day;
  readonly value?: number;
  readonly left?: number;
  readonly right?: number;
  readonly conditions: Readonly<Record<string, string>>;
}

/** A value as its protocol scores it, and what must be said beside it. */
export interface Scored {
  readonly value: number;
  readonly notes: readonly Reason[];
}

/**
 * The score of a value by the rules of its test.
 *
 * @throws RangeError when the value is negative, not a number or more than anybody does
 * @source rikliJones1999
 */
export function scoreOf(test: AssessmentTest, value: number, conditions: TestResult["conditions"]): Scored {
  if (!(value >= 0 && value <= test.most)) {
    throw new RangeError(
      `Cannot score ${test.id} as it must be from 0 to ${test.most} ${test.unit}: current value is ${value}`,
    );
  }
  if (test.unit === "repetitions" && !Number.isInteger(value)) {
    throw new RangeError(`Cannot score ${test.id} as repetitions must be whole: current value is ${value}`);
  }
  if (test.id === "chair-stand-30" && conditions["arms"] === "used") {
    return { value: 0, notes: [reason("assess/arms-score-zero", { test: test.id, note: value })] };
  }
  if (test.id === "chair-stand-30" && conditions["end"] === "more than half-way up") {
    return { value: value + 1, notes: [reason("assess/half-way-counts", { test: test.id, note: value })] };
  }
  return { value, notes: [] };
}

/** Conditions that the protocol of the chair stand turns into the score, so that they keep nothing apart. */
const SCORED: ReadonlySet<string> = new Set(["arms", "end"]);

/**
 * Whether two results of one test may be compared: like only with like.
 *
 * What a protocol scores (arms used: 0; more than half-way up: one more) still compares; another chair, side of the protocol or device does not. A
 * condition that nobody wrote down is taken as the standard one.
 *
 * @returns the conditions that differ; an empty list when none does
 */
export function differing(test: AssessmentTest, before: TestResult, now: TestResult): readonly Reason[] {
  return test.conditions
    .filter(({ id }) => !(test.id === "chair-stand-30" && SCORED.has(id)))
    .flatMap(({ id, standard }) => {
      const [was, is] = [before.conditions[id] ?? standard, now.conditions[id] ?? standard];
      return was === is ? [] : [reason("assess/other-conditions", { condition: id, before: was, now: is })];
    });
}
