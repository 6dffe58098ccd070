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
export function opened(draft: Draft, view: SessionView, step: Step | undefined, newest: string): Draft {
  const { at: _at, aside: _aside, hurt: _hurt, told: _told, ...rest } = draft;
  if (step === undefined) return rest;
  const bound = step.kind === "set" && isUntouched(view, draft, step.slot);
  return { ...rest, at: stepKey(step), ...(bound ? { under: { ...draft.under, [step.slot]: newest } } : {}) };
}

/** Leaves a step behind: its values go, the next one opens. */
export function passed(draft: Draft, view: SessionView, step: Step, newest: string): Draft {
  const key = stepKey(step);
  const { [key]: _gone, ...entries } = draft.entries;
  const behind = { ...draft, passed: [...draft.passed, key] };
  const next = nextStep(view, behind, key);
  return opened(
    { ...draft, entries, passed: step.kind === "set" && !view.waiting.has(step.slot) ? draft.passed : behind.passed },
    view,
    next,
    newest,
  );
}

/** What becomes of the rest of a session, as events to write and as words for the screen. */
export interface Solved {
  readonly said: readonly {
    readonly kind: "swapped";
    readonly data: { readonly from: string; readonly to: string; readonly because: SwapReason };
    readonly of: EventOf;
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
