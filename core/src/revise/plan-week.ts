import {
  type FitInput,
  type FittedPhase,
  type FittedSession,
  type FittedSlot,
  takesLoad,
  whyThis,
} from "../fit/index.ts";
import { loadsFor, rampLoads } from "../loads/index.ts";
import { isLight, lightDose, pulseZone, rampDose } from "../measures/index.ts";
import {
  type Dose,
  type ExerciseId,
  MOST_OFFERED,
  type PlanSession,
  type PlanSlot,
  type PlanWeek,
  type Reason,
  type SlotKey,
} from "../model/index.ts";
import { lighterLoads } from "./lighter-loads.ts";
import { minutesOf } from "./minutes-of.ts";
import type { SlotPins } from "./patches-in-force.ts";
import { pinnedLoad } from "./pinned-load.ts";
import { reason } from "./reasons.ts";
import { slotStart } from "./slot-start.ts";

/** The coach's decisions, by slot. */
export type Pins = ReadonlyMap<SlotKey, SlotPins>;

/** How light a week is: full, light, or light with lighter loads. */
type Ease = "full" | "light" | "lighter";

/**
 * @param lighter weeks that are light with lighter loads
 * @returns one week of a fitted phase, with light weeks taken down
 */
export function planWeek(
  input: FitInput,
  fitted: FittedPhase,
  week: number,
  pins: Pins = new Map(),
  lighter: ReadonlySet<number> = new Set(),
): PlanWeek {
  const light = isLight(input.phase, week);
  const ease = light ? (lighter.has(week) ? "lighter" : "light") : "full";
  return { week, light, sessions: fitted.sessions.map((session) => planSession(input, session, week, ease, pins)) };
}

/** Other forms for this slot, best first. */
function offerOf({ choices, chosen }: FittedSlot): readonly ExerciseId[] {
  return choices.candidates
    .filter((candidate) => candidate !== chosen)
    .slice(0, MOST_OFFERED)
    .map((candidate) => candidate.exercise.id);
}

function planSlot(slot: FittedSlot, week: number, ease: Ease, pins: Pins): PlanSlot | undefined {
  const { chosen, doses, key } = slot;
  const asked = doses[week - 1];
  if (chosen === undefined || asked === undefined) return undefined;
  const { load, dose } = pins.get(key) ?? {};
  const isFor = (pin: { readonly form?: ExerciseId | undefined }) =>
    pin.form === undefined || pin.form === chosen.exercise.id;
  const begin = slotStart(chosen, asked);
  const pinned = load !== undefined && isFor(load) ? pinnedLoad(chosen, begin, load.load) : undefined;
  const full = pinned ?? begin;
  const start = ease === "lighter" ? lighterLoads(chosen, full) : full;
  const light = ease !== "full";
  const said = pinned === undefined ? asked : withoutLoads(asked);
  return {
    key,
    exercise: chosen.exercise.id,
    dose: light ? lightDose(said) : said,
    ...(chosen.side === undefined ? {} : { side: chosen.side }),
    ...(start.load === undefined ? {} : { load: start.load }),
    ...(start.loads === undefined
      ? {}
      : { loads: light ? start.loads.slice(0, lightDose(asked).sets.length) : start.loads }),
    ...(start.find === undefined ? {} : { find: start.find }),
    why: [...whyThis(slot), ...(dose !== undefined && isFor(dose) ? [reason("plan/dose-decided")] : []), ...start.why],
    offer: offerOf(slot),
  };
}

/** A decided load stands in place of the one that the programme wrote, or of its share of the maximum. */
function withoutLoads(dose: Dose): Dose {
  return { ...dose, sets: dose.sets.map(({ load: _load, percent: _percent, ...set }) => set) };
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

function pausedReason(key: SlotKey, exercise: ExerciseId | undefined, pins: Pins): readonly Reason[] {
  const until = pins.get(key)?.paused?.until;
  const data = { exercise: exercise ?? null, ...(until === undefined ? {} : { until }) };
  return [reason("plan/paused", data)];
}

function planSession(input: FitInput, session: FittedSession, week: number, ease: Ease, pins: Pins): PlanSession {
  const isPaused = ({ key }: FittedSlot) => pins.get(key)?.paused !== undefined;
  const fitted = session.blocks.map((block) => ({
    ...block,
    slots: block.slots.flatMap((slot) => (isPaused(slot) ? [] : (planSlot(slot, week, ease, pins) ?? []))),
  }));
  const blocks = fitted
    .filter((block) => block.slots.length > 0)
    .map(({ kind, restS, slots }) =>
      slots.length < 2
        ? { kind: "straight" as const, slots }
        : { kind, slots, ...(restS === undefined ? {} : { restS }) },
    );
  const slots = blocks.flatMap((block) => block.slots);
  const open = session.blocks.flatMap((block) =>
    block.slots
      .filter((slot) => slot.chosen === undefined || isPaused(slot))
      .map((slot) => ({
        key: slot.key,
        why: isPaused(slot) ? pausedReason(slot.key, slot.chosen?.exercise.id, pins) : whyThis(slot),
      })),
  );
  const warmup = [
    ...session.warmup.map(({ exercise, dose }) => ({ exercise: exercise.id, dose })),
    ...rampItems(input, session, slots),
  ];
  const pausedRuns = session.conditioning.filter(({ run }) => run !== undefined && pins.get(run.slot)?.paused);
  const conditioning = session.conditioning
    .filter((item) => !pausedRuns.includes(item))
    .map(({ exercise, dose, effort, run }): PlanSession["conditioning"][number] => {
      const pulse = pulseZone(input.person, effort, input.on);
      const more = { ...(run === undefined ? {} : { run }), ...(pulse === undefined ? {} : { pulse }) };
      return { exercise: exercise.id, dose, effort, ...more };
    });
  return {
    key: session.session.key,
    title: session.session.title,
    warmup,
    blocks,
    conditioning,
    open: [
      ...open,
      ...pausedRuns.map(({ exercise, run }) => ({ key: run!.slot, why: pausedReason(run!.slot, exercise.id, pins) })),
    ],
    minutes: minutesOf({ warmup, blocks, conditioning }, input.catalogue),
  };
}
