import type { Bundle, EventOf, StaveEvent } from "@stave/core/model";
import { standingEvents } from "@stave/core/model";
import { again, type SwapReason } from "@stave/core/revise";
import { type Step, stepKey } from "./course.ts";
import type { Draft } from "./draft.ts";
import { nextStep, type SessionView } from "./view.ts";

type SetStep = Extract<Step, { kind: "set" }>;

/** @returns what an event about a step is about */
export function ofStep(bundle: Bundle, view: SessionView, step?: SetStep): EventOf {
  const of = { plan: bundle.plan, session: view.of.id };
  return step === undefined ? of : { ...of, slot: step.slot, set: step.set };
}

/** @returns whether a set is done or left out by any tab or phone */
export function isSaid(events: readonly StaveEvent[], { slot, set }: Pick<SetStep, "slot" | "set">): boolean {
  return standingEvents(events).some(
    ({ event: { kind, of } }) =>
      (kind === "set-done" || kind === "set-left-out") && of?.slot === slot && of.set === set,
  );
}

/** Whether nothing was said of a movement, by event or by thumb: then new limits may bind it. */
function isUntouched(view: SessionView, draft: Draft, slot: string): boolean {
  const own = (key: string) => key.slice(0, key.lastIndexOf("/")) === slot;
  return ![...view.sets.keys(), ...Object.keys(draft.entries)].some(own);
}

/** Opens a step: from now on the limits that are known bind its movement, if nothing was said of it yet. */
export function opened(draft: Draft, view: SessionView, step: Step | undefined): Draft {
  const { at: _at, aside: _aside, hurt: _hurt, told: _told, ...rest } = draft;
  if (step === undefined) return rest;
  const there = { ...rest, at: stepKey(step) };
  if (step.kind !== "set" || !isUntouched(view, draft, step.slot)) return there;
  return bound(there, view, step.slot, step.of.exercise);
}

/** Limits that are known now bind a movement from now on. */
function bound(draft: Draft, view: SessionView, slot: string, exercise: string): Draft {
  return { ...draft, bounds: { ...draft.bounds, [slot]: { exercise, ...view.boundsFor(slot, exercise) } } };
}

/** Leaves a step behind: its values go, the next one opens. */
export function passed(draft: Draft, view: SessionView, step: Step): Draft {
  const key = stepKey(step);
  const { [key]: _gone, ...entries } = draft.entries;
  const behind = { ...draft, passed: [...draft.passed, key] };
  const next = nextStep(view, behind, key);
  return opened(
    { ...draft, entries, passed: step.kind === "set" && !view.waiting.has(step.slot) ? draft.passed : behind.passed },
    view,
    next,
  );
}

/** What becomes of the rest of a session, as events to write and as words for the screen. */
export interface Solved {
  readonly said: readonly {
    readonly kind: "swapped";
    readonly data: { readonly from: string; readonly to: string; readonly because: SwapReason };
    readonly of: EventOf & { readonly slot: string };
  }[];
  readonly swaps: readonly { readonly from: string; readonly to: string }[];
  readonly waits: readonly string[];
}

/** Solves the rest of the session within the offer: an easier form, or what spares a place that hurts. */
export function solved(
  bundle: Bundle,
  view: SessionView,
  slot: string,
  because: SwapReason,
  hurt?: { readonly where: string; readonly howMuch: number },
): Solved {
  const soFar = { ...view.soFar, hurts: [...view.soFar.hurts, ...(hurt === undefined ? [] : [hurt])] };
  const { swaps, paused } = again(bundle, slot, because, soFar);
  return {
    said: swaps.map(({ slot: key, from, to }) => ({
      kind: "swapped",
      data: { from, to, because },
      of: { ...ofStep(bundle, view), slot: key },
    })),
    swaps: swaps.map(({ from, to }) => ({ from, to })),
    waits: paused.map(({ slot: key }) => key),
  };
}

/** Other forms take places in the session: the limits that are known now bind them. */
export function swappedIn(draft: Draft, view: SessionView, said: Solved["said"]): Draft {
  return said.reduce((now, { of, data }) => bound(now, view, of.slot, data.to), draft);
}
