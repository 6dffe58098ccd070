import { printDay } from "../day.ts";
import type { RecordFold } from "../measures/index.ts";
import type { Dose, PlanSlot, SetDose } from "../model/index.ts";
import type { DoseState, NextDose } from "./dose-state.ts";
import { reason } from "./reasons.ts";
import { allAsked, amountDone, floorOf, running } from "./trained.ts";

/** A dose with fewer sets than the programme asks, that a coach took for a comeback or a muscle's first sessions. */
export interface Lowered {
  readonly why: "comeback" | "first";
  /** Counter of the decision. */
  readonly n: number;
}

/** Sessions done as asked after which sets come back. Ours, no source. */
const SESSIONS = 2;

/** @returns why the dose that stands in a slot has fewer sets than the programme asks, where a coach took it for that */
export function loweredIn({ decisions }: RecordFold, slot: PlanSlot, home: Dose): Lowered | undefined {
  if (!(slot.dose.sets.length < home.sets.length)) return undefined;
  const last = decisions.findLast(({ patch }) => patch?.slot === slot.key && patch.change === "reps");
  const codes = new Set(last?.proposal?.evidence.map(({ code }) => code));
  if (last === undefined) return undefined;
  if (codes.has("progress/comeback")) return { why: "comeback", n: last.n };
  return codes.has("progress/muscle-new") || codes.has("progress/muscle-back") || codes.has("progress/full-again")
    ? { why: "first", n: last.n }
    : undefined;
}

/**
 * The sets of the programme again, once two sessions with fewer were done as asked: all of them after a comeback, one
 * more at a time after the first sessions of a muscle. Loads stay as they are now.
 *
 * @returns undefined where nothing was lowered, or too little was done since
 * @source ours
 */
export function fullAgain(state: DoseState): NextDose | undefined {
  const { lowered, slot, home, exercise } = state;
  const last = running(state, SESSIONS);
  if (lowered === undefined || last === undefined) return undefined;
  const asAsked = last.every((session) => {
    const sets = session.n > lowered.n ? allAsked(session) : undefined;
    return sets?.every((set) => set.exercise === exercise.id && (amountDone(set) ?? -1) >= (floorOf(set) ?? 0));
  });
  if (!asAsked) return undefined;
  const from = slot.dose.sets.length;
  const to = lowered.why === "comeback" ? home.sets.length : from + 1;
  const sets = home.sets.slice(0, to).map((set): SetDose => {
    const { percent: _, ...kept } = set;
    return slot.load === undefined ? set : { ...kept, load: slot.load };
  });
  const sessions = last.map(({ at }) => ({ on: printDay(state.dayOf(at)) }));
  return {
    kind: "up",
    patch: { slot: slot.key, change: "reps", dose: { ...home, sets }, exercise: exercise.id },
    evidence: [reason("progress/full-again", { exercise: exercise.id, from, to, why: lowered.why, sessions })],
    refused: [],
    others: [],
    since: Math.min(...last.map(({ n }) => n)),
  };
}
