import { type Configuration, configurationOf, keyOf } from "./configuration.ts";
import type { Goal } from "./goal.ts";
import type { Net } from "./net.ts";
import type { Budget } from "./plan.ts";
import type { Priced } from "./prices.ts";
import type { Walk } from "./walk.ts";

/**
 * Every configuration of a session that lacks at most `gap` to the best, by depth-first search under the bound of the
 * walk; of those that add the same to every row only the best, and of equals the first in the stated order. The rows see
 * nothing else, so nothing that could be part of the best plan is lost.
 *
 * @param enough stop at so many
 * @returns undefined when the budget ran out
 */
export function listSession(
  net: Net,
  goal: Goal,
  dual: Priced,
  walk: Walk,
  session: number,
  gap: number,
  budget: Budget,
  enough = Number.POSITIVE_INFINITY,
): readonly Configuration[] | undefined {
  const { steps, end, capacity } = net.sessions[session]!;
  const limit = net.task.stations;
  const leaving = Array.from({ length: end + 1 }, (): { to: number; items: number[] }[] => []);
  for (const { from, to, items } of steps) leaving[from]!.push({ to, items: [...items].sort((a, b) => a - b) });
  const needed = dual.best[session]! - gap;
  const kept = new Map<string, Configuration>();
  const picked: number[] = [];
  const taken = new Map<number, number>();
  const stations = new Map<number, number>();

  function may(item: number): boolean {
    for (const thing of net.taken[item]!) if ((taken.get(thing) ?? 0) >= net.atMost[thing]!) return false;
    if (limit === undefined) return true;
    let more = 0;
    for (const station of net.stations[item]!) if ((stations.get(station) ?? 0) === 0) more++;
    let there = 0;
    if (more > 0) for (const count of stations.values()) if (count > 0) there++;
    return more === 0 || there + more <= limit;
  }

  function count(item: number, by: 1 | -1): void {
    for (const thing of net.taken[item]!) taken.set(thing, (taken.get(thing) ?? 0) + by);
    for (const station of net.stations[item]!) stations.set(station, (stations.get(station) ?? 0) + by);
  }

  function go(node: number, state: number, worth: number, left: number): boolean {
    if (node === end) {
      const found = configurationOf(net, goal, [...picked]);
      const key = keyOf(found.must, found.sums);
      const known = kept.get(key);
      if (known === undefined || found.value > known.value) kept.set(key, found);
      return kept.size < enough;
    }
    for (const { to, items } of leaving[node]!) {
      for (const item of items) {
        const after = left - net.time[item]!;
        if (after < 0) continue;
        const next = walk.next(state, item);
        if (next < 0) continue;
        const total = worth + dual.worth[item]!;
        if (!(total + walk.ahead(to, next, after) >= needed) || !may(item)) continue;
        if (--budget.left < 0) return false;
        count(item, 1);
        picked.push(item);
        const finished = go(to, next, total, after);
        picked.pop();
        count(item, -1);
        if (!finished) return false;
      }
    }
    return true;
  }

  return go(0, 0, 0, capacity) || kept.size >= enough ? [...kept.values()] : undefined;
}
