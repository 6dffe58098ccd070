import { type Day, parseDay } from "../day.ts";
import type { Decided, RecordFold } from "../measures/index.ts";
import type { Dose, ExerciseId, SlotKey } from "../model/index.ts";
import type { Load } from "../units.ts";

/** What a coach decided for one slot, as it applies now. `form` is what a load or dose is for; without it, any form. */
export interface SlotPins {
  readonly exercise?: ExerciseId | undefined;
  readonly load?: { readonly load: Load; readonly form?: ExerciseId | undefined } | undefined;
  readonly dose?: { readonly dose: Dose; readonly form?: ExerciseId | undefined; readonly byHand: boolean } | undefined;
  /** Level of running and walking in turn. */
  readonly run?: number | undefined;
  readonly paused?: { readonly until?: string | undefined } | undefined;
}

/**
 * The coach's decisions, slot by slot, the later one over the earlier.
 *
 * Another form in a slot takes away the load and the dose that were for the old one, and ends its pause. A load step
 * takes the dose back to what the programme asks, unless the coach set that dose by hand.
 *
 * @param today a pause is over on the day it names
 */
export function patchesInForce(
  { decisions }: Pick<RecordFold, "decisions">,
  today: Day,
): ReadonlyMap<SlotKey, SlotPins> {
  const pins = new Map<SlotKey, SlotPins>();
  for (const decision of decisions) {
    const slot = decision.patch?.slot;
    if (slot !== undefined && !isOfWeeks(decision.patch)) pins.set(slot, after(pins.get(slot) ?? {}, decision));
  }
  return new Map([...pins].map(([slot, said]) => [slot, isOver(said, today) ? { ...said, paused: undefined } : said]));
}

/** Light weeks are said of one slot and are for all. */
function isOfWeeks(patch: Decided["patch"]): boolean {
  return patch?.change === "light week" || patch?.change === "full week";
}

function after(pins: SlotPins, { patch, kind }: Decided): SlotPins {
  switch (patch?.change) {
    case "load": {
      const load = { load: patch.load, form: patch.exercise };
      return { ...pins, load, dose: pins.dose?.byHand === true ? pins.dose : undefined };
    }
    case "reps": {
      const dose = { dose: patch.dose, form: patch.exercise, byHand: kind === "pinned" };
      // A dose that says its own loads takes the place of a load that was decided before.
      return { ...pins, dose, load: patch.dose.sets.some(({ load }) => load !== undefined) ? undefined : pins.load };
    }
    case "exercise":
      return { exercise: patch.exercise };
    case "pause":
      return { ...pins, paused: { until: patch.until } };
    case "run-walk":
      return { ...pins, run: patch.level };
    case "resume":
      return { ...pins, paused: undefined };
    default:
      return pins;
  }
}

function isOver({ paused }: SlotPins, today: Day): boolean {
  const until = paused?.until === undefined ? undefined : parseDay(paused.until);
  return until !== undefined && until <= today;
}
