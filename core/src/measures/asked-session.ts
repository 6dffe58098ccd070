import {
  type Block,
  type Dose,
  doseInWeek,
  type ExerciseId,
  type Pattern,
  type Phase,
  type Session,
  type SlotKey,
  slotsOf,
  type WarmUp,
} from "../model/index.ts";
import { conditioningDose } from "./conditioning-dose.ts";
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

function askedBlock(block: Block, week: number, light: boolean): AskedBlock {
  const slots = slotsOf(block).map((slot): AskedSlot => {
    const dose = doseInWeek(slot, week);
    const { slot: key, first: exercise, pattern } = slot;
    return { key, exercise, dose: light ? lightDose(dose) : dose, pattern };
  });
  if ("slot" in block) return { kind: "straight", slots };
  const kind = "pair" in block ? "pair" : "round";
  return block.restS === undefined ? { kind, slots } : { kind, restS: block.restS, slots };
}

function leadOf(blocks: readonly AskedBlock[], key: SlotKey): AskedSlot | undefined {
  for (const { slots } of blocks) {
    const lead = slots.find((slot) => slot.key === key);
    if (lead !== undefined) return lead;
  }
  return undefined;
}

function askedWarmUp(items: readonly WarmUp[], blocks: readonly AskedBlock[]): AskedSession["warmup"] {
  const warmup: AskedSession["warmup"][number][] = [];
  for (const item of items) {
    if ("do" in item) warmup.push({ exercise: item.do, dose: item.dose });
    else {
      const lead = leadOf(blocks, item.ramp);
      if (lead !== undefined) warmup.push({ exercise: lead.exercise, dose: rampDose(item.sets), for: item.ramp });
    }
  }
  return warmup;
}

/**
 * What a session asks for in one week of its phase, everybody on the first choice.
 *
 * @param week week of the phase, 1 = first
 * @param light true takes the work down to a light week; warm-up and conditioning stay
 */
export function askedSession(session: Session, week: number, light: boolean): AskedSession {
  const blocks = session.work.map((block) => askedBlock(block, week, light));
  return {
    warmup: askedWarmUp(session.warmup ?? [], blocks),
    blocks,
    conditioning: (session.conditioning ?? []).map((item) => ({ exercise: item.do, dose: conditioningDose(item) })),
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
