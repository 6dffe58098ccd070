import { printDay } from "../day.ts";
import { leastOf, type SlotSession } from "../measures/index.ts";
import { type DoseState, type NextDose, stay } from "./dose-state.ts";
import type { HarderForm } from "./harder-forms.ts";
import { reason } from "./reasons.ts";
import { running } from "./trained.ts";

/** Sessions running in which a gate must be met, and days between the first and the last of them at least. Ours. */
const SESSIONS = 2;
const APART_DAYS = 5;
/** Repetitions in reserve on the last set at least, where it is no hold. Ours. */
const LEAST_RESERVE = 2;

/**
 * The next form of the ladder once its gate is met: its amount, in as many sets as it asks, in two sessions running five
 * days apart, with two in reserve on the last set (a hold ends with the shape intact). The conditions of the next form
 * are the coach's to see, and stand beside the proposal: one set of 3 to 5 is tried first.
 *
 * @source ours
 */
export function upTheLadder(state: DoseState): NextDose {
  const last = running(state, SESSIONS);
  if (last === undefined || state.harder.length === 0) return stay();
  const days = last.map(({ at }) => state.dayOf(at));
  const met = state.harder.filter((form) => last.every((session) => meets(session, form)));
  const [next] = met;
  if (next === undefined) return stay();
  if (!(days.at(-1)! - days[0]! >= APART_DAYS))
    return stay([reason("progress/gate-too-soon", { exercise: next.exercise, days: APART_DAYS })]);
  const { gate } = next;
  const { slot, exercise } = state;
  const proof = reason("progress/gate-met", {
    exercise: exercise.id,
    next: next.exercise,
    sets: gate.sets,
    amount: { ...gate.amount! },
    sessions: days.map((on) => ({ on: printDay(on) })),
  });
  const conditions =
    gate.conditions.length === 0 ? [] : [reason("progress/gate-conditions", { conditions: [...gate.conditions] })];
  return {
    kind: "up",
    patch: { slot: slot.key, change: "exercise", exercise: next.exercise },
    evidence: [proof, ...conditions, reason("progress/try-first", { exercise: next.exercise })],
    refused: [],
    others: met.slice(1).map((form) => ({ slot: slot.key, change: "exercise", exercise: form.exercise })),
    since: Math.min(...last.map(({ n }) => n)),
  };
}

function meets({ sets }: SlotSession, { gate }: HarderForm): boolean {
  const { amount } = gate;
  if (amount === undefined) return false;
  const hold = amount.kind === "hold" || amount.kind === "time";
  const enough = sets.filter((set) => (leastOf(hold ? (set.holdS ?? set.reps) : set.reps) ?? -1) >= amount.value);
  if (enough.length < gate.sets) return false;
  const reserve = sets.at(-1)?.reserve;
  return (
    hold ||
    amount.kind === "contacts" ||
    amount.kind === "metres" ||
    (reserve !== undefined && reserve >= LEAST_RESERVE)
  );
}
