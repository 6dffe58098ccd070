import type { Day } from "../day.ts";
import { inKg, massOf } from "../units.ts";
import type { TestResult } from "./result.ts";
import type { ResultsFile } from "./results-read.ts";
import { type SymmetryLine, symmetry } from "./sides.ts";
import { ASSESSMENT_TESTS } from "./tests.ts";

/** Torque of the knee per kilogram of body mass that a graft study asked for, N m. From memory. */
const LEAST_TORQUE = 3;
const TORQUE_TEST = "knee-extension-torque";

/** Whether an injured side does as much as the other, line by line. */
export interface ReturnList {
  readonly side: "left" | "right";
  /** Whole weeks from the injury or operation to the last of the tests. */
  readonly weeks: number;
  readonly over: number;
  readonly lines: readonly (SymmetryLine & { readonly on: Day })[];
  /** Torque of the injured side per kilogram; its value is missing where nobody said the body mass. */
  readonly torque?: { readonly perKg?: number; readonly least: number; readonly passed: boolean };
  /** Every line, and not most of them. */
  readonly passed: boolean;
}

/**
 * The last result of every test with sides, injured ÷ other, each over the line for itself: all count, no average is
 * made, and what was not measured passes nothing. Torque is held against body mass besides. Whether somebody returns to
 * sport is the medical team's to say.
 *
 * @returns undefined where no side was injured, or no test with sides was done since
 * @source practice
 */
export function returnList({ injured, results }: Pick<ResultsFile, "injured" | "results">): ReturnList | undefined {
  if (injured === undefined) return undefined;
  const { side, since, over, mass } = injured;
  const other = side === "left" ? "right" : "left";
  const last = ASSESSMENT_TESTS.filter(({ sides }) => sides).flatMap(({ id, better }) => {
    const found = results.filter((one) => one.test === id && one.on >= since).toSorted((a, b) => a.on - b.on);
    const result = found.at(-1);
    return result === undefined ? [] : [{ test: id, on: result.on, ...sidesOf(result, side, other, better) }];
  });
  if (last.length === 0) return undefined;
  const measured = last.filter(({ uninjured }) => uninjured > 0);
  const judged = symmetry(measured, over);
  const lines = judged.lines.map((line, at) => ({ ...line, on: measured[at]!.on }));
  const torque = last.find(({ test }) => test === TORQUE_TEST)?.injured;
  const perKg = torque === undefined || mass === undefined ? undefined : torque / inKg(massOf(mass));
  const held =
    torque === undefined
      ? {}
      : {
          torque: {
            ...(perKg === undefined ? {} : { perKg: Math.round(perKg * 100) / 100 }),
            least: LEAST_TORQUE,
            passed: perKg !== undefined && perKg > LEAST_TORQUE,
          },
        };
  const weeks = Math.floor((Math.max(...last.map(({ on }) => on)) - since) / 7);
  const passed = judged.passed && measured.length === last.length && held.torque?.passed !== false;
  return { side, weeks, over, lines, ...held, passed };
}

/** Of a timed task the quicker is the better side, so the ratio is turned round. */
function sidesOf(result: TestResult, side: "left" | "right", other: "left" | "right", better: "more" | "less") {
  const [injured, uninjured] = [result[side]!, result[other]!];
  return better === "more" ? { injured, uninjured } : { injured: uninjured, uninjured: injured };
}
