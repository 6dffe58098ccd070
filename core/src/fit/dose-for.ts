import type { Amount, Dose, Exercise, SetDose, Span } from "../model/index.ts";

/** Most working sets that fit gives by itself; a coach may ask for more and then keeps them. Ours, no source. */
export const MOST_SETS = 5;

/** Repetitions and seconds when a slot's amount does not suit the form. Ours, no source. */
const REPS_INSTEAD: Span = { from: 8, to: 12 };
const METRES_INSTEAD: Span = { from: 20, to: 30 };
const SECONDS_INSTEAD: Span = { from: 30, to: 30 };
const CONTACTS_INSTEAD: Span = { from: 5, to: 5 };

/** From the floor of a hold's useful range up by two of its usual raises. */
function holdSpan(exercise: Exercise): Span {
  const { from, to, step } = exercise.hold ?? { from: 10, to: 30, step: 5 };
  return { from, to: Math.min(to, from + 2 * step) };
}

function amountFor(exercise: Exercise, asked: Amount): Amount {
  switch (exercise.amounts) {
    case "hold":
      return asked.kind === "hold" || asked.kind === "time"
        ? withinHold(exercise, asked.span)
        : { kind: "hold", span: holdSpan(exercise) };
    case "reps":
      return asked.kind === "reps" || asked.kind === "most" ? asked : { kind: "reps", span: REPS_INSTEAD };
    case "metres":
      return asked.kind === "metres" ? asked : { kind: "metres", span: METRES_INSTEAD };
    case "time":
      return asked.kind === "time"
        ? asked
        : { kind: "time", span: asked.kind === "hold" ? asked.span : SECONDS_INSTEAD };
    case "contacts":
      return asked.kind === "contacts" ? asked : { kind: "contacts", span: CONTACTS_INSTEAD };
  }
}

/** An asked hold moved into the form's own useful range. */
function withinHold(exercise: Exercise, asked: Span): Amount {
  if (exercise.hold === undefined) return { kind: "hold", span: asked };
  const { from, to } = exercise.hold;
  const into = (value: number) => Math.min(to, Math.max(from, value));
  return { kind: "hold", span: { from: into(asked.from), to: into(asked.to) } };
}

/** Whether a share of the one-repetition maximum means anything for this form. */
export function takesLoad(exercise: Exercise): boolean {
  return ["total", "per hand", "one implement", "stack"].includes(exercise.loadMeaning);
}

/**
 * A slot's dose in the terms of one form: repetitions for a form that is counted, seconds within its useful range for
 * one that is held, each side for one that is one-sided. Sets, effort and rest stay as the coach wrote them; a share of
 * the maximum and a written load only stay where the form takes a load of that meaning.
 *
 * @source ours
 * @example
 * doseFor(sidePlank, tenRepetitionsThrice) // 3 × 10–20 s each side
 */
export function doseFor(exercise: Exercise, asked: Dose): Dose {
  const sets = asked.sets.map((set): SetDose => {
    const { percent, load, within, ...kept } = set;
    const amount = amountFor(exercise, set.amount);
    return {
      ...kept,
      amount,
      eachSide: exercise.eachSide,
      ...(percent !== undefined && takesLoad(exercise) ? { percent } : {}),
      ...(load !== undefined && takesLoad(exercise) ? { load } : {}),
      ...(within !== undefined && amount.kind === set.amount.kind ? { within } : {}),
    };
  });
  return { ...asked, sets };
}

/** @returns the dose with so many sets: the last ones left out, or the last one repeated */
export function withSets(dose: Dose, count: number): Dose {
  const last = dose.sets.at(-1);
  if (last === undefined) return dose;
  return { ...dose, sets: Array.from({ length: count }, (_, index) => dose.sets[index] ?? last) };
}

/** @returns the numbers of sets that fit may choose from, given the coach's own */
export function setChoices(asked: number): readonly number[] {
  const most = Math.max(asked, Math.min(MOST_SETS, asked + 1));
  const least = Math.max(1, asked - 2);
  return Array.from({ length: most - least + 1 }, (_, index) => least + index);
}
