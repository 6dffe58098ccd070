import { addDays, ageOn, type Day } from "../day.ts";

/** A day and wall minutes after midnight. */
export interface Moment {
  readonly day: Day;
  readonly minutes: number;
}

/**
 * The six steps back to play: 1 daily activity, 2 light movement without resistance, 3 the sport without impact to the
 * head, 4 drills without contact, where resistance may begin, 5 full contact, 6 play.
 */
export type HeadStep = 1 | 2 | 3 | 4 | 5 | 6;

export interface HeadStepDone {
  readonly step: HeadStep;
  readonly at: Moment;
  /** Symptoms that the step brought, with their end once they have ended. */
  readonly symptom?: { readonly ended?: Moment };
}

export interface AfterConcussion {
  readonly born: Day;
  /** Steps done, in order. */
  readonly done: readonly HeadStepDone[];
  /** Symptoms at other times. */
  readonly symptoms?: readonly { readonly ended?: Moment }[];
  /** A doctor's recorded word that contact is allowed. */
  readonly confirmed?: { readonly on: Day; readonly who: string };
  /** When sessions usually begin, minutes after midnight. */
  readonly usual: number;
}

/** What may come next, or what has to be known first. */
export type NextHeadStep =
  | { readonly kind: "unknown"; readonly missing: "a step done" | "the end of a symptom" }
  | {
      readonly kind: "known";
      readonly step: HeadStep;
      readonly notBefore: Moment;
      /** First day on which a session at the usual hour is late enough. */
      readonly day: Day;
      /** Contact and play: locked until a doctor has confirmed them, and never before this moment. */
      readonly contact: { readonly locked: boolean; readonly notBefore: Moment };
    };

const HOUR = 60;
const DAY_MINUTES = 24 * HOUR;
/** Hours without symptoms before the next step. Under 19: an age-graded protocol. */
const GAP_HOURS = { adult: 24, under19: 48 };
const GROWN = 19;
/** Days without symptoms before a child may have contact. */
const CHILD_CONTACT_DAYS = 14;
const CONTACT: HeadStep = 5;

/**
 * Which step after a concussion may come next, and when at the earliest? A step that brings symptoms is followed by the
 * one before it. Between steps, and after symptoms have ended, 24 hours pass, under 19 years 48. Contact waits for a
 * doctor's word, and under 19 for 14 days after all symptoms have ended. Hours are wall hours. This dates steps that a
 * clinician has allowed; a concussion that is only suspected means to stop and see one.
 *
 * @source mccrory2017, ageGradedReturn
 */
export function nextHeadStep({ born, done, symptoms = [], confirmed, usual }: AfterConcussion): NextHeadStep {
  const last = done.at(-1);
  if (last === undefined) return { kind: "unknown", missing: "a step done" };
  const all = [...done.flatMap(({ symptom }) => symptom ?? []), ...symptoms];
  const ends = all.flatMap(({ ended }) => ended ?? []);
  if (ends.length < all.length) return { kind: "unknown", missing: "the end of a symptom" };
  const young = ageOn(born, last.at.day) < GROWN;
  const gap = (young ? GAP_HOURS.under19 : GAP_HOURS.adult) * HOUR;
  const lastSymptom = ends.reduce<Moment | undefined>((a, b) => (a === undefined ? b : later(a, b)), undefined);
  const free = lastSymptom === undefined ? last.at : later(last.at, lastSymptom);
  const child = young && lastSymptom !== undefined ? plus(lastSymptom, CHILD_CONTACT_DAYS * DAY_MINUTES) : undefined;
  const contact = {
    locked: confirmed === undefined,
    notBefore: child === undefined ? plus(free, gap) : later(child, plus(free, gap)),
  };
  const wanted = (last.symptom === undefined ? Math.min(6, last.step + 1) : Math.max(1, last.step - 1)) as HeadStep;
  const step = wanted >= CONTACT && contact.locked ? ((CONTACT - 1) as HeadStep) : wanted;
  const notBefore = step >= CONTACT ? contact.notBefore : plus(free, gap);
  const day = usual >= notBefore.minutes ? notBefore.day : addDays(notBefore.day, 1);
  return { kind: "known", step, notBefore, day, contact };
}

function later(a: Moment, b: Moment): Moment {
  return a.day > b.day || (a.day === b.day && a.minutes > b.minutes) ? a : b;
}

function plus({ day, minutes }: Moment, more: number): Moment {
  const all = minutes + more;
  return { day: addDays(day, Math.floor(all / DAY_MINUTES)), minutes: all % DAY_MINUTES };
}
