import { addDays, type Day, printDay } from "../day.ts";
import type { Person, Reason } from "../model/index.ts";
import { reason } from "./reasons.ts";
import { weekDaysOf } from "./windows-of.ts";

/** First and last day of a week of a plan. */
export interface PlanWeekDays {
  readonly first: Day;
  readonly last: Day;
}

/**
 * On which days does each week of a plan fall? Seven days each, or those of the rota; days on which the plan waits for
 * the person are in no week, so that a week may be cut in two by them and the weeks after it come later.
 *
 * @param on first day of the plan
 * @param count how many weeks
 */
export function weeksOf(person: Pick<Person, "away" | "cycle">, on: Day, count: number): readonly PlanWeekDays[] {
  const waits = person.away.filter((away) => away.waits);
  const length = weekDaysOf(person);
  let next = on;
  const train = (): Day => {
    while (waits.some(({ from, to }) => from <= next && next <= to)) next = addDays(next, 1);
    const day = next;
    next = addDays(next, 1);
    return day;
  };
  return Array.from({ length: count }, () => {
    const days = Array.from({ length }, train);
    return { first: days[0]!, last: days.at(-1)! };
  });
}

/** What is not as usual on the days of a plan: days away, with the plan waiting or not, and other hours, by their days. */
export function notAsUsual(person: Pick<Person, "away" | "instead">, from: Day, to: Day): readonly Reason[] {
  const within = (one: { readonly from: Day; readonly to: Day }) => one.from <= to && one.to >= from;
  const away = person.away
    .filter(within)
    .map((one) => ({ ...one, code: one.waits ? "calendar/waits" : "calendar/away" }) as const);
  const other = person.instead.filter(within).map((one) => ({ ...one, code: "calendar/other-hours" }) as const);
  return [...away, ...other]
    .sort((a, b) => a.from - b.from)
    .map((one) => reason(one.code, { from: printDay(one.from), to: printDay(one.to), days: one.to - one.from + 1 }));
}
