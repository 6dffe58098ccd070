import type { Dose, Exercise, Reason } from "../model/index.ts";
import { reason } from "./reasons.ts";

/**
 * Holds of a dose that leave the useful range of their form, each span once. Below its floor a hold trains nothing;
 * past its top the form is changed and not the clock.
 */
export function outsideRange(exercise: Exercise, dose: Dose): readonly Reason[] {
  const range = exercise.hold;
  if (range === undefined) return [];
  const spans = dose.sets.flatMap(({ amount }) => (amount.kind === "hold" ? [amount.span] : []));
  const out = spans.filter(({ from, to }) => !(from >= range.from && to <= range.to));
  const seen = new Map(out.map((span) => [`${span.from}-${span.to}`, span]));
  return [...seen.values()].map(({ from, to }) =>
    reason("offer/hold-range", { asked: { from, to }, range: { from: range.from, to: range.to } }),
  );
}

/** Kinds of amount that a form can be asked for, besides its own; "most" suits whatever is counted or held. */
const ALSO: Readonly<Record<Exercise["amounts"], readonly string[]>> = {
  reps: ["time", "contacts"],
  hold: ["time"],
  metres: ["time"],
  time: ["metres", "hold", "reps"],
  contacts: ["reps", "time"],
};

/** Amounts that mean nothing for a form, such as repetitions of a hold; each kind once. */
export function wrongAmounts(exercise: Exercise, dose: Dose): readonly Reason[] {
  const { amounts, hold } = exercise;
  const fine = (kind: string) =>
    kind === amounts || kind === "most" || ALSO[amounts].includes(kind) || (kind === "hold" && hold !== undefined);
  const wrong = new Set(dose.sets.map(({ amount }) => amount.kind).filter((kind) => !fine(kind)));
  return [...wrong].map((asked) => reason("offer/amount", { asked, takes: amounts }));
}
