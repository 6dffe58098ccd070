import { type Day, day, WEEKDAYS } from "../day.ts";
import { RECENT_LOAD, recentLoad, WEEKLY_ACTIVITY, weeklyActivity } from "../equations/index.ts";
import { weekLoad } from "../measures/index.ts";
import { readPulseMessage } from "../model/index.ts";
import type { Figure, Reckoning } from "./reckoning.ts";

/** Any Monday: a week is reckoned alone. */
const MONDAY = day("2027-01-04");

const activityRecord: Reckoning = {
  name: "activity-for-record",
  asks: [
    { key: "days", dimension: "count" },
    { key: "time", dimension: "time" },
  ],
  about: () => [WEEKLY_ACTIVITY],
  figures: (given) => {
    const { minutes, loinc, unit } = weeklyActivity(given.number("days"), given.number("time") / 60);
    const { source } = WEEKLY_ACTIVITY;
    return [
      { what: "active-minutes", source, value: minutes, unit: "min/week", decimals: 0 },
      { what: "record-code", source, value: `LOINC ${loinc}, ${unit}` },
    ];
  },
};

const load: Reckoning = {
  name: "recent-load",
  asks: [
    { key: "earlier", dimension: "count" },
    { key: "recent", dimension: "count" },
  ],
  about: () => [RECENT_LOAD],
  figures: (given) => {
    const days = (count: number, key: string) => Array<number>(count).fill(given.number(key));
    const { overUsual, overEarlier, fading } = recentLoad([...days(21, "earlier"), ...days(7, "recent")]);
    const { source } = RECENT_LOAD;
    return [
      { what: "recent-over-usual", source, value: overUsual, decimals: 2 },
      ...(overEarlier === undefined
        ? []
        : [{ what: "recent-over-earlier", source, value: overEarlier, decimals: 2 } as const]),
      { what: "recent-fading", source: "williams2017", value: fading, decimals: 2 },
    ];
  },
};

const pulseMessage: Reckoning = {
  name: "pulse-message",
  asks: [{ key: "bytes", mostBytes: 24 }],
  about: () => [{ source: "gattHeartRate", who: "any heart-rate sensor of the standard service" }],
  figures: (given) => {
    const message = readPulseMessage(given.bytes("bytes"));
    if (typeof message === "string")
      throw new RangeError("Cannot read a message as it must have as many bytes as its first byte says");
    const { bpm, contact, energyKj, gapsS } = message;
    const source = "gattHeartRate";
    return [
      { what: "pulse", source, value: bpm, unit: "bpm", decimals: 0 },
      { what: "skin-contact", source, value: contact === undefined ? "not told" : contact ? "yes" : "no" },
      ...(energyKj === undefined ? [] : [{ what: "energy-spent", source, value: energyKj, unit: "kJ" } as const]),
      ...gapsS.map((gap): Figure => ({ what: "between-beats", source, value: gap, unit: "s", decimals: 3 })),
    ];
  },
};

const weekLoadReckoning: Reckoning = {
  name: "week-load",
  asks: WEEKDAYS.map((key) => ({ key, list: "sessions" as const, optional: true as const })),
  about: () => [{ source: "foster1998", who: "25 athletes; it compares a person with themselves only", people: 25 }],
  figures: (given) => {
    const source = "foster1998";
    const sessions = WEEKDAYS.flatMap((key, at) =>
      given.sessions(key).map((session) => ({ day: (MONDAY + at) as Day, ...session })),
    );
    if (sessions.length === 0)
      throw new RangeError("Cannot judge a week of load as no session of it is given: write mon=60x7");
    const answer = weekLoad(sessions, MONDAY);
    if (!answer.known)
      throw new RangeError(
        `Cannot judge the load of the week. Missing: the effort on ${answer.missing.map((on) => WEEKDAYS[on - MONDAY]).join(", ")}; the sum of the rest would be too low`,
      );
    const { total, mean, sd, monotony, strain } = answer.week;
    const all = sd * Math.sqrt(6 / 7);
    return [
      { what: "week-load", source, value: total, decimals: 0 },
      { what: "day-mean", source, value: mean, decimals: 1 },
      { what: "day-sd", source, value: sd, decimals: 1 },
      ...(monotony === undefined || strain === undefined
        ? [{ what: "week-monotony", source, value: "not measurable, every day is the same" } as const]
        : [
            { what: "week-monotony", source, value: monotony, decimals: 2 } as const,
            { what: "week-strain", source, value: strain, decimals: 0 } as const,
            { what: "week-monotony-all", source, value: mean / all, decimals: 2 } as const,
            { what: "week-strain-all", source, value: (total * mean) / all, decimals: 0 } as const,
          ]),
    ];
  },
};

/** What is followed over weeks, and what comes from or goes to other systems. */
export const MONITORING: readonly Reckoning[] = [load, weekLoadReckoning, activityRecord, pulseMessage];
