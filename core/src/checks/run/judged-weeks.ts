import { isLight } from "../../measures/index.ts";
import { type Phase, slotsOf } from "../../model/index.ts";

/** Weeks of a phase that ask for the same. */
export interface JudgedWeek {
  /** The week that stands for all of them, 1 = first. */
  readonly week: number;
  readonly weeks: readonly number[];
  readonly light: boolean;
}

/**
 * The weeks of a phase that need to be looked at, each standing for all that ask for the same. Light weeks stand apart
 * and count only where doses held through them and through no full week.
 */
export function judgedWeeks(phase: Phase): readonly JudgedWeek[] {
  const changes = new Set([1]);
  for (const { work } of phase.sessions) {
    for (const block of work) {
      for (const slot of slotsOf(block)) for (const { week } of slot.changes ?? []) changes.add(week);
    }
  }
  const starts = [...changes].filter((week) => week >= 1 && week <= phase.weeks).sort((a, b) => a - b);
  return starts.map((start, index) => {
    const end = starts[index + 1] ?? phase.weeks + 1;
    const all = Array.from({ length: end - start }, (_, offset) => start + offset);
    const full = all.filter((week) => !isLight(phase, week));
    const weeks = full.length > 0 ? full : all;
    return { week: weeks[0]!, weeks, light: full.length === 0 };
  });
}
