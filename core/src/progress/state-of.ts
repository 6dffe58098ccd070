import { capacityOf } from "../capacity/index.ts";
import { addDays } from "../day.ts";
import { distance } from "../exercises/index.ts";
import { loadsLeft } from "../loads/index.ts";
import { exerciseHistory, liftsFrom, slotHistory } from "../measures/index.ts";
import type { Dose, Exercise, PlanSlot, Slot } from "../model/index.ts";
import { admitter } from "../offer/index.ts";
import type { DoseState } from "./dose-state.ts";
import { harderForms } from "./harder-forms.ts";
import { oneMoreSet } from "./one-more-set.ts";
import type { ProgressInput } from "./progress-input.ts";

/**
 * What the next dose of a slot depends on, from the plan and the record: loads as equipment and limits leave them, forms
 * as the person may do them, capacity as of the last session of the form.
 *
 * @param slot as it is asked next
 * @param from the slot of the programme
 * @returns undefined when the form itself may not be done
 */
export function stateOf(input: ProgressInput, slot: PlanSlot, from: Slot, exercise: Exercise): DoseState | undefined {
  const { person, place, catalogue, today: on, log, record, dayOf } = input;
  const admit = admitter({ person, place, catalogue, on, byHand: true });
  const admission = admit(exercise, slot.dose);
  if (!admission.ok) return undefined;
  const lifts = [...person.lifts, ...liftsFrom(log, input, addDays(on, 1))];
  const left = loadsLeft({ exercise, person: { ...person, lifts }, place, on, cap: admission.cap });
  const percent = left.shareUnknown ? admission.cap.percent : undefined;
  const history = exerciseHistory(log, exercise.id);
  const last = history.at(-1);
  // As of the last session and not of today, so that the same record always says the same.
  const { capacity } = capacityOf(exercise, history, { person, on: last === undefined ? on : dayOf(last.at), dayOf });
  const weeks = input.plan.phases.flatMap((phase) => phase.weeks);
  const recorded = new Set(record.sessions.map(({ session }) => session));
  const ids = input.plan.phases.flatMap(({ key, weeks: own }) =>
    own.map(({ week, sessions }) => sessions.map((session) => `${key}/${week}/${session.key}`)),
  );
  const next = weeks.findIndex(
    ({ sessions }, at) =>
      ids[at]!.some((id) => !recorded.has(id)) &&
      sessions.some(({ blocks }) => blocks.some(({ slots }) => slots.some(({ key }) => key === slot.key))),
  );
  const more = next === -1 ? undefined : oneMoreSet(input.plan, catalogue, slot.key, next);
  const admits = (id: string) => {
    const form = catalogue.exercises.get(id);
    return form !== undefined && !form.coachOnly && admit(form, begunWith(form, slot.dose)).ok;
  };
  const up = distance(catalogue, from.first, slot.exercise) ?? 0;
  return {
    today: on,
    dayOf,
    person,
    exercise,
    slot,
    home: from.dose,
    history: slotHistory(log, slot.key),
    loads: left.loads,
    ...(percent === undefined ? {} : { shareAtMost: percent }),
    capacity,
    harder: up < from.up ? harderForms(catalogue, exercise.id).filter((form) => admits(form.exercise)) : [],
    easier: slot.offer.filter((id) => (distance(catalogue, exercise.id, id) ?? 0) < 0),
    sickOn: record.missed.filter(({ data }) => data.because === "sick").map(({ at }) => dayOf(at)),
    ...(more === undefined ? {} : { oneMoreSet: more }),
  };
}

/** The dose with which another form begins: a hold at the shortest of its own range. */
function begunWith({ hold }: Exercise, dose: Dose): Dose {
  if (hold === undefined) return dose;
  const span = { from: hold.from, to: hold.from };
  return { ...dose, sets: dose.sets.map((set) => ({ ...set, amount: { kind: "hold", span } })) };
}
