import { forecast, forecastHold } from "../capacity/index.ts";
import { onScale } from "../loads/index.ts";
import type { Exercise, Person, Reason } from "../model/index.ts";
import { inKg, type Load } from "../units.ts";
import type { Certainty, DoseState } from "./dose-state.ts";
import { plain, reason } from "./reasons.ts";

/**
 * From these chances on, now and a session before, a step is taken before the published rule asks for it. A step too soon
 * costs two and a half to six weeks with a load out of reach, tried on made-up people; a session of waiting costs half a
 * one. They weigh the same at 83 to 92 %; a first look may say a little less. Ours, no source.
 */
export const SURE = 0.9;
export const SURE_BEFORE = 0.8;
/** Under this chance the step that the published rule asks for waits. Ours, no source. */
export const UNLIKELY = 0.75;
/** From this chance on what was done before is thought to be possible still. Ours, no source. */
export const EVEN = 0.5;
/**
 * Under this chance a load that came up short is taken back; else it is tried again. Taken back wrongly it took about
 * eight weeks to be earned anew, tried on made-up people; a session with a load out of reach costs half a one. They weigh
 * the same at 6 %. Ours, no source.
 */
export const SCARCELY = 0.05;
/** Sessions behind a forecast from which it may speak for a step. Ours, no source. */
export const ENOUGH_SESSIONS = 4;

/** A chance with what it is the chance of. */
export interface Likely extends Certainty {
  readonly because: Reason;
  /** Enough is known of this kind of set to go by it. */
  readonly founded: boolean;
}

/**
 * How likely somebody can do so many repetitions with a load and leave what was asked, in a first set on a day like any
 * other: what the sets before and the day cost comes off what is left.
 *
 * @returns undefined where nothing is known of it
 */
export function likely(
  state: Pick<DoseState, "capacity" | "exercise" | "person">,
  { load, reps, reserve }: { readonly load: Load | undefined; readonly reps: number; readonly reserve: number },
): Likely | undefined {
  const { capacity, exercise } = state;
  const kg = kgMoved(exercise, state.person, load);
  if (capacity.kind === "unknown" || kg === undefined) return undefined;
  const told = forecast(capacity, { kg, reserve, reps });
  if (told === undefined) return undefined;
  const chance = Math.round(told.usually(reps) * 1000) / 1000;
  const { sessions, carried, farPast } = told;
  // Who did far more than was asked may be able to do anything: the figure is the least, and only a high one says much.
  if (farPast && chance < SURE) return undefined;
  const data = {
    exercise: exercise.id,
    chance: percent(chance),
    reps,
    load: plain(load),
    reserve,
    sessions,
    carried: carried ?? null,
  };
  const founded = carried === undefined && sessions >= ENOUGH_SESSIONS;
  return { chance, sessions, because: reason("progress/likely", data), founded };
}

/** How likely a hold lasts so many seconds. @returns undefined where nothing is known of it */
export function likelyHold(
  { capacity, exercise }: Pick<DoseState, "capacity" | "exercise">,
  seconds: number,
): Likely | undefined {
  const told = capacity.kind === "unknown" ? undefined : forecastHold(capacity);
  if (told === undefined) return undefined;
  const chance = Math.round(told.usually(seconds) * 1000) / 1000;
  const data = { exercise: exercise.id, chance: percent(chance), seconds, sessions: told.sessions };
  const founded = told.sessions >= ENOUGH_SESSIONS;
  return { chance, sessions: told.sessions, because: reason("progress/likely-hold", data), founded };
}

/** Never 0 or 100: no forecast is certain. */
function percent(chance: number): number {
  return Math.min(99, Math.max(1, Math.round(chance * 100)));
}

/** What a capacity is counted in: kilograms moved, of one hand where loads are said per hand, 1 for the body alone. */
export function kgMoved(exercise: Exercise, person: Person, load: Load | undefined): number | undefined {
  const { loadMeaning } = exercise;
  if (loadMeaning === "body only" || loadMeaning === "height" || loadMeaning === "none") return 1;
  const mass = onScale(exercise, person, load);
  if (mass === undefined || !(mass > 0)) return undefined;
  return inKg(mass) / (loadMeaning === "per hand" ? 2 : 1);
}
