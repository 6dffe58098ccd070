import { daysCanMend, explainPlacements, recut, recutSessions, trainingDays } from "@stave/core/calendar";
import { printDay } from "@stave/core/day";
import { CATALOGUE } from "@stave/core/exercises";
import type { Reason } from "@stave/core/model";
import { type Dated, datesFor } from "@stave/core/revise";
import { en, namesFrom, sayReason } from "@stave/core/text";
import { type Answer, failed, type Io } from "./answer.ts";
import { type PeopleOptions, type Planned, type Plans, readPlans, unserved } from "./plans.ts";
import { placeOf } from "./world.ts";

export interface ScheduleOptions extends PeopleOptions {
  readonly weeks: number;
}

/** The dates of one person's plan. */
export function datesOf({ person, programme, plan }: Planned, { roster, on }: Plans, weeks: number): Dated {
  return datesFor({
    plan,
    programme: programme.programme,
    person,
    place: placeOf(person, roster),
    others: roster.places,
    catalogue: CATALOGUE,
    on,
    weeks,
  });
}

/** Where the days of a week cannot keep a muscle's recovery, the content can: the slots of the first week dealt anew. */
function recutOf(
  { plan }: Planned,
  dated: Dated,
):
  | {
      readonly sessions: readonly { readonly key: string; readonly slots: readonly string[] }[];
      readonly why: readonly Reason[];
    }
  | undefined {
  const { task, placed } = dated;
  if (placed.parts.close === 0 || daysCanMend(task)) return undefined;
  const first = placed.placements.filter(({ session }) =>
    dated.sessions.some((one) => one.id === session && one.week === 0),
  );
  const keys = first.map(({ session }) => dated.sessions.find((one) => one.id === session)!.session);
  const week = plan.phases[0]!.weeks[0]!;
  const sessions = keys.flatMap((key) => week.sessions.filter((session) => session.key === key));
  if (sessions.length < 2) return undefined;
  const minutes = Math.max(...sessions.map((session) => session.minutes.high));
  const otherDays = trainingDays(task.windows.slice(0, task.weekDays), task.weekDays, minutes) - sessions.length;
  const found = recut({
    sessions: recutSessions(sessions, CATALOGUE),
    starts: first,
    gapHours: task.gapHours,
    minutes,
    weekDays: task.weekDays,
    otherDays: Math.max(0, otherDays),
  });
  return found.closeAfter < found.closeBefore ? { sessions: found.sessions, why: found.why } : undefined;
}

function clock(minutes: number): string {
  return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}

function words(planned: Planned, dated: Dated, { roster }: Plans): string {
  const titles = new Map(
    planned.plan.phases.flatMap((phase) =>
      phase.weeks.flatMap((week) =>
        week.sessions.map((session) => [`${phase.key}/${week.week}/${session.key}`, session.title] as const),
      ),
    ),
  );
  const names = namesFrom(CATALOGUE, { sessions: titles });
  const { sessions, rows, dropped } = explainPlacements(dated.task, dated.placed);
  const say = (reason: Reason) => sayReason(reason, names);
  const elsewhere = (id: string | undefined) => {
    const place = id === planned.person.place ? undefined : roster.places.find((each) => each.id === id);
    return place === undefined ? "" : `, ${place.name}`;
  };
  const lines = sessions.map(
    ({ session, day, start, place, why }) =>
      `  ${en.print.date(printDay(day))} ${clock(start)}  ${names.session(session)}${elsewhere(place)}${why.length > 0 ? `  ${why.map(say).join(" ")}` : ""}`,
  );
  const lost = dropped.map(
    ({ session, reason }) => `  without a day: ${names.session(session)} (${session}). ${say(reason)}`,
  );
  const anew = recutOf(planned, dated);
  const deal =
    anew === undefined
      ? []
      : [
          "  The days cannot be mended; these sessions would keep the hours:",
          ...anew.sessions.map(({ key, slots }) => `    ${key}: ${slots.join(", ")}`),
          ...anew.why.map((reason) => `    ${say(reason)}`),
        ];
  return [
    `${planned.person.name}, hours at the place:`,
    ...lines,
    ...rows.map((row) => `  ${say(row)}`),
    ...lost,
    ...deal,
  ].join("\n");
}

/** Places the sessions of plans on real days. */
export async function schedule(paths: readonly string[], options: ScheduleOptions, io: Io): Promise<Answer> {
  const command = "schedule";
  const read = await readPlans(paths, options, io.today);
  if (!read.ok) return failed(command, read.problems);
  const dated = read.value.plans.map((planned) => ({ planned, dated: datesOf(planned, read.value, options.weeks) }));
  const result = dated.map(({ planned, dated: { task, placed, sessions } }) => {
    const explained = explainPlacements(task, placed);
    const anew = recutOf(planned, { task, placed, sessions });
    return {
      person: planned.person.id,
      zone: placeOf(planned.person, read.value.roster).zone,
      sessions: explained.sessions.map(({ day, ...rest }) => ({ ...rest, day: printDay(day) })),
      rows: explained.rows,
      dropped: placed.dropped,
      points: placed.cost,
      equalPlans: placed.count,
      proven: placed.proven,
      ...(anew === undefined ? {} : { recut: anew }),
    };
  });
  return {
    command,
    result,
    findings: [],
    problems: unserved(read.value),
    words: `${dated.map((each) => words(each.planned, each.dated, read.value)).join("\n\n")}\n`,
  };
}
