import { printDay } from "../day.ts";
import { LOAD_STEP } from "../equations/index.ts";
import type { Patch } from "../model/index.ts";
import { type Load, massOf } from "../units.ts";
import { type DoseState, type NextDose, stay } from "./dose-state.ts";
import { likely, UNLIKELY } from "./likely.ts";
import { MOST_STEP_PERCENT, nextLoad } from "./next-load.ts";
import { plain, reason } from "./reasons.ts";
import { smallerSteps } from "./smaller-steps.ts";
import { rangeOf } from "./titles.ts";
import { allAsked, overAsked, running } from "./trained.ts";

/**
 * Load by load: every set at the top of what was asked, in two sessions running, earns the next load.
 *
 * The step is one that exists here and that limits leave, of 2 to 10 %; a larger one is taken in smaller ways. It waits
 * where the record makes the same repetitions with it unlikely.
 *
 * @source acsm2009, ours
 */
export function loadStep(state: DoseState): NextDose {
  const { slot, exercise, person } = state;
  const range = rangeOf(slot.dose);
  const last = running(state, LOAD_STEP.sessions);
  if (range === undefined || last === undefined || slot.loads !== undefined) return stay();
  const done = last.map((session) => ({ session, sets: allAsked(session) ?? [] }));
  const all = done.every(({ sets }) => sets.length > 0 && sets.every((set) => (overAsked(set, range.to) ?? -1) >= 0));
  const loaded = done.flatMap(({ sets }) => sets.map(({ lifted }) => lifted));
  if (!all || loaded.some((load) => load === undefined)) return stay();
  const shown = (loaded as Load[]).reduce((least, each) => (massOf(each) < massOf(least) ? each : least));
  if (slot.load !== undefined && massOf(shown) !== massOf(slot.load)) return stay();
  const step = nextLoad(exercise, person, state.loads, shown);
  if (step === undefined) return stay([reason("progress/nothing-heavier", { load: plain(shown) })]);
  const { to, percent } = step;
  if (percent === undefined) return stay();
  const sessions = last.map(({ at }) => ({ on: printDay(state.dayOf(at)) }));
  const proof = reason("progress/all-sets", { exercise: exercise.id, goal: range.to, load: plain(shown), sessions });
  const since = Math.min(...last.map(({ n }) => n));
  const size = { from: plain(shown), to: plain(to), percent, most: MOST_STEP_PERCENT };
  if (percent > MOST_STEP_PERCENT) {
    const large = reason("progress/step-too-large", size);
    const [first, ...others] = smallerSteps(state, to);
    return first === undefined
      ? stay([large])
      : { kind: "up", patch: first, evidence: [proof, large], refused: [large], others, since };
  }
  const reserve = slot.dose.sets[0]?.reserve?.from ?? 0;
  const chance = likely(state, { load: to, reps: range.from, reserve });
  if (chance?.founded === true && !(chance.chance >= UNLIKELY))
    return stay([reason("progress/unlikely", chance.because.data)]);
  const patch: Patch = { slot: slot.key, change: "load", load: to, exercise: exercise.id };
  return {
    kind: "up",
    patch,
    evidence: [proof, reason("progress/step-fine", size), ...(chance === undefined ? [] : [chance.because])],
    ...(chance === undefined ? {} : { certainty: { chance: chance.chance, sessions: chance.sessions } }),
    refused: [],
    others: [],
    since,
  };
}
