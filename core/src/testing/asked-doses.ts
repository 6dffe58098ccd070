import { day } from "../day.ts";
import type { Dose, Exercise, SetDose, Statement } from "../model/index.ts";
import { madeUpPerson } from "./made-up-person.ts";

/** The five doses of the guide's own check of cautions: share and repetitions left, or seconds; effort of conditioning. */
export const CHECK_DOSES = {
  light: { percent: 45, left: 5, seconds: 10, effort: "easy" },
  untrained: { percent: 60, left: 4, seconds: 15, effort: "steady" },
  middle: { percent: 65, left: 3, seconds: 25, effort: "steady" },
  trained: { percent: 82, left: 2, seconds: 45, effort: "hard" },
  heavy: { percent: 90, left: 1, seconds: 60, effort: "hard" },
} as const;
export type CheckDose = keyof typeof CHECK_DOSES;

/** @returns an exercise asked for at one of those doses, in the way that it is counted */
export function askedAt(
  exercise: Exercise,
  named: CheckDose,
): { dose: Dose; effort?: (typeof CHECK_DOSES)[CheckDose]["effort"] } {
  const { percent, left, seconds, effort } = CHECK_DOSES[named];
  const each = { eachSide: exercise.eachSide };
  const span = (value: number) => ({ from: value, to: value });
  if (exercise.amounts === "hold") {
    const { from, to } = exercise.hold!;
    return {
      dose: { sets: [{ ...each, amount: { kind: "hold", span: span(Math.max(from, Math.min(to, seconds))) } }] },
    };
  }
  if (exercise.mode === "cyclic") {
    const kind = exercise.amounts === "metres" ? "metres" : "time";
    return { dose: { sets: [{ ...each, amount: { kind, span: span(kind === "time" ? 300 : 100) } }] }, effort };
  }
  const effortOf = { ...each, percent, reserve: span(left) };
  const set: SetDose =
    exercise.amounts === "reps"
      ? { ...effortOf, amount: { kind: "reps", span: span(8) } }
      : { ...effortOf, amount: { kind: exercise.amounts, span: span(20) } };
  return { dose: { sets: [set] } };
}

/** @returns somebody who states these things, to be asked again in a year */
export function stating(...statements: readonly Statement[]) {
  const cautions = statements.map((statement) => {
    return { statement, from: day("2027-01-01"), recheck: day("2028-01-01"), who: "them" };
  });
  return madeUpPerson({ cautions });
}
