import type { BeforeAnswer } from "./before.ts";
import { reason } from "./reasons.ts";
import type { RuleName } from "./rule-name.ts";

export const ILL_SIGNS = [
  "runny nose",
  "sore throat",
  "sneezing",
  "fever",
  "cough from the chest",
  "stomach or gut",
  "aches all over",
  "chest pain",
  "breathless",
  "palpitations",
  "fainting",
] as const;
export type IllSign = (typeof ILL_SIGNS)[number];

/** Above the neck only: an easy trial is usual. Below it: rest. The last four ask a clinician first. */
const ABOVE_NECK: readonly IllSign[] = ["runny nose", "sore throat", "sneezing"];
const DOCTOR: readonly IllSign[] = ["chest pain", "breathless", "palpitations", "fainting"];

/** One day of a ladder back: at most so long, at most so hard. */
export interface ReturnStep {
  readonly minutes: number;
  /** Per cent of the maximum heart rate; undefined where the rule prints none. */
  readonly percent?: number;
  readonly resistance: "none" | "light" | "full";
  /** Days that it lasts at least. */
  readonly days: number;
}

/** A named, dated way back after an acute respiratory illness. The printed ones differ. */
export interface ReturnRule extends RuleName {
  /** Days without symptoms before the first step. */
  readonly freeDays: number;
  readonly steps: readonly ReturnStep[];
}

export const RETURN_RULES: readonly ReturnRule[] = [
  {
    id: "seven-day ladder",
    dated: "2021",
    source: "elliottLadder2021",
    freeDays: 1,
    steps: [
      { minutes: 15, percent: 70, resistance: "none", days: 2 },
      { minutes: 30, percent: 80, resistance: "none", days: 1 },
      { minutes: 45, percent: 80, resistance: "light", days: 1 },
      { minutes: 60, percent: 80, resistance: "light", days: 2 },
    ],
  },
  {
    id: "seven days free, two weeks gentle",
    dated: "2021",
    source: "salman2021",
    freeDays: 7,
    steps: [{ minutes: 30, resistance: "none", days: 14 }],
  },
];

/**
 * Whether somebody who says they are ill may train today.
 *
 * The neck check is common and has no evidence behind it; it is used as a first question only. Signs of the heart or
 * lungs ask a clinician, whatever else is there.
 *
 * @source schwellnus2022, practice
 */
export function illBefore(signs: readonly IllSign[]): BeforeAnswer {
  const doctor = signs.filter((sign) => DOCTOR.includes(sign));
  if (doctor.length > 0) return { before: "hold", because: [reason("before/ill-doctor", { signs: doctor })] };
  const below = signs.filter((sign) => !ABOVE_NECK.includes(sign));
  if (below.length > 0) return { before: "hold", because: [reason("before/ill-rest", { signs: below })] };
  return signs.length === 0
    ? { before: "go", because: [] }
    : { before: "soften", because: [reason("before/ill-easy-trial")] };
}

/**
 * What a ladder back allows, so many days after the last symptom.
 *
 * @param freeDays whole days without symptoms, 0 = symptoms today
 * @throws RangeError when the days are not whole or negative
 * @source elliottLadder2021, salman2021
 */
export function returnBefore(freeDays: number, rule: ReturnRule = RETURN_RULES[0]!): BeforeAnswer {
  if (!(Number.isInteger(freeDays) && freeDays >= 0)) {
    throw new RangeError(`Cannot count days as they must be whole, 0 or more: current value is ${freeDays}`);
  }
  const named = { rule: rule.id, dated: rule.dated };
  if (freeDays < rule.freeDays) {
    const because = [reason("before/ill-wait", { ...named, days: freeDays, want: rule.freeDays })];
    return { before: "hold", because };
  }
  let from = rule.freeDays;
  for (const { minutes, percent, resistance, days } of rule.steps) {
    if (freeDays < from + days) {
      const step = { ...named, minutes, percent: percent ?? null, resistance };
      return { before: "soften", because: [reason("before/ill-step", step)] };
    }
    from += days;
  }
  return { before: "go", because: [] };
}
