import { GLUCOSE_RULES, type GlucoseRule } from "./glucose.ts";
import { RETURN_RULES, type ReturnRule } from "./illness.ts";
import { PAIN_RULES, type PainRule } from "./pain.ts";
import { PRESSURE_RULES, type PressureRule } from "./pressure.ts";
import { SLEEP_RULES, type SleepRule } from "./sleep.ts";

/** The rules that run before a session: one of each kind. */
export interface BeforeRules {
  readonly pressure: PressureRule;
  readonly glucose: GlucoseRule;
  readonly pain: PainRule;
  readonly illness: ReturnRule;
  readonly sleep: SleepRule;
}

/** Every printed rule by its kind; the first of a kind runs unless another one is chosen. */
export const PRINTED_RULES = {
  pressure: PRESSURE_RULES,
  glucose: GLUCOSE_RULES,
  pain: PAIN_RULES,
  illness: RETURN_RULES,
  sleep: SLEEP_RULES,
} as const;

/** @returns the rules that run when a practice has chosen none */
export function usualRules(): BeforeRules {
  return {
    pressure: PRESSURE_RULES[0]!,
    glucose: GLUCOSE_RULES[0]!,
    pain: PAIN_RULES[0]!,
    illness: RETURN_RULES[0]!,
    sleep: SLEEP_RULES[0]!,
  };
}
