import { sharedCount } from "./muscle-mask.ts";
import { closePoints, latePoints, MOVED_POINTS, NEXT_DAY_POINTS } from "./points.ts";
import { span } from "./starts.ts";
import type { CalendarTask, Levels } from "./task.ts";

const MINUTES_A_DAY = 1440;

/** What one unit of each level counts in a single number. Each is 1 + the most that all lower levels can add up to. */
export interface Weights {
  /** Of a session that a question asks to be placed; above all levels of a plan. */
  readonly asked: number;
  readonly fixed: number;
  readonly dropped: number;
  /** Of one point for hours missing: a level of its own when the hours are a must, else like any other point. */
  readonly close: number;
  readonly closeIsLevel: boolean;
}

/**
 * Weights that keep the levels of this task apart in one whole number, from its own largest windows, delays and shared
 * muscles.
 *
 * @throws RangeError when no number below 2^53 can hold them
 */
export function weightsOf(task: CalendarTask): Weights {
  const { sessions } = task;
  const close = mostClose(task);
  const late = Math.max(0, ...sessions.map((session) => lateMost(task, session)));
  const moved = sessions.some(({ announced }) => announced !== undefined) ? MOVED_POINTS : 0;
  const plain =
    Math.max(0, ...task.windows.flatMap((day) => day.map(({ cost }) => cost))) +
    latePoints(late) +
    moved +
    NEXT_DAY_POINTS;
  const own = task.gapIsMust === true;
  const points = sessions.length * (own ? plain : plain + close) + 1;
  const dropped = own ? points * (sessions.length * close + 1) : points;
  const fixed = dropped * (sessions.length + 1);
  const asked = fixed * (sessions.length + 1);
  if (!(asked * (sessions.length + 1) <= Number.MAX_SAFE_INTEGER)) {
    throw new RangeError(
      `Cannot place sessions as their levels would not stay whole numbers: ${sessions.length} sessions, ${close} points for hours missing before one of them`,
    );
  }
  return { asked, fixed, dropped, close: own ? points : 1, closeIsLevel: own };
}

function lateMost(task: CalendarTask, session: CalendarTask["sessions"][number]): number {
  const { homeEnd, last } = span(task, session);
  return Math.max(0, last - homeEnd);
}

/** Points for hours missing that one session can have at most, with all before it. */
function mostClose({ sessions, gapHours, before }: CalendarTask): number {
  const wanted = gapHours * 60;
  const all = sessions.reduce((mask, { hard }) => mask | hard, 0);
  const widest = sessions.reduce((most, { hard }) => Math.max(most, sharedCount(hard, all)), 0);
  let points = 0;
  for (let days = 1; days <= Math.ceil(gapHours / 24); days++) {
    points += closePoints(widest, (days - 1) * MINUTES_A_DAY + 1, wanted);
  }
  for (const { daysAgo, hard } of before?.past ?? []) {
    points += closePoints(sharedCount(hard, all), (daysAgo - 1) * MINUTES_A_DAY + 1, wanted);
  }
  return points;
}

/** @returns the levels that one number stands for, sessions asked for left out */
export function levelsIn(value: number, weights: Weights): Levels {
  let rest = value % weights.asked;
  const fixed = Math.floor(rest / weights.fixed);
  rest -= fixed * weights.fixed;
  const dropped = Math.floor(rest / weights.dropped);
  rest -= dropped * weights.dropped;
  const close = weights.closeIsLevel ? Math.floor(rest / weights.close) : 0;
  return { fixed, dropped, close, points: rest - close * weights.close };
}
