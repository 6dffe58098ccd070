import type { Day } from "../../day.ts";
import type { Catalogue, Json, Path, Person, Place, Programme, Severity } from "../../model/index.ts";
import type { SourceId } from "../../sources.ts";
import type { Change } from "./change.ts";
import type { Look } from "./look.ts";

/** What a check may look at. Place and person narrow its advice where they are known. */
export interface CheckInput {
  readonly programme: Programme;
  readonly catalogue: Catalogue;
  readonly place?: Place;
  readonly person?: Person;
  /** Slots whose dose nobody said: only checks that need none are run. */
  readonly unsaid?: readonly Path[];
  /** The first day; without it age, cautions and time off are not known. */
  readonly on?: Day;
}

export type Facts = Readonly<Record<string, Json>>;

/** A remedy before it is proven: what would change, in the terms of the model. */
export interface Cure {
  readonly id: string;
  readonly data: Facts;
  readonly changes: readonly Change[];
  /** Of cures with one group, best first, only the first that holds is offered. */
  readonly group?: string;
  /** It lessens the finding without removing it, and its data say what is left. */
  readonly partly?: boolean;
}

/** What a check found, where, and how bad when that is not the check's usual severity. */
export interface Found<D extends Facts = Facts> {
  readonly at: Path;
  readonly data: D;
  readonly severity?: Severity;
  /** Facts that take long to find and decide nothing: worked out, like the cures, only when somebody will read them. */
  readonly more?: () => Facts;
  readonly cures?: () => readonly Cure[];
}

/**
 * One rule about a programme. It holds an id, a usual severity and its sources; every sentence about it is in text/.
 *
 * Data name what they are about by `phase`, `session`, `slot`, `item`, `exercise`, `muscle`,
 * `lane`, `side`, `fromWeek`: these tell one finding of a
 * check from another when a programme has been changed.
 */
export interface Check<Id extends string = string, D extends Facts = Facts> {
  readonly id: Id;
  readonly severity: Severity;
  readonly sources: readonly SourceId[];
  /** True when no plan can be made while it stands, so that it cannot be silenced. */
  readonly always?: true;
  run(look: Look): readonly Found<D>[];
}
