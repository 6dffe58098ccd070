import {
  type CalendarTask,
  type Placed,
  type PlannedSession,
  placeSessions,
  sessionsToPlace,
  weekDaysOf,
  windowsOf,
} from "../calendar/index.ts";
import type { Day } from "../day.ts";
import type { Catalogue, Person, Place, Plan, Programme } from "../model/index.ts";
import { sessionsPerWeek } from "./plan-for.ts";

/** Hours wanted between two sessions that load a muscle hard, when the programme does not say. Source: garber2011. */
export const USUAL_GAP_HOURS = 48;
/** Training days in a row before a day without. Ours, no source. */
export const MOST_IN_ROW = 3;
/** Days after its home week on which a session may still be done. Ours, no source. */
const CARRY_DAYS = 2;

export interface DatesInput {
  readonly plan: Plan;
  readonly programme: Programme;
  readonly person: Person;
  readonly place: Place;
  readonly others: readonly Place[];
  readonly catalogue: Catalogue;
  /** First day of the plan. */
  readonly on: Day;
  /** How many weeks of the plan to date; a person on a rota counts the weeks of the rota. */
  readonly weeks: number;
}

export interface Dated {
  readonly task: CalendarTask;
  readonly sessions: readonly PlannedSession[];
  readonly placed: Placed;
}

/**
 * Puts the first weeks of a plan on real days of one person: their windows, the hours of the place, days away, order,
 * recovery, days of rest.
 *
 * @source garber2011, ours
 */
export function datesFor(input: DatesInput): Dated {
  const { plan, programme, person, place, others, catalogue, on, weeks } = input;
  const weekDays = weekDaysOf(person);
  const days = weeks * weekDays;
  let firstWeek = 0;
  const sessions = plan.phases.flatMap((phase, index) => {
    const perWeek = sessionsPerWeek(input, programme.phases[index]!);
    const planned = sessionsToPlace(phase, catalogue, perWeek, firstWeek);
    firstWeek += phase.weeks.length;
    return planned;
  });
  const task: CalendarTask = {
    start: on,
    days,
    sessions: sessions.filter((session) => session.week < weeks),
    weekDays,
    windows: windowsOf(person, place, on, days, others),
    carry: CARRY_DAYS,
    maxInRow: MOST_IN_ROW,
    gapHours: programme.weekly?.gap ?? USUAL_GAP_HOURS,
  };
  return { task, sessions, placed: placeSessions(task) };
}
