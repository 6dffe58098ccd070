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

const NOTHING: BlockSeconds = { setUp: 0, work: 0, rest: 0, changes: 0, assumed: [] };

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
  const timed = (slots: readonly { exercise: ExerciseId; dose: TimedSlot["dose"] }[]): readonly TimedSlot[] =>
    slots.flatMap((slot) => {
      const exercise = lookup(slot.exercise);
      if (exercise === undefined) unknown.push(slot.exercise);
      return exercise === undefined ? [] : [{ exercise, dose: slot.dose }];
    });
  const all = (block: BlockSeconds) => block.setUp + block.work + block.rest + block.changes;

  const warmUp = session.warmup.reduce((sum, item, index) => {
    const [slot] = timed([item]);
    if (slot === undefined) return sum;
    const block = blockSeconds("straight", [slot], undefined, 0);
    const changing = item.for === undefined ? 0 : slot.exercise.changeS;
    return (
      sum +
      (item.for === undefined
        ? all(block) + (index > 0 ? slot.exercise.moveS : 0)
        : all(block) - block.setUp + changing)
    );
  }, 0);

  let reached = false;
  let parts = NOTHING;
  for (const block of session.blocks) {
    const slots = timed(block.slots);
    const first = slots[0];
    if (first === undefined) continue;
    const took = blockSeconds(block.kind, slots, block.restS);
    parts = {
      setUp: parts.setUp + took.setUp,
      work: parts.work + took.work,
      rest: parts.rest + took.rest,
      changes: parts.changes + took.changes + (reached ? first.exercise.moveS : 0),
      assumed: [],
    };
    reached = true;
    for (const what of took.assumed) {
      const open = block.slots.find(
        (slot) => what === "rest" || slot.dose.sets.some((set) => set.amount.kind === "most"),
      );
      if (open !== undefined) assumed.push({ exercise: open.exercise, what });
    }
  }

  let conditioning = 0;
  let changes = parts.changes;
  for (const slot of timed(session.conditioning)) {
    conditioning += all(blockSeconds("straight", [slot], undefined, 0));
    if (reached) changes += slot.exercise.moveS;
    reached = true;
  }

  const typical = warmUp + parts.setUp + parts.work + parts.rest + changes + conditioning;
  return {
    parts: { warmUp, setUp: parts.setUp, work: parts.work, rest: parts.rest, changes, conditioning },
    low: lowerSeconds(typical),
    typical: seconds(typical),
    high: upperSeconds(typical),
    assumed,
    unknown,
  };
}
