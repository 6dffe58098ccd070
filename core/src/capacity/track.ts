import type { Day } from "../day.ts";
import { lossAway } from "./detraining.ts";
import { meanAbove, normalHeight, normalShare } from "./normal.ts";
import type { Reading } from "./readings.ts";
import type { Trainee, Zone } from "./set-fact.ts";

/** What is believed of one zone: ln units. */
export interface Track {
  readonly level: number;
  /** ln units a week. */
  readonly trend: number;
  /** Variances of level and trend, and what they share. */
  readonly levelVar: number;
  readonly trendVar: number;
  readonly shared: number;
  /** Further variance where the only two sessions contradict each other: which is right is not known. */
  readonly doubt: number;
  readonly on: Day;
  /** Day of the last session of the movement. */
  readonly last: Day;
  /** Sessions that said something for sure. */
  readonly sessions: number;
  /** How far past forecasts missed, as a share of what was said: over 1 where intervals were too narrow. */
  readonly missed: number;
  /** By how many standard deviations of a forecast certainty is raised, going by how often what was asked was done; mostly under 0. */
  readonly hits: number;
  /** The last sure session went far past the end of the zone, so that the level is the least it may be. */
  readonly farPast: boolean;
}

/** Standard deviation of a day, and of one set's repetitions and reserve, in ln units, by zone. Source: mitter2022, grgic2020; hold: trunkHolds2021. */
export const DAY_SD: Readonly<Record<Zone, number>> = { low: 0.03, middle: 0.03, high: 0.035, hold: 0.08 };
export const SET_SD: Readonly<Record<Zone, number>> = { low: 0.03, middle: 0.035, high: 0.05, hold: 0.05 };
/** A set of its own varies by a third of what a reading of it does. Ours, no source. */
const OWN_PART = 3;
/** Growth a week that is expected before anything is known, and how sure that is. Source: steele2023, latella2020, ours. */
const GROWTH = { novice: 0.01, intermediate: 0.003, advanced: 0.001 } as const;
const GROWTH_SD = 0.005;
/** How much level and growth wander in a week. Ours, no source. */
const WANDER = 4.5e-5;
const TREND_WANDER = 1e-7;
/** Growth fades by so much a week. Ours, no source. */
const FADE = 0.98;
/** Training counts for so many weeks after a session; then it is time off. Ours, no source. */
const ACTIVE_WEEKS = 1.4;
/** A session moves the level as if it lay at most so many standard deviations off. Ours, no source. */
const MOST_OFF = 2;
/** Past forecasts weigh against so many that were right. Ours, no source. */
const TRUSTED = 6;
/** Past hits weigh against what is known before of how sure may be said: 0 ± 1 / √8 standard deviations. Ours, no source. */
const HITS_TRUSTED = 8;
/**
 * Certainty is lowered and raised by so many standard deviations at most: those who leave out what fell short look as if
 * they always did what was asked. One set counts as if it lay no further off than the last. Ours, no source.
 */
const MOST_LOWER = 1;
const MOST_HIGHER = 0.1;
const MOST_SURPRISE = 2.5;
/** Sessions from which the start is taken. Ours, no source. */
const FIRST = 3;
/** The middle of three varies so much more than their mean. Source: identity for the normal, π / 2. */
const MEDIAN_LOSS = Math.PI / 2;

/**
 * What a zone's readings amount to on a day: a level and its growth, followed from session to session.
 *
 * Between sessions the level grows by the trend while training goes on, and loses by time away. A reading moves it by
 * its gain; the gain depends on when and how often something was told and never on what, and a reading that lies far
 * off moves it no further than one two standard deviations off. So doing more never lowers the level of that day, and a
 * slip of the pen counts as one session. A lower bound moves it by what it leaves to be expected above it. Whether sets
 * did what was asked moves nothing but how sure is said.
 *
 * @param readings of one zone, in order of day
 * @param on day for which it is said, not before the last reading
 * @returns undefined with fewer than two sure readings
 * @source kalman1960, mitter2022, grgic2020, halonen2024, nascimento2022, steele2023, latella2020, ours
 */
export function trackOf(readings: readonly Reading[], on: Day, who: Trainee): Track | undefined {
  const sure = readings.flatMap(({ day, told }) => (told?.how === "sure" ? [{ day, ...told }] : []));
  const first = sure.slice(0, FIRST);
  if (first.length < 2) return undefined;
  const values = first.map(({ value }) => value).sort((a, b) => a - b);
  const { zone } = readings[0]!;
  const begun = first.at(-1)!.day;
  const usual = (MEDIAN_LOSS * (DAY_SD[zone] ** 2 + SET_SD[zone] ** 2)) / values.length;
  // Of two that contradict each other, as by a slip of the pen, nobody can tell which is right.
  const apart = values.length === 2 ? ((values[1]! - values[0]!) / 2) ** 2 : 0;
  let track: Track = {
    level: values.length === 2 ? (values[0]! + values[1]!) / 2 : values[1]!,
    trend: GROWTH[who.status ?? "intermediate"],
    levelVar: usual,
    doubt: apart > usual ? apart : 0,
    trendVar: GROWTH_SD ** 2,
    shared: 0,
    on: begun,
    last: begun,
    sessions: values.length,
    missed: 1,
    hits: 0,
    farPast: first.at(-1)!.farPast,
  };
  let [weight, sum] = [TRUSTED, TRUSTED];
  let hitWeight = HITS_TRUSTED;
  for (const { day, told, floors } of readings) {
    const known = told?.how === "sure" && day <= begun;
    if (day > track.on) track = { ...later(track, day, who), last: day };
    if (!known && floors.length > 0) {
      const hit = hitOf(track, floors, zone);
      hitWeight += hit.weight;
      track = { ...track, hits: Math.max(-MOST_LOWER, Math.min(MOST_HIGHER, track.hits + hit.off / hitWeight)) };
    }
    if (told === undefined || known) continue;
    const next = moved(track, told, zone);
    track = next.track;
    if (told.how !== "sure") continue;
    weight += 1;
    sum += next.off;
    track = { ...track, sessions: track.sessions + 1, missed: Math.sqrt(sum / weight), farPast: told.farPast };
  }
  return later(track, on, who);
}

/** The same some time later: growth while training goes on, loss by time away, less sure with every week. */
function later(track: Track, day: Day, who: Trainee): Track {
  const weeks = Math.max(0, day - track.on) / 7;
  if (weeks === 0) return track;
  const active = Math.max(0, Math.min(day - track.last, ACTIVE_WEEKS * 7) - (track.on - track.last)) / 7;
  const lost = lossAway((day - track.last) / 7, who) - lossAway((track.on - track.last) / 7, who);
  const fade = FADE ** weeks;
  return {
    ...track,
    level: track.level + track.trend * active - lost,
    trend: track.trend * fade,
    levelVar:
      track.levelVar + 2 * active * track.shared + active ** 2 * track.trendVar + WANDER * weeks + (lost / 2) ** 2,
    shared: fade * (track.shared + active * track.trendVar),
    trendVar: fade ** 2 * track.trendVar + TREND_WANDER * weeks,
    on: day,
  };
}

function moved(
  track: Track,
  { value, how, past, sets }: NonNullable<Reading["told"]>,
  zone: Zone,
): { readonly track: Track; readonly off: number } {
  const noise = DAY_SD[zone] ** 2 + SET_SD[zone] ** 2 / sets;
  const spread = Math.sqrt(track.levelVar + (how === "short" ? 2 * noise : noise));
  const bounded = how === "least" || past;
  const z = (value - track.level) / spread;
  const seen = bounded ? meanAbove(z) : z;
  const off = Math.max(-MOST_OFF, Math.min(MOST_OFF, seen));
  const gain = { level: track.levelVar / spread ** 2, trend: track.shared / spread ** 2 };
  const to = {
    ...track,
    level: track.level + gain.level * off * spread,
    trend: track.trend + gain.trend * off * spread,
  };
  // What is no sure reading says where the level lies at least, and makes nobody surer of it.
  if (how !== "sure") return { track: to, off: 0 };
  return {
    track: {
      ...to,
      levelVar: track.levelVar - gain.level * track.levelVar,
      shared: track.shared - gain.level * track.shared,
      trendVar: track.trendVar - gain.trend * track.shared,
    },
    off: bounded ? 1 : Math.min(9, z * z),
  };
}

/**
 * What the sets of a session say of certainty itself: whether each did what was asked, against how sure that was. It is
 * one step of a probit regression on its constant, with all sets of a session as one, since a day moves them together.
 *
 *   off = mean of (done − Φ(z)) φ(z) / (Φ(z) (1 − Φ(z))); weight = mean of φ(z)² / (Φ(z) (1 − Φ(z)))
 */
function hitOf(track: Track, floors: Reading["floors"], zone: Zone): { readonly off: number; readonly weight: number } {
  const sd = sdOf(track, zone);
  let [off, weight] = [0, 0];
  for (const { need, done } of floors) {
    const z = Math.max(-MOST_SURPRISE, Math.min(MOST_SURPRISE, (track.level - need) / sd + track.hits));
    const [share, height] = [normalShare(z), normalHeight(z)];
    const per = height / (share * (1 - share)) / floors.length;
    off += (Number(done) - share) * per;
    weight += height * per;
  }
  return { off, weight };
}

/**
 * How far a set lies off what is expected, one standard deviation in ln units: what is not known of the level, the day,
 * and the set's own part of what readings vary by, since the larger part of that is what is said of reserve.
 */
export function sdOf({ levelVar, missed, doubt }: Track, zone: Zone): number {
  return Math.sqrt(missed ** 2 * (levelVar + DAY_SD[zone] ** 2 + SET_SD[zone] ** 2 / OWN_PART) + doubt);
}
