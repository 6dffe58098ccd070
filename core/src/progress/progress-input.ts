import type { Day } from "../day.ts";
import type { Log, RecordFold } from "../measures/index.ts";
import type { Catalogue, Person, Place, Plan, Programme } from "../model/index.ts";
import type { PainEdges } from "./pain.ts";

/** What proposals are made from. */
export interface ProgressInput {
  /** The revision that stands. */
  readonly plan: Plan;
  readonly programme: Programme;
  readonly person: Person;
  readonly place: Place;
  readonly catalogue: Catalogue;
  readonly record: RecordFold;
  readonly log: Log;
  readonly today: Day;
  readonly dayOf: (at: number) => Day;
  readonly edges: PainEdges;
  /** Version of the code. */
  readonly engine: string;
  /** Makes names of contents. */
  readonly hash: (text: string) => string;
}
