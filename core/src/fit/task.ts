import type { ExerciseId, Json, Muscle, SlotKey } from "../model/index.ts";

/** One thing that a score is made of: which constraint, at which level, how many whole points. */
export interface Line {
  readonly id: string;
  readonly level: "must" | "want";
  readonly points: number;
  readonly data: Readonly<Record<string, Json>>;
}

/** What one slot gets under an option; `exercise` undefined leaves the slot open. */
export interface Filling {
  readonly slot: SlotKey;
  readonly exercise: ExerciseId | undefined;
}

/** One way to fill one block: an exercise for each of its slots and one number of sets. */
export interface Option {
  readonly fillings: readonly Filling[];
  readonly sets: number;
  /** Points counted against the plan; 0 is best. */
  readonly must: number;
  /** Points counted for the plan. */
  readonly want: number;
  /** Upper estimate, in units of 5 s. */
  readonly time: number;
  /** Row index to amount; muscles in quarter-sets, then the balance rows. */
  readonly rows: readonly (readonly [row: number, amount: number])[];
  readonly lines: readonly Line[];
}

/** A slot, pair, round or conditioning block. Options stand in the stated order of preference for ties. */
export interface BlockTask {
  readonly session: number;
  readonly options: readonly Option[];
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
  /** Blocks by session, in the order they are done. */
  readonly blocks: readonly BlockTask[];
  readonly rows: readonly Row[];
}

/** Levels are compared in order: fewer must points first, then more want points, then earlier options. */
export interface Score {
  readonly must: number;
  readonly want: number;
}

export interface Solution extends Score {
  /** For each block, the index of its option. */
  readonly choice: readonly number[];
  /** No plan with these must points can have more want points than this. */
  readonly bound: number;
  readonly proven: boolean;
  readonly nodes: number;
}
