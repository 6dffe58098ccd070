import type { Day } from "../day.ts";

/** A session as its person rated it: minutes, and effort of the whole on 0 to 10, asked about half an hour after. */
export interface RatedSession {
  readonly day: Day;
  readonly minutes: number;
  /** Undefined: not said. It is never taken as 0. */
  readonly effort?: number;
}

/** Training load over days in a row, rest days counted as 0. */
export interface WeekLoad {
  /** One for each day, effort × minutes; several sessions of a day are added first. */
  readonly loads: readonly number[];
  readonly total: number;
  readonly mean: number;
  /** Sample standard deviation (n − 1) of the days. */
  readonly sd: number;
  /** Mean ÷ sd; undefined when every day is the same, which it cannot measure. */
  readonly monotony?: number;
  /** Total × monotony. */
  readonly strain?: number;
}

export type WeekLoadAnswer =
  | { readonly known: true; readonly week: WeekLoad }
  | { readonly known: false; readonly missing: readonly Day[] };

function loadOf({ minutes, effort }: Required<RatedSession>): number {
  if (!(effort >= 0 && effort <= 10)) {
    throw new RangeError(`Cannot load a session as its effort must be from 0 to 10: current value is ${effort}`);
  }
  if (!(minutes >= 0 && minutes <= 1440)) {
    throw new RangeError(`Cannot load a session as it must last 0 to 1,440 minutes: current value is ${minutes}`);
  }
  return effort * minutes;
}

/**
 * How much a person did on each of several days, how alike the days were and how both go together.
 *
 * load = effort × minutes; monotony = mean of the days ÷ their sample standard deviation; strain = total × monotony.
 * No source says which standard deviation; with n in place of n − 1 monotony is √(n ÷ (n − 1)) times as high. The
 * figures come from 25 athletes and say nothing about injury; they compare a person with themselves only.
 *
 * @param from first day
 * @param days how many, 2 to 31
 * @returns the days without a rating when there are any: the sum of the rest would be too low
 * @throws RangeError for an effort, a length or a number of days outside its range
 * @source foster1998
 */
export function weekLoad(sessions: readonly RatedSession[], from: Day, days = 7): WeekLoadAnswer {
  if (!(Number.isInteger(days) && days >= 2 && days <= 31)) {
    throw new RangeError(`Cannot compare days as there must be 2 to 31 of them: current value is ${days}`);
  }
  const inside = sessions.filter(({ day }) => day >= from && day < from + days);
  const missing = [...new Set(inside.filter(({ effort }) => effort === undefined).map(({ day }) => day))];
  if (missing.length > 0) return { known: false, missing: missing.toSorted((a, b) => a - b) };
  const loads = Array.from({ length: days }, () => 0);
  for (const session of inside) loads[session.day - from]! += loadOf(session as Required<RatedSession>);
  const total = loads.reduce((sum, load) => sum + load, 0);
  const mean = total / days;
  const sd = Math.sqrt(loads.reduce((sum, load) => sum + (load - mean) ** 2, 0) / (days - 1));
  const same = loads.every((load) => load === loads[0]);
  const monotony = mean / sd;
  return {
    known: true,
    week: { loads, total, mean, sd, ...(same ? {} : { monotony, strain: total * monotony }) },
  };
}
