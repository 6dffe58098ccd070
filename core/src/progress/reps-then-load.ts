import type { Capacity } from "../capacity/index.ts";
import { printDay } from "../day.ts";
import { shareAtMost } from "../loads/index.ts";
import { leastOf } from "../measures/index.ts";
import type { Dose, Exercise, Patch, Reason, Span } from "../model/index.ts";
import { type Load, massOf } from "../units.ts";
import { type DoseState, type NextDose, stay } from "./dose-state.ts";
import { type Likely, likely, SURE, SURE_BEFORE, UNLIKELY } from "./likely.ts";
import { type LoadStep, MOST_STEP_PERCENT, nextLoad, repsAfter, repsToEarn } from "./next-load.ts";
import { plain, reason } from "./reasons.ts";
import { smallerSteps } from "./smaller-steps.ts";
import { rangeOf } from "./titles.ts";
import { allAsked, amountDone, running } from "./trained.ts";
import { OVER, type TwoForTwo, twoForTwo } from "./two-for-two.ts";

/** Repetitions to which a range is widened at most, where the next load is far. Ours, no source. */
const MOST_REPS = 25;
/** Sessions running in which the bottom of the range must be reached before a sure step is taken early. Source: acsm2009. */
const REACHED = 2;

/**
 * Repetitions first, then load.
 *
 * Passing the top of the range by two in the last set of two sessions running earns the next load that exists here and
 * that limits leave. So does reaching the bottom of the range in every set of two sessions running, where the record makes
 * it sure that the bottom is done with that load too, and nearly so a session before. Where the record makes it unlikely,
 * the step waits, whatever the repetitions. Where the load is more than 10 % heavier and the record does not make it
 * sure, so many repetitions must be shown that about the bottom of the range is left with it; until then the range is
 * widened, up to 25. Where nothing heavier is there, likewise.
 *
 * @source haffTriplett2016, acsm2009, epley1985, ours
 */
export function repsThenLoad(state: DoseState): NextDose {
  const { slot, exercise, person } = state;
  const range = rangeOf(slot.dose);
  if (range === undefined || slot.loads !== undefined) return stay();
  const passed = twoForTwo(state.history, exercise.id, range.to, state);
  const shown = passed ?? reachedBottom(state, range.from);
  if (shown?.load === undefined || isEasier(exercise, shown.load, slot.load)) return stay();
  const since = Math.min(...shown.passed.map(({ n }) => n));
  const { loads } = state;
  const step = nextLoad(exercise, person, loads, shown.load);
  const home = rangeOf(state.home) ?? range;
  const chance = step === undefined ? undefined : chanceOf(state, step.to, home, state.capacity);
  const early = passed === undefined;
  const proof = early ? reachedProof(exercise, shown) : passedProof(exercise, shown);
  if (early && !(isSure(chance) && wasSure(state, step, home))) return stay();
  const wider = widened(state, range, step, home);
  const up = (patch: Patch, evidence: readonly Reason[], more: Partial<NextDose> = {}): NextDose => ({
    kind: "up",
    patch,
    evidence: [proof, ...evidence],
    refused: [],
    others: [],
    since,
    ...more,
  });
  if (step === undefined) {
    if (early || wider === undefined || loads.length === 0) return stay();
    return up(wider, [reason("progress/nothing-heavier", { load: plain(shown.load) })]);
  }
  const { percent } = step;
  if (percent === undefined) return stay();
  const load: Patch = { slot: slot.key, change: "load", load: step.to, exercise: exercise.id };
  const size = sizeOf(state, { ...step, percent }, shown, home, chance);
  const sure = chance === undefined ? {} : { certainty: { chance: chance.chance, sessions: chance.sessions } };
  const told = chance === undefined ? [] : [chance.because];
  if (size.kind === "fine") {
    if (chance?.founded === true && !(chance.chance >= UNLIKELY)) {
      const refused = [reason("progress/unlikely", chance.because.data)];
      return wider === undefined ? stay(refused) : up(wider, refused, { refused, others: [load] });
    }
    return up(load, [...size.because, ...told], { ...sure, others: wider === undefined ? [] : [wider] });
  }
  const others = [
    ...(wider === undefined ? [] : smallerSteps(state, step.to)),
    ...(size.kind === "large" ? [load] : []),
  ];
  if (wider !== undefined) return up(wider, size.because, { refused: size.because, others });
  return size.kind === "large" ? up(load, size.because, sure) : stay(size.because);
}

/** What was shown with less than is asked now earns nothing. */
function isEasier({ loadMeaning }: Exercise, shown: Load, asked: Load | undefined): boolean {
  if (asked === undefined) return false;
  return loadMeaning === "assist" ? massOf(shown) > massOf(asked) : massOf(shown) < massOf(asked);
}

/** The last two sessions running in which every set reached the bottom of the range; what the last set did is shown. */
function reachedBottom(state: DoseState, goal: number): TwoForTwo | undefined {
  const last = running(state, REACHED);
  if (last === undefined) return undefined;
  const passed = last.flatMap((session) => {
    const sets = allAsked(session);
    const done = sets?.map(amountDone);
    if (sets === undefined || done === undefined || !done.every((reps) => reps !== undefined && reps >= goal))
      return [];
    const { reserve, reps } = sets.at(-1)!;
    const said = reserve === undefined ? {} : { reserve };
    const on = state.dayOf(session.at);
    const count = leastOf(reps)!;
    return [{ session: session.session, on, reps: count, ...said, over: count - goal, n: session.n }];
  });
  const loads = last.flatMap(({ sets }) => sets.map(({ lifted }) => lifted));
  if (passed.length < REACHED || loads.some((load) => load === undefined)) return undefined;
  const load = (loads as Load[]).reduce((least, each) => (massOf(each) < massOf(least) ? each : least));
  return { goal, load, passed };
}

/** The chance of the bottom of the range with a load, leaving what is asked. */
function chanceOf({ exercise, person, home: { sets } }: DoseState, load: Load, home: Span, capacity: Capacity) {
  const reserve = sets[0]?.reserve?.from ?? 0;
  return likely({ exercise, person, capacity }, { load, reps: home.from, reserve });
}

function isSure(chance: Likely | undefined): boolean {
  return chance?.founded === true && chance.chance >= SURE;
}

function wasSure(state: DoseState, step: LoadStep | undefined, home: Span): boolean {
  const before = step === undefined ? undefined : chanceOf(state, step.to, home, state.capacityBefore);
  return before !== undefined && before.chance >= SURE_BEFORE;
}

const saidOf = ({ passed }: TwoForTwo) =>
  passed.map(({ on, reps, reserve }) => ({ on: printDay(on), reps, reserve: reserve ?? null }));

function passedProof(exercise: Exercise, shown: TwoForTwo): Reason {
  const { goal, load } = shown;
  const data = { exercise: exercise.id, goal, over: OVER, load: plain(load), sessions: saidOf(shown) };
  return reason("progress/two-for-two", data);
}

function reachedProof(exercise: Exercise, shown: TwoForTwo): Reason {
  const { goal, load } = shown;
  return reason("progress/bottom-reached", { exercise: exercise.id, goal, load: plain(load), sessions: saidOf(shown) });
}

/**
 * Whether a step may be taken: small enough, sure by the record or earned by repetitions; large; or not known to be under a share of the
 * maximum that limits it.
 *
 * @param home the range to which a heavier load goes back
 */
function sizeOf(
  { shareAtMost: most }: DoseState,
  { from, to, percent }: LoadStep & { readonly percent: number },
  { goal, passed }: TwoForTwo,
  home: Span,
  chance: Likely | undefined,
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
  if (isSure(chance)) return { kind: "fine", because: [reason("progress/step-large-sure", step)] };
  const needed = repsToEarn(percent, home.from);
  const expect = reason("progress/expect", { load: plain(to), reps: left });
  return reps >= needed
    ? { kind: "fine", because: [reason("progress/step-earned", { ...step, reps, needed }), expect] }
    : { kind: "large", because: [large, expect] };
}

/** The range from its old top up to what earns the step, or five more where there is nothing heavier. */
function widened({ slot }: DoseState, range: Span, step: LoadStep | undefined, home: Span): Patch | undefined {
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
