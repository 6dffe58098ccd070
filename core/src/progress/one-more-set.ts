import { weeklySets } from "../measures/index.ts";
import type { Catalogue, Muscle, Plan, Reason, SlotKey } from "../model/index.ts";
import { reason } from "./reasons.ts";

/** A muscle's weekly sets rise by at most so much in about four weeks. Source: iusca2021. */
const GROWTH = 0.2;
/** Below this general minimum of weekly sets, one set more is no steep rise. Source: iusca2021. */
const MINIMUM = 10;
const WEEKS = 4;

/** @returns most weekly sets that a rise of 20 % leaves, whole; from under ten, one more. @source iusca2021 @example weeklyCap(12) //=> 14 */
export function weeklyCap(sets: number): number {
  const share = Math.floor(sets * (1 + GROWTH) + 1e-9);
  return sets < MINIMUM ? Math.max(share, Math.floor(sets) + 1) : share;
}

/**
 * Whether one more set of a slot keeps the week of each muscle that it trains directly within its growth: against the
 * least of the last four weeks of the plan up to the one in which it is asked next.
 *
 * @param week position in the plan of the week in which the slot is asked next, 0 = first
 * @returns the muscle that comes nearest to its most
 * @source iusca2021, pelland2024
 */
export function oneMoreSet(
  plan: Plan,
  catalogue: Catalogue,
  slot: SlotKey,
  week: number,
): { readonly ok: boolean; readonly because: Reason } | undefined {
  const weeks = plan.phases.flatMap(({ weeks }) => weeks);
  const now = weeks[week];
  if (now === undefined) return undefined;
  const slots = now.sessions.flatMap(({ blocks }) => blocks.flatMap((block) => block.slots));
  const times = slots.filter(({ key }) => key === slot).length;
  const exercise = catalogue.exercises.get(slots.find(({ key }) => key === slot)?.exercise ?? "");
  if (exercise === undefined) return undefined;
  const before = weeks.slice(Math.max(0, week - WEEKS + 1), week + 1).filter(({ light }) => !light);
  const sets = before.map(({ sessions }) => weeklySets(sessions, catalogue).quarters);
  const muscles = (Object.keys(exercise.muscles) as Muscle[]).filter((muscle) => exercise.muscles[muscle] === 1);
  const rises = muscles.map((muscle) => {
    const from = Math.min(...sets.map((quarters) => (quarters[muscle] ?? 0) / 4));
    const to = (sets.at(-1)?.[muscle] ?? 0) / 4 + times;
    return { muscle, from, to, most: weeklyCap(from) };
  });
  const [nearest] = rises.sort((a, b) => a.most - a.to - (b.most - b.to));
  if (nearest === undefined) return undefined;
  return { ok: nearest.to <= nearest.most, because: reason("progress/weekly-growth", nearest) };
}
