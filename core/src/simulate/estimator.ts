import { type Capacity, capacityOf, forecast as forecastSet } from "../capacity/index.ts";
import type { Dose } from "../model/index.ts";
import { proposalsFor } from "../progress/index.ts";
import { inKg, massOf } from "../units.ts";
import { trendOf } from "../watch/index.ts";
import type { Chancer, Changer, Forecaster } from "./forecasts.ts";
import type { Asked } from "./lifter.ts";
import { situationOf } from "./made-up-room.ts";
import { MOVEMENT } from "./recorded.ts";
import { ASKED_ALWAYS } from "./start.ts";
import type { Moment, Way } from "./ways.ts";

/** What is tried: a way to foretell, how sure it is of a set, and a way of coaching. */
export interface Estimator {
  readonly forecast: Forecaster;
  readonly chance: Chancer;
  readonly change: Changer;
  readonly way: Way;
}

/** Whole repetitions are counted, half a one is thrown away on average. */
const HALF = 0.5;
/** Rounds until the load is that for the repetitions asked about; a zone of repetitions has its own state. */
const ROUNDS = 3;

function capacityAt(moment: Moment): Capacity {
  const { person, today: on, dayOf } = situationOf(moment);
  return capacityOf(MOVEMENT, moment.history, { person, on, dayOf }).capacity;
}

/** Foretells repetitions with a load; what is wanted is the load for repetitions, by the same w(1 + r / 30). */
const forecast: Forecaster = (occasion) => {
  const capacity = capacityAt(occasion);
  if (capacity.kind === "unknown") return undefined;
  const loadFor = (load: number, counted: number) => (load * (1 + (counted + HALF) / 30)) / (1 + occasion.reps / 30);
  let load = occasion.asked.loadKg;
  for (let round = 1; ; round++) {
    const found = forecastSet(capacity, { kg: load });
    if (found === undefined) return undefined;
    const { median, low, high } = found.amount;
    if (round === ROUNDS) return { middle: loadFor(load, median), low: loadFor(load, low), high: loadFor(load, high) };
    load = loadFor(load, median);
  }
};

const chance: Chancer = (occasion, { loadKg, reps, set }) => {
  const capacity = capacityAt(occasion);
  if (capacity.kind === "unknown") return undefined;
  return forecastSet(capacity, { kg: loadKg, reserve: occasion.asked.reserve, set })?.atLeast(reps);
};

const change: Changer = (occasion) => {
  const situation = situationOf(occasion);
  const trend = trendOf({ ...situation, days: [], on: situation.today }, MOVEMENT.id);
  return trend === undefined || trend.kind === "unknown" ? undefined : trend.kind;
};

/** What is asked when a dose was decided: its first set speaks for all. */
function askedBy(dose: Dose, before: Asked): Asked {
  const [set] = dose.sets;
  const reps = set?.amount.kind === "reps" ? set.amount.span : before.reps;
  const loadKg = set?.load === undefined ? before.loadKg : inKg(massOf(set.load));
  return { loadKg, reps, reserve: set?.reserve?.from ?? before.reserve, sets: dose.sets.length };
}

/** A coach who takes everything that is proposed. A load goes back to the dose that the programme asks. */
const way: Way = (moment) => {
  const { asked, dose } = moment;
  const [item] = proposalsFor(situationOf(moment));
  const patch = item?.proposal.patch;
  const sure = item?.certainty === undefined ? {} : { certainty: item.certainty.chance };
  if (patch?.change === "load") return { asked: { ...ASKED_ALWAYS, loadKg: inKg(massOf(patch.load)) }, ...sure };
  if (patch?.change === "reps") return { asked: askedBy(patch.dose, asked), dose: patch.dose, ...sure };
  return dose === undefined ? { asked } : { asked, dose };
};

/** Stave's own, as a coach gets it. */
export const OURS: Estimator = { forecast, chance, change, way };
