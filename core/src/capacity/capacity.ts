import type { Day } from "../day.ts";
import type { Json, Reason } from "../model/index.ts";
import { Z80 } from "./normal.ts";
import { CURVE, type Reading, readingsOf } from "./readings.ts";
import { type SetFact, type Trainee, ZONE_TOP, ZONES, type Zone } from "./set-fact.ts";
import { type Track, trackOf } from "./track.ts";

/** Why nobody can say what somebody can do: what is missing, in the order in which a set is asked about it. */
export const CAPACITY_CODES = [
  /** no data: a band or a height, so its number is no weight on one scale */
  "capacity/no-scale",
  /** no data: moved with the body, whose weight is not known */
  "capacity/body-unknown",
  /** weeks */
  "capacity/not-recorded",
  /** sets */
  "capacity/load-unknown",
  /** sets */
  "capacity/reps-unsaid",
  /** sets */
  "capacity/reserve-unsaid",
  /** sets: holds, all ended when the time that was asked was over */
  "capacity/hold-as-asked",
  /** sessions: that say something for sure, needed: so many */
  "capacity/few-sessions",
  /** sessions: so far apart that one of them must be wrong */
  "capacity/contradict",
  /** most: repetitions, with those in reserve, up to which there is a figure for one */
  "capacity/over-ten",
  /** exercise: from which, by: tool, arms or rung, low, high: loads, sessions; beside what is missing */
  "capacity/carried-from",
] as const;
export type CapacityCode = (typeof CAPACITY_CODES)[number];

/** One zone of a capacity. */
export interface ZoneState extends Track {
  /** The zone it is carried from, where this one has too few sessions of its own: then it is only a wide guess. */
  readonly carried?: Zone;
}

export interface KnownCapacity {
  readonly kind: "known";
  readonly on: Day;
  /** The zone in which most was told; the others are its neighbours' or their own. */
  readonly best: Zone;
  readonly zones: Readonly<Partial<Record<Zone, ZoneState>>>;
}

/** What somebody can do in one movement on a day, zone by zone; or what is missing. */
export type Capacity = KnownCapacity | { readonly kind: "unknown"; readonly missing: Reason };

/** What is older says nothing of now. Ours, no source. */
const RECENT_WEEKS = 26;
/** Fewest sure sessions for a figure: first tests learn more than they tell. Source: hammarstrom2020. */
const FEWEST = 2;
/**
 * How far people differ from the curve between zones, in ln units: at 70 % of one person's maximum 14 ± 4 repetitions
 * were seen, 0.09; less between neighbours. Source: cooke2019, reynolds2006.
 */
const BETWEEN = { low: 0, middle: 0.04, high: 0.1 } as const;
/** How far the maximum for one lies from the curve at up to 5 and at up to 10 repetitions, ln units. Source: reynolds2006. */
const ONCE_SD = { low: 0.02, middle: 0.04 } as const;

/**
 * What somebody can do in one movement, followed from session to session, for each zone of repetitions by itself: 1–5,
 * 6–10, over 10, with those in reserve; and for holds.
 *
 * @param facts sets of one person and one movement, in any order; those after `on` do not count
 * @param on the day for which it is said
 * @returns unknown, with what is missing, under two sessions that say something for sure
 * @source epley1985, kalman1960, mitter2022, hammarstrom2020, cooke2019, halonen2024, ours
 */
export function capacity(facts: readonly SetFact[], on: Day, who: Trainee = {}): Capacity {
  const recent = facts.filter(({ day }) => day <= on && day > on - RECENT_WEEKS * 7);
  const readings = readingsOf(recent);
  const zones: Partial<Record<Zone, ZoneState>> = {};
  for (const zone of ZONES) {
    const track = trackOf(
      readings.filter((reading) => reading.zone === zone),
      on,
      who,
    );
    if (track !== undefined) zones[zone] = track;
  }
  const own = ZONES.filter((zone) => zones[zone] !== undefined);
  const best = own.toSorted((a, b) => zones[b]!.sessions - zones[a]!.sessions)[0];
  if (best === undefined) return { kind: "unknown", missing: missingFrom(recent, readings) };
  if (best !== "hold") {
    for (const zone of ["low", "middle", "high"] as const) zones[zone] ??= carried(zones, best, zone);
  }
  return { kind: "known", on, best, zones };
}

function carried(
  zones: Readonly<Partial<Record<Zone, ZoneState>>>,
  from: Exclude<Zone, "hold">,
  to: Exclude<Zone, "hold">,
): ZoneState {
  const state = zones[from]!;
  return { ...state, levelVar: state.levelVar + (BETWEEN[to] - BETWEEN[from]) ** 2, carried: from };
}

/** What can be lifted once, in kilograms moved, with an 80 % interval. */
export interface Once {
  readonly kg: number;
  readonly low: number;
  readonly high: number;
  readonly sessions: number;
}

/** Less sure than this, ln units, a figure is none: two sessions that are more than a third apart. Ours, no source. */
const MOST_SPREAD = 0.175;

/**
 * The one figure that people ask for. Sets above ten repetitions give none, since past that no equation is sure.
 *
 *   kg = e^level × 30 / 31; ± 1.28 × what is not known of the level and of this person's curve
 *
 * @returns what is missing where only holds or sets above ten repetitions were recorded, or two sessions contradict each
 *   other
 * @source epley1985, mayhew1995, reynolds2006, ours
 */
export function onceOf({ zones }: KnownCapacity): Once | { readonly missing: Reason } {
  const own = (["low", "middle"] as const).filter((zone) => zones[zone] && zones[zone].carried === undefined);
  const spreads = own.map((zone) => ({ zone, spread: spreadOf(zones[zone]!, ONCE_SD[zone]) }));
  const [best] = spreads.sort((a, b) => a.spread - b.spread);
  if (best === undefined) return { missing: reason("capacity/over-ten", { most: ZONE_TOP.middle }) };
  const { level, sessions } = zones[best.zone]!;
  if (!(best.spread <= MOST_SPREAD)) return { missing: reason("capacity/contradict", { sessions }) };
  const kg = (Math.exp(level) * CURVE) / (CURVE + 1);
  const times = Math.exp(Z80 * best.spread);
  return { kg, low: kg / times, high: kg * times, sessions };
}

function spreadOf({ levelVar, missed, doubt }: ZoneState, curve: number): number {
  return Math.sqrt(levelVar * Math.max(1, missed) ** 2 + doubt + curve ** 2);
}

/** What the sets that come nearest to telling something still lack. */
function missingFrom(facts: readonly SetFact[], readings: readonly Reading[]): Reason {
  if (facts.length === 0) return reason("capacity/not-recorded", { weeks: RECENT_WEEKS });
  const sure = readings.filter(({ told }) => told?.how === "sure");
  if (sure.length > 0) return reason("capacity/few-sessions", { sessions: sure.length, needed: FEWEST });
  const holds = facts.filter(({ holdS }) => holdS !== undefined);
  if (holds.length > 0) return reason("capacity/hold-as-asked", { sets: holds.length });
  const loaded = facts.filter(({ kg }) => kg !== undefined && kg > 0);
  if (loaded.length === 0) return reason("capacity/load-unknown", { sets: facts.length });
  const counted = loaded.filter(({ reps }) => reps !== undefined);
  if (counted.length === 0) return reason("capacity/reps-unsaid", { sets: loaded.length });
  return reason("capacity/reserve-unsaid", { sets: counted.length });
}

function reason(code: CapacityCode, data: Readonly<Record<string, Json>> = {}): Reason {
  return { code, data };
}
