import { type ExerciseId, type Patch, type PlanSlot, printDose, type SlotKey } from "@stave/core/model";
import { printLoad } from "@stave/core/text";
import { type Slip, typedAnswer } from "../decision/index.ts";

/** What a coach may have typed over a slot, as it first stood there. */
export interface Typed {
  readonly exercise: string;
  readonly dose: string;
  readonly load: string;
}

export type Pins =
  | { readonly ok: true; readonly patches: readonly Patch[] }
  | { readonly ok: false; readonly dose: readonly Slip[]; readonly load: readonly Slip[] };

export function typedOf(slot: PlanSlot): Typed {
  return {
    exercise: slot.exercise,
    dose: printDose(slot.dose),
    load: slot.load === undefined ? "" : printLoad(slot.load),
  };
}

/** What was typed the last time and not sent, where that can still be read; else what stands. */
export function draftOf(kept: string | undefined, stands: Typed): Typed {
  try {
    const read = JSON.parse(kept ?? "") as Partial<Record<keyof Typed, unknown>> | null;
    const text = (name: keyof Typed) => (typeof read?.[name] === "string" ? read[name] : stands[name]);
    return { exercise: text("exercise"), dose: text("dose"), load: text("load") };
  } catch {
    return stands;
  }
}

function readOne(slot: SlotKey, form: ExerciseId, text: string, was: string, change: "reps" | "load") {
  if (text.trim() === was || (change === "load" && text.trim() === "")) return { patches: [], slips: [] };
  const answer = typedAnswer(slot, form, text);
  if (!answer.ok) return { patches: [], slips: answer.slips };
  if (answer.patch.change === change) return { patches: [answer.patch], slips: [] };
  const allowed = change === "load" ? "12 kg, 12.5 kg, 10 lb" : "3 × 8–10, rest 90 s, 2 in reserve";
  const code = change === "load" ? "load/form" : "dose/no-amount";
  return { patches: [], slips: [{ code, offset: 0, found: text.trim(), allowed }] };
}

/**
 * The changes that were typed: only what differs from what stands, the form first, since dose and load are for it. An emptied load changes nothing, since a plan
 * without a load is the plan's own affair.
 */
export function readPins(slot: PlanSlot, typed: Typed): Pins {
  const was = typedOf(slot);
  const form: readonly Patch[] =
    typed.exercise === was.exercise ? [] : [{ slot: slot.key, change: "exercise", exercise: typed.exercise }];
  const dose = readOne(slot.key, typed.exercise, typed.dose, was.dose, "reps");
  const load = readOne(slot.key, typed.exercise, typed.load, was.load, "load");
  if (dose.slips.length + load.slips.length > 0) return { ok: false, dose: dose.slips, load: load.slips };
  return { ok: true, patches: [...form, ...dose.patches, ...load.patches] };
}
