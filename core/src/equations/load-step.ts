import type { Mass } from "../units.ts";

/** Per cent by which a load is raised, and by how many repetitions over the target and how often first. */
export const LOAD_STEP = {
  source: "acsm2009",
  percent: { from: 2, to: 10 },
  over: { from: 1, to: 2 },
  sessions: 2,
} as const;

/**
 * Where the next load lies once somebody has done one or two repetitions over the target in two sessions running.
 *
 *   low = load × 1.02, high = load × 1.10
 *
 * @param load the load lifted, over 0
 * @returns both ends, not rounded to loads that exist
 * @throws RangeError for a load of 0 or less
 * @source acsm2009
 * @example
 * inKg(nextLoadBand(kg(60)).high) //=> 66
 */
export function nextLoadBand(load: Mass): { readonly low: Mass; readonly high: Mass } {
  if (!(load > 0)) {
    throw new RangeError(`Cannot tell the next load as the load must be over 0: current value is ${load}`);
  }
  const { from, to } = LOAD_STEP.percent;
  return { low: Math.round((load * (100 + from)) / 100) as Mass, high: Math.round((load * (100 + to)) / 100) as Mass };
}
