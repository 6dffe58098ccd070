import type { Coached } from "./coach.ts";
import { type Estimate, meanOf, ratioOf } from "./estimates.ts";

/** What one way of coaching did, per person. */
export interface WayFigures {
  readonly steps: Estimate;
  /** Steps up to a load that was not within. */
  readonly tooSoon: Estimate;
  readonly stepsBack: Estimate;
  /** Weeks in which the next load would have been within. */
  readonly late: Estimate;
  /** Weeks in which the load asked was not within. */
  readonly heavy: Estimate;
}

/** Two ways with the same people on the same days. */
export interface OutcomeFigures {
  readonly people: number;
  /** Weeks trained per person. */
  readonly weeks: number;
  readonly ours: WayFigures;
  readonly plain: WayFigures;
  /** Ours less the plain rule, person by person; below 0 is better. */
  readonly less: { readonly tooSoon: Estimate; readonly late: Estimate; readonly heavy: Estimate };
}

/** One of the three levels at which certainty is held against what happened. */
export interface CertaintyFigures {
  /** The level, a share of 1, and the certainties that are nearer to it than to another. */
  readonly level: number;
  readonly from: number;
  readonly to: number;
  /** Mean of what was said. */
  readonly said: number;
  /** How often the load was within. */
  readonly happened: Estimate;
  readonly steps: number;
}

export const LEVELS = [
  { level: 0.7, from: 0.6, to: 0.775 },
  { level: 0.85, from: 0.775, to: 0.9 },
  { level: 0.95, from: 0.9, to: 1 },
] as const;

function tooSoon({ steps }: Coached): number {
  return steps.filter(({ within }) => !within).length;
}

function figuresOf(all: readonly Coached[], seed: number): WayFigures {
  const mean = (figure: (one: Coached) => number) => meanOf(all.map(figure), seed)!;
  return {
    steps: mean(({ steps }) => steps.length),
    tooSoon: mean(tooSoon),
    stepsBack: mean((one) => one.stepsBack),
    late: mean((one) => one.late),
    heavy: mean((one) => one.heavy),
  };
}

/**
 * @param ours one for each person
 * @param plain the same people in the same order
 * @throws RangeError without people, or with not as many
 */
export function judgeWays(ours: readonly Coached[], plain: readonly Coached[], seed: number): OutcomeFigures {
  if (!(ours.length > 0 && ours.length === plain.length))
    throw new RangeError(`Cannot compare as there must be the same people: ${ours.length} and ${plain.length}`);
  const less = (figure: (one: Coached) => number) =>
    meanOf(
      ours.map((one, at) => figure(one) - figure(plain[at]!)),
      seed,
    )!;
  return {
    people: ours.length,
    weeks: plain.reduce((sum, { weeks }) => sum + weeks, 0) / plain.length,
    ours: figuresOf(ours, seed),
    plain: figuresOf(plain, seed),
    less: { tooSoon: less(tooSoon), late: less((one) => one.late), heavy: less((one) => one.heavy) },
  };
}

/** @returns the levels near which something was said */
export function judgeCertainty(all: readonly Coached[], seed: number): readonly CertaintyFigures[] {
  return LEVELS.flatMap(({ level, from, to }) => {
    const near = all.map(({ steps }) =>
      steps.filter(({ certainty }) => certainty !== undefined && certainty >= from && (certainty < to || to === 1)),
    );
    const steps = near.flat();
    const happened = ratioOf(
      near.map((some) => [some.filter(({ within }) => within).length, some.length] as const),
      seed,
    );
    if (happened === undefined) return [];
    const said = steps.reduce((sum, { certainty }) => sum + certainty!, 0) / steps.length;
    return [{ level, from, to, said, happened, steps: steps.length }];
  });
}
