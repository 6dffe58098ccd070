import { printDay } from "../day.ts";
import type { Exercise, Limit, Reason } from "../model/index.ts";
import { armUse, legUse, type Use, usesTrunk } from "./body-use.ts";
import type { LimitsOnDay } from "./limits.ts";
import { reason } from "./reasons.ts";

type OneSide = "left" | "right";

/** What rest orders and forbidden movements leave of a form: which side may be trained, or why none. */
export interface Allowed {
  readonly why: readonly Reason[];
  readonly notes: readonly Reason[];
  /** The only side that may be trained; undefined when both may. */
  readonly side?: OneSide;
}

/** @returns true when a limit speaks of this form: of all movements, of its pattern, or of itself */
export function covers(limit: Limit, exercise: Exercise): boolean {
  const { movement } = limit;
  if (movement === undefined) return true;
  return movement === exercise.id || movement === exercise.pattern || movement === exercise.alsoCounts;
}

/**
 * Applies the rest orders and forbidden movements of a day to one form.
 *
 * A resting arm is out of every form that holds, pushes, braces or swings with both; a form for one arm is trained on
 * the other side only, and where one hand only holds on it is the other hand. A resting leg is out of all standing
 * work. A resting trunk is out of all that loads or braces it.
 */
export function underOrders(exercise: Exercise, limits: Pick<LimitsOnDay, "rests" | "movements">): Allowed {
  const why: Reason[] = [];
  const notes: Reason[] = [];
  const sides = new Set<OneSide>();
  const orders: [Limit, Use][] = [
    ...limits.rests.map((limit): [Limit, Use] => [limit, useOf(exercise, limit)]),
    ...limits.movements.map((limit): [Limit, Use] => [limit, exercise.eachSide ? "one side" : "both"]),
  ];
  for (const [limit, use] of orders) {
    if (use === "none" || !covers(limit, exercise)) continue;
    if (use === "both" || limit.side === "both") {
      why.push(reason(limit.kind === "rest" ? "offer/rest-order" : "offer/forbidden", orderData(limit)));
      continue;
    }
    const other: OneSide = limit.side === "left" ? "right" : "left";
    if (use === "either hand") notes.push(reason("offer/other-hand", { hand: other, ...orderData(limit) }));
    else {
      sides.add(other);
      notes.push(reason("offer/one-side", { train: other, ...orderData(limit) }));
    }
  }
  const [side, second] = [...sides];
  if (second !== undefined) why.push(...notes.filter((note) => note.code === "offer/one-side"));
  return { why, notes, ...(side === undefined ? {} : { side }) };
}

function useOf(exercise: Exercise, { part }: Limit): Use {
  if (part === "arm") return armUse(exercise);
  if (part === "leg") return legUse(exercise);
  // An order that names no part takes everything that it covers out.
  return part === "trunk" && !usesTrunk(exercise) ? "none" : "both";
}

function orderData(limit: Limit): Reason["data"] {
  const { part, movement, side, who, to } = limit;
  return {
    ...(part === undefined ? {} : { part }),
    ...(movement === undefined ? {} : { movement }),
    side,
    who,
    to: printDay(to),
  };
}
