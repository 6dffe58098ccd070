import { type AfterMiss, afterAMiss } from "@stave/core/calendar";
import type { MissCause, Plan } from "@stave/core/model";
import { type Dated, datesFor } from "@stave/core/revise";
import type { Planned, Plans } from "./plans.ts";
import { type Asked, missOf, type Wishes, wishesOf } from "./schedule-wishes.ts";
import { type Got, placeOf } from "./world.ts";

/** The dates of one person's plan. */
export function datesOf(
  { person, programme, plan, catalogue }: Planned,
  { roster, on }: Plans,
  weeks: number,
  wishes: Wishes = {},
): Dated {
  return datesFor({
    plan,
    programme: programme.programme,
    person,
    place: placeOf(person, roster),
    others: roster.places,
    catalogue,
    on,
    weeks,
    ...wishes,
  });
}

/** The dates of one person's plan, and what follows where a session was missed. */
export interface Days {
  readonly dated: Dated;
  readonly missed?: AfterMiss;
}

/** Dates as the coach asked for them: fixed ones, hours as a must, after a miss. */
export function daysAsked(planned: Planned, plans: Plans, weeks: number, asked: Asked): Got<Days> {
  const wishes = wishesOf(asked, planned, plans.on, weeks);
  if (!wishes.ok) return wishes;
  const dated = datesOf(planned, plans, weeks, wishes.value);
  const miss = missOf(asked, dated);
  if (!miss.ok) return miss;
  if (miss.value === undefined) return { ok: true, value: { dated } };
  return { ok: true, value: { dated, missed: afterAMiss(dated.task, dated.placed, miss.value) } };
}

/** What follows a miss, as a document says it. */
export function missedIn({ answer, skipped, why }: AfterMiss, { because }: Asked) {
  return { because: because as MissCause, answer, skipped, why };
}

/** The titles of the sessions of a plan, by their ids. */
export function titlesOf(plan: Plan): ReadonlyMap<string, string> {
  return new Map(
    plan.phases.flatMap((phase) =>
      phase.weeks.flatMap((week) =>
        week.sessions.map((session) => [`${phase.key}/${week.week}/${session.key}`, session.title] as const),
      ),
    ),
  );
}
