import type { Dose, RunEnd } from "../model/index.ts";
import type { SourceId } from "../sources.ts";

/** Running and walking in turn: so many bouts of so many seconds each. */
export interface RunWalkLevel {
  readonly level: number;
  readonly bouts: number;
  readonly runS: number;
  readonly walkS: number;
}

/** From the first minute of running to half an hour without a walk. A level is repeated until it goes well; it is no date. */
export const RUN_WALK_LEVELS: { readonly source: SourceId; readonly rows: readonly RunWalkLevel[] } = {
  source: "ours",
  rows: [
    { level: 1, bouts: 8, runS: 30, walkS: 90 },
    { level: 2, bouts: 10, runS: 60, walkS: 60 },
    { level: 3, bouts: 7, runS: 120, walkS: 60 },
    { level: 4, bouts: 6, runS: 180, walkS: 60 },
    { level: 5, bouts: 5, runS: 240, walkS: 60 },
    { level: 6, bouts: 4, runS: 360, walkS: 60 },
    { level: 7, bouts: 3, runS: 540, walkS: 60 },
    { level: 8, bouts: 2, runS: 840, walkS: 60 },
    { level: 9, bouts: 1, runS: 1800, walkS: 0 },
  ],
};

export interface NextRun {
  readonly level: RunWalkLevel;
  readonly how: "as it was" | "slower" | "not before walking is free of pain";
}

/** Good runs of a level before the next one. Common practice, no source. */
export const RUNS_OF_A_LEVEL = 3;
/** Days away after which one level is taken back, and after which two. Common practice, no source. */
export const BACK_AFTER_DAYS = [7, 14] as const;
/** Levels back after pain that grew while running. Ours. */
const BACK_AFTER_PAIN = 2;

/**
 * What a level asks for: bouts of running, with a walk between two of them. The walk after the last bout is the way home
 * and is not counted.
 *
 * @throws RangeError outside 1 to 9
 * @source ours
 * @example printDose(runWalkDose(2)) //=> "10 × 1 min, rest 60 s"
 */
export function runWalkDose(level: number): Dose {
  const row = RUN_WALK_LEVELS.rows.find((each) => each.level === level);
  if (row === undefined)
    throw new RangeError(
      `Cannot tell a run as level must be a whole number from 1 to ${RUN_WALK_LEVELS.rows.length}: current value is ${level}`,
    );
  const set = { amount: { kind: "time", span: { from: row.runS, to: row.runS } }, eachSide: false } as const;
  return { sets: Array.from({ length: row.bouts }, () => set), ...(row.walkS > 0 ? { restS: row.walkS } : {}) };
}

function levelAt(level: number): RunWalkLevel {
  const { rows } = RUN_WALK_LEVELS;
  return rows[Math.min(rows.length, Math.max(1, level)) - 1]!;
}

/**
 * The next run of somebody who runs and walks in turn. Which part gave out decides: breath asks for the same level, slower;
 * tired legs for the same again; pain that grew for two levels less, and not before walking is free of pain. Days
 * away take levels back, and what was missed is not made up.
 *
 * @param level 1 to 9, where the person stands
 * @param end what ended the last run
 * @param good good runs of this level so far, the last one counted
 * @param daysOff whole days without a run
 * @throws RangeError outside
 * @source ours, practice
 * @example nextRun(4, "pain", 0, 2).level.level //=> 2
 */
export function nextRun(level: number, end: RunEnd, good: number, daysOff: number): NextRun {
  const whole = Number.isInteger(level) && level >= 1 && level <= RUN_WALK_LEVELS.rows.length;
  if (!whole || !(good >= 0) || !(daysOff >= 0)) {
    throw new RangeError(
      `Cannot tell the next run as level must be a whole number from 1 to ${RUN_WALK_LEVELS.rows.length}, and runs and days 0 or more: current values are ${level}, ${good} and ${daysOff}`,
    );
  }
  if (end === "pain") return { level: levelAt(level - BACK_AFTER_PAIN), how: "not before walking is free of pain" };
  const how = end === "breath" ? "slower" : "as it was";
  const back = BACK_AFTER_DAYS.filter((days) => daysOff >= days).length;
  if (back > 0) return { level: levelAt(level - back), how };
  if (end === "done" && good >= RUNS_OF_A_LEVEL) return { level: levelAt(level + 1), how };
  return { level: levelAt(level), how };
}
