import { chance } from "./chance.ts";
import type { RepCurve, World } from "./world.ts";

/** What is asked of one movement in one session. */
export interface Asked {
  readonly loadKg: number;
  readonly reps: { readonly from: number; readonly to: number };
  /** Repetitions in reserve at which a set is to end. */
  readonly reserve: number;
  readonly sets: number;
}

/** One set as it is written down. */
export interface Written {
  readonly loadKg: number;
  readonly reps: number;
  /** Undefined: not said. */
  readonly reserve?: number;
}

/** A made-up person doing one movement. Days count from the first session, 0. */
export interface Lifter {
  /** What they could lift once on that day, kg; not known to any coach. */
  readonly maximum: (day: number) => number;
  /** The same without the day's luck. */
  readonly trend: (day: number) => number;
  readonly comes: (day: number) => boolean;
  /** What is done. Sets end at the top of the range, at the reserve asked for, or when nothing goes any more. */
  readonly train: (day: number, asked: Asked) => readonly Written[];
}

const SESSION_DAYS = 3.5;
const WEEK = 7;
/** Per cent of gain after so many weeks of training: 8.9 × ln(1 + weeks), from the trials behind steele2023. */
const GAIN = 0.089;
/** Loss per week away: under 60 from the fourth week on (halonen2024); from 60 on from the first. */
const LOSS = { young: 0.0045, older: 0.011 };
const FREE_WEEKS = 3;
/** About half the time away brings it back: ours, after halonen2024. */
const REGAIN = 2;
/** Repetitions to failure vary by 0.7 at 90 % and 1.1 at 70 % of the maximum: mitter2022. */
const REPS_SD = { at90: 0.7, at70: 1.1 };
/** Repetitions that each further set costs. Ours. */
const FATIGUE = [0.4, 1.2] as const;
/** How far off a stated reserve is from set to set. Ours. */
const RESERVE_SD = 1.2;

/**
 * Repetitions to failure as a real number; whole ones are what can be counted. "thirtieths": share = 30 / (30 + reps);
 * "exponential": share = 0.522 + 0.419 e^(−0.055 reps). One repetition at least, up to the maximum and a little over.
 *
 * @source epley1985, mayhew1992
 */
export function repsToFailure(share: number, curve: RepCurve): number {
  if (!(share < 1)) return share <= 1.02 ? 1 : 0;
  if (curve === "thirtieths") return Math.max(1, 30 * (1 / share - 1));
  return share > 0.53 ? Math.max(1, Math.log(0.419 / (share - 0.522)) / 0.055) : 70;
}

/** Draws are named by numbers so that none of them shares its chance with another. */
const DRAW = { person: 1, day: 2, miss: 3, away: 4, set: 5, hide: 6, slip: 7 } as const;

/**
 * A person of a world.
 *
 * @param index number of the person in the world
 * @source steele2023, halonen2024, mitter2022
 */
export function lifter(world: World, seed: number, index: number): Lifter {
  const person = chance(seed, index, DRAW.person);
  const gain = person.even(...world.gain);
  const before = person.even(...world.trainedWeeks);
  const daySd = person.even(...world.daySd);
  const start = Math.exp(person.normal(0.3)) * 60;
  const bias = world.reserveBias[0] + person.normal(world.reserveBias[1]);
  const fatigue = person.even(...FATIGUE);

  const isAway = (week: number): boolean => {
    for (let back = 0; back < 4; back++) {
      const first = week - back;
      if (first < 1) continue;
      const draw = chance(seed, index, first, DRAW.away);
      if (draw.happens(world.away) && back < Math.ceil(draw.even(0, 4))) return true;
    }
    return false;
  };
  const comes = (day: number) =>
    !isAway(Math.floor(day / WEEK)) && !chance(seed, index, day, DRAW.miss).happens(world.missed);

  /** Weeks trained and what is lost for now, week by week. */
  const states: { readonly trained: number; readonly lost: number; readonly off: number }[] = [
    { trained: 0, lost: 0, off: 0 },
  ];
  const stateAt = (week: number) => {
    while (states.length <= week) {
      const { trained, lost, off } = states.at(-1)!;
      if (!isAway(states.length - 1)) {
        const rate = world.older ? LOSS.older : LOSS.young;
        states.push({ trained: trained + 1, lost: Math.max(0, lost - rate * REGAIN), off: 0 });
        continue;
      }
      const loses = world.older || off + 1 > FREE_WEEKS;
      const loss = loses ? (world.older ? LOSS.older : LOSS.young) : 0;
      states.push({ trained, lost: lost + loss, off: off + 1 });
    }
    return states[week]!;
  };
  const trend = (day: number) => {
    const week = Math.floor(day / WEEK);
    const [now, next] = [stateAt(week), stateAt(week + 1)];
    const part = day / WEEK - week;
    const trained = now.trained + part * (next.trained - now.trained);
    const lost = now.lost + part * (next.lost - now.lost);
    return start * Math.exp(gain * GAIN * Math.log((1 + before + trained) / (1 + before)) - lost);
  };
  const luck = (day: number): number => {
    const own = chance(seed, index, Math.round(day * 2), DRAW.day).normal(daySd);
    if (world.carried === 0 || !(day >= SESSION_DAYS)) return own;
    return world.carried * luck(day - SESSION_DAYS) + Math.sqrt(1 - world.carried ** 2) * own;
  };
  const maximum = (day: number) => trend(day) * Math.exp(luck(day));

  const train = (day: number, asked: Asked): readonly Written[] => {
    const most = maximum(day);
    const share = asked.loadKg / most;
    const sd = Math.max(0.3, REPS_SD.at90 + ((0.9 - share) / 0.2) * (REPS_SD.at70 - REPS_SD.at90));
    const written: Written[] = [];
    for (let set = 0; set < asked.sets; set++) {
      const draw = chance(seed, index, Math.round(day * 2), set, DRAW.set);
      const failsAt = Math.max(0, Math.floor(repsToFailure(share, world.curve) + draw.normal(sd) - set * fatigue));
      const error = draw.normal(RESERVE_SD);
      const felt = (left: number) => Math.max(0, Math.min(6, Math.round(left + bias + (left === 0 ? 0.3 : 1) * error)));
      let reps = Math.min(failsAt, asked.reps.from);
      while (reps < Math.min(failsAt, asked.reps.to) && felt(failsAt - reps) > asked.reserve) reps++;
      const short = reps < asked.reps.from;
      const hidden = short && chance(seed, index, Math.round(day * 2), set, DRAW.hide).happens(world.hidesFailure);
      const unsaid = draw.happens(world.reserveUnsaid);
      const slip = chance(seed, index, Math.round(day * 2), set, DRAW.slip).happens(world.slips);
      if (hidden) continue;
      const loadKg = slip ? asked.loadKg * 10 : asked.loadKg;
      written.push({ loadKg, reps, ...(unsaid ? {} : { reserve: felt(failsAt - reps) }) });
    }
    return written;
  };
  return { maximum, trend, comes, train };
}
