import type { Candidate } from "../fit/index.ts";
import type { Dose, FindLoad, Reason } from "../model/index.ts";
import { type Load, massOf } from "../units.ts";
import { reason } from "./reasons.ts";

/** With what a slot begins. */
export interface SlotStart {
  readonly load?: Load;
  readonly loads?: readonly Load[];
  readonly find?: FindLoad;
  readonly why: readonly Reason[];
}

/** The load of each set where shares of the maximum, or written loads, differ; undefined where one load serves all. */
function loadsOfSets({ startOf }: Candidate, dose: Dose): readonly Load[] | undefined {
  const asked = dose.sets.map(({ percent, load }) => JSON.stringify([percent, load]));
  if (new Set(asked).size < 2) return undefined;
  const starts = dose.sets.map((set) => startOf({ ...dose, sets: [set] }));
  const loads = starts.flatMap((start) => (start.kind === "load" ? [start.load] : []));
  return loads.length === dose.sets.length ? loads : undefined;
}

/** @returns the load of a week's dose to begin with, or how to find it, with its evidence */
export function slotStart(candidate: Candidate, dose: Dose): SlotStart {
  const { start, tooLight } = candidate;
  if (start.kind === "too light")
    return { load: start.heaviest, why: [start.because, reason("plan/long-sets-instead")] };
  if (tooLight) return { why: [reason("plan/long-sets-instead")] };
  const first = dose.sets[0];
  const begin = first === undefined ? start : candidate.startOf({ ...dose, sets: [first] });
  if (begin.kind === "find") {
    return { find: { ...(begin.from === undefined ? {} : { from: begin.from }), because: begin.because }, why: [] };
  }
  if (begin.kind !== "load") return { why: [] };
  const loads = loadsOfSets(candidate, dose);
  const differ = loads?.some((load) => massOf(load) !== massOf(begin.load)) ?? false;
  return { load: begin.load, ...(loads !== undefined && differ ? { loads } : {}), why: [begin.evidence] };
}
