import type { About } from "./about.ts";
import { refuseOutside } from "./refuse.ts";

/** How the question is asked: days of a usual week over the last 30 days, and minutes on those days. */
export const WEEKLY_ACTIVITY: About = { source: "hl7PhysicalActivity", who: "whoever answers for the last 30 days" };

/** Minutes of a week as a health record takes them: the number, the code of what it is, and its unit. */
export interface WeeklyActivity {
  readonly minutes: number;
  readonly loinc: "82290-8";
  /** As UCUM writes it. */
  readonly unit: "min/wk";
}

/**
 * Minutes a week of at least moderate activity, from two answers, in the form that health records exchange.
 *
 *   days a week × minutes on each
 *
 * @param days 0 to 7
 * @param minutes 0 to 1440
 * @throws RangeError outside
 * @source hl7PhysicalActivity
 * @example weeklyActivity(3, 40).minutes //=> 120
 */
export function weeklyActivity(days: number, minutes: number): WeeklyActivity {
  refuseOutside("minutes of a week", "days of a week", days, 0, 7);
  refuseOutside("minutes of a week", "minutes of a day", minutes, 0, 1440);
  return { minutes: days * minutes, loinc: "82290-8", unit: "min/wk" };
}
