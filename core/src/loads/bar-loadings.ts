import type { Place } from "../model/index.ts";
import { type Load, type Mass, massOf } from "../units.ts";
import { plateSums } from "./plate-sums.ts";
import { sayMass } from "./say-mass.ts";

/** A bar made ready: the same plates on both sides. */
export interface BarLoading {
  readonly total: Load;
  /** Plates of one side, largest first. */
  readonly side: readonly Load[];
}

/**
 * Every total that can be loaded on a bar, with the plates that make it.
 *
 *   total = bar + collars + 2 × the plates of one side, for every choice of pairs that are owned
 *
 * Of several ways to one total the one with fewest plates is kept, then the one with the larger plates. See plateSums
 * for the search and its bounds.
 *
 * @param bar the empty bar
 * @param collars both collars together, counted also on the empty bar; nothing when undefined
 * @param plates as pairs
 * @returns rising totals, in the bar's unit where it can say them (sayMass)
 * @source ours
 * @example
 * barLoadings({ value: 20, unit: "kg" }, undefined, [{ load: { value: 10, unit: "kg" }, pairs: 1 }])
 * //=> [{ total: 20 kg, side: [] }, { total: 40 kg, side: [10 kg] }]
 */
export function barLoadings(
  bar: Load,
  collars: Load | undefined,
  plates: NonNullable<Place["plates"]>,
): readonly BarLoading[] {
  const empty = massOf(bar) + (collars === undefined ? 0 : massOf(collars));
  const found = new Map<Mass, BarLoading>();
  for (const side of plateSums(plates.map(({ load, pairs }) => ({ load, count: pairs })))) {
    const total = sayMass((empty + 2 * side.mass) as Mass, bar.unit);
    const rival = found.get(massOf(total));
    if (rival === undefined || side.plates.length < rival.side.length) {
      found.set(massOf(total), { total, side: side.plates });
    }
  }
  return [...found.values()];
}

/**
 * The totals that can be loaded on a bar, rising. See barLoadings.
 *
 * @source ours
 * @example
 * reachableTotals({ value: 20, unit: "kg" }, undefined, []) //=> [{ value: 20, unit: "kg" }]
 */
export function reachableTotals(
  bar: Load,
  collars: Load | undefined,
  plates: NonNullable<Place["plates"]>,
): readonly Load[] {
  return barLoadings(bar, collars, plates).map((loading) => loading.total);
}
