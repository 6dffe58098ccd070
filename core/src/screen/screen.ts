import { addDays, ageOn, type Day, printDay } from "../day.ts";
import type { Outcome, Reason, Screening, Statement } from "../model/index.ts";
import { type Answers, DISEASES, type Disease, EFFORTS, type Effort, SIGNS, type Sign } from "./answers.ts";
import { medicineFacts } from "./medicines.ts";
import { type Readiness, readiness } from "./readiness.ts";
import { reason } from "./reasons.ts";

/** Days for which an outcome stands when nothing changes. A clinician's yes counts for as long in the same source. */
export const STANDS_DAYS = 365;
const ADULT_AT = 18;
/** What a clinician looks after, and says first what may be loaded. Source: mottola2018 for pregnancy; operations ours. */
const NEEDS_WORD: readonly Statement[] = ["pregnant", "surgery-arm", "surgery-leg", "surgery-trunk"];

/**
 * Which published rule runs for somebody with diabetes and nothing else, who is not active and wants no more than
 * moderate work. "strict": a doctor first. "mild": no clearance needed up to a brisk walk's effort. The sources
 * differ; which one ran is part of every result.
 */
export type DiabetesRule = "strict" | "mild";

/** A screening outcome with everything that decided it. */
export interface Screened {
  /** As it is entered for the person. */
  readonly screening: Screening;
  readonly readiness: Readiness;
  /** The facts that decided, and what was not answered. */
  readonly because: readonly Reason[];
  /** What stays locked until a clinician agrees. */
  readonly locked: readonly Reason[];
  readonly ruleSet: { readonly id: "riebe2015"; readonly dated: "2015-11"; readonly diabetes: DiabetesRule };
}

/** Names of the answers that are not there, in the order of the questions. */
function missingIn(answers: Answers): readonly string[] {
  return [
    ...(answers.active === undefined ? ["active"] : []),
    ...DISEASES.filter((name) => answers.disease[name] === undefined),
    ...SIGNS.filter((name) => answers.signs[name] === undefined),
    ...(answers.wanted === undefined ? ["wanted"] : []),
  ];
}

function isDiabetesAlone(disease: readonly Disease[]): boolean {
  return disease.length > 0 && disease.every((name) => name === "diabetes type 1" || name === "diabetes type 2");
}

/** Whether a clinician's yes counts: given, not after today, for this effort, and within 12 months. */
function clearanceStands(cleared: Answers["cleared"], effort: Effort, on: Day): boolean {
  return (
    cleared !== undefined &&
    cleared.on <= on &&
    on <= addDays(cleared.on, STANDS_DAYS) &&
    EFFORTS.indexOf(cleared.effort) >= EFFORTS.indexOf(effort)
  );
}

function outcomeOf(found: Readiness): Outcome {
  if (found === "stop and ask a doctor") return "stop";
  if (found === "ask a doctor before starting") return "ask a doctor first";
  return found === "go on" ? "no reason found" : "start light to moderate";
}

/**
 * The outcome of our questions by the published logic, what caused it, what it locks and until when it stands.
 *
 * A missing answer is read the safe way: as yes for disease and signs, as no for being active, as vigorous for what
 * is wanted. A clinician's yes counts for 12 months and only for the signs that it names: any other sign stops.
 *
 * @param born a minor's outcome also asks for a guardian
 * Pregnancy and a recent operation wait for a word of whoever looks after them: light work until then.
 *
 * @source riebe2015, colberg2016, mottola2018
 */
export function screen(answers: Answers, born: Day, diabetes: DiabetesRule = "strict"): Screened {
  const { on, cleared } = answers;
  const disease = DISEASES.filter((name) => answers.disease[name] ?? true);
  const signs = SIGNS.filter((name) => answers.signs[name] ?? true);
  const active = answers.active ?? false;
  const wanted = answers.wanted ?? "vigorous";
  const alone = !active && signs.length === 0 && isDiabetesAlone(disease);
  const mild = diabetes === "mild" && alone && wanted !== "vigorous";
  const stated = readiness({ active, disease: disease.length > 0 && !mild, signs: signs.length > 0, wanted });
  const opened = stated === "ask a doctor before vigorous" && clearanceStands(cleared, "vigorous", on);
  const unknown = signs.filter((sign) => !cleared?.about?.includes(sign));
  const agreed = stated.includes("doctor") && !opened && unknown.length === 0 && clearanceStands(cleared, "light", on);
  const waits = waitsForWord(answers);
  const found = gentler(readinessAfter(stated, opened, agreed), waits);
  const outcome = outcomeOf(found);
  const from = cleared !== undefined && (opened || agreed) ? cleared.on : on;
  return {
    screening: {
      outcome,
      on,
      until: addDays(from, STANDS_DAYS),
      by: answers.by,
      ...(outcome === "ask a doctor first" && agreed && cleared !== undefined
        ? { agreed: { on: cleared.on, who: cleared.who }, effort: cleared.effort }
        : {}),
      ...(outcome === "start light to moderate" ? { effort: waits ? ("light" as const) : ("moderate" as const) } : {}),
    },
    readiness: found,
    because: [
      reason(active ? "screen/active" : "screen/not-active"),
      ...(disease.length > 0 ? [reason("screen/disease", { disease })] : []),
      ...(signs.length > 0 ? [reason("screen/signs", { signs })] : []),
      ...(disease.length === 0 && signs.length === 0 ? [reason("screen/nothing-found")] : []),
      reason("screen/wanted", { effort: wanted }),
      ...clearanceFacts(answers, unknown),
      ...(alone ? [reason(mild ? "screen/diabetes-mild" : "screen/diabetes-strict")] : []),
      ...askedBeside(answers, born),
    ],
    locked: [...lockedBy(found, agreed), ...(waits ? [reason("screen/also-locked")] : [])],
    ruleSet: { id: "riebe2015", dated: "2015-11", diabetes },
  };
}

/** After a clinician's yes a stopped person returns as one who starts after being cleared. */
function readinessAfter(stated: Readiness, opened: boolean, agreed: boolean): Readiness {
  if (opened) return "go on";
  return agreed && stated === "stop and ask a doctor" ? "ask a doctor before starting" : stated;
}

/** Whether pregnancy or a recent operation waits for the word of whoever looks after it. */
function waitsForWord({ also = [], cleared, on }: Answers): boolean {
  return also.some((each) => NEEDS_WORD.includes(each)) && !clearanceStands(cleared, "light", on);
}

/** No screening logic that we read asks for these, so they only ever make an outcome gentler. */
function gentler(found: Readiness, waits: boolean): Readiness {
  return waits && (found === "go on" || found === "go on, moderate at most" || found === "ask a doctor before vigorous")
    ? "start light to moderate"
    : found;
}

function askedBeside(answers: Answers, born: Day): readonly Reason[] {
  const missing = missingIn(answers);
  const past = answers.past ?? [];
  const { also = [], medicines = [], other = [] } = answers;
  return [
    ...also.map((statement) => reason(statement === "pregnant" ? "screen/pregnant" : "screen/also", { statement })),
    ...medicineFacts(medicines),
    ...(missing.length > 0 ? [reason("screen/missing", { answers: missing })] : []),
    ...(other.length > 0 ? [reason("screen/other", { said: other })] : []),
    ...(past.length > 0 ? [reason("screen/past", { past })] : []),
    ...(ageOn(born, answers.on) >= ADULT_AT ? [] : [reason("screen/under-age", { age: ageOn(born, answers.on) })]),
  ];
}

function clearanceFacts({ cleared, on }: Answers, unknown: readonly Sign[]): readonly Reason[] {
  if (cleared === undefined || !(cleared.on <= on)) return [];
  const said = { on: printDay(cleared.on), who: cleared.who };
  if (unknown.length > 0) return [reason("screen/clearance-before-signs", { ...said, signs: unknown })];
  return [
    on <= addDays(cleared.on, STANDS_DAYS)
      ? reason("screen/cleared", { ...said, effort: cleared.effort })
      : reason("screen/clearance-old", said),
  ];
}

function lockedBy(found: Readiness, agreed: boolean): readonly Reason[] {
  if (found === "go on") return [];
  if (found === "stop and ask a doctor") return [reason("screen/all-locked")];
  if (found === "ask a doctor before starting" && !agreed) return [reason("screen/all-locked")];
  return [reason("screen/locked", { effort: "vigorous" })];
}
