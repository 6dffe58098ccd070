import type { Exercise, PlanSlot } from "../model/index.ts";
import { en, type Messages, printLoad } from "../text/index.ts";
import type { Load } from "../units.ts";

/** What stands beside the blank for the load. `blank` is false where there is nothing to write in. */
export interface LoadLine {
  readonly blank: boolean;
  readonly text: string;
}

function meant(exercise: Exercise, load: Load, words: Messages): string {
  const text = printLoad(load);
  switch (exercise.loadMeaning) {
    case "per hand":
      return words.sheet.each(2, text);
    case "stack":
      return words.sheet.setting(text);
    case "assist":
      return words.sheet.help(text);
    case "added to body":
      return words.sheet.added(text);
    default:
      return text;
  }
}

/**
 * The load of a slot in the terms of its exercise: two weights where each hand holds one, the setting of a machine, help
 * that is taken off, own weight.
 *
 * @example
 * loadLine(dumbbellPress, slotWith12kg) //=> { blank: true, text: "2 × 12 kg" }
 */
export function loadLine(exercise: Exercise, slot: Pick<PlanSlot, "load" | "find">, words: Messages = en): LoadLine {
  if (slot.load !== undefined) return { blank: true, text: meant(exercise, slot.load, words) };
  if (exercise.loadMeaning === "band") return { blank: true, text: words.sheet.band };
  if (slot.find?.from !== undefined)
    return { blank: true, text: words.sheet.last(meant(exercise, slot.find.from, words)) };
  if (slot.find !== undefined) return { blank: true, text: words.sheet.findLoad };
  return {
    blank: false,
    text:
      exercise.amounts === "hold"
        ? words.sheet.seconds
        : exercise.amounts === "metres"
          ? words.sheet.metres
          : words.sheet.ownWeight,
  };
}
