import type { Candidate } from "../fit/index.ts";
import type { FindLoad, Reason } from "../model/index.ts";
import type { Load } from "../units.ts";
import { reason } from "./reasons.ts";

/** With what a slot begins. */
export interface SlotStart {
  readonly load?: Load;
  readonly find?: FindLoad;
  readonly why: readonly Reason[];
}

/** @returns the load to begin with, or how to find it, with its evidence */
export function slotStart({ start, doses }: Candidate): SlotStart {
  switch (start.kind) {
    case "load":
      return { load: start.load, why: [start.evidence] };
    case "find":
      return { find: { ...(start.from === undefined ? {} : { from: start.from }), because: start.because }, why: [] };
    case "too light": {
      const asked = doses[0]?.sets[0]?.amount;
      const span = asked?.kind === "reps" ? { from: asked.span.from, to: asked.span.to } : {};
      return { load: start.heaviest, why: [start.because, reason("plan/long-sets-instead", span)] };
    }
    default:
      return { why: [] };
  }
}
