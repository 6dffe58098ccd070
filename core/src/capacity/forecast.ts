import type { KnownCapacity, ZoneState } from "./capacity.ts";
import { normalShare, Z80 } from "./normal.ts";
import { CURVE, HALF, tired } from "./readings.ts";
import { type Zone, zoneOf } from "./set-fact.ts";
import { sdOf } from "./track.ts";

/** What to expect of a set on the day of a capacity. */
export interface Forecast {
  /** Repetitions, or seconds of a hold, with the ends of an 80 % interval; not rounded, 0 or more. */
  readonly amount: { readonly median: number; readonly low: number; readonly high: number };
  /** Chance, 0 to 1, of so many whole repetitions, or seconds, or more. */
  readonly atLeast: (amount: number) => number;
  /** The same on a day like any other: without the luck of the day, which a step up need not fear. */
  readonly usually: (amount: number) => number;
  readonly zone: Zone;
  /** Sessions behind it. */
  readonly sessions: number;
  /** The zone it is carried from, where that of this set has too few sessions of its own. */
  readonly carried?: Zone;
  /** The last session went far past the end of the zone: any figure here is the least it may be. */
  readonly farPast: boolean;
}

/**
 * How many repetitions a set with a load will bring, and how sure that is.
 *
 *   reps = 30 × (e^level / kg − 1) − reserve − ½, in the zone in which that lies
 *   the interval holds what is not known of the level, the day, and the counting of repetitions and reserve; it is
 *   widened by how far past forecasts missed; certainty is lowered where less was done of what was asked than was said
 *
 * @param kg kilograms moved, over 0
 * @param reserve repetitions that are to be left; 0 for as many as possible
 * @param reps the repetitions asked about, whose zone tells; the one expected when left out
 * @param set its number in the session, 0 = first and fresh; each before it costs a little
 * @returns undefined for a capacity of holds alone
 * @source epley1985, mitter2022, ours
 */
export function forecast(
  capacity: KnownCapacity,
  asked: { readonly kg: number; readonly reserve?: number; readonly reps?: number; readonly set?: number },
): Forecast | undefined {
  const { reserve = 0, set = 0 } = asked;
  const kg = asked.kg * Math.exp(tired(set));
  if (capacity.best === "hold") return undefined;
  const near = capacity.zones[capacity.best]!;
  const zone = zoneOf(asked.reps === undefined ? repsAt(near.level, kg) - HALF : asked.reps + reserve);
  const state = capacity.zones[zone]!;
  const sd = sdOf(state, zone);
  const usual = usualSd(state);
  const over = (reps: number) => state.level - Math.log(kg * (1 + (reps + reserve) / CURVE));
  const counted = (level: number) => Math.max(0, repsAt(level, kg) - reserve - HALF);
  return {
    amount: {
      median: counted(state.level),
      low: counted(state.level - Z80 * sd),
      high: counted(state.level + Z80 * sd),
    },
    atLeast: (reps) => (reps <= 0 ? 1 : normalShare(over(reps) / sd + state.hits)),
    usually: (reps) => (reps <= 0 ? 1 : normalShare((over(reps) + state.hits * sd) / usual)),
    ...told(state, zone),
  };
}

/**
 * How long a hold will last, and how sure that is.
 *
 * @returns undefined where holds were not recorded
 * @source trunkHolds2021, ours
 */
export function forecastHold(capacity: KnownCapacity): Forecast | undefined {
  const state = capacity.zones.hold;
  if (state === undefined) return undefined;
  const sd = sdOf(state, "hold");
  return {
    amount: {
      median: Math.exp(state.level),
      low: Math.exp(state.level - Z80 * sd),
      high: Math.exp(state.level + Z80 * sd),
    },
    atLeast: (seconds) => (seconds <= 0 ? 1 : normalShare((state.level - Math.log(seconds)) / sd)),
    usually: (seconds) => (seconds <= 0 ? 1 : normalShare((state.level - Math.log(seconds)) / usualSd(state))),
    ...told(state, "hold"),
  };
}

/** What is not known of the level alone. */
function usualSd({ levelVar, missed, doubt }: ZoneState): number {
  return Math.sqrt(missed ** 2 * levelVar + doubt);
}

function told({ sessions, carried, farPast }: ZoneState, zone: Zone) {
  return { zone, sessions, farPast, ...(carried === undefined ? {} : { carried }) };
}

function repsAt(level: number, kg: number): number {
  return CURVE * (Math.exp(level) / kg - 1);
}
