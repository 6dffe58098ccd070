import type { Json, Reason } from "../model/index.ts";

/**
 * What a coach is told of a person's record. Each code names one sentence; its data are listed beside it. Days are
 * written YYYY-MM-DD; loads of sessions are effort × minutes; weeks are the seven days that end yesterday.
 */
export const WATCH_CODES = [
  // What calls for a look.
  /** days: since the last record or the first day of the plan, sessions: planned since then */
  "watch/silent",
  /** until */
  "watch/away",
  /** because, on, session */
  "watch/missed",
  /** where, howMuch: 0–10, on: nobody has asked how the morning after was */
  "watch/ask-morning",
  /** where, was, now: 0–10, on */
  "watch/morning-worse",
  /** where, days: how late it was said, now: 0–10 */
  "watch/morning-late",
  /** on: the first session; signs that want a doctor are asked for on the two days after it */
  "watch/ask-after-first",
  /** on, muscles: that nothing had trained for two weeks or more; the same signs are asked for */
  "watch/ask-after-new",
  /** on, about, text: a note of the last days */
  "watch/noted",
  /** on, devices: how many say what was done in one session */
  "watch/two-devices",
  /** session, on: the day that a device's clock showed, before the plan or after today */
  "watch/clock",
  /** muscle, sets: of the last week, mean: of the weeks before, weeks: how many these are */
  "watch/much-more",
  /** exercise, low, high: per cent, weeks, sessions */
  "watch/fall",
  "watch/level",
  // Figures beside it.
  "watch/gain",
  "watch/unclear",
  /** known, of: movements of the last weeks; weeks */
  "watch/trends-known",
  /** asked, done, early, days, setsAsked, setsDone, missed: { because: sessions } */
  "watch/adherence",
  /** total, monotony or null, strain or null, before: totals of the weeks before or null, oldest first */
  "watch/week-load",
  /** days without a rating */
  "watch/load-unrated",
] as const;
export type WatchCode = (typeof WATCH_CODES)[number];

export function reason(code: WatchCode, data: Readonly<Record<string, Json>> = {}): Reason {
  return { code, data };
}
