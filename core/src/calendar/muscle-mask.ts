import { MUSCLES, type Muscle } from "../model/index.ts";

/**
 * @returns a bit mask: bit n is row n of MUSCLES
 * @example
 * maskOf(["chest", "side shoulder"]) //=> 5
 */
export function maskOf(muscles: Iterable<Muscle>): number {
  let mask = 0;
  for (const muscle of muscles) mask |= 1 << MUSCLES.indexOf(muscle);
  return mask;
}

/** @example musclesIn(5) //=> ["chest", "side shoulder"] */
export function musclesIn(mask: number): Muscle[] {
  return MUSCLES.filter((_, row) => (mask >> row) & 1);
}

/** @returns how many muscles two masks share */
export function sharedCount(a: number, b: number): number {
  let count = 0;
  for (let both = a & b; both !== 0; both &= both - 1) count++;
  return count;
}
