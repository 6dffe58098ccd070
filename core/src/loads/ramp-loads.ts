import { type Load, type Mass, massOf } from "../units.ts";
import type { LoadSet } from "./load-set.ts";
import { nearest } from "./nearest.ts";

/** First and last warm-up set, as whole per cent of the working load and not of the 1RM. Source: ribeiro2020. */
const FIRST = 40;
const LAST = 80;

/**
 * Loads of the warm-up sets that lead up to a working load.
 *
 *   one set at 80 % of the working load; more sets in even steps from 40 to 80 %, each rounded down to what exists
 *
 * In 40 men who then worked at 80 % of the 1RM, 80 % of the working load alone served the squat best and 40 then 80 %
 * the bench press; 40 % alone was not enough. Even steps between are ours.
 *
 * @param working in the meaning of the set
 * @param sets how many warm-up sets, 1 or more
 * @returns rising, distinct, all below the working load; fewer than asked, or none, where the lightest load here is too
 * heavy. Empty for bands, body mass and machines that help: a share of the help is no share of the work
 * @source ribeiro2020
 * @example
 * rampLoads({ value: 80, unit: "kg" }, everyTwoKilograms) //=> [32 kg, 64 kg]
 */
export function rampLoads(working: Load, set: LoadSet, sets = 2): readonly Load[] {
  if (set.kind === "stack" && set.help) return [];
  const most = massOf(working);
  const ramp = new Map<Mass, Load>();
  for (let i = 0; i < sets; i++) {
    const percent = sets === 1 ? LAST : FIRST + (i * (LAST - FIRST)) / (sets - 1);
    const load = nearest(Math.floor((most * percent) / 100) as Mass, set, "down").chosen;
    if (load !== undefined) ramp.set(massOf(load), load);
  }
  return [...ramp.values()];
}
