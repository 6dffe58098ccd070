import { type Day, printDay } from "../day.ts";
import type { Reason } from "../model/index.ts";
import { reason } from "./reasons.ts";
import type { WatchInput } from "./watch-input.ts";

/** Days without a record, with so many sessions planned in them, after which somebody is silent. Ours, no source. */
const SILENT_DAYS = 7;
const SILENT_SESSIONS = 2;
/** For so many days it is told that a session was missed, and why. Ours. */
const MISSED_DAYS = 7;

/** Whether somebody is away, or has said nothing for a while, or has said why not. */
export function silence(input: WatchInput): readonly Reason[] {
  const { person, record, days, on, today, dayOf } = input;
  const away = person.away.find(({ from, to }) => from <= today && today <= to);
  if (away !== undefined) return [reason("watch/away", { until: printDay(away.to) })];
  const missed = record.missed
    .filter(({ at }) => today - dayOf(at) <= MISSED_DAYS)
    .map(({ at, session, data }) =>
      reason("watch/missed", { because: data.because ?? "not said", on: printDay(dayOf(at)), session: session! }),
    );
  const said = new Set(record.missed.map(({ session }) => session));
  const last = Math.max(on - 1, ...[...record.sessions, ...record.missed].map(({ at }) => dayOf(at))) as Day;
  const isAway = (day: Day) => person.away.some(({ from, to }) => from <= day && day <= to);
  const planned = days.filter(
    ({ day, occurrence }) => last < day && day < today && !said.has(occurrence.id) && !isAway(day),
  );
  const silent = today - last > SILENT_DAYS && planned.length >= SILENT_SESSIONS;
  return silent ? [...missed, reason("watch/silent", { days: today - last, sessions: planned.length })] : missed;
}
