import type { DecisionInput } from "../api/index.ts";
import type { StaveEvent } from "../model/index.ts";
import type { PlannedPerson } from "./situation.ts";

/** Who says it, by which device, when. */
export interface Speaker {
  /** The coach's name. */
  readonly by: string;
  readonly device: string;
  /** Epoch milliseconds. */
  readonly at: number;
}

/**
 * The event that a coach's word becomes, ready to be appended. The same input asked again gives the event that is there
 * already.
 *
 * @returns why not, where the word answers nothing: `stale` when no such proposal waits, `unknown` when no such slot or
 * decision is there, `taken` when another event has the id
 */
export function decide(
  _person: PlannedPerson,
  _input: DecisionInput,
  _speaker: Speaker,
):
  | { readonly ok: true; readonly event: StaveEvent }
  | { readonly ok: false; readonly why: "stale" | "unknown" | "taken" } {
  throw new Error("decide is being written");
}
