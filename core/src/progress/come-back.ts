import { lossAway } from "../capacity/index.ts";
import { ageOn, type Day, printDay } from "../day.ts";
import type { Dose, Patch, Reason, SetDose } from "../model/index.ts";
import type { SourceId } from "../sources.ts";
import { type Load, massOf } from "../units.ts";
import type { DoseState, NextDose } from "./dose-state.ts";
import { EVEN, likely } from "./likely.ts";
import { plain, reason } from "./reasons.ts";
import { allAsked, amountDone, BREAK_DAYS, floorOf, trained } from "./trained.ts";

/**
 * A named rule for the first session after time away, since what is printed conflicts: from "strength barely falls in
 * two or three weeks" to "at most half, and two weeks of ramp for each week off".
 */
export interface ComebackRule {
  readonly id: "gentle" | "half first";
  readonly source: SourceId;
  /** Share of the last load; after illness the lower. */
  readonly share: { readonly well: number; readonly ill: number };
  /** Share of the sets, rounded up. */
  readonly sets: number;
  /** So many more in reserve. */
  readonly reserve: number;
}

export const COMEBACK_RULES: readonly ComebackRule[] = [
  { id: "gentle", source: "ours", share: { well: 0.9, ill: 0.85 }, sets: 0.5, reserve: 1 },
  { id: "half first", source: "practice", share: { well: 0.5, ill: 0.5 }, sets: 0.5, reserve: 2 },
];
/** Sessions done as asked after a break that took strength, from which the load before it comes back. Ours, no source. */
const SESSIONS_BACK = 2;
/** Sessions after the break, past which what was lifted before it says little. Ours, no source. */
const SESSIONS_LATER = 4;

/**
 * The first dose after 14 days or more without a slot's form: a lighter load that is here, half the sets, one more in
 * reserve. Sets are cut more than load, since strength stays longer than the habit of work; what time away takes by the
 * published figures comes off besides. The stricter rule stands under the others.
 *
 * @returns undefined when there was no break, or the slot asks for that little already
 * @source ogasawara2013, halonen2024, nascimento2022, ours
 */
export function comeBack(state: DoseState): NextDose | undefined {
  const last = trained(state).at(-1);
  if (last === undefined || last.asked.exercise !== state.exercise.id) return undefined;
  const days = state.today - state.dayOf(last.at);
  if (!(days >= BREAK_DAYS)) return undefined;
  const lifted = last.sets.findLast(({ lifted }) => lifted !== undefined)?.lifted;
  const ill = wasIll(state, state.dayOf(last.at));
  const [patch, ...others] = COMEBACK_RULES.map((rule) => patchBy(rule, state, lifted, days, ill));
  if (patch === undefined || isAsked(state, patch)) return undefined;
  const rule = COMEBACK_RULES[0]!;
  const because = reason("progress/comeback", {
    exercise: state.exercise.id,
    days,
    ill,
    rule: rule.id,
    load: plain(lifted),
    since: printDay(state.dayOf(last.at)),
  });
  const told: Reason[] = ill ? [reason("progress/well-first", {})] : [];
  const used = isUsed(state) ? [reason("progress/muscles-used", { muscles: [...state.inUse] })] : [];
  return { kind: "down", patch, evidence: [because, ...used, ...told], refused: [], others, since: last.n };
}

/** Whether illness kept somebody away after a day, or from shortly before it. */
function wasIll({ sickOn }: DoseState, last: Day): boolean {
  return sickOn.some((day) => day > last - BREAK_DAYS / 2);
}

function patchBy(rule: ComebackRule, state: DoseState, lifted: Load | undefined, days: number, ill: boolean): Patch {
  const { slot, home, exercise } = state;
  const lost = lossAway(days / 7, { age: ageOn(state.person.born, state.today) });
  const share = (ill ? rule.share.ill : rule.share.well) * Math.exp(-lost);
  const load = lifted === undefined ? undefined : under(state, lifted, share);
  const keptShare = rule.id === "gentle" && isUsed(state) ? 1 : rule.sets;
  const sets = home.sets.slice(0, Math.ceil(home.sets.length * keptShare)).map((set): SetDose => {
    const { percent: _, ...kept } = set;
    const span = set.reserve ?? { from: 2, to: 2 };
    const reserve = { from: span.from + rule.reserve, to: span.to + rule.reserve };
    const withReserve = set.amount.kind === "hold" || set.amount.kind === "contacts" ? kept : { ...kept, reserve };
    return load === undefined ? withReserve : { ...withReserve, load };
  });
  const dose: Dose = { ...home, sets };
  return { slot: slot.key, change: "reps", dose, exercise: exercise.id };
}

/** Whether every muscle that the form drives was trained by other movements meanwhile: then only the load goes back. */
function isUsed({ inUse }: DoseState): boolean {
  return inUse.length > 0;
}

/** The hardest load here that is at most such a share of one lifted; with help, at least so much the more help. */
function under({ loads, exercise }: DoseState, lifted: Load, share: number): Load | undefined {
  const helps = exercise.loadMeaning === "assist";
  const fits = loads.filter((each) =>
    helps ? massOf(each) >= massOf(lifted) * (2 - share) : massOf(each) <= massOf(lifted) * share,
  );
  return fits.at(-1) ?? loads[0];
}

/** Whether no more than that is asked already: as few sets, and no harder a load, or as many left where there is none. */
function isAsked({ slot, exercise }: DoseState, patch: Patch): boolean {
  if (patch.change !== "reps" || slot.dose.sets.length > patch.dose.sets.length) return false;
  const [now, then] = [slot.dose.sets[0], patch.dose.sets[0]];
  if (then?.load === undefined) return (now?.reserve?.from ?? 0) >= (then?.reserve?.from ?? 0);
  if (now?.load === undefined) return false;
  const more = massOf(now.load) - massOf(then.load);
  return exercise.loadMeaning === "assist" ? more >= 0 : more <= 0;
}

/**
 * The load before the break, once what time away asks was done as asked after it: one session where it took no strength
 * by the published figures, two where it did or illness was the reason. It is no new load, so it is no step; where the
 * record makes it unlikely, the hardest between that is not. A break soon after a break goes back to what was lifted
 * before both.
 *
 * @returns undefined where there was no break lately, or its load is back
 * @source ogasawara2013, halonen2024, nascimento2022, ours
 */
export function backAgain(state: DoseState): NextDose | undefined {
  const done = trained(state);
  const day = ({ at }: (typeof done)[number]) => state.dayOf(at);
  const first = done.findLastIndex((each, at) => at > 0 && day(each) - day(done[at - 1]!) >= BREAK_DAYS);
  if (first === -1 || state.today - day(done.at(-1)!) >= BREAK_DAYS) return undefined;
  const away = day(done[first]!) - day(done[first - 1]!);
  const cost =
    lossAway(away / 7, { age: ageOn(state.person.born, state.today) }) > 0 || wasIll(state, day(done[first - 1]!));
  const needed = cost ? SESSIONS_BACK : 1;
  const after = done.slice(first);
  const before = done.slice(0, first).findLast(({ asked }) => asked.dose.sets.length >= state.home.sets.length);
  if (before === undefined || after.length < needed || after.length > SESSIONS_LATER) return undefined;
  const shown = after.slice(-needed);
  const asAsked = shown.every((session) => {
    const sets = allAsked(session);
    return sets?.every((set) => set.exercise === state.exercise.id && (amountDone(set) ?? -1) >= (floorOf(set) ?? 0));
  });
  const old = before.sets.findLast(({ lifted }) => lifted !== undefined)?.lifted;
  const now = shown.at(-1)!.sets.findLast(({ lifted }) => lifted !== undefined)?.lifted;
  if (asAsked !== true || old === undefined || now === undefined) return undefined;
  const { slot, exercise, home } = state;
  const helps = exercise.loadMeaning === "assist";
  const between = state.loads.filter(
    (each) =>
      (helps ? massOf(each) < massOf(now) : massOf(each) > massOf(now)) &&
      (helps ? massOf(each) >= massOf(old) : massOf(each) <= massOf(old)),
  );
  const asked = home.sets[0];
  const reps = asked?.amount.kind === "reps" ? asked.amount.span.from : undefined;
  if (reps === undefined) return undefined;
  const chances = between.map((load) => ({
    load,
    chance: likely(state, { load, reps, reserve: asked?.reserve?.from ?? 0 }),
  }));
  const to = chances.findLast(({ chance }) => chance === undefined || chance.chance >= EVEN);
  if (to === undefined) return undefined;
  const { load, chance } = to;
  return {
    kind: "up",
    patch: { slot: slot.key, change: "load", load, exercise: exercise.id },
    evidence: [
      reason("progress/back-again", {
        exercise: exercise.id,
        load: plain(old),
        sessions: shown.map((session) => ({ on: printDay(day(session)) })),
      }),
      ...(chance === undefined ? [] : [chance.because]),
    ],
    ...(chance === undefined ? {} : { certainty: { chance: chance.chance, sessions: chance.sessions } }),
    refused: [],
    others: [],
    since: Math.min(...shown.map(({ n }) => n)),
  };
}
