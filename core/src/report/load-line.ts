import type { Exercise, PlanSlot } from "../model/index.ts";
import { en, type Messages, printLoad } from "../text/index.ts";
import { asLoad, type Load, type MassUnit, massOf } from "../units.ts";

/** What stands over the boxes of a week: what is to be written down, and with what to begin. */
export interface LoadLine {
  /** Name of the blank, or null where there is nothing to write in. */
  readonly label: string | null;
  readonly text: string;
}

/** A load as it is marked on the weight; in the person's own unit too, to a tenth, where that is another one. */
function inBoth(load: Load, units: MassUnit, words: Messages): string {
  if (load.unit === units) return printLoad(load);
  const own = asLoad(massOf(load), units);
  return words.sheet.inOther(printLoad(load), printLoad({ ...own, value: Math.round(own.value * 10) / 10 }));
}

/**
 * A load in the terms of its exercise: two weights where each hand holds one, a pin as its machine is marked, what the
 * body carries on top.
 *
 * @example
 * loadWords(dumbbellPress, { value: 12, unit: "kg" }, "kg") //=> "2 × 12 kg"
 */
export function loadWords(exercise: Exercise, load: Load, units: MassUnit, words: Messages = en): string {
  switch (exercise.loadMeaning) {
    case "per hand":
      return words.sheet.each(inBoth(load, units, words));
    case "stack":
    case "assist":
      // The numbers of a stack are labels; no other unit is printed on it.
      return printLoad(load);
    case "added to body":
      return words.sheet.bodyAnd(inBoth(load, units, words));
    default:
      return inBoth(load, units, words);
  }
}

function labelOf(exercise: Exercise, isBand: boolean, { sheet }: Messages): string {
  if (isBand || exercise.loadMeaning === "band") return sheet.band;
  switch (exercise.loadMeaning) {
    case "stack":
      return sheet.setting;
    case "assist":
      return sheet.help;
    case "height":
      return sheet.height;
    default:
      return sheet.load;
  }
}

/** The weakest band here, where the load has to be found among bands. */
function weakestBand({ find }: Pick<PlanSlot, "find">): string | undefined {
  const labels = find?.because.code === "loads/bands" ? find.because.data["labels"] : undefined;
  return Array.isArray(labels) && typeof labels[0] === "string" ? labels[0] : undefined;
}

function findWords(exercise: Exercise, slot: Pick<PlanSlot, "find">, units: MassUnit, words: Messages): string {
  const { sheet } = words;
  const band = weakestBand(slot);
  if (band !== undefined) return sheet.findBand(band);
  if (slot.find?.from !== undefined) return sheet.find(loadWords(exercise, slot.find.from, units, words));
  return exercise.loadMeaning === "assist" ? sheet.findHelp : sheet.findLight;
}

/** Neither a load nor how to find one: what the boxes count, or a blank where the exercise takes a load all the same. */
function withoutLoad(exercise: Exercise, words: Messages): LoadLine {
  const { sheet } = words;
  const label = labelOf(exercise, false, words);
  switch (exercise.loadMeaning) {
    case "body only":
    case "none":
      break;
    case "added to body":
      return { label, text: sheet.ownWeight };
    case "height":
      return { label, text: sheet.findLow };
    default:
      return { label, text: findWords(exercise, {}, "kg", words) };
  }
  switch (exercise.amounts) {
    case "hold":
      return { label: null, text: sheet.seconds };
    case "metres":
      return { label: null, text: sheet.metres };
    case "time":
      return { label: null, text: sheet.minutesDone };
    default:
      return { label: null, text: sheet.ownWeight };
  }
}

/**
 * The load of a slot with a blank for what was really taken. Where nothing is loaded, it says what the boxes count.
 *
 * @example
 * loadLine(dumbbellPress, slotWith12kg, "kg") //=> { label: "load", text: "2 × 12 kg" }
 */
export function loadLine(
  exercise: Exercise,
  slot: Pick<PlanSlot, "load" | "loads" | "find">,
  units: MassUnit,
  words: Messages = en,
): LoadLine {
  const loads = slot.loads ?? (slot.load === undefined ? [] : [slot.load]);
  const different = loads.filter((load, index) => index === 0 || massOf(load) !== massOf(loads[index - 1]!));
  const label = labelOf(exercise, weakestBand(slot) !== undefined, words);
  if (different.length > 0) {
    return { label, text: words.sheet.inOrder(different.map((load) => loadWords(exercise, load, units, words))) };
  }
  if (slot.find !== undefined) return { label, text: findWords(exercise, slot, units, words) };
  return withoutLoad(exercise, words);
}
