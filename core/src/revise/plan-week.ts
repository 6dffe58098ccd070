import {
  type FitInput,
  type FittedPhase,
  type FittedSession,
  type FittedSlot,
  takesLoad,
  whyThis,
} from "../fit/index.ts";
import { loadsFor, rampLoads } from "../loads/index.ts";
import { isLight, lightDose, rampDose, sessionSeconds } from "../measures/index.ts";
import type { Dose, ExerciseId, PlanSession, PlanSlot, PlanWeek } from "../model/index.ts";
import { slotStart } from "./slot-start.ts";

/** Most forms a slot offers to swap to; the phone carries them. */
const MOST_OFFERED = 12;

/** @returns one week of a fitted phase, with light weeks taken down */
export function planWeek(input: FitInput, fitted: FittedPhase, week: number): PlanWeek {
  const light = isLight(input.phase, week);
  return { week, light, sessions: fitted.sessions.map((session) => planSession(input, session, week, light)) };
}

/** Other forms for this slot, best first. */
function offerOf({ choices, chosen }: FittedSlot): readonly ExerciseId[] {
  return choices.candidates
    .filter((candidate) => candidate !== chosen)
    .slice(0, MOST_OFFERED)
    .map((candidate) => candidate.exercise.id);
}

function planSlot(slot: FittedSlot, week: number, light: boolean): PlanSlot | undefined {
  const { chosen, doses, key } = slot;
  const asked = doses[week - 1];
  if (chosen === undefined || asked === undefined) return undefined;
  const start = slotStart(chosen, asked);
  return {
    key,
    exercise: chosen.exercise.id,
    dose: light ? lightDose(asked) : asked,
    ...(chosen.side === undefined ? {} : { side: chosen.side }),
    ...(start.load === undefined ? {} : { load: start.load }),
    ...(start.loads === undefined
      ? {}
      : { loads: light ? start.loads.slice(0, lightDose(asked).sets.length) : start.loads }),
    ...(start.find === undefined ? {} : { find: start.find }),
    why: [...whyThis(slot), ...start.why],
    offer: offerOf(slot),
  };
}

/** Lighter sets that lead up to a loaded slot, from the loads that exist at the place. */
function rampItems(input: FitInput, session: FittedSession, slots: readonly PlanSlot[]): PlanSession["warmup"] {
  return slots.flatMap((slot) => {
    const sets = session.ramps.get(slot.key);
    const exercise = input.catalogue.exercises.get(slot.exercise);
    if (sets === undefined || exercise === undefined || !takesLoad(exercise)) return [];
    const one = rampDose(1);
    const dose: Dose = { ...one, sets: one.sets.map((set) => ({ ...set, eachSide: exercise.eachSide })) };
    const loads = slot.load === undefined ? [] : rampLoads(slot.load, loadsFor(exercise, input.place), sets);
    if (loads.length === 0) return [{ exercise: exercise.id, dose: rampDose(sets), for: slot.key }];
    return loads.map((load) => ({ exercise: exercise.id, dose, load, for: slot.key }));
  });
}

function planSession(input: FitInput, session: FittedSession, week: number, light: boolean): PlanSession {
  const fitted = session.blocks.map((block) => ({
    ...block,
    slots: block.slots.flatMap((slot) => planSlot(slot, week, light) ?? []),
  }));
  const blocks = fitted
    .filter((block) => block.slots.length > 0)
    .map(({ kind, restS, slots }) => ({ kind, slots, ...(restS === undefined ? {} : { restS }) }));
  const slots = blocks.flatMap((block) => block.slots);
  const open = session.blocks.flatMap((block) =>
    block.slots.filter((slot) => slot.chosen === undefined).map((slot) => ({ key: slot.key, why: whyThis(slot) })),
  );
  const warmup = [
    ...session.warmup.map(({ exercise, dose }) => ({ exercise: exercise.id, dose })),
    ...rampItems(input, session, slots),
  ];
  const conditioning = session.conditioning.map(({ exercise, dose, effort }) => ({
    exercise: exercise.id,
    dose,
    effort,
  }));
  const { low, high } = sessionSeconds({ warmup, blocks, conditioning }, (id) => input.catalogue.exercises.get(id));
  return {
    key: session.session.key,
    title: session.session.title,
    warmup,
    blocks,
    conditioning,
    open,
    minutes: { low: Math.floor(low / 60), high: Math.ceil(high / 60) },
  };
}
