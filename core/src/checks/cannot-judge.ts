import { laneOf, type SetDose } from "../model/index.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import type { Look } from "./run/look.ts";
import { type DosePlace, pathOfDose } from "./run/walk.ts";

/** What a programme need not say and checks would like to know. */
type Unsaid = "dose" | "effort" | "rest";
type Data = Facts & { readonly side: Unsaid; readonly doses: number; readonly of: number };

function saysEffort(set: SetDose): boolean {
  return set.reserve !== undefined || set.percent !== undefined || set.amount.kind === "most";
}

/**
 * Doses of limbs in repetitions: holds, times, metres and contacts are judged by their seconds and numbers, and nobody
 * counts what is left in trunk work, in balance and in getting ready.
 */
function inReps({ doses, catalogue }: Look): readonly DosePlace[] {
  return doses.filter(({ dose, exercise }) => {
    const pattern = catalogue.exercises.get(exercise)?.pattern;
    if (pattern === undefined || pattern === "mobility" || pattern === "balance") return false;
    return laneOf(pattern) !== "trunk" && dose.sets.some(({ amount }) => amount.kind === "reps");
  });
}

/** Doses of straight slots with more than one set: in a pair the rest is that of the pair. */
function withRests({ doses }: Look): readonly DosePlace[] {
  return doses.filter(({ dose, of }) => "block" in of && "slot" in of.block && dose.sets.length > 1);
}

function unsaid(side: Unsaid, all: readonly DosePlace[], says: (place: DosePlace) => boolean): readonly Found<Data>[] {
  const missing = all.filter((place) => !says(place));
  const [first] = missing;
  if (first === undefined) return [];
  return [{ at: pathOfDose(first), data: { side, doses: missing.length, of: all.length } }];
}

/**
 * What a programme leaves out, and what cannot be judged for that. Without doses only what is trained on which day can. Without repetitions in reserve or a share of the 1RM
 * nobody knows how hard a set is; without a rest its length and what it trains are taken and not known.
 */
export const cannotJudge: Check<"programme/cannot-judge", Data> = {
  id: "programme/cannot-judge",
  severity: "note",
  sources: ["ours"],
  run(look) {
    if (look.unsaid !== undefined)
      return [{ at: [], data: { side: "dose", doses: look.unsaid.length, of: look.slots.length } }];
    return [
      ...unsaid("effort", inReps(look), ({ dose }) => dose.sets.every(saysEffort)),
      ...unsaid("rest", withRests(look), ({ dose }) => dose.restS !== undefined),
    ];
  },
};
