import { capacityOf } from "../measures/index.ts";
import { proposalsFor } from "../progress/index.ts";
import { inKg, type Load, massOf } from "../units.ts";
import type { Forecaster } from "./forecasts.ts";
import { situationOf } from "./made-up-room.ts";
import { instantOf, MOVEMENT } from "./recorded.ts";
import type { Way } from "./ways.ts";

/** What is tried: a way to foretell, and a way of coaching. */
export interface Estimator {
  readonly forecast: Forecaster;
  readonly way: Way;
}

/** What can be lifted once as the load for so many repetitions, by Epley's equation turned round. */
function forReps(once: Load, reps: number): number {
  return inKg(massOf(once)) / (1 + reps / 30);
}

const forecast: Forecaster = ({ history, day, reps }) => {
  const capacity = capacityOf(MOVEMENT, history, instantOf(day));
  if (capacity.kind === "unknown") return undefined;
  const { value, low, high } = capacity;
  return { middle: forReps(value, reps), low: forReps(low, reps), high: forReps(high, reps) };
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
