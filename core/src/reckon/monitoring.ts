import { RECENT_LOAD, recentLoad, WEEKLY_ACTIVITY, weeklyActivity } from "../equations/index.ts";
import { readPulseMessage } from "../model/index.ts";
import type { Figure, Reckoning } from "./reckoning.ts";

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

/** What is followed over weeks, and what comes from or goes to other systems. */
export const MONITORING: readonly Reckoning[] = [load, activityRecord, pulseMessage];
