import type { Net } from "./net.ts";
import type { Priced } from "./prices.ts";
import type { Walk } from "./walk.ts";

/**
 * Takes out of the nets what no plan worth as much as the floor can hold: at the prices, the best session with an item
 * and the best of the other sessions together bound every plan that has it.
 *
 * @param walks standing at the prices; afterwards they stand at the same prices in what is left
 * @returns the prices with the bound that the smaller nets give
 */
export function dropHopeless(net: Net, dual: Priced, walks: readonly Walk[], floor: number): Priced {
  const most = new Float64Array(net.items);
  const best = [...dual.best];
  for (const [s, walk] of walks.entries()) {
    walk.with(dual.worth, most);
    const others = dual.bound - dual.best[s]!;
    for (const step of net.sessions[s]!.steps) step.items = step.items.filter((item) => others + most[item]! >= floor);
    walk.rebuild();
    best[s] = walk.best(dual.worth)?.worth ?? dual.best[s]!;
  }
  const lowered = dual.best.reduce((sum, worth, s) => sum + worth - best[s]!, 0);
  return { ...dual, best, bound: dual.bound - lowered };
}
