import type { Dose, SetDose } from "../model/index.ts";
import { percentToAllow } from "../tables/index.ts";

/** Repetitions in reserve where the coach said nothing of effort. Ours, no source. */
const UNSAID_RESERVE = 2;

/** What a dose asks of the load. */
export interface Asked {
  /** Most repetitions to failure over the sets: asked, and those to be left in reserve. */
  readonly reps?: number;
  /** Least share of the 1RM over the sets, whole per cent: one load must do for all of them. */
  readonly percent?: number;
}

/**
 * What a dose asks of the load: repetitions to failure, and the share of the 1RM at which those are possible by the
 * book's table, or that the coach wrote.
 *
 * @returns no reps for holds, distances and times; no percent where nothing says one, or beyond the table's last row
 * @source nscaEssentialsTable
 * @example
 * askedOf(threeSetsOfEightWithTwoInReserve) //=> { reps: 10, percent: 75 }
 */
export function askedOf(dose: Dose): Asked {
  const reps = dose.sets.flatMap((set) => repsToFailure(set) ?? []);
  const shares = dose.sets.flatMap((set) => {
    const toFailure = repsToFailure(set);
    const share = set.percent ?? (toFailure === undefined ? undefined : percentToAllow(toFailure));
    return set.percent === undefined && toFailure === undefined ? [] : [share];
  });
  const known = shares.filter((share) => share !== undefined);
  return {
    ...(reps.length === 0 ? {} : { reps: Math.max(...reps) }),
    ...(known.length === 0 || known.length < shares.length ? {} : { percent: Math.min(...known) }),
  };
}

function repsToFailure({ amount, reserve }: SetDose): number | undefined {
  return amount.kind === "reps" ? amount.span.to + Math.ceil(reserve?.to ?? UNSAID_RESERVE) : undefined;
}

/**
 * Fewest repetitions to failure with which every set can be begun: the low end of its range, and those to be left.
 *
 * @returns undefined when no set counts repetitions
 * @example leastAsked(threeSetsOfEightToTwelveWithThreeInReserve) //=> 11
 */
export function leastAsked(dose: Dose): number | undefined {
  const least = dose.sets.flatMap(({ amount, reserve }) =>
    amount.kind === "reps" ? [amount.span.from + Math.floor(reserve?.from ?? UNSAID_RESERVE)] : [],
  );
  return least.length === 0 ? undefined : Math.max(...least);
}
