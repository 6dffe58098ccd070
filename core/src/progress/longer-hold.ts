import { printDay } from "../day.ts";
import type { Dose, Patch, SetDose } from "../model/index.ts";
import { type DoseState, type NextDose, stay } from "./dose-state.ts";
import { likelyHold } from "./likely.ts";
import { reason } from "./reasons.ts";
import { allAsked, amountDone, isAtTop, running } from "./trained.ts";
import { upTheLadder } from "./up-the-ladder.ts";

/** Sessions running in which every hold must reach the top. Ours, as for loads. */
const SESSIONS = 2;
/** Short holds in place of one long one: so many seconds each. Source: open case of the plank; ours. */
const SHORT_S = 10;
/** Where a form says no range of its own, a hold is not lengthened past this. Source: open case of the plank; ours. */
const MOST_S = 60;

/**
 * Hold time, then a harder form. Every hold at the top of what was asked, and is asked next, in two sessions running, earns a usual raise;
 * at the top of the form's own range (a plank: 10 to 60 s) time ends, and the next form of the ladder comes, at the
 * bottom of its range; where there is none, short holds in its place.
 *
 * @source ours
 */
export function longerHold(state: DoseState): NextDose {
  const { slot, exercise } = state;
  const amount = slot.dose.sets[0]?.amount;
  const last = running(state, SESSIONS);
  if (amount?.kind !== "hold" || last === undefined) return stay();
  const sets = last.map((session) => allAsked(session) ?? []);
  const reached = sets.every((each) => each.length > 0 && each.every((set) => isAtTop(set, slot.dose)));
  if (!reached) return stay();
  const most = exercise.hold?.to ?? MOST_S;
  const least = Math.min(...sets.flat().map((set) => amountDone(set)!));
  const sessions = last.map(({ at }) => ({ on: printDay(state.dayOf(at)) }));
  const proof = reason("progress/held", { exercise: exercise.id, seconds: least, sessions });
  const since = Math.min(...last.map(({ n }) => n));
  const { span } = amount;
  if (span.to < most) {
    const step = exercise.hold?.step ?? 5;
    const to = Math.min(most, span.to + step);
    const from = Math.min(to, span.from + (to - span.to));
    const chance = likelyHold(state, from);
    return {
      kind: "up",
      patch: withSets(state, (set) => ({ ...set, amount: { kind: "hold", span: { from, to } } })),
      evidence: [proof, ...(chance === undefined ? [] : [chance.because])],
      ...(chance === undefined ? {} : { certainty: { chance: chance.chance, sessions: chance.sessions } }),
      refused: [],
      others: [],
      since,
    };
  }
  const full = reason("progress/hold-full", { exercise: exercise.id, most });
  const harder = upTheLadder(state);
  if (harder.kind === "up") return { ...harder, evidence: [proof, full, ...harder.evidence.slice(1)], since };
  const count = Math.max(3, Math.ceil(least / SHORT_S / 2));
  const short: SetDose = { ...slot.dose.sets[0]!, amount: { kind: "hold", span: { from: SHORT_S, to: SHORT_S } } };
  const many: Dose = { ...slot.dose, sets: Array.from({ length: Math.min(count, 6) }, () => short) };
  const patch: Patch = { slot: slot.key, change: "reps", dose: many, exercise: exercise.id };
  return { kind: "up", patch, evidence: [proof, full], refused: harder.refused, others: [], since };
}

function withSets({ slot }: DoseState, change: (set: SetDose) => SetDose): Patch {
  const dose: Dose = { ...slot.dose, sets: slot.dose.sets.map(change) };
  return { slot: slot.key, change: "reps", dose, exercise: slot.exercise };
}
