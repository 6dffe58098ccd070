import { printDay } from "../day.ts";
import type { Dose } from "../model/index.ts";
import { type DoseState, type NextDose, stay } from "./dose-state.ts";
import { reason } from "./reasons.ts";
import { allAsked, isAtTop, running } from "./trained.ts";
import { upTheLadder } from "./up-the-ladder.ts";

/** Sessions running that must be done as asked. Ours, as for loads. */
const SESSIONS = 2;
/** Contacts of a session from which the form gets harder rather than longer. From memory: 30 to 60 to begin with. */
const MOST = 60;
/** A rise is at most such a share of the contacts. Ours, after the usual largest step of a load. */
const RISE = 0.1;

/**
 * Contacts for jumps: every set done as asked in two sessions running earns one contact more in each set, up to a tenth
 * more in all and 60 in a session; then the next form of the ladder, once its gate is met.
 *
 * @source ours
 */
export function moreContacts(state: DoseState): NextDose {
  const { slot, exercise } = state;
  const amount = slot.dose.sets[0]?.amount;
  const last = running(state, SESSIONS);
  if (amount?.kind !== "contacts" || last === undefined) return stay();
  const done = last.every((session) => {
    const sets = allAsked(session);
    return sets?.every((set) => isAtTop(set, slot.dose));
  });
  if (!done) return stay();
  const total = slot.dose.sets.length * amount.span.to;
  const most = Math.min(MOST, total + Math.max(1, Math.floor(total * RISE)));
  const add = Math.min(slot.dose.sets.length, most - total);
  if (add < 1) return upTheLadder(state);
  const dose: Dose = {
    ...slot.dose,
    sets: slot.dose.sets.map((set, at) => {
      if (set.amount.kind !== "contacts" || at >= add) return set;
      const { from, to } = set.amount.span;
      return { ...set, amount: { kind: "contacts", span: { from: from + 1, to: to + 1 } } };
    }),
  };
  const sessions = last.map(({ at }) => ({ on: printDay(state.dayOf(at)) }));
  const data = { exercise: exercise.id, from: total, to: total + add, most: MOST, sessions };
  return {
    kind: "up",
    patch: { slot: slot.key, change: "reps", dose, exercise: exercise.id },
    evidence: [reason("progress/contacts-done", data)],
    refused: [],
    others: [],
    since: Math.min(...last.map(({ n }) => n)),
  };
}
