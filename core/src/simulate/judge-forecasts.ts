import { type Estimate, ratioOf } from "./estimates.ts";
import type { Forecast, Foretold } from "./forecasts.ts";

/** How well two forecasters did on the same sessions: those of which both said something. */
export interface ForecastFigures {
  /** Sessions that both foretold. */
  readonly sessions: number;
  /** Share of all sessions of which nothing was said. */
  readonly unsaid: { readonly ours: number; readonly average: number };
  /** Mean distance of the forecast from the truth, per cent. */
  readonly error: { readonly ours: Estimate; readonly average: Estimate };
  /** Mean of forecast over truth less one, per cent. */
  readonly bias: { readonly ours: Estimate; readonly average: Estimate };
  /** Error of ours over that of the average. */
  readonly ratio: Estimate;
}

/** How honest two 80 % intervals are, from the eleventh forecast of each person on. */
export interface CoverageFigures {
  readonly sessions: number;
  /** Share of truths within. */
  readonly covers: { readonly ours: Estimate; readonly average: Estimate };
  /** Mean width, per cent. */
  readonly width: { readonly ours: Estimate; readonly average: Estimate };
  /** Mean interval score, per cent; less is better. */
  readonly scores: { readonly ours: Estimate; readonly average: Estimate };
  /** Interval score of ours over that of the average. */
  readonly score: Estimate;
}

/** Forecasts of a person before their intervals are judged. */
const LEARNT = 10;
/** Share of truths that an 80 % interval may miss. */
const ALPHA = 0.2;

type Both = Foretold & { readonly ours: Forecast; readonly average: Forecast };

function isBoth(told: Foretold): told is Both {
  return told.ours !== undefined && told.average !== undefined;
}

/**
 * Of one forecast, per cent: its width, and ten times the distance by which the truth lies outside.
 *
 *   (high − low) + 2/α (low − truth)⁺ + 2/α (truth − high)⁺, of logarithms
 *
 * @source gneitingRaftery2007
 */
export function intervalScore({ low, high }: Forecast, truth: number): number {
  const [below, above] = [Math.log(low / truth), Math.log(truth / high)];
  return 100 * (Math.log(high / low) + (2 / ALPHA) * (Math.max(0, below) + Math.max(0, above)));
}

/** Sums of each person, to be drawn again by people. */
function perPerson(told: readonly Both[], above: (one: Both) => number, below: (one: Both) => number) {
  const sums = new Map<number, [number, number]>();
  for (const one of told) {
    const [a, b] = sums.get(one.person) ?? [0, 0];
    sums.set(one.person, [a + above(one), b + below(one)]);
  }
  return [...sums.values()];
}

/** @returns undefined when there is no session of which both said something */
export function judgeForecasts(told: readonly Foretold[], seed: number): ForecastFigures | undefined {
  const both = told.filter(isBoth);
  const each = (figure: (forecast: Forecast, truth: number) => number) => {
    const of = (who: "ours" | "average") =>
      ratioOf(
        perPerson(
          both,
          (one) => 100 * figure(one[who], one.truth),
          () => 1,
        ),
        seed,
      );
    const [ours, average] = [of("ours"), of("average")];
    return ours && average && { ours, average };
  };
  const distance = ({ middle }: Forecast, truth: number) => Math.abs(Math.log(middle / truth));
  const error = each(distance);
  const bias = each(({ middle }, truth) => Math.log(middle / truth));
  const ratio = ratioOf(
    perPerson(
      both,
      ({ ours, truth }) => distance(ours, truth),
      ({ average, truth }) => distance(average, truth),
    ),
    seed,
  );
  if (error === undefined || bias === undefined || ratio === undefined) return undefined;
  const unsaid = (who: "ours" | "average") => told.filter((one) => one[who] === undefined).length / told.length;
  return {
    sessions: both.length,
    unsaid: { ours: unsaid("ours"), average: unsaid("average") },
    error,
    bias,
    ratio,
  };
}

/** @returns undefined when nobody has so many forecasts */
export function judgeIntervals(told: readonly Foretold[], seed: number): CoverageFigures | undefined {
  const both = told.filter(isBoth).filter(({ before }) => before >= LEARNT);
  const each = (figure: (forecast: Forecast, truth: number) => number) => {
    const of = (who: "ours" | "average") =>
      ratioOf(
        perPerson(
          both,
          (one) => figure(one[who], one.truth),
          () => 1,
        ),
        seed,
      );
    const [ours, average] = [of("ours"), of("average")];
    return ours && average && { ours, average };
  };
  const covers = each(({ low, high }, truth) => Number(low <= truth && truth <= high));
  const width = each(({ low, high }) => 100 * Math.log(high / low));
  const scores = each(intervalScore);
  const score = ratioOf(
    perPerson(
      both,
      ({ ours, truth }) => intervalScore(ours, truth),
      ({ average, truth }) => intervalScore(average, truth),
    ),
    seed,
  );
  return covers && width && scores && score && { sessions: both.length, covers, width, scores, score };
}
