import type { Day } from "../day.ts";
import type { RecordFold } from "../measures/index.ts";
import type { Catalogue, Person, Place, Plan, StaveEvent } from "../model/index.ts";
import type { MassUnit } from "../units.ts";
import type { DateOrder } from "./dates.ts";
import type { PlannedDay } from "./visit.ts";

/** Whose record is written, with the plan that stands and what is known already. */
export interface RecordPerson {
  readonly person: Person;
  readonly place: Place;
  readonly plan: Plan;
  readonly days: readonly PlannedDay[];
  readonly events: readonly StaveEvent[];
  readonly record: RecordFold;
  readonly today: Day;
  readonly dayOf: (at: number) => Day;
  /** Epoch milliseconds of a wall time where this person trains. */
  readonly toInstant: (day: Day, minutes: number) => number;
}

/** What the coach says about a whole file, so that it need not be asked line by line. */
export interface RecordOptions {
  /** The unit of numbers without one. */
  readonly unit?: MassUnit;
  /** What a number means where there is one implement for each hand. */
  readonly per?: "each" | "together";
  readonly dates?: DateOrder;
  /** What differs from what is recorded replaces it. */
  readonly correct?: true;
  /** What this table once wrote is taken back; what was corrected since then stays. */
  readonly undo?: true;
}

export interface RecordInput {
  readonly people: readonly RecordPerson[];
  readonly catalogue: Catalogue;
  readonly file: string;
  readonly options: RecordOptions;
  /** Makes names of contents. */
  readonly hash: (text: string) => string;
}
