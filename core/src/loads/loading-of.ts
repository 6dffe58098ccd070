import type { Place } from "../model/index.ts";
import { type Load, type Mass, massOf } from "../units.ts";
import { type BarLoading, barLoadings } from "./bar-loadings.ts";

type Barbells = Pick<Place, "bars" | "collars" | "plates">;

/** Which bar to take and what to put on each side of it, largest plate first. */
export interface BarAndSide {
  readonly bar: Load;
  readonly side: readonly Load[];
}

/** Places do not change while they are known, and a search of their plates is worth keeping. */
const searched = new WeakMap<Barbells, ReadonlyMap<Mass, BarAndSide & BarLoading>>();

/**
 * Every total that any bar of a place can be loaded to, by exact mass, rising. Of two bars the one that needs fewer
 * plates is taken, then the heavier bar.
 *
 * @returns empty when the place names no bar
 * @example
 * barTotals({ bars: [{ value: 15, unit: "kg" }] }).size //=> 1
 */
export function barTotals(place: Barbells): ReadonlyMap<Mass, BarAndSide & BarLoading> {
  const known = searched.get(place);
  if (known !== undefined) return known;
  const found = new Map<Mass, BarAndSide & BarLoading>();
  for (const bar of [...(place.bars ?? [])].sort((a, b) => massOf(b) - massOf(a))) {
    for (const loading of barLoadings(bar, place.collars, place.plates ?? [])) {
      const mass = massOf(loading.total);
      const rival = found.get(mass);
      if (rival === undefined || loading.side.length < rival.side.length) found.set(mass, { bar, ...loading });
    }
  }
  const rising = new Map([...found].sort(([a], [b]) => a - b));
  searched.set(place, rising);
  return rising;
}

/**
 * Which bar and plates make a total at a place.
 *
 * @param total the whole bar, with collars
 * @returns the bar and the plates of one side, fewest first and then the larger; undefined when it cannot be loaded.
 * Sides are always equal
 * @source ours
 * @example
 * loadingOf({ value: 60, unit: "kg" }, garage) //=> { bar: 20 kg, side: [10 kg, 10 kg] }
 */
export function loadingOf(total: Load, place: Barbells): BarAndSide | undefined {
  const found = barTotals(place).get(massOf(total));
  return found === undefined ? undefined : { bar: found.bar, side: found.side };
}
