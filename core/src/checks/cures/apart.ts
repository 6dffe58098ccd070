import { type Block, type Path, type Slot, slotsOf } from "../../model/index.ts";
import type { Change } from "../run/change.ts";

/** The slots of a pair or round one after the other, each with the rest that it had in turn. */
export function apart(block: Block, at: Path): readonly Change[] {
  const restS = "slot" in block ? undefined : block.restS;
  const alone = slotsOf(block).map((slot): Slot => {
    const rest = slot.dose.restS ?? restS;
    return rest === undefined ? slot : { ...slot, dose: { ...slot.dose, restS: rest } };
  });
  const [first, ...others] = alone;
  const [list, index] = [at.slice(0, -1), Number(at.at(-1))];
  return [
    { op: "set", at, value: first! },
    ...others.toReversed().map((slot): Change => ({ op: "insert", at: [...list, index + 1], value: slot })),
  ];
}
