import {
  type Block,
  DOWN_UNSAID,
  type Edit,
  type Json,
  printDose,
  type Slot,
  UP_UNSAID,
  type WarmUp,
  wayUnsaid,
} from "../../model/index.ts";
import type { Change } from "./change.ts";

type Written = { readonly [name: string]: Json };

/** What a file need not say is left out, as a coach would. */
function slotJson({ slot, pattern, muscles, first, down, up, dose, changes, way, note }: Slot): Json {
  return {
    slot,
    pattern,
    ...(muscles === undefined ? {} : { muscles }),
    first,
    ...(down === DOWN_UNSAID ? {} : { down }),
    ...(up === UP_UNSAID ? {} : { up }),
    dose: printDose(dose),
    ...(changes === undefined
      ? {}
      : { changes: changes.map((each) => ({ week: each.week, dose: printDose(each.dose) })) }),
    ...(way === wayUnsaid(dose) ? {} : { way }),
    ...(note === undefined ? {} : { note }),
  };
}

function restJson(restS: number | undefined): Written {
  return restS === undefined ? {} : { restS };
}

function blockJson(block: Block): Json {
  if ("pair" in block) return { pair: block.pair.map(slotJson), ...restJson(block.restS) };
  if ("round" in block) return { round: block.round.map(slotJson), ...restJson(block.restS) };
  return slotJson(block);
}

function warmUpJson(item: WarmUp): Json {
  if ("ramp" in item) return { ramp: item.ramp, sets: item.sets };
  const { do: exercise, dose, or } = item;
  return { do: exercise, dose: printDose(dose), ...(or === undefined ? {} : { or }) };
}

function isList(value: Exclude<Change, { op: "remove" }>["value"]): value is readonly WarmUp[] | readonly number[] {
  return Array.isArray(value);
}

function valueJson(value: Exclude<Change, { op: "remove" }>["value"]): Json {
  if (typeof value !== "object") return value;
  if (isList(value)) return value.map((each) => (typeof each === "number" ? each : warmUpJson(each)));
  return "sets" in value ? printDose(value) : blockJson(value);
}

/**
 * A change in the words of the programme's file: the same names and places, doses as text.
 *
 * @example editOf({ op: "set", at: ["phases", 0, …, "dose"], value: dose }).value //=> "3 × 8, rest 90 s"
 */
export function editOf(change: Change): Edit {
  const { at } = change;
  return change.op === "remove" ? { op: "remove", at } : { op: change.op, at, value: valueJson(change.value) };
}
