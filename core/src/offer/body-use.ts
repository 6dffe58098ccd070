import type { Exercise, Limb, Muscle, Position, StressTag } from "../model/index.ts";

/**
 * How a form uses a part that comes in two: not at all, one side at a time, one hand that only holds on or carries
 * while the legs work (either hand will do), or both sides at once.
 */
export type Use = "none" | "one side" | "either hand" | "both";

const ARM_TAGS: readonly StressTag[] = ["sh_overhead", "sh_abd_er", "sh_ir_elev", "sh_ext", "elbow", "wr_ext", "grip"];
const TRUNK_TAGS: readonly StressTag[] = ["sp_axial", "sp_hold", "sp_flex", "sp_ext", "sp_rot", "abd_press"];
const TRUNK_MUSCLES: readonly Muscle[] = ["front trunk", "side trunk", "low back"];
const LEG_MUSCLES: readonly Muscle[] = ["buttocks", "side hip", "inner thigh", "front thigh", "back thigh", "calf"];
const LEG_LIMBS: readonly Limb[] = ["two legs", "split stance", "one leg"];
const ARM_LIMBS: readonly Limb[] = ["two arms", "one arm", "alternating"];
const OFF_THE_FEET: readonly Position[] = ["seated, back supported", "seated", "supine", "prone", "side-lying"];

/**
 * A form in which the arms swing, brace or carry uses both, whatever the hands hold.
 *
 * Off the feet, on a machine that bears its own load, the legs work and no arm is stressed: there the hands lie on
 * handles that one of them can leave, as on a leg press, a leg curl or a cycle.
 */
export function armUse(exercise: Exercise): Use {
  const { hands, limb, armsUsed } = exercise;
  if (armsUsed) return "both";
  if (hands !== "none" && onLegMachine(exercise)) return "either hand";
  if (hands === "two" || hands === "one, other braces") return "both";
  if (hands === "one") return LEG_LIMBS.includes(limb) ? "either hand" : "one side";
  return stresses(exercise, ARM_TAGS) ? "both" : "none";
}

function onLegMachine(exercise: Exercise): boolean {
  const { limb, position, loadMeaning, mode } = exercise;
  const bearsItsLoad = loadMeaning === "stack" || mode === "cyclic";
  return LEG_LIMBS.includes(limb) && OFF_THE_FEET.includes(position) && bearsItsLoad && !stresses(exercise, ARM_TAGS);
}

/** Standing on a leg loads it. Off the feet, one leg may work alone, and arms may work while the legs lie still. */
export function legUse(exercise: Exercise): Use {
  const { limb, position, seated } = exercise;
  if (seated) return "none";
  if (!OFF_THE_FEET.includes(position)) return "both";
  if (limb === "one leg") return "one side";
  return ARM_LIMBS.includes(limb) && !counts(exercise, LEG_MUSCLES) ? "none" : "both";
}

/** @returns true when the trunk is trained, loaded, bent, turned or braced */
export function usesTrunk(exercise: Exercise): boolean {
  const { limb } = exercise;
  const all = limb === "trunk" || limb === "whole body";
  return all || counts(exercise, TRUNK_MUSCLES) || stresses(exercise, TRUNK_TAGS);
}

function stresses({ stress }: Exercise, tags: readonly StressTag[]): boolean {
  return tags.some((tag) => (stress[tag] ?? 0) > 0);
}

function counts({ muscles }: Exercise, of: readonly Muscle[]): boolean {
  return of.some((muscle) => muscles[muscle] !== undefined);
}
