import { explainPlacements, howGood, otherWay, sessionsAWeek } from "@stave/core/calendar";
import { printDay, type Weekday } from "@stave/core/day";
import type { Reason } from "@stave/core/model";
import { en, namesFrom, sayReason } from "@stave/core/text";
import { titlesOf } from "./days.ts";
import type { Plans } from "./plans.ts";
import type { Scheduled } from "./schedule.ts";
import { recutOf } from "./schedule-recut.ts";

function clock(minutes: number): string {
  return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}

/** The days of one person in words: what follows a miss, every session with its reasons, and the next best way of each week. */
export function scheduleWords(
  { planned, dated, missed, ways }: Scheduled,
  { roster }: Plans,
  weekBegins: Weekday,
): string {
  const { task, placed } = missed ?? dated;
  const titles = titlesOf(planned.plan);
  const names = namesFrom(planned.catalogue, { sessions: titles });
  const say = (reason: Reason) => sayReason(reason, names);
  // The same session comes every week: why one has no day names others with their week.
  const withWeeks = namesFrom(planned.catalogue, {
    sessions: new Map([...titles].map(([id, title]) => [id, `${title} (week ${id.split("/")[1]})`])),
  });
  const { sessions, rows, dropped } = explainPlacements(task, placed);
  const elsewhere = (id: string | undefined) => {
    const place = id === planned.person.place ? undefined : roster.places.find((each) => each.id === id);
    return place === undefined ? "" : `, ${place.name}`;
  };
  const lines = sessions.map(
    ({ session, day, start, place, why }) =>
      `  ${en.print.date(printDay(day))} ${clock(start)}  ${names.session(session)}${elsewhere(place)}${why.length > 0 ? `  ${why.map(say).join(" ")}` : ""}`,
  );
  const aWeek = sessionsAWeek(
    placed.placements.map(({ day }) => day),
    weekBegins,
  );
  const lost = dropped.map(
    ({ session, reason, changes }) =>
      `  without a day: ${names.session(session)} (${session}). ${[reason, ...changes].map((why) => sayReason(why, withWeeks)).join(" ")}`,
  );
  const others = ways.flatMap(({ week, others: [first] }) =>
    first === undefined ? [] : [otherWay(placed, week, first)],
  );
  const anew = missed === undefined ? recutOf(planned, dated) : undefined;
  const deal =
    anew === undefined
      ? []
      : [
          "  The days cannot be mended; these sessions would keep the hours:",
          ...anew.sessions.map(({ key, slots }) => `    ${key}: ${slots.join(", ")}`),
          ...anew.why.map((reason) => `    ${say(reason)}`),
        ];
  return [
    `${planned.person.name} (${planned.person.id}), hours at the place:`,
    ...[...dated.notAsUsual, ...(missed?.why ?? [])].map((reason) => `  ${say(reason)}`),
    ...lines,
    ...rows.map((row) => `  ${say(row)}`),
    `  ${say(aWeek)}`,
    ...lost,
    ...(missed === undefined && !dated.afterMiss && placed.placements.length > 0 ? [`  ${say(howGood(placed))}`] : []),
    ...others.map((other) => `  ${say(other)}`),
    ...deal,
  ].join("\n");
}
