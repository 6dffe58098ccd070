import { averageOfSix } from "./average.ts";
import { coach } from "./coach.ts";
import type { Estimator } from "./estimator.ts";
import { foretell } from "./forecasts.ts";
import { type CertaintyFigures, judgeCertainty } from "./judge-certainty.ts";
import { type ChangeFigures, judgeChanges } from "./judge-changes.ts";
import { type CoverageFigures, type ForecastFigures, judgeForecasts, judgeIntervals } from "./judge-forecasts.ts";
import { judgeWays, type OutcomeFigures } from "./judge-ways.ts";
import { twoForTwoPlain } from "./ways.ts";
import type { World } from "./world.ts";

/** How large a simulation is, and which chance it meets. */
export interface Size {
  readonly people: number;
  readonly weeks: number;
  readonly seed: number;
}

/** What became of the people of one world. Figures that nobody could reckon are left out. */
export interface WorldFigures extends Size {
  readonly world: string;
  readonly forecast?: ForecastFigures;
  readonly coverage?: CoverageFigures;
  /** How sure ours was of sets and of steps up, against what came of them. */
  readonly certainty: { readonly sets: readonly CertaintyFigures[]; readonly steps: readonly CertaintyFigures[] };
  readonly changes: ChangeFigures;
  readonly outcome: OutcomeFigures;
}

/**
 * One world: what both forecasters foretold of the same records, and what became of the same people under both ways of
 * coaching. The same arguments give the same figures.
 *
 * @param size at least one person
 */
export function simulateWorld(world: World, { people, weeks, seed }: Size, ours: Estimator): WorldFigures {
  const everybody = Array.from({ length: people }, (_, index) => index);
  const told = everybody.flatMap((index) => foretell(world, seed, index, weeks, ours, averageOfSix));
  const coached = everybody.map((index) => coach(world, seed, index, weeks, ours.way));
  const plain = everybody.map((index) => coach(world, seed, index, weeks, twoForTwoPlain));
  const sets = told.flatMap(({ person, sure }) => (sure === undefined ? [] : [{ person, ...sure }]));
  const steps = coached.flatMap(({ steps: some }, person) =>
    some.flatMap(({ certainty: chance, within: happened }) =>
      chance === undefined ? [] : [{ person, chance, happened }],
    ),
  );
  const forecast = judgeForecasts(told, seed);
  const coverage = judgeIntervals(told, seed);
  return {
    world: world.id,
    people,
    weeks,
    seed,
    ...(forecast === undefined ? {} : { forecast }),
    ...(coverage === undefined ? {} : { coverage }),
    certainty: { sets: judgeCertainty(sets, seed), steps: judgeCertainty(steps, seed) },
    changes: judgeChanges(told, seed),
    outcome: judgeWays(coached, plain, seed),
  };
}
