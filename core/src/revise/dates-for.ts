import {
  afterMisses,
  type CalendarTask,
  notAsUsual,
  type Placed,
  type PlannedSession,
  placeSessions,
  sessionsToPlace,
  weekDaysOf,
  weeksOf,
  windowsOf,
} from "../calendar/index.ts";
import { addDays, type Day } from "../day.ts";
import { occurrencesOf } from "../measures/index.ts";
import type { Catalogue, Person, Place, Plan, Programme, Reason } from "../model/index.ts";
import { admitter, type OfferCode } from "../offer/index.ts";
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
  /** Sessions that stand on a day of their own and before all others, by the id of the occurrence. */
  readonly fixed?: ReadonlyMap<string, Day>;
  /** The hours between hard sessions are a must, before welcome hours and days of the week. */
  readonly keepHours?: true;
}

export interface Dated {
  readonly task: CalendarTask;
  readonly sessions: readonly PlannedSession[];
  readonly placed: Placed;
  /** Days away and other hours among the days of the task, and what followed each session that was missed. */
  readonly notAsUsual: readonly Reason[];
  /** Sessions that were missed and fell away, and those that went their way. */
  readonly skipped: readonly string[];
  /** A miss was answered, so that what stands was announced and stays. */
  readonly afterMiss: boolean;
}

/** What a place can lack for a session; all else that speaks against a form was judged when the plan was made. */
const KIT: readonly string[] = ["offer/equipment", "offer/out-of-order"] satisfies readonly OfferCode[];

/** Other places that lack something an exercise of a session needs, by the id of the occurrence. */
function lackedAt(input: DatesInput, sessions: readonly PlannedSession[]): ReadonlyMap<string, readonly string[]> {
  const { plan, person, others, catalogue, on } = input;
  const instead = person.instead.flatMap(({ windows }) => windows);
  const windows = [...person.windows, ...(person.cycle?.days ?? []), ...instead];
  const named = new Set(windows.flatMap(({ place }) => place ?? []));
  const doors = others
    .filter(({ id }) => named.has(id) && id !== person.place)
    .map((place) => ({ id: place.id, admit: admitter({ person, place, catalogue, on, byHand: true }) }));
  const byId = new Map(occurrencesOf(plan).map(({ id, session }) => [id, session]));
  const found = sessions.map(({ id }): readonly [string, readonly string[]] => {
    const slots = byId.get(id)?.blocks.flatMap((block) => block.slots) ?? [];
    const lacking = doors.filter(({ admit }) =>
      slots.some(({ exercise, dose }) => {
        const form = catalogue.exercises.get(exercise);
        const answer = form && admit(form, dose);
        return answer?.ok === false && answer.why.some(({ code }) => KIT.includes(code));
      }),
    );
    return [id, lacking.map((door) => door.id)];
  });
  return new Map(found.filter(([, places]) => places.length > 0));
}

/**
 * Puts the first weeks of a plan on real days of one person: their windows, the hours of the place, days away, order,
 * recovery, days of rest, and only at places that have what a session needs. What was missed is answered by its cause.
 *
 * @source garber2011, ours
 */
export function datesFor(input: DatesInput): Dated {
  const { plan, programme, person, place, others, catalogue, on, weeks } = input;
  const weekDays = weekDaysOf(person);
  const spans = weeksOf(person, on, weeks).map(({ first, last }) => ({ first: first - on, last: last - on }));
  const days = spans.length === 0 ? 0 : spans.at(-1)!.last + 1;
  let firstWeek = 0;
  const sessions = plan.phases.flatMap((phase, index) => {
    const perWeek = sessionsPerWeek(input, programme.phases[index]!);
    const planned = sessionsToPlace(phase, catalogue, perWeek, firstWeek);
    firstWeek += phase.weeks.length;
    return planned;
  });
  const lacking = lackedAt(input, sessions);
  const task: CalendarTask = {
    start: on,
    days,
    sessions: sessions
      .filter((session) => session.week < weeks)
      .map((session): PlannedSession => {
        const day = input.fixed?.get(session.id);
        const places = lacking.get(session.id);
        return {
          ...session,
          ...(day === undefined ? {} : { days: [day], fixed: true }),
          ...(places === undefined ? {} : { lackedAt: places }),
        };
      }),
    weekDays,
    ...(days === weeks * weekDays ? {} : { weeks: spans }),
    windows: windowsOf(person, place, on, days, others),
    carry: CARRY_DAYS,
    maxInRow: MOST_IN_ROW,
    gapHours: programme.weekly?.gap ?? USUAL_GAP_HOURS,
    ...(input.keepHours ? { gapIsMust: true } : {}),
  };
  const { why, ...then } = afterMisses(task, placeSessions(task), person.missed ?? []);
  return {
    ...then,
    sessions,
    notAsUsual: [...notAsUsual(person, on, addDays(on, days - 1)), ...why],
    afterMiss: then.task !== task,
  };
}
