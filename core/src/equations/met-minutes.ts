import { refuseOutside } from "./refuse.ts";

/** Days of a week and minutes on each of those days. */
export interface Spell {
  readonly days: number;
  readonly minutes: number;
}

/** A usual week by three kinds of activity, ten minutes and more at a time. */
export interface ActiveWeek {
  readonly walking: Spell;
  readonly moderate: Spell;
  readonly vigorous: Spell;
}

/** METs that the scoring gives each kind, and the most minutes of a day that count. */
export const MET_MINUTES = { walking: 3.3, moderate: 4, vigorous: 8, mostMinutes: 180 } as const;

export type ActivityClass = "low" | "moderate" | "high";

const KINDS = ["walking", "moderate", "vigorous"] as const;

/**
 * MET-minutes of a week and its class, by the scoring of the international activity questionnaire, short form.
 *
 *   MET-minutes = days × minutes × METs, summed; minutes over 180 a day of one kind count as 180
 *
 * High: vigorous on 3 days or more and 1500 MET-minutes, or 7 days of any mix and 3000. Moderate: vigorous on 3 days
 * for 20 minutes, or moderate and walking on 5 days for 30 minutes, or 5 days of any mix and 600. Meant for 15 to 69
 * years. Days of different kinds are added, as the scoring does, since nobody asked whether they were the same days.
 *
 * @param week days 0 to 7, minutes 0 to 1440
 * @param ageY 15 to 69
 * @returns MET-minutes a week, and the class
 * @throws RangeError outside the ranges
 * @source ipaq2005
 * @example metMinutes({ walking: { days: 5, minutes: 30 }, moderate: { days: 2, minutes: 30 }, vigorous: { days: 3, minutes: 20 } }, 40).total //=> 1215
 */
export function metMinutes(week: ActiveWeek, ageY: number): { readonly total: number; readonly class: ActivityClass } {
  refuseOutside("MET-minutes", "age in years", ageY, 15, 69);
  for (const kind of KINDS) {
    refuseOutside("MET-minutes", `days of ${kind}`, week[kind].days, 0, 7);
    refuseOutside("MET-minutes", `minutes of ${kind}`, week[kind].minutes, 0, 1440);
  }
  const of = (kind: (typeof KINDS)[number]) =>
    (MET_MINUTES[kind] * 10 * week[kind].days * Math.min(week[kind].minutes, MET_MINUTES.mostMinutes)) / 10;
  const total = KINDS.reduce((sum, kind) => sum + of(kind), 0);
  return { total, class: classOf(week, total) };
}

function classOf({ walking, moderate, vigorous }: ActiveWeek, total: number): ActivityClass {
  const done = (spell: Spell) => (spell.minutes > 0 ? spell.days : 0);
  const days = done(walking) + done(moderate) + done(vigorous);
  const long = (spell: Spell) => (spell.minutes >= 30 ? spell.days : 0);
  if ((done(vigorous) >= 3 && total >= 1500) || (days >= 7 && total >= 3000)) return "high";
  const enough = (vigorous.days >= 3 && vigorous.minutes >= 20) || long(walking) + long(moderate) >= 5;
  return enough || (days >= 5 && total >= 600) ? "moderate" : "low";
}

/**
 * Minutes of a week counted as moderate: a vigorous minute stands for two.
 *
 * @param moderateMin minutes a week, 0 or more
 * @param vigorousMin minutes a week, 0 or more
 * @throws RangeError for negative or unknown minutes, and for more than a week has
 * @source who2020
 * @example moderateMinutes(90, 40) //=> 170
 */
export function moderateMinutes(moderateMin: number, vigorousMin: number): number {
  refuseOutside("minutes of a week", "moderate minutes", moderateMin, 0, 10_080);
  refuseOutside("minutes of a week", "vigorous minutes", vigorousMin, 0, 10_080);
  return moderateMin + 2 * vigorousMin;
}
