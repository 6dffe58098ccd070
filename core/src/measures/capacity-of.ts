import { MAX_REPS, oneRepMax } from "../equations/index.ts";
import type { Exercise, Json, Reason } from "../model/index.ts";
import { asLoad, type Load, type Mass, massOf } from "../units.ts";
import { type DoneSet, leastOf, type SlotSession } from "./slot-history.ts";

/** Why nobody can say what somebody can lift: what is missing, in the order in which a set is asked about it. */
export const CAPACITY_CODES = [
  /** no data: moved by the body, a band, or with help, so its number is no mass on one scale */
  "capacity/no-scale",
  /** weeks */
  "capacity/not-recorded",
  /** sets */
  "capacity/load-unknown",
  /** sets */
  "capacity/reps-unsaid",
  /** sets */
  "capacity/reserve-unsaid",
  /** most: repetitions, with those in reserve, up to which there is a figure */
  "capacity/over-ten",
] as const;
export type CapacityCode = (typeof CAPACITY_CODES)[number];

/** What can be lifted once, in the meaning of the exercise, with an 80 % interval; or what is missing. */
export type Capacity =
  | {
      readonly kind: "known";
      readonly value: Load;
      readonly low: Load;
      readonly high: Load;
      /** How many sessions it rests on. */
      readonly sessions: number;
    }
  | { readonly kind: "unknown"; readonly missing: Reason };

/** Only so many of the latest sessions, none of them older, so that a beginner's gains do not lie far behind. Ours. */
const MOST_SESSIONS = 5;
const RECENT_WEEKS = 6;
const WEEK_MS = 7 * 86_400_000;
/** Spread of one maximum from test to test, as a share of it: the median of 32 studies. Source: grgic2020. */
const USUAL_SPREAD = 0.042;
/** With few sessions the usual spread weighs as much as that of so many. Ours, no source. */
const USUAL_WEIGHT = 4;
/** One-sided 90 % points of Student's t for 4 to 8 degrees of freedom. Source: studentTable. */
const T90 = [1.533, 1.476, 1.44, 1.415, 1.397] as const;

/**
 * What somebody can lift once now: the mean of what their latest sessions show, and where it lies with 80 % chance.
 *
 *   of each session, the largest 1RM over its sets, by the middle one of seven equations, at repetitions done plus those
 *   in reserve
 *   value ± t × s / √sessions; s² joins the spread between sessions and the usual one, weighed as 4 sessions
 *
 * A set tells something only when its load is known, its repetitions were read and its reserve was said (or as many as
 * possible were asked), and both together are 10 at most. How far this person lies from the equations is not in the
 * interval (see ONE_REP_MAX_TRIALS).
 *
 * @param history of this exercise, in the order in which it was recorded
 * @param now epoch milliseconds; what is more than 6 weeks older is left out
 * @returns unknown, with what is missing, when no set tells anything
 * @source grgic2020, studentTable, ours
 */
export function capacityOf(exercise: Exercise, history: readonly SlotSession[], now: number): Capacity {
  if (!["total", "per hand", "one implement", "stack"].includes(exercise.loadMeaning))
    return unknown("capacity/no-scale");
  const recent = history.filter(({ at, sets }) => sets.length > 0 && now - at <= RECENT_WEEKS * WEEK_MS);
  if (recent.length === 0) return unknown("capacity/not-recorded", { weeks: RECENT_WEEKS });
  const told = recent.flatMap(({ sets }) => {
    const each = sets.flatMap((set) => maximumBy(set) ?? []);
    return each.length === 0 ? [] : [Math.max(...each)];
  });
  const figures = told.slice(-MOST_SESSIONS);
  if (figures.length === 0) return missingFrom(recent.flatMap(({ sets }) => sets));
  const unit = recent.flatMap(({ sets }) => sets).findLast(({ lifted }) => lifted !== undefined)!.lifted!.unit;
  const count = figures.length;
  const mean = figures.reduce((sum, each) => sum + each, 0) / count;
  const between = figures.reduce((sum, each) => sum + (each - mean) ** 2, 0);
  const spread = Math.sqrt((USUAL_WEIGHT * (USUAL_SPREAD * mean) ** 2 + between) / (USUAL_WEIGHT + count - 1));
  const reach = (T90[count - 1]! * spread) / Math.sqrt(count);
  const said = (mass: number) => asLoad(Math.round(mass) as Mass, unit);
  return { kind: "known", value: said(mean), low: said(mean - reach), high: said(mean + reach), sessions: count };
}

/** Repetitions that were possible: those done on the weaker side, and those said to be left. */
function repsPossible(set: DoneSet): number | undefined {
  const reps = leastOf(set.reps);
  const reserve = set.reserve ?? (set.asked?.amount.kind === "most" ? 0 : undefined);
  return reps === undefined || reserve === undefined ? undefined : Math.floor(reps + reserve);
}

function maximumBy(set: DoneSet): Mass | undefined {
  const reps = repsPossible(set);
  const mass = set.lifted && massOf(set.lifted);
  if (reps === undefined || mass === undefined || !(mass > 0 && reps >= 1 && reps <= MAX_REPS)) return undefined;
  return oneRepMax(mass, reps).typical;
}

/** What the sets that come nearest to telling something still lack. */
function missingFrom(sets: readonly DoneSet[]): Capacity {
  const loaded = sets.filter(({ lifted }) => lifted !== undefined && massOf(lifted) > 0);
  if (loaded.length === 0) return unknown("capacity/load-unknown", { sets: sets.length });
  const counted = loaded.filter(({ reps }) => leastOf(reps) !== undefined);
  if (counted.length === 0) return unknown("capacity/reps-unsaid", { sets: loaded.length });
  if (counted.every((set) => repsPossible(set) === undefined))
    return unknown("capacity/reserve-unsaid", { sets: counted.length });
  return unknown("capacity/over-ten", { most: MAX_REPS });
}

function unknown(code: CapacityCode, data: Readonly<Record<string, Json>> = {}): Capacity {
  return { kind: "unknown", missing: { code, data } };
}
