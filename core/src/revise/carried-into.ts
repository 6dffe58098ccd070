import { carriedFrom } from "../capacity/index.ts";
import type { ExerciseId, Reason } from "../model/index.ts";
import type { View } from "./view-of.ts";

/**
 * What is carried into a form of which too little is known, from the others on record, as a reason beside what is missing.
 *
 * @returns undefined where the form has a figure of its own, or nothing is alike
 */
export function carriedInto(view: View, id: ExerciseId): Reason | undefined {
  const { catalogue, person } = view.person;
  const exercise = catalogue.exercises.get(id);
  if (exercise === undefined || view.capacity(id)?.capacity.kind === "known") return undefined;
  const recorded = new Set(view.log.flatMap(({ sets }) => sets.map((set) => set.exercise)));
  const known = [...recorded].flatMap((other) => {
    const form = catalogue.exercises.get(other);
    const found = view.capacity(other);
    return form === undefined || found === undefined ? [] : [{ exercise: form, capacity: found.capacity }];
  });
  const carried = carriedFrom(exercise, known, { person, catalogue });
  if (carried === undefined) return undefined;
  const { from, by, low, high, sessions } = carried;
  const data = { exercise: from, by, low: { ...low }, high: { ...high }, sessions };
  return { code: "capacity/carried-from", data };
}
