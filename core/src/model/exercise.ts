import type { SourceId } from "../sources.ts";
import type { Equipment } from "./equipment.ts";
import type { MuscleShares } from "./muscle.ts";
import type { Pattern } from "./pattern.ts";
import type { Grade, StressTag } from "./stress.ts";

export type ExerciseId = string;

/** What the number beside an exercise means. Pair loads are always shown as 2 × per hand. */
export type LoadMeaning =
  | "total"
  | "per hand"
  | "one implement"
  | "stack"
  | "added to body"
  | "assist"
  | "band"
  | "body only"
  | "height"
  | "none";

export type Limb =
  | "two arms"
  | "one arm"
  | "alternating"
  | "two legs"
  | "split stance"
  | "one leg"
  | "whole body"
  | "trunk";
export type Position =
  | "standing"
  | "half-kneeling"
  | "tall-kneeling"
  | "seated, back supported"
  | "seated"
  | "supine"
  | "prone"
  | "side-lying"
  | "hands and knees"
  | "hanging"
  | "leaning";

/** Which hands hold, push or brace. "one, other braces": one hand works while the other takes body mass. */
export type Hands = "none" | "one" | "one, other braces" | "two";

/** Own entry criterion: a count (met by one set of clean reps at the form it names) and plain conditions. */
export interface Need {
  readonly count?: { readonly of: ExerciseId; readonly reps?: number; readonly holdS?: number; readonly sets?: number };
  readonly conditions: readonly string[];
}

export interface Fault {
  readonly see: string;
  readonly why: string;
  readonly fix: string;
}

/**
 * One entry of the catalogue.
 *
 * `needs` is all of the groups, and any one of each group. `stress` are base grades at a middle dose.
 * `fixed` says that the body-mass load cannot be made lighter; `coachOnly` is never offered by itself.
 */
export interface Exercise {
  readonly id: ExerciseId;
  readonly name: string;
  readonly synonyms: readonly string[];
  readonly pattern: Pattern;
  readonly alsoCounts?: Pattern;
  readonly limb: Limb;
  readonly plane: "sagittal" | "frontal" | "transverse" | "mixed";
  readonly position: Position;
  readonly mode: "dynamic" | "hold" | "ballistic" | "cyclic";
  readonly hands: Hands;
  readonly amounts: "reps" | "hold" | "metres" | "time" | "contacts";
  readonly eachSide: boolean;
  readonly muscles: MuscleShares;
  readonly needs: readonly (readonly Equipment[])[];
  readonly loadMeaning: LoadMeaning;
  /** Share of body mass that the working limbs move, with its source. */
  readonly bodyShare?: { readonly share: number; readonly source: SourceId };
  readonly need: Need;
  readonly stress: Readonly<Partial<Record<StressTag, Grade>>>;
  readonly fixed: boolean;
  readonly coachOnly: boolean;
  readonly armsUsed: boolean;
  readonly seated: boolean;
  readonly lowering: boolean;
  /** Useful range of the hold in seconds and the usual raise. */
  readonly hold?: { readonly from: number; readonly to: number; readonly step: number };
  readonly secondsPerRep: number;
  readonly switchS: number;
  readonly setupS: number;
  /** Seconds per set spent changing plates or re-setting. */
  readonly changeS: number;
  /** Seconds to reach the station. */
  readonly moveS: number;
  readonly setUp: string;
  readonly move: string;
  readonly cues: readonly [string, string, string];
  readonly faults: readonly [Fault, Fault, Fault];
  readonly sources: readonly SourceId[];
}

/** A step from an easier form to the next. `branch` is "main" or a name. */
export interface Step {
  readonly from: ExerciseId;
  readonly to: ExerciseId;
  readonly branch: string;
}

/** The easier-to-harder forms of one movement, as steps; there is no other order. */
export interface Ladder {
  readonly id: string;
  readonly name: string;
  /** The form a person who was never assessed starts on. */
  readonly start: ExerciseId;
  readonly steps: readonly Step[];
}

/** Everything known about exercises, ready to look up. */
export interface Catalogue {
  readonly exercises: ReadonlyMap<ExerciseId, Exercise>;
  readonly ladders: readonly Ladder[];
}
