import type { Coached } from "./coach.ts";
import { type Estimate, meanOf } from "./estimates.ts";

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
