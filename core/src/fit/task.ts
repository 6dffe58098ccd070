import type { ExerciseId, Json, Muscle, SlotKey } from "../model/index.ts";

/** One thing that a score is made of: which constraint, at which level, how many whole points. */
export interface Line {
  readonly id: string;
  readonly level: "must" | "want";
  readonly points: number;
  readonly data: Readonly<Record<string, Json>>;
}

/** A line and where it counts: a slot, or the whole week where there is none. */
export interface PlacedLine extends Line {
  readonly slot?: SlotKey;
}

/** What a slot may get: a form with a number of sets, or nothing. */
export interface Option {
  /** Undefined leaves the slot open; conditioning is never a form of its own here. */
  readonly exercise: ExerciseId | undefined;
  readonly sets: number;
  /** Points counted against the plan; 0 is best. */
  readonly must: number;
  /** Points counted for the plan. */
  readonly want: number;
  /** Upper estimate, in units of 5 s. */
  readonly time: number;
  /** Row index to amount; muscles in quarter-sets, then the balance rows. Each row at most once. */
  readonly rows: readonly (readonly [row: number, amount: number])[];
  /** Busy stations that the form cannot do without; of "this one or that one" the names together. */
  readonly stations: readonly string[];
  /** Place in the slot's stated order, 0 first: of plans with equal points the least sum wins. */
  readonly rank: number;
  readonly lines: readonly Line[];
}

/** One way to do a block: every step takes one of its options, and `time` comes on top, for the rest between turns. */
export interface Way {
  readonly time: number;
  readonly steps: readonly (readonly Option[])[];
}

/** A slot, pair, round or conditioning block: one of its ways is taken. Ways have one step for each slot. */
export interface BlockTask {
  readonly session: number;
  /** Empty for conditioning, whose ways have one step. */
  readonly slots: readonly SlotKey[];
  readonly ways: readonly Way[];
  /** How many of each station there are for the forms of this block together; stations not named are free. */
  readonly atOnce: ReadonlyMap<string, number>;
}

/** A weekly sum with a wanted band. Outside it every unit costs points, at the level that the coach gave it. */
export interface Row {
  readonly id: string;
  readonly muscle?: Muscle;
  readonly level: "must" | "want";
  readonly low: number;
  readonly high: number;
  readonly underPoints: number;
  readonly overPoints: number;
}

/** The whole choice for one phase of one person, in whole numbers. */
export interface FitTask {
  /** Seconds / 5 that each session may take at the upper estimate. */
  readonly capacity: readonly number[];
  /** Most different stations that one session may use; undefined when nobody said. */
  readonly stations?: number;
  /** Blocks by session, in the order they are done. */
  readonly blocks: readonly BlockTask[];
  readonly rows: readonly Row[];
}

/** What a block gets: one of its ways, and in each step of it one option. */
export interface Pick {
  readonly way: number;
  readonly options: readonly number[];
}

/** Levels are compared in order: fewer must points first, then more want points, then the stated order. */
export interface Score {
  readonly must: number;
  readonly want: number;
}

export interface Solution extends Score {
  readonly choice: readonly Pick[];
  /** No plan has fewer must points than this. */
  readonly least: number;
  /** No plan with these must points has more want points than this. */
  readonly bound: number;
  /** Nothing is better: `must` is `least`, `want` is `bound`, and of equals it is the first in the stated order. */
  readonly proven: boolean;
  /** Steps of work that it took. */
  readonly work: number;
}

/** @returns the options that a pick takes in a block, one for each step */
export function optionsOf(block: BlockTask, pick: Pick): readonly Option[] {
  const way = block.ways[pick.way]!;
  return pick.options.map((option, step) => way.steps[step]![option]!);
}
