import { printDay } from "../day.ts";
import type { Patch } from "../model/index.ts";
import { type Load, massOf } from "../units.ts";
import { type DoseState, type NextDose, stay } from "./dose-state.ts";
import { likely, UNLIKELY } from "./likely.ts";
import { MOST_STEP_PERCENT, nextLoad } from "./next-load.ts";
import { plain, reason } from "./reasons.ts";
import { rangeOf } from "./titles.ts";
import { allAsked, amountDone, floorOf, overAsked, running } from "./trained.ts";

/** Sessions running whose reserve must differ the same way. What people say lies a repetition off (hackett2017); ours. */
const SESSIONS = 2;

/**
 * By reserve: the load follows the repetitions that are left. More left than asked in every set of two sessions running,
 * with the repetitions done, earns the next load; less left than asked in two sessions running goes back one.
 *
 * What people say they have left is about one repetition off, so one session never decides, and a reserve that was not
 * said is no reserve.
 *
 * @returns unknown where the last two sessions say no reserve
 * @source hackett2017, acsm2009, ours
 */
export function reserveGuided(state: DoseState): NextDose {
  const { slot, exercise, person } = state;
  const range = rangeOf(slot.dose);
  const asked = slot.dose.sets[0]?.reserve;
  const last = running(state, SESSIONS);
  if (range === undefined || asked === undefined || last === undefined || slot.loads !== undefined) return stay();
  const sets = last.map((session) => allAsked(session) ?? []);
  if (sets.some((each) => each.length === 0)) return stay();
  const said = sets.flatMap((each) => each.map(({ reserve }) => reserve));
  if (said.every((reserve) => reserve === undefined)) {
    const missing = reason("progress/reserve-missing", { exercise: exercise.id, sessions: SESSIONS });
    return { kind: "unknown", evidence: [missing], refused: [], others: [] };
  }
  const shown = sets.flat().map(({ lifted }) => lifted);
  if (shown.some((load) => load === undefined)) return stay();
  const load = (shown as Load[]).reduce((least, each) => (massOf(each) < massOf(least) ? each : least));
  if (slot.load !== undefined && massOf(load) !== massOf(slot.load)) return stay();
  const sessions = last.map(({ at }, index) => ({
    on: printDay(state.dayOf(at)),
    reserve: Math.min(...sets[index]!.map(({ reserve }) => reserve ?? Number.POSITIVE_INFINITY)),
  }));
  const since = Math.min(...last.map(({ n }) => n));
  const told = { exercise: exercise.id, asked: { ...asked }, load: plain(load), sessions };
  const kept = sets.every((each) => each.every((set) => (amountDone(set) ?? -1) >= (floorOf(set) ?? 0)));
  const more = sets.every((each) => each.every(({ reserve }) => reserve === undefined || reserve > asked.to));
  const less = sets.every((each) => each.some((set) => (overAsked(set, range.from) ?? 0) < 0));
  if (more && kept) {
    const step = nextLoad(exercise, person, state.loads, load);
    if (step?.percent === undefined) return stay([reason("progress/nothing-heavier", { load: plain(load) })]);
    const { to, percent } = step;
    const size = { from: plain(load), to: plain(to), percent, most: MOST_STEP_PERCENT };
    if (percent > MOST_STEP_PERCENT) return stay([reason("progress/step-too-large", size)]);
    const chance = likely(state, { load: to, reps: range.from, reserve: asked.from });
    if (chance?.founded === true && !(chance.chance >= UNLIKELY))
      return stay([reason("progress/unlikely", chance.because.data)]);
    return {
      kind: "up",
      patch: { slot: slot.key, change: "load", load: to, exercise: exercise.id },
      evidence: [
        reason("progress/more-in-reserve", told),
        reason("progress/step-fine", size),
        ...(chance === undefined ? [] : [chance.because]),
      ],
      ...(chance === undefined ? {} : { certainty: { chance: chance.chance, sessions: chance.sessions } }),
      refused: [],
      others: [],
      since,
    };
  }
  if (!less) return stay();
  const easier = state.loads.filter((each) => isEasier(exercise.loadMeaning === "assist", each, load)).at(-1);
  if (easier === undefined) return stay();
  const patch: Patch = { slot: slot.key, change: "load", load: easier, exercise: exercise.id };
  return { kind: "down", patch, evidence: [reason("progress/less-in-reserve", told)], refused: [], others: [], since };
}

function isEasier(helps: boolean, each: Load, than: Load): boolean {
  return helps ? massOf(each) > massOf(than) : massOf(each) < massOf(than);
}
