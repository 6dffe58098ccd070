import { printDay } from "../day.ts";
import { loadsLeft } from "../loads/index.ts";
import { slotHistory } from "../measures/index.ts";
import type { Dose, Exercise, Patch, PlanSlot, Reason, Slot, Span } from "../model/index.ts";
import { admitter } from "../offer/index.ts";
import { type Load, massOf } from "../units.ts";
import { type LoadStep, MOST_STEP_PERCENT, nextLoad, repsAfter, repsToEarn } from "./next-load.ts";
import type { ProgressInput } from "./progress-input.ts";
import { plain, reason } from "./reasons.ts";
import { rangeOf } from "./titles.ts";
import { OVER, type TwoForTwo, twoForTwo } from "./two-for-two.ts";

/** Repetitions to which a range is widened at most, where the next load is far. Ours, no source. */
const MOST_REPS = 25;

/** A step that the record has earned, and the other way to take it. */
export interface Step {
  readonly patch: Patch;
  readonly evidence: readonly Reason[];
  /** The first of the two sessions on which it rests. */
  readonly since: number;
  readonly other?: Patch;
}

/**
 * The next dose of a slot: repetitions first, then load.
 *
 * Passing the top of the range by two in the last set of two sessions running earns the next load that exists here and
 * that limits leave. Where that load is more than 10 % heavier, so many repetitions must be shown that about the bottom
 * of the range is left with it; until then the range is widened, up to 25. Where nothing heavier is there, likewise.
 *
 * @param slot as it is asked next
 * @returns undefined when nothing is earned, or when what limits leave cannot be known
 * @source haffTriplett2016, acsm2009, epley1985, ours
 */
export function stepFor(input: ProgressInput, slot: PlanSlot, from: Slot, exercise: Exercise): Step | undefined {
  const range = rangeOf(slot.dose);
  if (from.way !== "reps then load" || range === undefined || slot.loads !== undefined) return undefined;
  const shown = twoForTwo(slotHistory(input.log, slot.key), exercise.id, range.to, input);
  if (shown?.load === undefined || isEasier(exercise, shown.load, slot.load)) return undefined;
  const { person, place, catalogue, today: on } = input;
  const admission = admitter({ person, place, catalogue, on, byHand: true })(exercise, slot.dose);
  if (!admission.ok) return undefined;
  const { loads, shareUnknown } = loadsLeft({ exercise, person, place, on, cap: admission.cap });
  if (shareUnknown) return undefined;
  const since = Math.min(...shown.passed.map(({ n }) => n));
  const step = nextLoad(exercise, person, loads, shown.load);
  const proof = proofOf(exercise, shown);
  const wider = widened(slot, range, step, rangeOf(from.dose) ?? range);
  if (step === undefined) {
    const none = reason("progress/nothing-heavier", { load: plain(shown.load) });
    return wider === undefined ? undefined : { patch: wider, evidence: [proof, none], since };
  }
  const load: Patch = { slot: slot.key, change: "load", load: step.to, exercise: exercise.id };
  const size = sizeOf(step, shown, rangeOf(from.dose) ?? range);
  if (size.kind === "unknown") return undefined;
  if (size.kind === "large" && wider !== undefined)
    return { patch: wider, evidence: [proof, ...size.because], since, other: load };
  return { patch: load, evidence: [proof, ...size.because], since, ...(wider === undefined ? {} : { other: wider }) };
}

/** What was shown with less than is asked now earns nothing. */
function isEasier({ loadMeaning }: Exercise, shown: Load, asked: Load | undefined): boolean {
  if (asked === undefined) return false;
  return loadMeaning === "assist" ? massOf(shown) > massOf(asked) : massOf(shown) < massOf(asked);
}

function proofOf(exercise: Exercise, { goal, load, passed }: TwoForTwo): Reason {
  const sessions = passed.map(({ on, reps, reserve }) => ({ on: printDay(on), reps, reserve: reserve ?? null }));
  return reason("progress/two-for-two", { exercise: exercise.id, goal, over: OVER, load: plain(load), sessions });
}

/** Whether a step is small enough, and why. `home` is the range to which a heavier load goes back. */
function sizeOf({ from, to, percent }: LoadStep, { goal, passed }: TwoForTwo, home: Span) {
  if (percent === undefined) return { kind: "unknown" } as const;
  const step = { from: plain(from), to: plain(to), percent, most: MOST_STEP_PERCENT };
  if (percent <= MOST_STEP_PERCENT) return { kind: "fine", because: [reason("progress/step-fine", step)] } as const;
  const reps = Math.min(...passed.map(({ over }) => Math.floor(goal + over)));
  const needed = repsToEarn(percent, home.from);
  const expect = reason("progress/expect", { load: plain(to), reps: repsAfter(percent, reps) });
  if (reps >= needed) {
    return { kind: "earned", because: [reason("progress/step-earned", { ...step, reps, needed }), expect] } as const;
  }
  return { kind: "large", because: [reason("progress/step-too-large", step), expect] } as const;
}

/** The range from its old top up to what earns the step, or five more where there is nothing heavier. */
function widened(slot: PlanSlot, range: Span, step: LoadStep | undefined, home: Span): Patch | undefined {
  const wanted = step?.percent === undefined ? range.to + 5 : repsToEarn(step.percent, home.from) - OVER;
  const to = Math.min(MOST_REPS, Math.max(range.to + 1, wanted));
  if (!(to > range.to)) return undefined;
  const dose: Dose = {
    ...slot.dose,
    sets: slot.dose.sets.map((set) =>
      set.amount.kind === "reps" ? { ...set, amount: { kind: "reps", span: { from: range.to, to } } } : set,
    ),
  };
  return { slot: slot.key, change: "reps", dose, exercise: slot.exercise };
}
