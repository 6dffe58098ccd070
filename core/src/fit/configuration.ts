import type { Goal } from "./goal.ts";
import type { Net } from "./net.ts";

/** Items of one session or block, in the order of the steps, and what they come to. */
export interface Configuration {
  readonly items: readonly number[];
  readonly value: number;
  readonly must: number;
  readonly time: number;
  /** What they add to each row. */
  readonly sums: Int32Array;
}

/** Items of every session: a whole plan. */
export type Sessions = readonly (readonly number[])[];

export function configurationOf(net: Net, goal: Goal, items: readonly number[]): Configuration {
  const sums = new Int32Array(goal.rows.length);
  let [value, must, time] = [0, 0, 0];
  for (const item of items) {
    value += goal.value[item]!;
    must += net.must[item]!;
    time += net.time[item]!;
    for (let k = net.rows[item]!; k < net.rows[item + 1]!; k++) sums[net.row[k]!]! += net.amount[k]!;
  }
  return { items, value, must, time, sums };
}

/** A text that is the same for configurations between which neither rows nor must points can tell. */
export function keyOf(must: number, sums: Int32Array): string {
  // Sums fit 16 bits: 14 sessions of 20 slots of 20 sets are 22,400 quarter-sets at most.
  let key = String.fromCharCode(must);
  for (let r = 0; r < sums.length; r++) key += String.fromCharCode(sums[r]! + 32_768);
  return key;
}

/** Items are numbered by block, way, step and option, so that the stated order is the order of numbers. */
export function standsBefore(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((item, index) => item !== b[index]);
  return at >= 0 && a[at]! < b[at]!;
}

/** Whether a session takes nothing more often than it is there, and keeps to its stations; time is not looked at. */
export function isReal(net: Net, items: readonly number[]): boolean {
  const counts = new Map<number, number>();
  const stations = new Set<number>();
  for (const item of items) {
    for (const thing of net.taken[item]!) {
      const count = (counts.get(thing) ?? 0) + 1;
      if (count > net.atMost[thing]!) return false;
      counts.set(thing, count);
    }
    for (const station of net.stations[item]!) stations.add(station);
  }
  return net.task.stations === undefined || stations.size <= net.task.stations;
}
