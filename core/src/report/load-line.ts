import type { Exercise, PlanSlot } from "../model/index.ts";
import { en, type Messages, printLoad } from "../text/index.ts";
import { asLoad, type Load, type MassUnit, massOf } from "../units.ts";

/** What stands beside the blank for the load. `blank` is false where there is nothing to write in. */
export interface LoadLine {
  readonly blank: boolean;
  readonly text: string;
}

/** A load as it is marked on the weight; in the person's own unit too, to a tenth, where that is another one. */
function inBoth(load: Load, units: MassUnit): string {
  if (load.unit === units) return printLoad(load);
  const own = asLoad(massOf(load), units);
  return `${printLoad(load)} (${printLoad({ ...own, value: Math.round(own.value * 10) / 10 })})`;
}

function meant(exercise: Exercise, load: Load, units: MassUnit, words: Messages): string {
  if (exercise.loadMeaning === "stack") return words.sheet.setting(printLoad(load));
  const text = inBoth(load, units);
  switch (exercise.loadMeaning) {
    case "per hand":
      return words.sheet.each(2, text);
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
 * loadLine(dumbbellPress, slotWith12kg, "kg") //=> { blank: true, text: "2 × 12 kg" }
 */
export function loadLine(
  exercise: Exercise,
  slot: Pick<PlanSlot, "load" | "loads" | "find">,
  units: MassUnit,
  words: Messages = en,
): LoadLine {
  const loads = slot.loads ?? (slot.load === undefined ? [] : [slot.load]);
  const different = loads.filter((load, index) => index === 0 || massOf(load) !== massOf(loads[index - 1]!));
  if (different.length > 0)
    return {
      blank: true,
      text: different.map((load) => meant(exercise, load, units, words)).join(words.sheet.nextLoad),
    };
  if (exercise.loadMeaning === "band") return { blank: true, text: words.sheet.band };
  if (slot.find?.from !== undefined)
    return { blank: true, text: words.sheet.last(meant(exercise, slot.find.from, units, words)) };
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
