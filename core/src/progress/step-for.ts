import { addDays, printDay } from "../day.ts";
import { loadsLeft, shareAtMost } from "../loads/index.ts";
import { liftsFrom, slotHistory } from "../measures/index.ts";
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
  const lifts = [...person.lifts, ...liftsFrom(input.log, input, addDays(on, 1))];
  const left = loadsLeft({ exercise, person: { ...person, lifts }, place, on, cap: admission.cap });
  const since = Math.min(...shown.passed.map(({ n }) => n));
  const step = nextLoad(exercise, person, left.loads, shown.load);
  const proof = proofOf(exercise, shown);
  const home = rangeOf(from.dose) ?? range;
  const wider = widened(slot, range, step, home);
  if (step === undefined) {
    const none = reason("progress/nothing-heavier", { load: plain(shown.load) });
    return wider === undefined || left.loads.length === 0
      ? undefined
      : { patch: wider, evidence: [proof, none], since };
  }
  const { percent } = step;
  if (percent === undefined) return undefined;
  const load: Patch = { slot: slot.key, change: "load", load: step.to, exercise: exercise.id };
  const most = left.shareUnknown ? admission.cap.percent : undefined;
  const size = sizeOf({ ...step, percent }, shown, home, most);
  const evidence = [proof, ...size.because];
  if (size.kind === "fine") return { patch: load, evidence, since, ...(wider === undefined ? {} : { other: wider }) };
  if (wider !== undefined) return { patch: wider, evidence, since, ...(size.kind === "large" ? { other: load } : {}) };
  return size.kind === "large" ? { patch: load, evidence, since } : undefined;
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

/**
 * Whether a step may be taken: small enough or earned by repetitions; large; or not known to be under a share of the
 * maximum that limits it.
 *
 * @param home the range to which a heavier load goes back
 * @param most per cent of today's best, where that is a limit and today's best is not known
 */
function sizeOf(
  { from, to, percent }: LoadStep & { readonly percent: number },
  { goal, passed }: TwoForTwo,
  home: Span,
  most: number | undefined,
): { readonly kind: "fine" | "large" | "unknown"; readonly because: readonly Reason[] } {
  const reps = Math.min(...passed.map(({ over }) => Math.floor(goal + over)));
  const left = repsAfter(percent, reps);
  const step = { from: plain(from), to: plain(to), percent, most: MOST_STEP_PERCENT };
  const isLarge = percent > MOST_STEP_PERCENT;
  const large = reason("progress/step-too-large", step);
  if (most !== undefined && !(shareAtMost(left) <= most)) {
    const share = reason("progress/share-unknown", { most, to: plain(to), reps: left });
    return { kind: "unknown", because: isLarge ? [large, share] : [share] };
  }
  if (!isLarge) return { kind: "fine", because: [reason("progress/step-fine", step)] };
  const needed = repsToEarn(percent, home.from);
  const expect = reason("progress/expect", { load: plain(to), reps: left });
  return reps >= needed
    ? { kind: "fine", because: [reason("progress/step-earned", { ...step, reps, needed }), expect] }
    : { kind: "large", because: [large, expect] };
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
