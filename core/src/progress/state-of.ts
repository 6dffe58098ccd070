import { capacityOf } from "../capacity/index.ts";
import { addDays } from "../day.ts";
import { distance } from "../exercises/index.ts";
import { loadsLeft } from "../loads/index.ts";
import { exerciseHistory, liftsFrom, type SlotSession, slotHistory } from "../measures/index.ts";
import type { Dose, Exercise, Person, PlanSlot, Slot } from "../model/index.ts";
import { type Admit, admitter } from "../offer/index.ts";
import type { DoseState } from "./dose-state.ts";
import { muscleCaps, musclesInUse } from "./first-exposure.ts";
import { loweredIn } from "./full-again.ts";
import { harderForms } from "./harder-forms.ts";
import { oneMoreSet } from "./one-more-set.ts";
import type { ProgressInput } from "./progress-input.ts";

/** A slot as it is asked next, with its place in the programme. */
export interface SlotNow {
  readonly slot: PlanSlot;
  readonly from: Slot;
  readonly exercise: Exercise;
}

/**
 * What the next doses of a person's slots depend on, from the plan and the record: loads as equipment and limits leave
 * them, forms as the person may do them, capacity as of the last session of the form. Each is computed when it is first
 * asked for, and what all slots share only once.
 */
export function statesOf(input: ProgressInput): (now: SlotNow) => DoseState {
  const { person, place, catalogue, today: on, log } = input;
  const shared: Shared = {
    admit: once(() => admitter({ person, place, catalogue, on, byHand: true })),
    lifter: once(() => ({ ...person, lifts: [...person.lifts, ...liftsFrom(log, input, addDays(on, 1))] })),
  };
  return (now) => stateOf(input, shared, now);
}

/** The same for every slot of a person. */
interface Shared {
  readonly admit: () => Admit;
  /** The person with what the record tells of lifts. */
  readonly lifter: () => Person;
}

function stateOf(input: ProgressInput, { admit, lifter }: Shared, { slot, from, exercise }: SlotNow): DoseState {
  const { person, place, catalogue, today: on, log, record, dayOf } = input;
  const admission = once(() => admit()(exercise, slot.dose));
  const left = once(() => {
    const admitted = admission();
    if (!admitted.ok) return undefined;
    const { cap } = admitted;
    return { ...loadsLeft({ exercise, person: lifter(), place, on, cap }), percent: cap.percent };
  });
  // As of the last session and not of today, so that the same record always says the same.
  const capacityAt = (sessions: readonly SlotSession[]) => {
    const last = sessions.at(-1);
    return capacityOf(exercise, sessions, { person, on: last === undefined ? on : dayOf(last.at), dayOf }).capacity;
  };
  const sessions = once(() => exerciseHistory(log, exercise.id));
  const capacity = once(() => capacityAt(sessions()));
  const capacityBefore = once(() => capacityAt(sessions().slice(0, -1)));
  const inUse = once(() => musclesInUse(input, exercise));
  const caps = once(() => muscleCaps(input, slot, exercise));
  const admits = (id: string) => {
    const form = catalogue.exercises.get(id);
    return form !== undefined && !form.coachOnly && admit()(form, begunWith(form, slot.dose)).ok;
  };
  const harder = once(() => {
    const up = distance(catalogue, from.first, slot.exercise) ?? 0;
    return up < from.up ? harderForms(catalogue, exercise.id).filter((form) => admits(form.exercise)) : [];
  });
  return {
    today: on,
    dayOf,
    person,
    exercise,
    slot,
    home: from.dose,
    history: slotHistory(log, slot.key),
    get admitted() {
      return admission().ok;
    },
    get loads() {
      return left()?.loads ?? [];
    },
    get shareAtMost() {
      return left()?.shareUnknown === true ? left()?.percent : undefined;
    },
    get capacity() {
      return capacity();
    },
    get capacityBefore() {
      return capacityBefore();
    },
    get harder() {
      return harder();
    },
    get easier() {
      return slot.offer.filter((id) => (distance(catalogue, exercise.id, id) ?? 0) < 0);
    },
    get sickOn() {
      return record.missed.filter(({ data }) => data.because === "sick").map(({ at }) => dayOf(at));
    },
    get caps() {
      return caps();
    },
    get inUse() {
      return inUse();
    },
    get lowered() {
      return loweredIn(record, slot, from.dose);
    },
    get oneMoreSet() {
      const next = weekAhead(input, slot);
      return next === -1 ? undefined : oneMoreSet(input.plan, catalogue, slot.key, next);
    },
  };
}

/** Most slots never ask for most of it, and a morning list asks of every slot of everybody. */
function once<T>(make: () => T): () => T {
  let known: { readonly value: T } | undefined;
  return () => {
    known ??= { value: make() };
    return known.value;
  };
}

/** The first week of the plan that holds the slot and is not recorded whole, 0 = first; -1 when there is none. */
function weekAhead({ plan, record }: ProgressInput, slot: PlanSlot): number {
  const recorded = new Set(record.sessions.map(({ session }) => session));
  return plan.phases
    .flatMap(({ key: phase, weeks }) => weeks.map((week) => ({ phase, ...week })))
    .findIndex(
      ({ phase, week, sessions }) =>
        sessions.some(({ key }) => !recorded.has(`${phase}/${week}/${key}`)) &&
        sessions.some(({ blocks }) => blocks.some(({ slots }) => slots.some(({ key }) => key === slot.key))),
    );
}

/** The dose with which another form begins: a hold at the shortest of its own range. */
function begunWith({ hold }: Exercise, dose: Dose): Dose {
  if (hold === undefined) return dose;
  const span = { from: hold.from, to: hold.from };
  return { ...dose, sets: dose.sets.map((set) => ({ ...set, amount: { kind: "hold", span } })) };
}
