import { capacityOf } from "../capacity/index.ts";
import { addDays } from "../day.ts";
import { exerciseHistory } from "../measures/index.ts";
import type { ExerciseId, Reason } from "../model/index.ts";
import { massOf } from "../units.ts";
import type { WatchInput } from "./watch-input.ts";

/** How far back a change is looked for. Ours, no source. */
export const TREND_WEEKS = 6;
/** Fewer sessions since then tell no stall from a slow gain; nor does an interval that reaches over so much. Ours. */
const LEAST_SESSIONS = 6;
const LEVEL_PERCENT = 5;

/** What can be lifted once, now against some weeks ago, in per cent with an 80 % interval. */
export type Trend =
  | {
      readonly kind: "gain" | "fall" | "level" | "unclear";
      readonly percent: number;
      readonly low: number;
      readonly high: number;
      /** Sessions recorded since then. */
      readonly sessions: number;
    }
  | { readonly kind: "unknown"; readonly missing: Reason };

/**
 * Whether somebody lifts more, less or the same as six weeks ago, told from noise by the interval and not by eye.
 *
 *   change = ln(now ÷ then); its interval = change ± √(half width now² + half width then²), both in logarithms
 *
 * A gain or a fall where the interval leaves out 0; level where it holds 0, reaches less than 5 % up and rests on six
 * sessions at least; otherwise nobody can tell. Both figures come from one record and hang together, so that the
 * interval is rather too wide: it calls less a change than there is.
 *
 * @source ours
 */
export function trendOf(input: WatchInput, id: ExerciseId): Trend | undefined {
  const exercise = input.catalogue.exercises.get(id);
  if (exercise === undefined) return undefined;
  const { today, dayOf, person } = input;
  const then = addDays(today, -7 * TREND_WEEKS);
  const history = exerciseHistory(input.log, id);
  const before = history.filter(({ at }) => dayOf(at) < then);
  const [old, now] = [
    capacityOf(exercise, before, { person, on: then, dayOf }).once,
    capacityOf(exercise, history, { person, on: today, dayOf }).once,
  ];
  if (now.kind === "unknown") return now;
  if (old.kind === "unknown") return old;
  const log = (part: "value" | "low" | "high") => [Math.log(massOf(now[part])), Math.log(massOf(old[part]))] as const;
  const [[nowAt, oldAt], [nowLow, oldLow], [nowHigh, oldHigh]] = [log("value"), log("low"), log("high")];
  const change = nowAt - oldAt;
  const half = Math.hypot((nowHigh - nowLow) / 2, (oldHigh - oldLow) / 2);
  const percent = (value: number) => Math.round(1000 * Math.expm1(value)) / 10;
  const [low, high] = [percent(change - half), percent(change + half)];
  const sessions = history.length - before.length;
  const isLevel = high < LEVEL_PERCENT && sessions >= LEAST_SESSIONS;
  const kind = low > 0 ? "gain" : high < 0 ? "fall" : isLevel ? "level" : "unclear";
  return { kind, percent: percent(change), low, high, sessions };
}
