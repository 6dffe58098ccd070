import type { About } from "./about.ts";
import { refuseOutside } from "./refuse.ts";

/** Arithmetic of the clock; nobody was studied for it. */
export const TURNS_AT_STATION: About = { source: "ours", who: "anybody: it adds up seconds" };

/** What one person does at a station that others share. */
export interface Turn {
  readonly sets: number;
  /** Least rest wanted between two sets, seconds. */
  readonly restS: number;
}

/** How one person fares. */
export interface TurnGot {
  /** Rest between two sets while everybody still has sets to do, waits included, seconds. */
  readonly restS: number;
  /** Of it, what the others' sets and changes alone would not have given. */
  readonly waitS: number;
  /** Rounds in which this person's place is free, since their sets are done. */
  readonly freeRounds: number;
}

export interface Turns {
  readonly got: readonly TurnGot[];
  /** From the first set of a round to that of the next, seconds. */
  readonly roundS: number;
  readonly rounds: number;
  /** From the first set to the end of the last one, seconds. */
  readonly totalS: number;
  /** Somebody rests more than twice as long as they want: one more than the station carries. */
  readonly crowded: boolean;
}

/** More than so many times the rest wanted is a wait, and no rest. Ours, no source. */
const MOST_TIMES = 2;

/**
 * People who take turns at one station, set by set, with the load changed between any two: never two at once.
 *
 *   rest of one = the others' sets + changes; round = all sets + changes + the wait of whoever is shortest of rest
 *
 * @param turns two to four people, in order
 * @param setS seconds of a set, 5 to 600
 * @param changeS seconds to change the load, 0 to 600
 * @throws RangeError outside these
 * @source ours
 * @example turnsAtStation([{ sets: 4, restS: 150 }, { sets: 3, restS: 90 }], 45, 45).got[0].waitS //=> 15
 */
export function turnsAtStation(turns: readonly Turn[], setS: number, changeS: number): Turns {
  refuseOutside("turns at a station", "the number of people", turns.length, 2, 4);
  refuseOutside("turns at a station", "the seconds of a set", setS, 5, 600);
  refuseOutside("turns at a station", "the seconds of a change", changeS, 0, 600);
  for (const { sets, restS } of turns) {
    refuseOutside("turns at a station", "the number of sets", sets, 1, 20);
    refuseOutside("turns at a station", "the seconds of rest", restS, 0, 900);
  }
  const people = turns.length;
  const between = (people - 1) * setS + people * changeS;
  const waitS = Math.max(0, ...turns.map(({ restS }) => restS - between));
  const restS = between + waitS;
  const roundS = restS + setS;
  const rounds = Math.max(...turns.map(({ sets }) => sets));
  const lastRound = turns.filter(({ sets }) => sets === rounds).length;
  return {
    got: turns.map((turn) => ({
      restS,
      waitS: Math.max(0, turn.restS - between),
      freeRounds: rounds - turn.sets,
    })),
    roundS,
    rounds,
    totalS: (rounds - 1) * roundS + lastRound * setS + (lastRound - 1) * changeS,
    crowded: turns.some((turn) => restS > MOST_TIMES * turn.restS),
  };
}
