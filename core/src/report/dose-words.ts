import { type Dose, type PlanSession, type PlanSlot, printDose, RUN_WALK_BOUNDS } from "../model/index.ts";
import { en, type Messages } from "../text/index.ts";

type Asked = Pick<PlanSlot, "dose" | "side">;

/** A dose without "each side" where only one side is trained. */
function asTrained({ dose, side }: Asked): Dose {
  return side === undefined ? dose : { ...dose, sets: dose.sets.map((set) => ({ ...set, eachSide: false })) };
}

/**
 * A slot's dose in the canonical words, with the side where only one is trained.
 *
 * @example
 * slotDose(lungeOnTheLeftOnly) //=> "3 × 8, rest 90 s; left side only"
 */
export function slotDose(slot: Asked, words: Messages = en): string {
  const side = slot.side === undefined ? [] : [words.sheet.oneSide(slot.side)];
  return words.sheet.and([printDose(asTrained(slot)), ...side]);
}

/**
 * What is new in a later week, in the canonical words: rest and tempo are left out while they stay.
 *
 * @returns null when the dose is the same
 * @example
 * doseChange(week1, week4) //=> "2 × 8–10, 4 in reserve"
 */
export function doseChange(first: Asked, now: Asked): string | null {
  const [was, is] = [asTrained(first), asTrained(now)];
  if (printDose(was) === printDose(is)) return null;
  return printDose({
    sets: is.sets,
    ...(is.restS === undefined || is.restS === was.restS ? {} : { restS: is.restS }),
    ...(is.tempo === undefined || is.tempo.join() === was.tempo?.join() ? {} : { tempo: is.tempo }),
  });
}

/**
 * What conditioning asks for; of a run its level, its bouts and walks, and its minutes.
 *
 * @example afterDose(runOfLevelTwo) //=> "level 2 of 9: 10 × run 1 min, walk 1 min between; 19 min in all"
 */
export function afterDose({ dose, run }: PlanSession["conditioning"][number], { sheet }: Messages = en): string {
  const amount = dose.sets[0]?.amount;
  if (run === undefined || amount?.kind !== "time") return easyDose(dose);
  const intervals = sheet.intervals(dose.sets.length, amount.span.to, dose.restS ?? 0);
  return sheet.runLevel(run.level, RUN_WALK_BOUNDS.to, intervals);
}

/** A dose of one set without the count before it. @example easyDose(fourMinutes) //=> "4 min" */
export function easyDose(dose: Dose): string {
  return printDose(dose).replace(/^1 × (?!.* \+ )/, "");
}
