import { addDays, type Day } from "../day.ts";
import type { RecordFold } from "./record.ts";
import { type RatedSession, type WeekLoadAnswer, weekLoad } from "./session-load.ts";

const DAYS = 7;

/**
 * Every session and every work outside the plan as it was rated. A session that nobody rated stands there without its
 * effort, and is never taken as 0.
 */
export function ratedSessions(
  { sessions, ratings, outside }: Pick<RecordFold, "sessions" | "ratings" | "outside">,
  dayOf: (at: number) => Day,
): readonly RatedSession[] {
  const bySession = new Map(ratings.map(({ session, data }) => [session, data]));
  const rated = (day: Day, effort: number | "not said" | undefined, minutes: number): RatedSession =>
    typeof effort === "number" ? { day, minutes, effort } : { day, minutes };
  return [
    ...sessions.map(({ session, at }) => {
      const said = bySession.get(session);
      return rated(dayOf(at), said?.effort, said?.minutes ?? 0);
    }),
    ...outside.map(({ at, data }) => rated(dayOf(at), data.effort, data.minutes)),
  ];
}

/** The load of each of some weeks of seven days that end the day before `to`, oldest first. */
export function loadWeeks(
  record: Pick<RecordFold, "sessions" | "ratings" | "outside">,
  dayOf: (at: number) => Day,
  to: Day,
  weeks: number,
): readonly WeekLoadAnswer[] {
  const rated = ratedSessions(record, dayOf);
  return Array.from({ length: weeks }, (_, at) => weekLoad(rated, addDays(to, DAYS * (at - weeks)), DAYS));
}
