import type { Catalogue, Dose, Pattern } from "../model/index.ts";
import { type Quarters, quarters } from "../units.ts";
import { askedReserve } from "./asked-amount.ts";
import { type AskedSession, workOf } from "./asked-session.ts";
import { MOST_IN_RESERVE } from "./set-quarters.ts";

/** Week totals of hard sets, shown as numbers. None of them is a fault: parity is custom, no trial was found. */
export interface Balance {
  readonly squatAndSingleLeg: Quarters;
  readonly hingeAndBridge: Quarters;
  readonly push: Quarters;
  readonly pull: Quarters;
  /** Which of the four ways to load the trunk are trained: against arching, bending, turning, and turning itself. */
  readonly trunkDirections: readonly Pattern[];
}

const GROUPS = {
  squatAndSingleLeg: ["squat", "single leg"],
  hingeAndBridge: ["hinge", "bridge"],
  push: ["horizontal push", "vertical push"],
  pull: ["horizontal pull", "vertical pull"],
} as const satisfies Record<string, readonly Pattern[]>;

export const TRUNK_DIRECTIONS: readonly Pattern[] = [
  "anti-extension",
  "anti-rotation",
  "anti-lateral flexion",
  "rotation",
];

function hardSets(dose: Dose): number {
  let hard = 0;
  for (const set of dose.sets) {
    const reserve = askedReserve(set);
    if (reserve === undefined || reserve <= MOST_IN_RESERVE) hard++;
  }
  return hard;
}

/**
 * How a week divides between opposite movements. A set counts 1 for its movement's pattern and 0.5 for the pattern it
 * also counts for. Sets with more than 4 in reserve are left out.
 *
 * @source ours
 */
export function balance(sessions: readonly AskedSession[], catalogue: Catalogue): Balance {
  const total = new Map<Pattern, number>();
  for (const slot of sessions.flatMap(workOf)) {
    const exercise = catalogue.exercises.get(slot.exercise);
    if (exercise === undefined) continue;
    const sets = hardSets(slot.dose);
    total.set(exercise.pattern, (total.get(exercise.pattern) ?? 0) + sets);
    const also = exercise.alsoCounts;
    if (also !== undefined) total.set(also, (total.get(also) ?? 0) + sets / 2);
  }
  const sum = (group: keyof typeof GROUPS) =>
    quarters(GROUPS[group].reduce((all, pattern) => all + (total.get(pattern) ?? 0), 0));
  return {
    squatAndSingleLeg: sum("squatAndSingleLeg"),
    hingeAndBridge: sum("hingeAndBridge"),
    push: sum("push"),
    pull: sum("pull"),
    trunkDirections: TRUNK_DIRECTIONS.filter((pattern) => (total.get(pattern) ?? 0) > 0),
  };
}
