import { type Dose, type Exercise, MUSCLES, type Muscle, type Pattern, type SetDose } from "../model/index.ts";
import { type Quarters, quarters } from "../units.ts";
import { askedInSet, askedReserve } from "./asked-amount.ts";

/** Fractional sets per muscle, in quarter-sets; a muscle that gets nothing is left out. */
export type MuscleQuarters = Readonly<Partial<Record<Muscle, Quarters>>>;

/** A set that ends with more than this in reserve is practice and not counted. Ours, no source. */
export const MOST_IN_RESERVE = 4;
/** A hold shorter than this counts half. Ours, no source. */
export const FULL_HOLD_S = 10;

const NEVER_COUNTED: readonly Pattern[] = ["mobility", "balance", "locomotion", "jump", "throw"];

const HALF = quarters(0.5);
const WHOLE = quarters(1);

function counts(exercise: Exercise, set: SetDose): boolean {
  if (NEVER_COUNTED.includes(exercise.pattern)) return false;
  const reserve = askedReserve(set);
  return reserve === undefined || reserve <= MOST_IN_RESERVE;
}

/** What a set counts for the muscles that drive the movement and for those that help, in quarter-sets. */
interface Weight {
  readonly direct: number;
  readonly helping: number;
}

const NOTHING: Weight = { direct: 0, helping: 0 };
const BALLISTIC: Weight = { direct: HALF, helping: 0 };
const SHORT_HOLD: Weight = { direct: HALF, helping: HALF };
const FULL: Weight = { direct: WHOLE, helping: HALF };

function weightOf(exercise: Exercise, set: SetDose): Weight {
  if (!counts(exercise, set)) return NOTHING;
  if (exercise.mode === "ballistic") return BALLISTIC;
  return set.amount.kind === "hold" && !(askedInSet(set).count >= FULL_HOLD_S) ? SHORT_HOLD : FULL;
}

/**
 * What one working set adds to each muscle's weekly count.
 *
 *   1 for a muscle that drives the movement, 0.5 for one that helps
 *   ballistic work ends far from the limit and is halved: 0.5 and nothing
 *   a hold under 10 s counts 0.5 for the muscle it is for
 *   mobility, balance, locomotion, jumps, throws and sets with more than 4 in reserve count nothing
 *
 * A set done left and right is one set. A reserve that is not said counts as hard, and of a range the middle is taken.
 * The half is bookkeeping that fitted best over many studies, not a constant of physiology.
 *
 * @returns quarter-sets, whole
 * @source pelland2024
 * @source ours
 * @example
 * setQuarters(frontPlank, holdOf30Seconds) //=> { "front trunk": 4, "side trunk": 2 }
 */
export function setQuarters(exercise: Exercise, set: SetDose): MuscleQuarters {
  return slotQuarters(exercise, { sets: [set] });
}

/** @returns true when a set is a whole direct set for the muscles that drive the movement */
export function isDirectSet(exercise: Exercise, set: SetDose): boolean {
  return weightOf(exercise, set).direct === WHOLE;
}

/** @returns the sum of two counts */
export function addQuarters(a: MuscleQuarters, b: MuscleQuarters): MuscleQuarters {
  const sum: Partial<Record<Muscle, Quarters>> = { ...a };
  for (const muscle of MUSCLES) {
    const more = b[muscle];
    if (more !== undefined) sum[muscle] = ((sum[muscle] ?? 0) + more) as Quarters;
  }
  return sum;
}

/**
 * What all sets of one slot add to each muscle's weekly count.
 *
 * @param into a count to add to; by default an empty one
 * @returns quarter-sets, whole
 * @example
 * slotQuarters(dumbbellCurl, threeSetsOfTen) //=> { biceps: 12 }
 */
export function slotQuarters(
  exercise: Exercise,
  dose: Dose,
  into: Partial<Record<Muscle, Quarters>> = {},
): MuscleQuarters {
  let direct = 0;
  let helping = 0;
  for (const set of dose.sets) {
    const weight = weightOf(exercise, set);
    direct += weight.direct;
    helping += weight.helping;
  }
  for (const muscle in exercise.muscles) {
    const name = muscle as Muscle;
    const more = exercise.muscles[name] === 1 ? direct : helping;
    if (more > 0) into[name] = ((into[name] ?? 0) + more) as Quarters;
  }
  return into;
}
