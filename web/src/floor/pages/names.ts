import type { Bundle, BundleExercise, Reason } from "@stave/core/model";
import { sayReason } from "@stave/core/text";
import { slotsOf } from "../session/index.ts";
import { words } from "../words.ts";

/** @returns what the bundle knows of a form */
export function formOf(bundle: Bundle, exercise: string): BundleExercise | undefined {
  return bundle.exercises.find(({ id }) => id === exercise);
}

/** @returns a form's name, or its id where the bundle does not know it */
export function nameOf(bundle: Bundle, exercise: string): string {
  return formOf(bundle, exercise)?.name ?? exercise;
}

/** @returns a reason of the plan as a sentence */
export function reasonOf(bundle: Bundle, because: Reason | "taken out"): string {
  if (because === "taken out") return words.course.takenOut;
  const slots = new Map(
    bundle.sessions.flatMap(({ session }) =>
      slotsOf(session).map(({ key, exercise }) => [key, nameOf(bundle, exercise)]),
    ),
  );
  return sayReason(because, {
    exercise: (id) => nameOf(bundle, id),
    ladder: (id) => id,
    session: (key) => bundle.sessions.find(({ id, session }) => id === key || session.key === key)?.title ?? key,
    slot: (key) => slots.get(key) ?? key,
  });
}
