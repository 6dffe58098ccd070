import type { KnownCapacity } from "./capacity.ts";
import { normalShare, Z80 } from "./normal.ts";
import { CURVE } from "./readings.ts";
import { zoneOf } from "./set-fact.ts";
import { DAY_SD, SET_SD } from "./track.ts";

/**
 * How likely one more set, with its load, repetitions and reserve known, settles whether so many repetitions with a load
 * may be asked: sure from 90 % on, not from 50 % down.
 *
 *   before: level ~ N(m, v); the set has noise n, so v' = v n / (v + n) and the new level ~ N(m, v − v')
 *   settled when it comes to lie above what is needed + 1.28 × √v', or under it
 *
 * @returns 0 to 1; 0 where it is settled already
 * @source kalman1960, ours
 */
export function settledBy(
  capacity: KnownCapacity,
  { kg, reps, reserve }: { readonly kg: number; readonly reps: number; readonly reserve: number },
): number {
  const zone = zoneOf(reps + reserve);
  const state = capacity.zones[zone];
  if (state === undefined) return 0;
  const needed = Math.log(kg * (1 + (reps + reserve) / CURVE));
  const noise = DAY_SD[zone] ** 2 + SET_SD[zone] ** 2;
  const before = state.missed ** 2 * state.levelVar + state.doubt;
  const after = (before * noise) / (before + noise);
  const isSettled = state.level <= needed || state.level >= needed + Z80 * Math.sqrt(before);
  if (isSettled) return 0;
  const moves = Math.sqrt(before - after);
  const up = 1 - normalShare((needed + Z80 * Math.sqrt(after) - state.level) / moves);
  const down = normalShare((needed - state.level) / moves);
  return Math.min(1, up + down);
}
