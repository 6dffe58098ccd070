import type { Equipment, Exercise, ExerciseId, Limb } from "../model/index.ts";
import { SWITCH_S, timeKindOf, USUAL_TIMES } from "./usual-times.ts";

/** What every entry must say for itself. */
type Said =
  | "id"
  | "name"
  | "pattern"
  | "limb"
  | "position"
  | "muscles"
  | "loadMeaning"
  | "stress"
  | "setUp"
  | "move"
  | "cues";

/** What is seen, the likely reason, the first fix. */
type FaultLine = readonly [see: string, why: string, fix: string];

/** An exercise as written in the catalogue: only what is particular to it. */
export interface Entry extends Pick<Exercise, Said>, Partial<Omit<Exercise, Said | "needs" | "faults">> {
  /** All of these; where several stand in a row, any one of them, the usual one first. */
  readonly needs?: readonly (Equipment | readonly Equipment[])[];
  readonly faults: readonly [FaultLine, FaultLine, FaultLine];
}

const ONE_SIDED: readonly Limb[] = ["one arm", "one leg", "split stance"];

/**
 * A full catalogue entry from what is particular to it.
 *
 * One arm, one leg and a split stance are done on each side; a hold range makes it a hold; carries are counted in
 * metres, jumps and throws in contacts; times come from the usual ones of its kind; its sources are our own judgement
 * and that of its body share. All of it can be said otherwise.
 *
 * @example wholeEntry({ ...sidePlank, hold: { from: 10, to: 45, step: 5 } }).amounts //=> "hold"
 */
export function wholeEntry({ faults, needs, ...said }: Entry): Exercise {
  const eachSide = said.eachSide ?? ONE_SIDED.includes(said.limb);
  const amounts = said.amounts ?? usualAmounts(said);
  const mode = said.mode ?? (amounts === "hold" ? "hold" : amounts === "contacts" ? "ballistic" : "dynamic");
  const groups = (needs ?? []).map((group) => (typeof group === "string" ? [group] : group));
  const kind = timeKindOf({ ...said, mode, amounts, eachSide, needs: groups });
  const [first, second, third] = faults;
  return {
    synonyms: [],
    plane: "sagittal",
    hands: "none",
    need: { conditions: [] },
    fixed: false,
    coachOnly: false,
    armsUsed: false,
    seated: false,
    lowering: false,
    switchS: eachSide ? SWITCH_S : 0,
    sources: said.bodyShare ? ["ours", said.bodyShare.source] : ["ours"],
    ...USUAL_TIMES[kind],
    ...said,
    mode,
    amounts,
    eachSide,
    needs: groups,
    faults: [faultOf(first), faultOf(second), faultOf(third)],
  };
}

/** An entry that is made when somebody asks for it: most commands need a few of them, and every page a handful. */
export interface Listed {
  readonly id: ExerciseId;
  readonly make: () => Exercise;
}

/** An entry of the catalogue under its id, not made yet. */
export function entry(id: ExerciseId, said: () => Omit<Entry, "id">): Listed {
  return { id, make: () => wholeEntry({ id, ...said() }) };
}

function usualAmounts({ hold, pattern }: Pick<Entry, "hold" | "pattern">): Exercise["amounts"] {
  if (hold) return "hold";
  if (pattern === "carry") return "metres";
  return pattern === "jump" || pattern === "throw" ? "contacts" : "reps";
}

function faultOf([see, why, fix]: FaultLine) {
  return { see, why, fix };
}
