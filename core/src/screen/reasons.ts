import type { Json, Reason } from "../model/index.ts";

/** What screening and the check before a session say. Each code names one sentence; its data are listed beside it. */
export const SCREEN_CODES = [
  // Facts that decided.
  /** no data */
  "screen/not-active",
  /** no data */
  "screen/active",
  /** disease: names */
  "screen/disease",
  /** signs: names */
  "screen/signs",
  /** no data */
  "screen/nothing-found",
  /** effort */
  "screen/wanted",
  /** on, who, effort: a clinician's yes that stands */
  "screen/cleared",
  /** on, who: a clinician's yes that is older than 12 months */
  "screen/clearance-old",
  /** on, who, signs: a clinician's yes from before these signs */
  "screen/clearance-before-signs",
  /** answers: names of what was not answered and was read the safe way */
  "screen/missing",
  /** past: the person's words: asks for a note before the first hard session */
  "screen/past",
  /** no data: which of two published rules ran for diabetes alone */
  "screen/diabetes-strict",
  /** no data */
  "screen/diabetes-mild",
  // What follows.
  /** effort: locked until a clinician agrees */
  "screen/locked",
  /** no data */
  "screen/all-locked",
  /** age: years; a guardian's consent and contact are asked for, and no test of the maximum */
  "screen/under-age",
  // The check before a session.
  /** systolic, diastolic (mmHg), limit: { systolic, diastolic }, rule */
  "before/pressure-hold",
  /** systolic, diastolic (mmHg), limit: { systolic, diastolic }, rule, note: whether a clinician's note allows light work */
  "before/pressure-light",
  /** systolic, diastolic (mmHg), rule */
  "before/pressure-fine",
  /** systolic, diastolic, rule: one more reading after five minutes seated */
  "before/pressure-again",
  /** value, unit */
  "before/glucose-impossible",
  /** value, unit, mgdl, carbohydrate: { from, to } grams, hard: whether today is short or very hard work */
  "before/glucose-low",
  /** value, unit, mgdl */
  "before/glucose-very-low",
  /** value, unit, mgdl */
  "before/glucose-carbohydrate-from-start",
  /** value, unit, mgdl */
  "before/glucose-fine",
  /** value, unit, mgdl: ketones are to be tested */
  "before/glucose-ketones",
  /** value, unit, mgdl, ketones */
  "before/glucose-no-exercise",
  /** value, unit, mgdl: mild to moderate only */
  "before/glucose-moderate-only",
  /** hours */
  "before/severe-low",
  /** score: 0–10, morning: 0–10 or null, rule */
  "before/pain-go",
  /** score, morning, rule */
  "before/pain-hold",
  /** score, morning, rule, rising */
  "before/pain-reduce",
  /** signs: names: not for a pain rule, a clinician first */
  "before/pain-not-by-rule",
  /** signs: names */
  "before/ill-rest",
  /** no data */
  "before/ill-easy-trial",
  /** signs: names */
  "before/ill-doctor",
  /** days: free of symptoms, want, rule, dated */
  "before/ill-wait",
  /** minutes, percent: of the maximum heart rate or null, resistance, rule, dated */
  "before/ill-step",
  /** hours: slept, limit */
  "before/slept-little",
  /** signs: names: stop at once, emergency number */
  "before/stop-now",
] as const;
export type ScreenCode = (typeof SCREEN_CODES)[number];

export function reason(code: ScreenCode, data: Readonly<Record<string, Json>> = {}): Reason {
  return { code, data };
}
