import type { Dose, SetDose } from "../model/index.ts";
import { repsBracket } from "../tables/index.ts";

/**
 * How far beyond the book's repetitions people have gone: 26 at 70 % in the squat where the book has 11, means of 20 at
 * 80 % and 11 at 90 % in runners' leg press where it has 8 and 4. Ours, from those figures.
 */
export const WIDEST_TIMES = 2.5;

/** A set that leaves fewer than this takes from the next one. Ours, no source. */
const FRESH_RESERVE = 2;
/** Repetitions lost after such a set, in quarters: half a one, or a quarter after a long rest. Ours, no source. */
const LOST = 2;
const LOST_AFTER_LONG_REST = 1;
const LONG_REST_S = 180;

/** One set whose share of the 1RM is said, against what the book gives at that share. */
export interface SharedSet {
  /** Position of the set in the dose, 0 = first. */
  readonly set: number;
  readonly percent: number;
  /** Fewest repetitions asked and fewest in reserve, added. */
  readonly needed: number;
  /** Repetitions that the book gives when fresh: where the share lies between two rows, the larger. */
  readonly fresh: number;
  /** Repetitions left for this set after the sets before it, in quarters of one. */
  readonly possible: number;
}

function neededIn(set: SetDose): number | undefined {
  const reserve = set.reserve?.from ?? 0;
  if (set.amount.kind === "reps") return set.amount.span.from + reserve;
  return set.amount.kind === "most" && set.amount.least !== undefined ? set.amount.least + reserve : undefined;
}

/**
 * Each set of a dose whose share of the 1RM and repetitions are said, against what can be expected.
 *
 *   possible = the book's repetitions at that share
 *            - 0.5 for each set before it that left fewer than 2 (0.25 when the rest was 3 min or more)
 *
 * Below the book's lowest row (65 %) nothing is said of a set. Short bouts inside a set are left out, as the rest
 * between them gives back what the book does not know.
 *
 * @source nscaEssentialsTable
 * @source ours
 * @example
 * sharedSets(fiveSetsOfFiveAt85).map((set) => set.possible) //=> [6, 5.5, 5, 4.5, 4]
 */
export function sharedSets(dose: Dose): readonly SharedSet[] {
  const lost = (dose.restS ?? 0) >= LONG_REST_S ? LOST_AFTER_LONG_REST : LOST;
  const found: SharedSet[] = [];
  let lostQuarters = 0;
  dose.sets.forEach((set, index) => {
    const needed = neededIn(set);
    if (set.percent === undefined || needed === undefined) return;
    const fresh = repsBracket(set.percent).most;
    if (fresh === undefined) return;
    const possible = fresh - lostQuarters / 4;
    found.push({ set: index, percent: set.percent, needed, fresh, possible });
    const done = needed - (set.reserve?.from ?? 0);
    if (!(possible - done >= FRESH_RESERVE)) lostQuarters += lost;
  });
  return found;
}

/** @returns the sets of a dose that ask for more than can be expected */
export function unlikelySets(dose: Dose): readonly SharedSet[] {
  return sharedSets(dose).filter((set) => !(set.needed <= set.possible));
}
