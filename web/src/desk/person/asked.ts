import { CATALOGUE } from "@stave/core/exercises";
import { type Exercise, laneOf, type PlanSession, type PlanSlot } from "@stave/core/model";
import { afterDose, easyDose, loadLine, slotDose } from "@stave/core/report";
import { type Names, printLoad } from "@stave/core/text";
import type { MassUnit } from "@stave/core/units";
import { words } from "../words.ts";
import type { LaneName } from "./place-week.ts";

export function catalogued(exercise: string): Exercise | undefined {
  return CATALOGUE.exercises.get(exercise);
}

export function laneName(exercise: string): LaneName {
  const pattern = catalogued(exercise)?.pattern;
  return (pattern === undefined ? undefined : laneOf(pattern)) ?? "other";
}

/** What is loaded, as the sheet says it; empty where nothing is. */
export function askedLoad(slot: Pick<PlanSlot, "exercise" | "load" | "loads" | "find">, units: MassUnit): string {
  const exercise = catalogued(slot.exercise);
  if (exercise === undefined) return slot.load === undefined ? "" : printLoad(slot.load);
  const { label, text } = loadLine(exercise, slot, units);
  return label === null ? "" : text;
}

/** Dose and load of a slot. @example sayAsked(slot, "kg") //=> "3 × 8–10, rest 90 s · 16 kg" */
export function sayAsked(slot: PlanSlot, units: MassUnit): string {
  return [slotDose(slot), askedLoad(slot, units)].filter((piece) => piece !== "").join(words.person.apart);
}

/** Warm-up or conditioning, a line for each movement. */
export function sayEasyWork(
  work: readonly (PlanSession["warmup"][number] | PlanSession["conditioning"][number])[],
  names: Names,
  units: MassUnit,
): readonly string[] {
  return work.map((one) => {
    const load =
      "load" in one && one.load !== undefined ? [askedLoad({ exercise: one.exercise, load: one.load }, units)] : [];
    const effort = "effort" in one ? [words.person.efforts[one.effort]] : [];
    return [
      `${names.exercise(one.exercise)} ${"effort" in one ? afterDose(one) : easyDose(one.dose)}`,
      ...load,
      ...effort,
    ]
      .filter((piece) => piece !== "")
      .join(", ");
  });
}
