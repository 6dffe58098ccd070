import { type Exercise, type Goal, printDose, type SetDose } from "../model/index.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import { aboutDose, pathOfDose } from "./run/walk.ts";

type Data = Facts & {
  readonly exercise: string;
  readonly name: string;
  readonly restS: number;
  readonly least: number;
};

/** Rest under which sets for size give a little less. Source: singer2024, its bands from memory. */
const FOR_SIZE_S = 60;
/** Rest between heavy sets of several joints, and between all others, for strength. Source: acsm2009. */
const FOR_HEAVY_S = 120;
const FOR_OTHERS_S = 60;
/** From this share, or without one up to so many repetitions, a set for strength is heavy. Source: acsm2009, ours. */
const HEAVY_PERCENT = 80;
const HEAVY_REPS = 6;
/** A set that ends with more in reserve is practice. Ours, no source. */
const MOST_RESERVE = 4;

function isHeavy({ amount, percent }: SetDose): boolean {
  if (percent !== undefined) return percent >= HEAVY_PERCENT;
  return amount.kind === "reps" && amount.span.to <= HEAVY_REPS;
}

/** The least rest that a goal wants after a set of this; 0 where no source asks for any. */
function leastRest(goal: Goal, exercise: Exercise, set: SetDose): number {
  const counted = set.amount.kind === "reps" || set.amount.kind === "most";
  if (!counted || (set.reserve?.from ?? 0) > MOST_RESERVE) return 0;
  if (goal === "size") return FOR_SIZE_S;
  if (goal !== "strength") return 0;
  const joints = exercise.pattern === "upper isolation" || exercise.pattern === "lower isolation" ? "one" : "several";
  return joints === "several" && isHeavy(set) ? FOR_HEAVY_S : FOR_OTHERS_S;
}

/**
 * A straight slot whose rest is shorter than its goal wants: under 60 s for size, under 2 min between heavy sets of
 * several joints for strength. Pairs and rounds rest one movement while another is done, and so do the two sides of a
 * one-sided one, so they are not judged; nor is a rest that is not said.
 *
 * The remedy writes the rest.
 */
export const restTooShort: Check<"dose/rest-too-short", Data> = {
  id: "dose/rest-too-short",
  severity: "warn",
  sources: ["singer2024", "acsm2009", "haffTriplett2016", "ours"],
  run({ doses, catalogue, programme }) {
    return doses.flatMap((place): readonly Found<Data>[] => {
      const { dose, of } = place;
      const exercise = catalogue.exercises.get(place.exercise);
      const { restS } = dose;
      if (exercise === undefined || restS === undefined || dose.sets.length < 2) return [];
      if ("list" in of || !("slot" in of.block) || dose.sets.some((set) => set.eachSide)) return [];
      const least = Math.max(...dose.sets.map((set) => leastRest(programme.goal, exercise, set)));
      if (restS >= least) return [];
      const at = pathOfDose(place);
      const after = { ...dose, restS: least };
      return [
        {
          at,
          data: {
            ...aboutDose(place),
            exercise: exercise.id,
            name: exercise.name,
            goal: programme.goal,
            restS,
            least,
          },
          cures: () => [
            {
              id: "rest-enough",
              data: { from: printDose(dose), to: printDose(after) },
              changes: [{ op: "set", at, value: after }],
            },
          ],
        },
      ];
    });
  },
};
