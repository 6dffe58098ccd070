import type { Catalogue, Exercise, ExerciseId, LoadMeaning, Step } from "../model/index.ts";

/** How much of which form must be shown before the next one, and what must be true besides. */
export interface Gate {
  readonly of: ExerciseId;
  /** The next form's own criterion rather than the usual one. */
  readonly own: boolean;
  readonly sets: number;
  /** What each set must hold; missing where a lowering-only form leads on and no count is written. */
  readonly amount?: {
    readonly kind: "reps" | "hold" | "metres" | "time" | "contacts";
    readonly value: number;
  };
  readonly conditions: readonly string[];
}

const USUAL_SETS = 3;
/** Share of body mass from which a form without load counts as heavy. */
const HEAVY_SHARE = 0.7;
const UNLOADED: readonly LoadMeaning[] = ["body only", "height", "none"];

/**
 * What lets a person take one step of a ladder.
 *
 * A form's own count replaces the usual amount completely, but only on the step from the form it names; over any other
 * step the usual amount of the form stood on holds. The conditions hold on every step. The usual amounts: 3 × 12, or
 * 3 × 8 where the form is loaded or moves 70 % of body mass or more; carries 3 × 30 m, marches 3 × 30 s; jumps 3 × 5;
 * holds 3 × the top of their own range. Lowering-only forms have no usual amount.
 *
 * @throws RangeError when the catalogue lacks one of the two forms
 * @source ours
 * @example gateOf(CATALOGUE, { from: "push-up-30", to: "floor-push-up", branch: "main" }).amount //=> { kind: "reps", value: 10 }
 */
export function gateOf(catalogue: Catalogue, { from, to }: Step): Gate {
  const here = catalogue.exercises.get(from);
  const next = catalogue.exercises.get(to);
  if (here === undefined || next === undefined) {
    throw new RangeError(
      `Cannot tell the gate as both forms must be in the catalogue: current step is ${from} → ${to}`,
    );
  }
  const { count, conditions } = next.need;
  if (count === undefined || count.of !== from) {
    const amount = usualAmount(here);
    return { of: from, own: false, sets: USUAL_SETS, ...(amount === undefined ? {} : { amount }), conditions };
  }
  const { sets = 1, holdS, reps } = count;
  const amount =
    holdS === undefined
      ? { kind: here.amounts === "contacts" ? ("contacts" as const) : ("reps" as const), value: reps ?? 1 }
      : { kind: "hold" as const, value: holdS };
  return { of: from, own: true, sets, amount, conditions };
}

function usualAmount(form: Exercise): Gate["amount"] {
  if (form.lowering) return undefined;
  if (form.hold !== undefined) return { kind: "hold", value: form.hold.to };
  if (form.amounts === "metres" || form.amounts === "time") return { kind: form.amounts, value: 30 };
  if (form.amounts === "contacts") return { kind: "contacts", value: 5 };
  const heavy = !UNLOADED.includes(form.loadMeaning) || (form.bodyShare?.share ?? 0) >= HEAVY_SHARE;
  return { kind: "reps", value: heavy ? 8 : 12 };
}
