import type { Day } from "../day.ts";
import type { Reason } from "../model/index.ts";
import { type Load, massOf } from "../units.ts";
import type { DoseState } from "./dose-state.ts";
import { plain, reason } from "./reasons.ts";
import { trained } from "./trained.ts";

/** Over so many days the rise is looked at, and at least so many must lie between. Ours, no source. */
const WINDOW_DAYS = 21;
const LEAST_DAYS = 7;
/**
 * Per cent a week that no gain of strength explains: the fastest weekly gains that were measured, of untrained women at
 * the leg press in their first two weeks, were 16.5. Source: hammarstrom2020; the edge is ours.
 */
const MOST_A_WEEK = 20;

/**
 * A load that rose faster than strength does: somebody looks before it rises again.
 *
 *   per cent a week = ((now / then)^(1 / weeks) − 1) × 100, over up to three weeks
 *
 * @returns undefined where it rose by less, or where less than a week lies between
 * @source hammarstrom2020, ours
 */
export function fastRise(state: DoseState): Reason | undefined {
  const loads = trained(state).flatMap(({ at, sets }): { readonly on: Day; readonly load: Load }[] => {
    const load = sets.find(({ exercise, lifted }) => exercise === state.exercise.id && lifted !== undefined)?.lifted;
    return load === undefined ? [] : [{ on: state.dayOf(at), load }];
  });
  const last = loads.at(-1);
  if (last === undefined || state.exercise.loadMeaning === "assist") return undefined;
  const first = loads.find(({ on }) => on >= last.on - WINDOW_DAYS)!;
  const weeks = (last.on - first.on) / 7;
  if (!(weeks >= LEAST_DAYS / 7) || !(massOf(first.load) > 0)) return undefined;
  const percent = Math.round(((massOf(last.load) / massOf(first.load)) ** (1 / weeks) - 1) * 100);
  if (!(percent > MOST_A_WEEK)) return undefined;
  const data = { exercise: state.exercise.id, from: plain(first.load), to: plain(last.load), days: last.on - first.on };
  return reason("progress/fast-rise", { ...data, percent, most: MOST_A_WEEK });
}
