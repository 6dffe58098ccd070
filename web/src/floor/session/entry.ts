import type { Amount, EventData, ExerciseId, SetDone, SetDose } from "@stave/core/model";
import type { Load } from "@stave/core/units";

/** A number on the screen: of a whole set, or of one of its sides. */
export type Side = "both" | "left" | "right";

/** What somebody set with their own hand. What is absent was not touched, and is stored as such. */
export interface Entry {
  readonly both?: number;
  readonly left?: number;
  readonly right?: number;
  readonly load?: Load;
  readonly reserve?: number;
}

/** What a set asks for, as far as a phone shows it. */
export interface Asked {
  readonly dose: SetDose;
  /** Where only one side is trained. */
  readonly side?: "left" | "right";
  /** Undefined where a load is still to be found. */
  readonly load?: Load;
}

/** @returns the sides that have a number of their own */
export function sidesOf({ dose, side }: Pick<Asked, "dose" | "side">): readonly Side[] {
  if (side !== undefined) return [side];
  return dose.eachSide ? ["left", "right"] : ["both"];
}

/** How an amount is counted; distances are asked for and not recorded. */
export function countedAs(amount: Amount): "reps" | "holdS" | undefined {
  switch (amount.kind) {
    case "reps":
    case "most":
    case "contacts":
      return "reps";
    case "hold":
    case "time":
      return "holdS";
    case "metres":
      return undefined;
  }
}

/** Ends of what is asked; 0 to 0 where the coach expects no number. */
export function askedSpan(amount: Amount): { readonly from: number; readonly to: number } {
  if (amount.kind !== "most") return amount.span;
  return { from: amount.least ?? 0, to: amount.least ?? 0 };
}

/** The most that the record takes. Source: the contract, core/src/api. */
export function mostOf(amount: Amount): number {
  return countedAs(amount) === "holdS" ? 7200 : 500;
}

type Amounts = NonNullable<SetDone["reps"]>;

function amounts(entry: Entry, sides: readonly Side[]): Amounts {
  const said = (side: Side) => entry[side] ?? ("as asked" as const);
  if (sides[0] === "both") return said("both");
  return Object.fromEntries(sides.map((side) => [side, said(side)]));
}

/**
 * What is recorded of a set. Whatever nobody touched is "as asked" or "not said", and never a number.
 *
 * @param loads loads that exist for the form; without any, the load is "none"
 */
export function setDone(exercise: ExerciseId, asked: Asked, entry: Entry, loads: readonly Load[]): SetDone {
  const counted = countedAs(asked.dose.amount);
  return {
    exercise,
    ...(counted === undefined ? {} : { [counted]: amounts(entry, sidesOf(asked)) }),
    load: loads.length === 0 && asked.load === undefined ? "none" : (entry.load ?? "as asked"),
    reserve: entry.reserve ?? "not said",
  };
}

function numberOf(value: Amounts | number | "as asked" | undefined, side: Side): number | undefined {
  const of =
    typeof value === "object" ? (side === "both" ? undefined : value[side]) : side === "both" ? value : undefined;
  return typeof of === "number" ? of : undefined;
}

/** @returns what was recorded, as the screen shows it again for a correction */
export function entryOf(data: EventData["set-done"]): Entry {
  const value = data.reps ?? data.holdS;
  const sides = (["both", "left", "right"] as const).flatMap((side) => {
    const number = numberOf(value, side);
    return number === undefined ? [] : [[side, number] as const];
  });
  return {
    ...Object.fromEntries(sides),
    ...(typeof data.load === "object" ? { load: data.load } : {}),
    ...(data.reserve === "not said" ? {} : { reserve: data.reserve }),
  };
}

/**
 * One more or one fewer. From an untouched value the first step up says the upper end of what was asked, and the first
 * step down one less than that.
 *
 * @param now undefined while untouched
 */
export function stepped(now: number | undefined, by: 1 | -1, amount: Amount): number {
  const from = now ?? askedSpan(amount).to - (by === 1 ? 1 : 0);
  return Math.min(mostOf(amount), Math.max(0, from + by));
}

/**
 * What a set shows before anybody touches it: nothing, but for a load that was changed in the sets before. It is still in
 * the hand.
 *
 * @param before what was recorded of the earlier sets of this movement in this session, in order
 */
export function seedOf(before: readonly SetDone[], exercise: ExerciseId): Entry {
  const last = before.findLast((set) => set.exercise === exercise);
  return last !== undefined && typeof last.load === "object" ? { load: last.load } : {};
}

function sameLoad(one: Load, other: Load): boolean {
  return one.value === other.value && one.unit === other.unit;
}

/** @returns where a load stands among those that exist; −1 for none of them */
export function loadIndex(load: Load | undefined, loads: readonly Load[]): number {
  return load === undefined ? -1 : loads.findIndex((one) => sameLoad(one, load));
}

/** @returns the next load that exists, or undefined at the end of the rack */
export function steppedLoad(now: Load | undefined, by: 1 | -1, loads: readonly Load[]): Load | undefined {
  if (now === undefined) return by === 1 ? loads[0] : undefined;
  const index = loadIndex(now, loads);
  if (index >= 0) return loads[index + by];
  // A load that is not on the rack is compared in its own unit; racks hold one unit.
  return by === 1
    ? loads.find(({ value, unit }) => unit === now.unit && value > now.value)
    : loads.findLast(({ value, unit }) => unit === now.unit && value < now.value);
}
