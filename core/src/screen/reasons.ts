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
  /** said: conditions on no list, in the person's words: whoever treats them is asked */
  "screen/other",
  /** past: the person's words: asks for a note before the first hard session */
  "screen/past",
  /** statement: of the table of cautions, to be entered in the roster */
  "screen/also",
  /** statement; with the reasons for which a midwife or doctor is asked */
  "screen/pregnant",
  /** no data: moderate and hard work wait for the word of whoever looks after it */
  "screen/also-locked",
  /** medicines: names that slow the heart */
  "screen/slows-heart",
  /** medicines: names that lower the sugar */
  "screen/lowers-sugar",
  /** medicines: names that thin the blood */
  "screen/thins-blood",
  /** medicines: names of which no rule knows what they mean for training */
  "screen/medicine-unknown",
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
  /** no data: nobody asked whether health answers may be used */
  "before/consent-not-asked",
  /** no data: a child agreed alone */
  "before/consent-guardian",
  /** no data */
  "before/consent-withdrawn",
  /** answers: names of what was said today and was not looked at without consent */
  "before/not-used",
  /** outcome, until */
  "before/screening-stands",
  /** no data: grounds are not shown without consent */
  "before/screening-sealed",
  /** outcome, until: the last day is over */
  "before/screening-old",
  /** outcome, until: nothing before a clinician was asked */
  "before/screening-holds",
  /** no data: "anything new since last time?" was not asked */
  "before/new-not-asked",
  /** said: the person's words, which no rule knows */
  "before/new-other",
  /** names: new disease and signs, wanted: effort or null, active: or null */
  "before/screened-again",
  /** rule, dated, before: what another printed rule would say */
  "before/other-rule",
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
  /** value, unit, mgdl, edge: mg/dL, rule, carbohydrate: { from, to } grams, hard: whether today is short or very hard work */
  "before/glucose-low",
  /** value, unit, mgdl, rule */
  "before/glucose-very-low",
  /** value, unit, mgdl, rule */
  "before/glucose-carbohydrate-from-start",
  /** value, unit, mgdl, edge: mg/dL under which carbohydrate is taken, rule */
  "before/glucose-fine",
  /** value, unit, mgdl, edge: mg/dL, rule: ketones are to be tested */
  "before/glucose-ketones",
  /** value, unit, mgdl, ketones, edge, rule */
  "before/glucose-no-exercise",
  /** value, unit, mgdl, edge, rule: mild to moderate only */
  "before/glucose-moderate-only",
  /** hours */
  "before/severe-low",
  /** where, score: 0–10, morning: 0–10 or null, rule */
  "before/pain-go",
  /** where, score, morning, rule */
  "before/pain-hold",
  /** where, score, morning, rule, rising */
  "before/pain-reduce",
  /** where, signs: names: not for a pain rule, a clinician first */
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
  /** hours: slept, limit, rule */
  "before/slept-little",
  /** signs: names: stop at once, emergency number */
  "before/stop-now",
  // The request to a clinician.
  /** no data */
  "request/nothing-to-ask",
  /** state */
  "request/no-consent",
  /** active */
  "request/active",
  /** names */
  "request/disease",
  /** names */
  "request/signs",
  /** names */
  "request/not-answered",
  /** on, who, effort */
  "request/cleared",
  /** said: conditions on no list, in the person's words */
  "request/other",
  /** past: the person's words */
  "request/past",
  /** readings: { systolic, diastolic } in turn, rule, dated */
  "request/pressure",
  /** value, unit, ketones: or null, rule, dated */
  "request/glucose",
  /** where, score, morning: or null, signs */
  "request/pain",
  /** signs */
  "request/ill",
  /** said: the person's words */
  "request/said",
] as const;
export type ScreenCode = (typeof SCREEN_CODES)[number];

export function reason(code: ScreenCode, data: Readonly<Record<string, Json>> = {}): Reason {
  return { code, data };
}
