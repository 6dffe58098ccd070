import { askedSession, sessionSeconds } from "../../measures/index.ts";
import {
  type Dose,
  type Exercise,
  type Phase,
  type Place,
  type Programme,
  type SetDose,
  type Slot,
  slotsOf,
  type WayUp,
} from "../../model/index.ts";
import type { CheckInput, Cure } from "../run/check.ts";
import { sessionPath, slotPlaces } from "../run/walk.ts";

/** What a new slot asks for: a dose to learn with. Practice, no source. */
const LEARNING = { reps: { from: 8, to: 12 }, metres: 20, seconds: 300, contacts: 5, holdS: 20, restS: 60 } as const;
/** What a programme's file takes. */
const LONGEST_KEY = 40;
const MOST_SLOTS = 20;
const LEARNING_RESERVE = { from: 2, to: 3 } as const;

function learningSet(exercise: Exercise): SetDose {
  const side = { eachSide: exercise.eachSide };
  const at = (value: number) => ({ from: value, to: value });
  switch (exercise.amounts) {
    case "reps":
      return { amount: { kind: "reps", span: LEARNING.reps }, ...side, reserve: LEARNING_RESERVE };
    case "hold": {
      const { from, to, step } = exercise.hold ?? { from: LEARNING.holdS, to: LEARNING.holdS, step: 0 };
      return { amount: { kind: "hold", span: { from, to: Math.min(to, from + 2 * step) } }, ...side };
    }
    case "metres":
      return { amount: { kind: "metres", span: at(LEARNING.metres) }, ...side };
    case "time":
      return { amount: { kind: "time", span: at(LEARNING.seconds) }, ...side };
    case "contacts":
      return { amount: { kind: "contacts", span: at(LEARNING.contacts) }, ...side };
  }
}

const WAYS: Readonly<Record<Exercise["amounts"], WayUp>> = {
  reps: "reps then load",
  hold: "hold time",
  metres: "load",
  time: "stay",
  contacts: "contacts",
};

function learningDose(exercise: Exercise, sets: number): Dose {
  const count = exercise.amounts === "time" ? 1 : sets;
  const one = learningSet(exercise);
  const dose = { sets: Array.from({ length: count }, () => one) };
  return count > 1 ? { ...dose, restS: LEARNING.restS } : dose;
}

/** Keys that no slot has: those wanted, cut to what a file takes, with a number where they are taken. */
export function freeKeys(programme: Programme, wanted: readonly string[]): readonly string[] {
  const taken = new Set(slotPlaces(programme).map(({ slot }) => slot.slot));
  return wanted.map((each) => {
    const stem = each.slice(0, LONGEST_KEY - "-999".length).replace(/-$/, "");
    let key = stem;
    for (let n = 2; taken.has(key); n++) key = `${stem}-${n}`;
    taken.add(key);
    return key;
  });
}

/** @returns true when everything the exercise needs is in the place, or no place is given */
export function canBeDoneAt(exercise: Exercise, place: Place | undefined): boolean {
  if (place === undefined) return true;
  return exercise.needs.every((group) => group.some((thing) => (place.equipment[thing] ?? 0) > 0));
}

/** @returns positions of a phase's sessions, the one with most time to spare first */
function sessionsBySpareTime({ catalogue }: CheckInput, phase: Phase): readonly number[] {
  const spare = phase.sessions.map((session) => {
    const { high } = sessionSeconds(askedSession(session, 1, false), (id) => catalogue.exercises.get(id));
    return session.minutes * 60 - high;
  });
  return spare.map((_, index) => index).sort((a, b) => spare[b]! - spare[a]! || a - b);
}

/**
 * Cures that put a new slot at the end of a session's work, the session with most time to spare first, two sets before
 * one. They are one group: only the first that holds is offered.
 */
export function newSlotCures(input: CheckInput, phaseIndex: number, exercises: readonly Exercise[]): readonly Cure[] {
  const phase = input.programme.phases[phaseIndex]!;
  const order = sessionsBySpareTime(input, phase);
  return exercises.flatMap((exercise) =>
    [2, 1].flatMap((count) =>
      order.flatMap((s): readonly Cure[] => {
        const session = phase.sessions[s]!;
        if (session.work.flatMap(slotsOf).length >= MOST_SLOTS) return [];
        const slot: Slot = {
          slot: freeKeys(input.programme, [exercise.id])[0]!,
          pattern: exercise.pattern,
          first: exercise.id,
          down: 1,
          up: 2,
          dose: learningDose(exercise, count),
          way: WAYS[exercise.amounts],
        };
        const at = [...sessionPath(phaseIndex, s), "work", session.work.length];
        const sets = slot.dose.sets.length;
        const data = { exercise: exercise.id, name: exercise.name, session: session.title, sets };
        return [{ id: "add-slot", group: "add-slot", data, changes: [{ op: "insert", at, value: slot }] }];
      }),
    ),
  );
}
