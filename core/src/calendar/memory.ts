import { sharedCount } from "./muscle-mask.ts";
import { closePoints } from "./points.ts";
import type { CalendarTask, PastSession } from "./task.ts";

const MINUTES_A_DAY = 1440;

/** What was loaded hard on one day, and from when. More than one only on days before the task. */
type Load = readonly Pick<PastSession, "hard" | "start">[];

/** What the last ceil(H / 24) days loaded, packed into one number. Equal numbers mean equal consequences. */
export interface Memory {
  /** How many different memories a day can have at most. */
  readonly size: number;
  /** The memory before the first day. */
  readonly first: number;
  /** Memory before the next day when this day rests, or places a session. */
  after(memory: number, day: number, placed?: { readonly hard: number; readonly from: number }): number;
  /** Points for a session that starts on a day, so close to what is remembered. */
  points(memory: number, day: number, hard: number, from: number): number;
}

/**
 * Packs the loads of the last days as digits, yesterday lowest; 0 is "nothing that any later start can be close to".
 * Loads are numbered day by day, so that digits stay small.
 *
 * @param mostADay how many sessions and starts the fullest day offers
 */
export function memoryOf(task: CalendarTask, mostADay: number): Memory {
  const wanted = task.gapHours * 60;
  const digits = Math.ceil(task.gapHours / 24);
  const base = mostADay + 2;
  const size = base ** digits;
  const earliest = Math.min(MINUTES_A_DAY, ...task.windows.flat().map(({ from }) => from));
  const past = Array.from(
    { length: digits },
    (_, k): Load => (task.before?.past ?? []).filter(({ daysAgo, hard }) => daysAgo === k + 1 && hard !== 0),
  );
  const placed: Load[][] = Array.from({ length: task.days }, () => [[]]);
  const loadOn = (day: number, digit: number): Load => (day < 0 ? past[-day - 1]! : placed[day]![digit]!);
  const matters = (load: Load, daysAgo: number): boolean =>
    load.some(({ start }) => daysAgo * MINUTES_A_DAY + earliest - start < wanted);

  const numberOf = (day: number, hard: number, start: number): number => {
    const loads = placed[day]!;
    const found = loads.findIndex((load) => load[0]?.hard === hard && load[0].start === start);
    return found > 0 ? found : loads.push([{ hard, start }]) - 1;
  };
  const keepNear = (memory: number, day: number): number => {
    let kept = 0;
    for (let k = digits, unit = size / base; k >= 1; k--, unit /= base) {
      const digit = Math.floor(memory / unit) % base;
      if (digit !== 0 && matters(loadOn(day - k, digit), k)) kept += digit * unit;
    }
    return kept;
  };

  return {
    size,
    first: keepNear(
      past.reduce((memory, load, k) => memory + (load.length > 0 ? base ** k : 0), 0),
      0,
    ),
    after(memory, day, session) {
      const digit = digits > 0 && session && session.hard !== 0 ? numberOf(day, session.hard, session.from) : 0;
      return keepNear(memory * base + digit, day + 1);
    },
    points(memory, day, hard, from) {
      let points = 0;
      for (let k = 1, rest = memory; rest > 0; k++, rest = Math.floor(rest / base)) {
        if (rest % base === 0) continue;
        for (const load of loadOn(day - k, rest % base)) {
          points += closePoints(sharedCount(load.hard, hard), k * MINUTES_A_DAY + from - load.start, wanted);
        }
      }
      return points;
    },
  };
}
