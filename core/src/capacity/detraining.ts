import type { Trainee } from "./set-fact.ts";

/** So many weeks off cost next to nothing. Source: ogasawara2013. */
export const FREE_WEEKS = 3;
/** What a further week off costs, in ln units: 3 to 6 % over 10 weeks, the middle. Source: halonen2024. */
const PER_WEEK = 0.0064;
/** Over 60 years it costs more and sooner: 12 to 14 % over 12 weeks. Source: nascimento2022. */
const OLDER = { from: 60, freeWeeks: 1, perWeek: 0.0126 } as const;

/**
 * What time away takes from strength.
 *
 *   ln units lost = (weeks off − free weeks) × loss per week
 *
 *   up to 60 years: 3 free weeks, then 0.64 % a week, so that 10 weeks cost 4.5 %
 *   older: 1 free week, then 1.26 % a week, so that 12 weeks cost 13 %
 *
 * @param weeks weeks since the last session, 0 or more
 * @returns ln units, 0 or more; at most a half of all strength is ever taken
 * @source ogasawara2013, halonen2024, nascimento2022
 * @example lossAway(10, {}) //=> 0.0448
 */
export function lossAway(weeks: number, { age }: Trainee): number {
  const older = age !== undefined && age >= OLDER.from;
  const free = older ? OLDER.freeWeeks : FREE_WEEKS;
  return Math.min(Math.LN2, Math.max(0, weeks - free) * (older ? OLDER.perWeek : PER_WEEK));
}
