import { type Block, type Dose, type Path, slotsOf } from "../../model/index.ts";
import type { Change } from "../run/change.ts";
import { slotPaths } from "../run/walk.ts";

/** @returns the dose with so many sets more, like its last one, or fewer, from the end; one set always stays */
export function doseWith(dose: Dose, more: number): Dose {
  const count = Math.max(1, dose.sets.length + more);
  return { ...dose, sets: Array.from({ length: count }, (_, index) => dose.sets[index] ?? dose.sets.at(-1)!) };
}

/** @returns the most sets that the first doses of a block's slots ask for */
export function setsOf(block: Block): number {
  return Math.max(...slotsOf(block).map((slot) => slot.dose.sets.length));
}

/**
 * Every dose of a block with another number of sets, those of later weeks too. All slots of a pair or round change
 * together, since they are done in turn.
 */
export function setsChanged(block: Block, at: Path, more: number): readonly Change[] {
  const paths = slotPaths(block, at);
  return slotsOf(block).flatMap((slot, index): readonly Change[] => [
    { op: "set", at: [...paths[index]!, "dose"], value: doseWith(slot.dose, more) },
    ...(slot.changes ?? []).map(
      (change, k): Change => ({
        op: "set",
        at: [...paths[index]!, "changes", k, "dose"],
        value: doseWith(change.dose, more),
      }),
    ),
  ]);
}
