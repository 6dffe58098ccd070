import type { Day } from "../day.ts";
import type { Log, Occurrence, RecordFold } from "../measures/index.ts";
import type { Catalogue, Person } from "../model/index.ts";

/** One person's plan and record, as they are watched. */
export interface WatchInput {
  readonly person: Person;
  readonly catalogue: Catalogue;
  readonly record: RecordFold;
  readonly log: Log;
  /** Sessions of the plan on their planned days. */
  readonly days: readonly { readonly occurrence: Occurrence; readonly day: Day }[];
  /** First day of the plan. */
  readonly on: Day;
  readonly today: Day;
  readonly dayOf: (at: number) => Day;
}
