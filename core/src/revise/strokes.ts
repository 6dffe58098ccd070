import { type DoneSet, loadAsked, REPS_WHEN_OPEN, type Reading, type SlotSession } from "../measures/index.ts";
import type { Amount, PlanSlot, SetDose, Span, Stroke } from "../model/index.ts";
import { type Load, massOf } from "../units.ts";
import type { View } from "./view-of.ts";

function askedSpan(amount: Amount): Span {
  if (amount.kind !== "most") return amount.span;
  const least = amount.least ?? REPS_WHEN_OPEN;
  return { from: least, to: least };
}

/** Load against what can be lifted now; undefined when either is not known. */
function shareOf({ capacity }: View, exercise: string, load: Load | undefined): number | undefined {
  const now = capacity(exercise)?.once;
  if (load === undefined || now?.kind !== "known") return undefined;
  return Math.min(1, Math.round((massOf(load) / massOf(now.value)) * 1000) / 1000);
}

function stroke(set: SetDose, state: Stroke["state"], share: number | undefined, more: Partial<Stroke> = {}): Stroke {
  const { amount } = set;
  return {
    state,
    asked: askedSpan(amount),
    hold: amount.kind === "hold",
    ...(share === undefined ? {} : { share }),
    hurt: false,
    ...more,
  };
}

function doneOf({ reps, holdS, asked }: DoneSet): Stroke["done"] {
  const read: Reading | undefined = asked?.amount.kind === "hold" ? holdS : (reps ?? holdS);
  if (asked?.eachSide !== true) return { both: read !== undefined && "both" in read ? read.both : undefined };
  if (read === undefined) return { left: undefined, right: undefined };
  if ("both" in read) return { left: read.both, right: read.both };
  const { left, right } = read as { readonly left?: number; readonly right?: number };
  return { left, right };
}

/** @returns the sets of one session as signs: those asked, and those done beyond */
export function strokesOf(view: View, { session, asked, sets }: SlotSession): readonly Stroke[] {
  const hurts = view.record.hurts.filter((hurt) => hurt.session === session && hurt.slot === asked.key);
  const hurtIn = (set: number) =>
    hurts.some((hurt) => (hurt.set ?? sets.at(-1)?.set ?? asked.dose.sets.length - 1) === set);
  const count = Math.max(asked.dose.sets.length, ...sets.map(({ set }) => set + 1));
  return Array.from({ length: count }, (_, at): Stroke => {
    const done = sets.find(({ set }) => set === at);
    const dose = asked.dose.sets[at] ?? asked.dose.sets.at(-1)!;
    const hurt = hurtIn(at);
    if (done === undefined)
      return stroke(dose, "missed", shareOf(view, asked.exercise, loadAsked(asked, at)), { hurt });
    const said = doneOf({ ...done, asked: dose });
    return stroke(dose, "done", shareOf(view, done.exercise, done.lifted), {
      hurt,
      ...(said === undefined ? {} : { done: said }),
    });
  });
}

/** @returns the sets that a slot asks for next, as signs */
export function strokesAhead(view: View, slot: PlanSlot): readonly Stroke[] {
  return slot.dose.sets.map((set, at) => stroke(set, "to come", shareOf(view, slot.exercise, loadAsked(slot, at))));
}
