import type { Dose, Exercise, Patch, Person, PlanSlot, Reason, Span } from "../model/index.ts";
import type { Load } from "../units.ts";
import { nextLoad } from "./next-load.ts";
import { plain, reason } from "./reasons.ts";

/** The range of repetitions that a dose asks for in its first set; undefined for anything else. */
export function rangeOf({ sets }: Dose): Span | undefined {
  const amount = sets[0]?.amount;
  return amount?.kind === "reps" ? amount.span : undefined;
}

/**
 * What a patch does, as a reason to be said.
 *
 * @param slot as it is asked without the patch; undefined when it is no longer asked
 */
export function titleOf(
  patch: Patch,
  slot: PlanSlot | undefined,
  exercise: Exercise | undefined,
  person: Person,
): Reason {
  const id = slot?.exercise ?? null;
  switch (patch.change) {
    case "load":
      return reason("progress/go-to-load", {
        exercise: patch.exercise ?? id,
        to: plain(patch.load),
        from: plain(slot?.load),
        percent: percentOf(exercise, person, slot?.load, patch.load) ?? null,
      });
    case "reps": {
      const [from, to] = [slot && rangeOf(slot.dose), rangeOf(patch.dose)];
      const widened = from !== undefined && to !== undefined && to.to > from.to;
      const form = patch.exercise ?? id;
      if (widened) return reason("progress/widen-range", { exercise: form, from: { ...from }, to: { ...to } });
      return reason("progress/set-dose", {
        exercise: form,
        sets: patch.dose.sets.length,
        amount: amountOf(patch.dose),
      });
    }
    case "exercise":
      return reason("progress/use-form", { exercise: patch.exercise, from: id });
    case "pause":
      return reason("progress/pause", { exercise: id, until: patch.until ?? null });
    case "resume":
      return reason("progress/resume", { exercise: id });
  }
}

function percentOf(exercise: Exercise | undefined, person: Person, from: Load | undefined, to: Load) {
  return exercise === undefined || from === undefined ? undefined : nextLoad(exercise, person, [to], from)?.percent;
}

/** The amount of the first set as plain data: its kind and its range, or the kind alone. */
function amountOf({ sets }: Dose) {
  const amount = sets[0]!.amount;
  return amount.kind === "most" ? { kind: amount.kind } : { kind: amount.kind, ...amount.span };
}
