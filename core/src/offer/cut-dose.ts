import type { Dose, Exercise, Json, Reason, SetDose } from "../model/index.ts";
import type { Clearance } from "./clearance.ts";
import type { Bound } from "./combine.ts";
import {
  type DoseFacts,
  type Effort,
  HOLD_PERCENT_UNDER_RESERVE,
  holdSeconds,
  isHold,
  leastLeft,
} from "./dose-words.ts";
import { type OfferCode, reason } from "./reasons.ts";

/** The numbers of a clearance that a dose is cut to. */
export type DoseBounds = Pick<Clearance, "percent" | "reserve" | "holdS">;

export interface CutDose {
  readonly dose: Dose;
  readonly effort?: Effort;
  /** What was changed, once for the whole dose. */
  readonly notes: readonly Reason[];
  /** What is known when the cut dose is graded. */
  readonly facts: DoseFacts;
}

interface CutSet {
  readonly set: SetDose;
  readonly notes: readonly Reason[];
}

/**
 * The dose asked, with every limit cut in: share and seconds never above their bound, repetitions left never below.
 *
 * A share that the coach did not write stays unwritten; its bound goes with the admission instead. A set that says
 * nothing of repetitions left gets the bound. Under such a bound holds end at 75 % of the best and conditioning
 * stays in whole sentences. Nothing is ever raised in load or time.
 *
 * @param known best hold of this form and the effort of conditioning, where they are known
 */
export function cutDose(
  exercise: Exercise,
  dose: Dose,
  bounds: DoseBounds,
  known: Pick<DoseFacts, "bestHoldS" | "effort">,
): CutDose {
  // Sets that are alike are one object, as the reader makes them: each kind is cut once.
  const kinds = new Map([...new Set(dose.sets)].map((set) => [set, cutSet(exercise, set, bounds, known.bestHoldS)]));
  const cut = dose.sets.map((set) => kinds.get(set)!);
  const { reserve, percent } = bounds;
  const cyclic = exercise.mode === "cyclic";
  const softer = cyclic && known.effort === "hard" && reserve !== undefined;
  const effort = softer ? "steady" : known.effort;
  return {
    dose: { ...dose, sets: cut.map(({ set }) => set) },
    ...(effort === undefined ? {} : { effort }),
    notes: unique([
      ...[...kinds.values()].flatMap(({ notes }) => notes),
      ...(softer ? [reason("offer/in-sentences", { from: reserve.from })] : []),
    ]),
    facts: {
      ...(known.bestHoldS === undefined ? {} : { bestHoldS: known.bestHoldS }),
      ...(effort === undefined ? {} : { effort }),
      ...(percent === undefined ? {} : { percent: percent.value }),
      ...(reserve === undefined ? {} : { reserve: reserve.value }),
    },
  };
}

function cutSet(exercise: Exercise, set: SetDose, bounds: DoseBounds, bestHoldS: number | undefined): CutSet {
  const steps: ((set: SetDose) => CutSet)[] = isHold(exercise, set)
    ? [
        (now) => cutHold(now, bounds.holdS),
        (now) => cutStatedReserve(now, bounds.reserve),
        (now) => cutShortOfBest(now, bounds.reserve, bestHoldS),
      ]
    : [
        (now) => cutPercent(now, bounds.percent),
        (now) => (hasReserve(exercise) ? cutReserve(now, bounds.reserve) : cutStatedReserve(now, bounds.reserve)),
      ];
  let cut: CutSet = { set, notes: [] };
  for (const step of steps) {
    const next = step(cut.set);
    cut = { set: next.set, notes: [...cut.notes, ...next.notes] };
  }
  return cut;
}

/** Conditioning goes by speech, range and balance have no strength dose: nobody counts repetitions left there. */
function hasReserve(exercise: Exercise): boolean {
  return exercise.mode !== "cyclic" && exercise.pattern !== "mobility" && exercise.pattern !== "balance";
}

function cutPercent(set: SetDose, bound: Bound | undefined): CutSet {
  if (bound === undefined || set.percent === undefined || set.percent <= bound.value) return { set, notes: [] };
  return { set: { ...set, percent: bound.value }, notes: [note("offer/percent-cut", set.percent, bound)] };
}

function cutReserve(set: SetDose, bound: Bound | undefined): CutSet {
  const left = leastLeft(set);
  if (bound === undefined || (left !== undefined && left >= bound.value)) return { set, notes: [] };
  const to = Math.max(set.reserve?.to ?? 0, bound.value);
  return {
    set: { ...set, reserve: { from: bound.value, to } },
    notes: [note("offer/reserve-raised", left ?? null, bound)],
  };
}

function cutStatedReserve(set: SetDose, bound: Bound | undefined): CutSet {
  return set.reserve === undefined ? { set, notes: [] } : cutReserve(set, bound);
}

function cutHold(set: SetDose, bound: Bound | undefined): CutSet {
  if (bound === undefined) return { set, notes: [] };
  return shorten(set, bound.value, note("offer/hold-cut", secondsOrNull(set), bound));
}

/** Of a best hold that is not known, the share is said and the seconds are left as they are. */
function cutShortOfBest(set: SetDose, reserve: Bound | undefined, bestHoldS: number | undefined): CutSet {
  if (reserve === undefined) return { set, notes: [] };
  const limit = HOLD_PERCENT_UNDER_RESERVE;
  const { from } = reserve;
  if (set.percent !== undefined) {
    if (set.percent <= limit) return { set, notes: [] };
    return { set: { ...set, percent: limit }, notes: [reason("offer/hold-short-of-best", { limit, from })] };
  }
  if (bestHoldS === undefined) return { set, notes: [reason("offer/hold-short-of-best", { limit, from })] };
  const most = Math.floor((bestHoldS * limit) / 100);
  return shorten(set, most, reason("offer/hold-cut", { asked: secondsOrNull(set), limit: most, from }));
}

/** A share of the best that the coach wrote shrinks with the seconds. "As long as possible" becomes the bound. */
function shorten(set: SetDose, most: number, why: Reason): CutSet {
  const { amount } = set;
  if (amount.kind === "most") {
    const from = Math.min(amount.least ?? most, most);
    return { set: { ...set, amount: { kind: "hold", span: { from, to: most } } }, notes: [why] };
  }
  if (amount.kind !== "hold" && amount.kind !== "time") return { set, notes: [] };
  const { from, to } = amount.span;
  if (to <= most) return { set, notes: [] };
  const shorter = { ...amount, span: { from: Math.min(from, most), to: most } };
  const percent = set.percent === undefined ? {} : { percent: Math.max(1, Math.ceil((set.percent * most) / to)) };
  return { set: { ...set, amount: shorter, ...percent }, notes: [why] };
}

function secondsOrNull(set: SetDose): number | null {
  const asked = holdSeconds(set);
  return Number.isNaN(asked) ? null : asked;
}

function note(code: OfferCode, asked: Json, bound: Bound): Reason {
  return reason(code, { asked, limit: bound.value, from: bound.from });
}

function unique(notes: readonly Reason[]): readonly Reason[] {
  if (notes.length < 2) return notes;
  const seen = new Map(notes.map((each) => [JSON.stringify(each), each]));
  return [...seen.values()];
}
