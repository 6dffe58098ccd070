import { MUSCLES, type Muscle, type Pattern, type Programme } from "../model/index.ts";
import { weeklyBand } from "../tables/index.ts";
import { quarters } from "../units.ts";
import type { Row } from "./task.ts";

/** Points for each quarter-set under and over a weekly band. Ours, no source. */
const UNDER = 3;
const OVER = 4;
/** Sets that push and pull, or knee and hip work, may differ by in a week before it costs. Ours, no source. */
const BALANCE_SETS = 2;

/** Row numbers: muscles first, in their order, then the balances. */
export const PUSH_PULL = MUSCLES.length;
export const KNEE_HIP = MUSCLES.length + 1;

/**
 * The weekly rows of a programme. Where a person trains on fewer days than the programme has sessions, the sessions go
 * in turn, so that the sums of one round of sessions stand for more than a week and their bands widen with it.
 *
 * @param sessions how many sessions one round has
 * @param perWeek how many of them a week holds
 */
export function weeklyRows(programme: Programme, sessions: number, perWeek: number): readonly Row[] {
  const weeks = sessions / perWeek;
  const muscles = MUSCLES.map((muscle): Row => {
    const band = programme.weekly?.sets?.[muscle] ?? weeklyBand(programme.status, muscle);
    const must = programme.weekly?.must?.includes(muscle) ?? false;
    return {
      id: muscle,
      muscle,
      level: must ? "must" : "want",
      low: Math.floor(quarters(band.from) * weeks),
      high: Math.ceil(quarters(band.to) * weeks),
      underPoints: must ? 1 : UNDER,
      overPoints: must ? 1 : OVER,
    };
  });
  const width = Math.ceil(quarters(BALANCE_SETS) * weeks);
  const balance = (id: string): Row => ({
    id,
    level: "want",
    low: -width,
    high: width,
    underPoints: UNDER,
    overPoints: UNDER,
  });
  return [...muscles, balance("push − pull"), balance("knee − hip")];
}

const SIDES: Partial<Record<Pattern, readonly [row: number, sign: 1 | -1]>> = {
  "horizontal push": [PUSH_PULL, 1],
  "vertical push": [PUSH_PULL, 1],
  "horizontal pull": [PUSH_PULL, -1],
  "vertical pull": [PUSH_PULL, -1],
  squat: [KNEE_HIP, 1],
  "single leg": [KNEE_HIP, 1],
  hinge: [KNEE_HIP, -1],
  bridge: [KNEE_HIP, -1],
};

/** @returns which balance row so many sets of a pattern go to, in quarter-sets; undefined for patterns in none */
export function balanceEntry(pattern: Pattern, sets: number): readonly [row: number, amount: number] | undefined {
  const side = SIDES[pattern];
  return side === undefined ? undefined : [side[0], side[1] * quarters(sets)];
}

/** @returns the row of a muscle */
export function muscleRow(muscle: Muscle): number {
  return MUSCLES.indexOf(muscle);
}
