import type { Exercise } from "../model/index.ts";
import type { Load, Mass } from "../units.ts";
import { heldTotal } from "./held.ts";

/**
 * What one leg moves in a squat, or in a single-leg form with a known share of body mass.
 *
 *   two legs:     (share × body mass + load) / 2, share about 0.88: all but both shanks and feet
 *   one leg:      share × body mass + load, share about 0.94: all but one shank and foot
 *   split stance: share × (body mass + load), share 0.844 with the rear foot raised: of all that stands on both feet
 *
 * The split-stance share counts the shank and foot that the others leave out, which adds about 5 % of body mass.
 *
 * @param load in the meaning of the exercise; undefined for the body alone
 * @param bodyMass on that date
 * @returns the mass; undefined for other patterns, where no share is published, and where the load is not known
 * @source deLeva1996, helme2020
 * @example
 * legLoad(rearFootRaisedSplitSquat, { value: 20, unit: "kg" }, kg(80)) // 84.4 kg, where 20 kg is held in all
 */
export function legLoad(exercise: Exercise, load: Load | undefined, bodyMass: Mass): Mass | undefined {
  const { pattern, mode, limb, bodyShare } = exercise;
  const held = heldTotal(exercise, load) ?? (exercise.loadMeaning === "added to body" ? 0 : undefined);
  if (bodyShare === undefined || held === undefined || mode !== "dynamic") return undefined;
  if (pattern !== "squat" && pattern !== "single leg") return undefined;
  if (limb === "two legs") return Math.round((bodyShare.share * bodyMass + held) / 2) as Mass;
  if (limb === "one leg") return Math.round(bodyShare.share * bodyMass + held) as Mass;
  return limb === "split stance" ? (Math.round(bodyShare.share * (bodyMass + held)) as Mass) : undefined;
}
