import type { Dose } from "../model/index.ts";
import type { AskedBlock } from "./asked-session.ts";
import { setSeconds, type Timing } from "./set-seconds.ts";

/** Rest between sets when the coach does not say one. Practice, no source. */
export const REST_WHEN_UNSAID_S = 90;

export interface TimedSlot {
  readonly exercise: Timing;
  readonly dose: Dose;
}

export interface BlockSeconds {
  readonly setUp: number;
  readonly work: number;
  readonly rest: number;
  /** Walking from one station of the block to the next, the first time. */
  readonly changes: number;
  /** What had to be taken because the dose does not say it. */
  readonly assumed: readonly ("rest" | "reps")[];
}

/** Rest after a turn: the block's own, else the longest that a slot in it asks for, else unknown. */
function saidRest(slots: readonly TimedSlot[], restS: number | undefined): number | undefined {
  if (restS !== undefined) return restS;
  const said = slots.flatMap((slot) => slot.dose.restS ?? []);
  return said.length === 0 ? undefined : Math.max(...said);
}

/**
 * Seconds that a block takes.
 *
 *   set-up + sets + changes of plates between sets + rest between turns + moves between stations
 *
 * Straight sets rest after every set but the last. A pair or round takes one set of each in turn and rests after every
 * turn but the last; both stations are set up once and kept. Seconds to reach the block itself belong to the session.
 *
 * @param unsaidRestS rest to take, and say so, when neither block nor dose says one
 * @returns whole seconds by part
 * @source ours
 * @example
 * blockSeconds("straight", [{ exercise: barbellSquat, dose: threeSetsOfEight }]) // 3 x 8 x 4 s + 2 x 120 s + 120 s
 */
export function blockSeconds(
  kind: AskedBlock["kind"],
  slots: readonly TimedSlot[],
  restS?: number,
  unsaidRestS: number = REST_WHEN_UNSAID_S,
): BlockSeconds {
  const groups = kind === "straight" ? slots.map((slot) => [slot]) : [slots];
  const assumed = new Set<"rest" | "reps">();
  let [setUp, work, rest] = [0, 0, 0];
  for (const group of groups) {
    const turns = Math.max(0, ...group.map((slot) => slot.dose.sets.length));
    const said = saidRest(group, restS);
    if (said === undefined && turns > 1) assumed.add("rest");
    rest += Math.max(0, turns - 1) * (said ?? unsaidRestS);
    for (const { exercise, dose } of group) {
      setUp += exercise.setupS;
      work += Math.max(0, dose.sets.length - 1) * exercise.changeS;
      for (const set of dose.sets) {
        const took = setSeconds(exercise, set, dose.tempo);
        work += took.seconds;
        if (!took.said) assumed.add("reps");
      }
    }
  }
  const changes = slots.slice(1).reduce((sum, slot) => sum + slot.exercise.moveS, 0);
  return { setUp, work, rest, changes, assumed: [...assumed] };
}
