import { type Block, type Dose, type Edit, type Json, type Path, printDose, type Slot } from "../../model/index.ts";
import type { Change } from "./change.ts";

function slotJson(slot: Slot): Json {
  const { dose, changes, ...same } = slot;
  return {
    ...(same as { readonly [name: string]: Json }),
    dose: printDose(dose),
    ...(changes === undefined
      ? {}
      : { changes: changes.map((change) => ({ week: change.week, dose: printDose(change.dose) })) }),
  };
}

function restJson(restS: number | undefined): { readonly [name: string]: Json } {
  return restS === undefined ? {} : { rest: restS };
}

function blockJson(block: Block): Json {
  if ("pair" in block) return { pair: block.pair.map(slotJson), ...restJson(block.restS) };
  if ("round" in block) return { round: block.round.map(slotJson), ...restJson(block.restS) };
  return slotJson(block);
}

function valueJson(value: Dose | Block | string | number): Json {
  if (typeof value !== "object") return value;
  return "sets" in value ? printDose(value) : blockJson(value);
}

/** The file names the rest of a pair or round by its own word. */
function pathInFile(at: Path): Path {
  return at.at(-1) === "restS" ? [...at.slice(0, -1), "rest"] : at;
}

/** @returns a change in the words of the programme's file */
export function editOf(change: Change): Edit {
  const at = pathInFile(change.at);
  return change.op === "remove" ? { op: "remove", at } : { op: change.op, at, value: valueJson(change.value) };
}
