import { capacityOf, forecast as forecastSet } from "../capacity/index.ts";
import { proposalsFor } from "../progress/index.ts";
import { inKg, massOf } from "../units.ts";
import type { Forecaster } from "./forecasts.ts";
import { situationOf } from "./made-up-room.ts";
import { MOVEMENT } from "./recorded.ts";
import type { Way } from "./ways.ts";

/** What is tried: a way to foretell, and a way of coaching. */
export interface Estimator {
  readonly forecast: Forecaster;
  readonly way: Way;
}

/** Whole repetitions are counted, half a one is thrown away on average. */
const HALF = 0.5;
/** Rounds until the load is that for the repetitions asked about; a zone of repetitions has its own state. */
const ROUNDS = 3;

/** Foretells repetitions with a load; what is wanted is the load for repetitions, by the same w(1 + r / 30). */
const forecast: Forecaster = ({ history, asked, day, reps, world }) => {
  const { person, today: on, dayOf } = situationOf(history, asked, day, world);
  const { capacity } = capacityOf(MOVEMENT, history, { person, on, dayOf });
  if (capacity.kind === "unknown") return undefined;
  const loadFor = (load: number, counted: number) => (load * (1 + (counted + HALF) / 30)) / (1 + reps / 30);
  let load = asked.loadKg;
  for (let round = 0; round < ROUNDS; round++) {
    const found = forecastSet(capacity, { kg: load });
    if (found === undefined) return undefined;
    const { median, low, high } = found.amount;
    if (round === ROUNDS - 1)
      return { middle: loadFor(load, median), low: loadFor(load, low), high: loadFor(load, high) };
    load = loadFor(load, median);
  }
  return undefined;
};

/** A coach who takes everything that is proposed. */
const way: Way = ({ history, asked, day, world }) => {
  const patch = proposalsFor(situationOf(history, asked, day, world))[0]?.proposal.patch;
  if (patch?.change === "load") return { asked: { ...asked, loadKg: inKg(massOf(patch.load)) } };
  const amount = patch?.change === "reps" ? patch.dose.sets[0]?.amount : undefined;
  return { asked: amount?.kind === "reps" ? { ...asked, reps: amount.span } : asked };
};

/** Stave's own, as a coach gets it. */
export const OURS: Estimator = { forecast, way };
