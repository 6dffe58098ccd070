import type { DecisionInput } from "@stave/core/api";
import type { Fault } from "../ask/index.ts";

/** A decision without its id: each kind keeps what is its own. */
export type Unnamed = DecisionInput extends infer Each ? (Each extends unknown ? Omit<Each, "id"> : never) : never;

/** A decision that can be taken back. */
export interface Undoable {
  readonly id: string;
  readonly person: { readonly id: string; readonly name: string };
  /** What was decided, in words. */
  readonly title: string;
}

/** What became of one proposal on this page. */
export interface Deed extends Undoable {
  readonly input: DecisionInput;
  readonly state: "sending" | "stands" | "undoing" | "failed";
  readonly fault?: Fault;
}

/** Deeds by the proposal they answer. */
export type Deeds = ReadonlyMap<string, Deed>;

export type DeedStep =
  | { readonly step: "send"; readonly proposal: string; readonly deed: Undoable & { readonly input: DecisionInput } }
  | { readonly step: "stands"; readonly id: string }
  | { readonly step: "failed"; readonly id: string; readonly fault: Fault }
  | { readonly step: "undo"; readonly id: string }
  | { readonly step: "undone"; readonly id: string }
  | { readonly step: "not undone"; readonly id: string; readonly fault: Fault };

function changed(deeds: Deeds, id: string, to: (deed: Deed) => Deed | undefined): Deeds {
  const next = new Map<string, Deed>();
  for (const [proposal, deed] of deeds) {
    const after = deed.id === id ? to(deed) : deed;
    if (after !== undefined) next.set(proposal, after);
  }
  return next;
}

/** One step further. A proposal whose decision was undone is open again. */
export function stepDeeds(deeds: Deeds, step: DeedStep): Deeds {
  switch (step.step) {
    case "send":
      return new Map(deeds).set(step.proposal, { ...step.deed, state: "sending" });
    case "stands":
      return changed(deeds, step.id, ({ fault: _, ...deed }) => ({ ...deed, state: "stands" }));
    case "failed":
      return changed(deeds, step.id, (deed) => ({ ...deed, state: "failed", fault: step.fault }));
    case "undo":
      return changed(deeds, step.id, ({ fault: _, ...deed }) => ({ ...deed, state: "undoing" }));
    case "undone":
      return changed(deeds, step.id, () => undefined);
    case "not undone":
      return changed(deeds, step.id, (deed) => ({ ...deed, state: "stands", fault: step.fault }));
  }
}

/** True while the proposal waits for an answer: none was given, or it did not arrive. */
export function isOpen(deed: Deed | undefined): boolean {
  return deed === undefined || deed.state === "failed";
}

/** True when the server does not take the answer: what was proposed is no longer what waits. */
export function isRefused(deed: Deed | undefined): boolean {
  return deed?.state === "failed" && deed.fault?.kind === "refused";
}

/**
 * The id for a decision. One that was sent and had no answer may have arrived, so asking again for the same keeps its
 * id, and the server then does nothing twice.
 */
export function idFor(earlier: Deed | undefined, asked: Unnamed, fresh: string): string {
  if (earlier?.state !== "failed" || earlier.fault?.kind === "refused") return fresh;
  const { id, ...was } = earlier.input;
  return JSON.stringify(was) === JSON.stringify(asked) ? id : fresh;
}
