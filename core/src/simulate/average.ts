import { type DoneSet, leastOf, type SlotSession } from "../measures/index.ts";
import { inKg, massOf } from "../units.ts";
import type { Forecast, Occasion } from "./forecasts.ts";

/** Sessions that are averaged. */
const SESSIONS = 6;
/** Whole repetitions are counted, so that about half a one is thrown away. */
const HALF = 0.5;
/** Two-sided 80 % point of the normal distribution. */
const Z80 = 1.2816;

/** Kilograms that could be lifted once, by w(1 + r / 30), r with those in reserve and a half; none without a reserve. */
function shownBy({ lifted, reps, reserve }: DoneSet): number | undefined {
  const done = leastOf(reps);
  if (lifted === undefined || done === undefined || reserve === undefined || !(done + reserve >= 1)) return undefined;
  return inKg(massOf(lifted)) * (1 + (done + reserve + HALF) / 30);
}

/** What a session shows: the best of its sets. It foretells better in these worlds than the first of them or their mean. */
function shownIn({ sets }: SlotSession): number | undefined {
  const shown = sets.flatMap((set) => shownBy(set) ?? []);
  return shown.length === 0 ? undefined : Math.max(...shown);
}

/**
 * The yardstick: the mean of what the last six sessions showed. Its 80 % interval comes from how far it lay off so far,
 * session by session, as anybody could reckon who kept the record.
 *
 * @returns undefined until three sessions have shown something, two of which it had foretold
 * @source epley1985, ours
 */
export function averageOfSix({ history, reps }: Pick<Occasion, "history" | "reps">): Forecast | undefined {
  const shown = history.flatMap((session) => shownIn(session) ?? []);
  if (shown.length < 3) return undefined;
  const meanBefore = (at: number) => {
    const last = shown.slice(Math.max(0, at - SESSIONS), at);
    return last.reduce((sum, each) => sum + each, 0) / last.length;
  };
  const misses = shown.slice(1).map((each, at) => Math.log(each / meanBefore(at + 1)));
  const spread = Math.sqrt(misses.reduce((sum, miss) => sum + miss * miss, 0) / misses.length);
  const middle = meanBefore(shown.length) / (1 + reps / 30);
  return { middle, low: middle * Math.exp(-Z80 * spread), high: middle * Math.exp(Z80 * spread) };
}
