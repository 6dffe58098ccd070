import {
  type Block,
  type Dose,
  doseInWeek,
  type ExerciseId,
  type Pattern,
  type Phase,
  type Session,
  type Slot,
  type SlotKey,
  slotsOf,
  type WarmUp,
} from "../model/index.ts";
import { isLight, lightDose } from "./light-week.ts";
import { rampDose } from "./ramp.ts";

/** One movement with what is asked of it. A slot of a plan is one; so is a slot of a programme in a given week. */
export interface AskedSlot {
  readonly key?: SlotKey;
  readonly exercise: ExerciseId;
  readonly dose: Dose;
  /** The intent of the slot, which still tells the pattern when the exercise is not known. */
  readonly pattern?: Pattern;
}

export interface AskedBlock {
  readonly kind: "straight" | "pair" | "round";
  readonly restS?: number;
  readonly slots: readonly AskedSlot[];
}

/**
 * A session as every measure reads it, with the doses of one week. The sessions of a plan have this shape already, so a
 * figure of a programme and of a fitted plan are the same figure.
 */
export interface AskedSession {
  /** `for` marks a lighter set that leads up to a slot, on that slot's own station. */
  readonly warmup: readonly { readonly exercise: ExerciseId; readonly dose: Dose; readonly for?: SlotKey }[];
  readonly blocks: readonly AskedBlock[];
  readonly conditioning: readonly { readonly exercise: ExerciseId; readonly dose: Dose }[];
}

function askedBlock(block: Block, doseOf: (slot: Slot) => Dose): AskedBlock {
  const kind = "pair" in block ? "pair" : "round" in block ? "round" : "straight";
  const slots = slotsOf(block).map((slot) => ({
    key: slot.slot,
    exercise: slot.first,
    dose: doseOf(slot),
    pattern: slot.pattern,
  }));
  return "slot" in block || block.restS === undefined ? { kind, slots } : { kind, restS: block.restS, slots };
}

function askedWarmUp(item: WarmUp, slots: readonly AskedSlot[]): AskedSession["warmup"] {
  if ("do" in item) return [{ exercise: item.do, dose: item.dose }];
  const lead = slots.find((slot) => slot.key === item.ramp);
  return lead === undefined ? [] : [{ exercise: lead.exercise, dose: rampDose(item.sets), for: item.ramp }];
}

/**
 * What a session asks for in one week of its phase, everybody on the first choice.
 *
 * @param week week of the phase, 1 = first
 * @param light true takes the work down to a light week; warm-up and conditioning stay
 */
export function askedSession(session: Session, week: number, light: boolean): AskedSession {
  const doseOf = (slot: Slot) => (light ? lightDose(doseInWeek(slot, week)) : doseInWeek(slot, week));
  const blocks = session.work.map((block) => askedBlock(block, doseOf));
  const slots = blocks.flatMap((block) => block.slots);
  return {
    warmup: (session.warmup ?? []).flatMap((item) => askedWarmUp(item, slots)),
    blocks,
    conditioning: (session.conditioning ?? []).map((item) => ({ exercise: item.do, dose: item.dose })),
  };
}

/** @returns the sessions of one week of a phase, in their order */
export function askedWeek(phase: Phase, week: number): readonly AskedSession[] {
  return phase.sessions.map((session) => askedSession(session, week, isLight(phase, week)));
}

/** @returns the working slots of a session, in order */
export function workOf(session: AskedSession): readonly AskedSlot[] {
  return session.blocks.flatMap((block) => block.slots);
}
