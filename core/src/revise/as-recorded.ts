import type { Day } from "../day.ts";
import { foldRecord, liftsFrom, logOf, recentWeeks } from "../measures/index.ts";
import type { Person } from "../model/index.ts";
import type { PlannedPerson } from "./situation.ts";

/**
 * A person with what their record tells of the time before a day beside what the roster says: the sets of each muscle in
 * recent weeks, and what was lifted. So the checks of a programme judge the first dose and a comeback by what was done.
 *
 * @param on first day that no longer counts
 */
export function asRecorded(planned: PlannedPerson, on: Day, person: Person = planned.person): Person {
  const { plan, events, revisionOf, catalogue, dayOf } = planned;
  const log = logOf(plan, foldRecord(events), revisionOf);
  const recent = recentWeeks(log, catalogue, dayOf, on, person.recent);
  const lifts = [...person.lifts, ...liftsFrom(log, planned, on)];
  return { ...person, lifts, ...(recent.length === 0 ? {} : { recent }) };
}
