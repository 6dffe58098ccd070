import type { Bundle, EventData, ExerciseId, PlanSession, Reason, SlotKey } from "../model/index.ts";
import type { Load } from "../units.ts";

export type SwapReason = EventData["swapped"]["because"];

/** How far a session has come. */
export interface SessionSoFar {
  /** The occurrence, `id` of a session of the bundle. */
  readonly session: string;
  /** The session as it stands, where it was changed already. */
  readonly now?: PlanSession;
  /** Sets done or left out of each slot; a slot that is absent was not begun. */
  readonly sets: Readonly<Record<SlotKey, number>>;
  /** Pain that was noted in this session, this one included. */
  readonly hurts: readonly { readonly where: string; readonly howMuch: number }[];
}

/** The rest of a session, solved anew. */
export interface Again {
  /** The whole session as it is from now on. */
  readonly session: PlanSession;
  /** One `swapped` event for each. */
  readonly swaps: readonly {
    readonly slot: SlotKey;
    readonly from: ExerciseId;
    readonly to: ExerciseId;
    readonly load?: Load;
  }[];
  /** Slots that wait, with the reason: nothing that is offered will do. */
  readonly paused: readonly { readonly slot: SlotKey; readonly because: Reason }[];
}

/**
 * Solves the rest of a session again within what the bundle offers: an easier form, one that needs other equipment, or
 * one that spares what hurts. Runs on a phone with no network.
 */
export function again(_bundle: Bundle, _slot: SlotKey, _because: SwapReason, _done: SessionSoFar): Again {
  throw new Error("again is being written");
}
