import type { Dose, SetDose } from "../model/index.ts";
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
  let longest: number | undefined;
  for (const { dose } of slots) if (dose.restS !== undefined) longest = Math.max(longest ?? 0, dose.restS);
  return longest;
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
  const whole = { setUp: 0, work: 0, rest: 0, changes: 0, restAssumed: false, repsAssumed: false };
  if (kind === "straight") for (const slot of slots) addGroup(whole, [slot], restS, unsaidRestS);
  else addGroup(whole, slots, restS, unsaidRestS);
  for (let i = 1; i < slots.length; i++) whole.changes += slots[i]!.exercise.moveS;
  const { setUp, work, rest, changes, restAssumed, repsAssumed } = whole;
  return { setUp, work, rest, changes, assumed: assumedOf(restAssumed, repsAssumed) };
}

const NOTHING_ASSUMED: BlockSeconds["assumed"] = [];

function assumedOf(rest: boolean, reps: boolean): BlockSeconds["assumed"] {
  if (!rest && !reps) return NOTHING_ASSUMED;
  return [...(rest ? (["rest"] as const) : []), ...(reps ? (["reps"] as const) : [])];
}

/** A block while it is summed. */
interface Sum {
  setUp: number;
  work: number;
  rest: number;
  restAssumed: boolean;
  repsAssumed: boolean;
}

/** Adds slots that are done in turn; a straight slot is a group of its own. */
function addGroup(sum: Sum, group: readonly TimedSlot[], restS: number | undefined, unsaidRestS: number): void {
  let turns = 0;
  for (const { exercise, dose } of group) {
    turns = Math.max(turns, dose.sets.length);
    sum.setUp += exercise.setupS;
    sum.work += Math.max(0, dose.sets.length - 1) * exercise.changeS;
    const { seconds, said } = setsSeconds(exercise, dose);
    sum.work += seconds;
    sum.repsAssumed ||= !said;
  }
  if (turns < 2) return;
  const said = saidRest(group, restS);
  sum.restAssumed ||= said === undefined;
  sum.rest += (turns - 1) * (said ?? unsaidRestS);
}

/** All sets of a dose; sets that are one and the same are timed once. */
function setsSeconds(timing: Timing, dose: Dose): { seconds: number; said: boolean } {
  let [seconds, said] = [0, true];
  let before: { set: SetDose; took: ReturnType<typeof setSeconds> } | undefined;
  for (const set of dose.sets) {
    if (before?.set !== set) before = { set, took: setSeconds(timing, set, dose.tempo) };
    seconds += before.took.seconds;
    said &&= before.took.said;
  }
  return { seconds, said };
}
