import type { Day } from "../day.ts";
import { type Occurrence, occurrencesOf } from "../measures/index.ts";
import { datesFor } from "./dates-for.ts";
import type { PlannedPerson } from "./situation.ts";

/** A session of a plan on the day it is planned for. */
export interface SessionDay {
  readonly occurrence: Occurrence;
  readonly day: Day;
  /** Wall minutes after midnight. */
  readonly from: number;
}

/** @returns the sessions of a whole plan that have a day, in the order of their days */
export function sessionDays(person: PlannedPerson): readonly SessionDay[] {
  const { plan, programme } = person;
  const weeks = programme.phases.reduce((sum, phase) => sum + phase.weeks, 0);
  const byId = new Map(occurrencesOf(plan).map((occurrence) => [occurrence.id, occurrence]));
  return datesFor({ ...person, weeks })
    .placed.placements.flatMap(({ session, day, start }) => {
      const occurrence = byId.get(session);
      return occurrence === undefined ? [] : [{ occurrence, day, from: start }];
    })
    .sort((a, b) => a.day - b.day || a.from - b.from);
}
