import type { ExerciseId } from "../model/index.ts";
import { type Seconds, seconds } from "../units.ts";
import type { AskedSession } from "./asked-session.ts";
import { type BlockSeconds, blockSeconds, type TimedSlot } from "./block-seconds.ts";
import type { Timing } from "./set-seconds.ts";

export interface SessionSeconds {
  readonly parts: {
    readonly warmUp: number;
    readonly setUp: number;
    readonly work: number;
    readonly rest: number;
    readonly changes: number;
    readonly conditioning: number;
  };
  readonly low: Seconds;
  readonly typical: Seconds;
  readonly high: Seconds;
  /** Exercises whose rest or repetitions are not said, so that a usual value was taken. */
  readonly assumed: readonly { readonly exercise: ExerciseId; readonly what: "rest" | "reps" }[];
  /** Exercises that the catalogue does not know: their time is missing from every figure. */
  readonly unknown: readonly ExerciseId[];
}

/** @returns a tenth less than the typical length, whole seconds, rounded down. Ours, no source. */
export function lowerSeconds(typical: number): Seconds {
  return seconds(Math.floor((typical * 9) / 10));
}

/**
 * The longest a session should be planned to take: a quarter more than typical, rounded up to 5 s.
 *
 * @source ours
 * @example
 * upperSeconds(1481) //=> 1855
 */
export function upperSeconds(typical: number): Seconds {
  return seconds(Math.ceil(typical / 4) * 5);
}

type Lookup = (id: ExerciseId) => Timing | undefined;

/** A movement whose timing is known; one that is not is put down as unknown. */
function timed(slots: readonly Asking[], lookup: Lookup, unknown: ExerciseId[]): readonly TimedSlot[] {
  const known: TimedSlot[] = [];
  for (const { exercise: id, dose } of slots) {
    const exercise = lookup(id);
    if (exercise === undefined) unknown.push(id);
    else known.push({ exercise, dose });
  }
  return known;
}

type Asking = { readonly exercise: ExerciseId; readonly dose: TimedSlot["dose"] };

function lengthOf(block: BlockSeconds): number {
  return block.setUp + block.work + block.rest + block.changes;
}

/** Seconds before the work. Lighter sets before a slot need no set-up, only a change of plates before each. */
function warmUpSeconds(items: AskedSession["warmup"], lookup: Lookup, unknown: ExerciseId[]): number {
  let sum = 0;
  items.forEach((item, index) => {
    const [slot] = timed([item], lookup, unknown);
    if (slot === undefined) return;
    const block = blockSeconds("straight", [slot], undefined, 0);
    sum += lengthOf(block);
    if (item.for !== undefined) sum += slot.exercise.changeS - block.setUp;
    else if (index > 0) sum += slot.exercise.moveS;
  });
  return sum;
}

/** The slot whose dose leaves open what had to be taken. */
function openSlot(slots: readonly Asking[], what: "rest" | "reps"): Asking | undefined {
  return slots.find(({ dose }) => what === "rest" || dose.sets.some((set) => set.amount.kind === "most"));
}

/**
 * How long a session takes, by part, with a range: no study of set-up and changing times was found, so the typical
 * length stands between a tenth less and a quarter more.
 *
 *   warm-up + sum over blocks of (set-up + sets + rest) + moves between stations + conditioning
 *
 * The way to the first station belongs to the warm-up. Lighter sets before a slot are done on that slot's station and
 * are not set up apart. A rest that is not said is 90 s between working sets, and none in warm-up and conditioning.
 *
 * @param lookup timing of an exercise, undefined when it is not known
 * @returns whole seconds; `unknown` lists what could not be counted
 * @source ours
 */
export function sessionSeconds(session: AskedSession, lookup: (id: ExerciseId) => Timing | undefined): SessionSeconds {
  const unknown: ExerciseId[] = [];
  const assumed: { exercise: ExerciseId; what: "rest" | "reps" }[] = [];
  const warmUp = warmUpSeconds(session.warmup, lookup, unknown);
  const parts = { setUp: 0, work: 0, rest: 0, changes: 0 };
  let reached = false;
  for (const block of session.blocks) {
    const slots = timed(block.slots, lookup, unknown);
    const first = slots[0];
    if (first === undefined) continue;
    const took = blockSeconds(block.kind, slots, block.restS);
    parts.setUp += took.setUp;
    parts.work += took.work;
    parts.rest += took.rest;
    parts.changes += took.changes + (reached ? first.exercise.moveS : 0);
    reached = true;
    for (const what of took.assumed) {
      const open = openSlot(block.slots, what);
      if (open !== undefined) assumed.push({ exercise: open.exercise, what });
    }
  }
  let conditioning = 0;
  for (const slot of timed(session.conditioning, lookup, unknown)) {
    conditioning += lengthOf(blockSeconds("straight", [slot], undefined, 0));
    if (reached) parts.changes += slot.exercise.moveS;
    reached = true;
  }
  const typical = warmUp + parts.setUp + parts.work + parts.rest + parts.changes + conditioning;
  return {
    parts: { warmUp, ...parts, conditioning },
    low: lowerSeconds(typical),
    typical: seconds(typical),
    high: upperSeconds(typical),
    assumed,
    unknown,
  };
}
