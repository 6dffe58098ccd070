import type { Day } from "../day.ts";
import { type DoneSet, leastOf, type SlotSession } from "../measures/index.ts";
import type { ExerciseId } from "../model/index.ts";
import type { Load } from "../units.ts";
import { massOf } from "../units.ts";
import { BREAK_DAYS, overAsked } from "./trained.ts";

/** Repetitions over the goal, in the last set, in so many sessions running. Source: haffTriplett2016. */
export const OVER = 2;
export const SESSIONS = 2;

/** One session in which the goal was passed in the last set. */
export interface Passed {
  readonly session: string;
  readonly on: Day;
  readonly reps: number;
  readonly reserve?: number;
  /** Repetitions over the goal, with those left in reserve beyond what was asked. */
  readonly over: number;
  readonly n: number;
}

export interface TwoForTwo {
  readonly goal: number;
  /** With which load; the easier of the two sessions. Undefined for the body alone. */
  readonly load?: Load;
  readonly passed: readonly Passed[];
}

/**
 * Whether the goal was passed by two repetitions or more in the last set of two sessions running.
 *
 * The goal is the top of the range asked. Repetitions said to be left beyond the reserve asked count as done, and those
 * missing from it as not done; where reserve was not said, the repetitions alone count. Light weeks are passed over;
 * another form, a last set that is missing, and a value that nobody read all break the run.
 *
 * @param history of one slot, in the plan's order
 * @param exercise that the slot asks for now
 * @param goal top of the range that is asked now
 * @source haffTriplett2016, ours
 * @example goal 3 × 10: last sets of 12 and 12 pass, 12 and 11 do not, nor do 12, 10, 12
 */
export function twoForTwo(
  history: readonly SlotSession[],
  exercise: ExerciseId,
  goal: number,
  { today, dayOf }: { readonly today: Day; readonly dayOf: (at: number) => Day },
): TwoForTwo | undefined {
  const trained = history.filter(({ light, sets }) => !light && sets.length > 0);
  const last = trained.slice(-SESSIONS);
  if (last.length < SESSIONS) return undefined;
  const passed: Passed[] = [];
  const loads: (Load | undefined)[] = [];
  for (const session of last) {
    const set = lastSet(session, exercise);
    const over = set === undefined ? undefined : overAsked(set, goal);
    if (set === undefined || over === undefined || !(over >= OVER)) return undefined;
    const { reserve } = set;
    passed.push({
      session: session.session,
      on: dayOf(session.at),
      reps: leastOf(set.reps)!,
      ...(reserve === undefined ? {} : { reserve }),
      over,
      n: session.n,
    });
    loads.push(set.lifted);
  }
  const days = [...passed.map(({ on }) => on), today];
  if (!days.every((day, at) => at === 0 || day - days[at - 1]! < BREAK_DAYS)) return undefined;
  if (new Set(loads.map((load) => load !== undefined)).size > 1) return undefined;
  const load = loads.reduce((least, each) => (least && each && massOf(each) < massOf(least) ? each : least));
  return { goal, ...(load === undefined ? {} : { load }), passed };
}

/** The last set that was asked for, if it was done with this form and all sets were. */
function lastSet({ asked, sets }: SlotSession, exercise: ExerciseId): DoneSet | undefined {
  if (sets.some((set) => set.exercise !== exercise)) return undefined;
  return sets.find(({ set }) => set === asked.dose.sets.length - 1);
}
