import type { ScreenCode } from "../../screen/index.ts";
import { type Data, dataIn, dataListIn, numberIn, said, wordsIn } from "../facts.ts";
import type { Say } from "../names.ts";
import { listed, plural, printNumber, printSpan } from "./number.ts";
import { printDate } from "./units.ts";
import { statements } from "./words.ts";

function pressure(data: Data | undefined): string {
  return data === undefined ? "?" : `${said(data, "systolic")}/${said(data, "diastolic")} mmHg`;
}

/** The value as it was typed, and in the unit of the printed bands when that is another one. */
function glucose(data: Data): string {
  const typed = `${said(data, "value")} ${said(data, "unit")}`;
  return said(data, "unit") === "mg/dL" ? typed : `${typed} (${said(data, "mgdl")} mg/dL)`;
}

/** An edge of a printed band in both units. */
function edge(data: Data): string {
  const mgdl = numberIn(data, "edge");
  return `${printNumber(mgdl)} mg/dL (${(mgdl / 18.016).toFixed(1)} mmol/L)`;
}

/** The rule that held the session, where one is named. */
function byRule(data: Data): string {
  return typeof data["rule"] === "string" ? ` (held by “${data["rule"]}”, ${said(data, "dated")})` : "";
}

const SHARE_STATES: Readonly<Record<string, string>> = {
  withdrawn: "withdrawn",
  "never asked": "not asked yet",
  "needs a guardian": "for a parent or guardian to say",
};

const BEFORES: Readonly<Record<string, string>> = {
  go: "let it go on",
  soften: "soften it",
  ask: "ask first",
  hold: "hold it",
};

function newNames(data: Data): string {
  const { wanted, active } = data;
  const more = [
    ...(typeof wanted === "string" ? [`wants ${wanted} work`] : []),
    ...(typeof active === "boolean" ? [active ? "is active now" : "is not active any more"] : []),
  ];
  return listed([...wordsIn(data, "names"), ...more]);
}

/** Where it hurts, when it was said. */
const pain = (data: Data) => (typeof data["where"] === "string" ? `Pain in ${data["where"]}` : "Pain");

const names = (data: Data, name: string) => listed(wordsIn(data, name));
const score = (data: Data) => {
  const morning = data["morning"];
  return `${said(data, "score")} of 10${typeof morning === "number" ? `, ${morning} next morning` : ""}`;
};

function statementIn(data: Data): string {
  const statement = said(data, "statement");
  return statements[statement as keyof typeof statements] ?? statement;
}

/** What screening found, and what the check before a session asks for. */
export const screenReasons: Readonly<Record<ScreenCode, Say>> = {
  "screen/not-active": () => "Not active on 3 days a week, 30 minutes each, for the last 3 months.",
  "screen/active": () => "Active on 3 days a week or more, 30 minutes each, for the last 3 months.",
  "screen/disease": (data) => `Known disease: ${names(data, "disease")}.`,
  "screen/signs": (data) => `Signs that ask for a doctor: ${names(data, "signs")}.`,
  "screen/nothing-found": () => "No known heart, vessel, kidney or sugar disease, and no signs.",
  "screen/wanted": (data) => `Wants ${said(data, "effort")} work.`,
  "screen/cleared": (data) =>
    `${said(data, "who")} agreed to ${said(data, "effort")} work on ${printDate(said(data, "on"))}.`,
  "screen/clearance-old": (data) =>
    `The agreement of ${said(data, "who")} of ${printDate(said(data, "on"))} is older than 12 months: ask again.`,
  "screen/clearance-before-signs": (data) =>
    `${said(data, "who")} agreed on ${printDate(said(data, "on"))} without knowing of ${names(data, "signs")}: ask again.`,
  "screen/missing": (data) => `Not answered, read the safe way: ${names(data, "answers")}.`,
  "screen/other": (data) =>
    `Named, and on no list here: ${names(data, "said")}. Nothing is guessed: ask whoever treats it for written limits, and enter them in the roster.`,
  "screen/past": (data) =>
    `Said to be over: ${names(data, "past")}. Ask for a doctor's note before the first hard session.`,
  "screen/also": (data) =>
    `Stated: ${statementIn(data)}. Enter it in the roster as a caution (${said(data, "statement")}) with the day on which it is asked again, and any written limits with their dates.`,
  "screen/pregnant": (data) =>
    `Stated: ${statementIn(data)}. Enter it in the roster as a caution (${said(data, "statement")}). Ask the midwife or doctor first whether one of these is there: ruptured membranes, bleeding that stays, early labour, a low-lying placenta late in pregnancy, pre-eclampsia, a weak cervix, poor growth, three babies or more, or a disease that is not under control.`,
  "screen/also-locked": () =>
    "Locked until whoever looks after it has agreed in writing: moderate and vigorous work. Light work is free.",
  "screen/slows-heart": (data) =>
    `Slows the heart: ${names(data, "medicines")}. No target in beats: effort and talking lead. Enter slowed: yes under pulse in the roster, and ask again when the medicine or its dose changes.`,
  "screen/lowers-sugar": (data) =>
    `Can lower the sugar too far: ${names(data, "medicines")}. Measure before a session, with fast carbohydrate at hand; the person's own plan comes first.`,
  "screen/thins-blood": (data) =>
    `Thins the blood: ${names(data, "medicines")}. Falls and knocks bleed longer: ask the doctor about jumps, contact and heavy loads.`,
  "screen/medicine-unknown": (data) =>
    `No rule here knows what these mean for training: ${names(data, "medicines")}. Ask the doctor or pharmacist.`,
  "screen/under-age": (data) =>
    `${said(data, "age")} years old: a parent or guardian agrees and can be reached; technique first, no test of the maximum.`,
  "screen/diabetes-strict": () =>
    "Diabetes alone, not active: a doctor is asked first by the rule that runs here; another published rule starts up to a brisk walk's effort.",
  "screen/diabetes-mild": () =>
    "Diabetes alone, not active: the rule that runs here starts up to a brisk walk's effort; another published rule asks a doctor first.",
  "screen/locked": (data) => `Locked until a doctor agrees: ${said(data, "effort")} work.`,
  "screen/all-locked": () => "Locked until a doctor agrees: all training.",
  "before/consent-not-asked": () =>
    "Nothing says that health answers may be used: ask for that first, apart from everything else.",
  "before/consent-guardian": () => "A parent or guardian has to agree that health answers are used: ask them first.",
  "before/consent-withdrawn": () =>
    "Health answers may no longer be used: light work that the person knows, and nothing new.",
  "before/not-used": (data) => `Not looked at without consent: ${names(data, "answers")}.`,
  "before/screening-stands": (data) =>
    `Screening: ${said(data, "outcome")}; stands until ${printDate(said(data, "until"))}, or until something is new.`,
  "before/screening-sealed": () => "What it rests on is not shown without consent; its limits stay.",
  "before/screening-old": (data) =>
    `The screening (${said(data, "outcome")}) ended on ${printDate(said(data, "until"))}: ask all questions again.`,
  "before/screening-holds": (data) =>
    `Screening: ${said(data, "outcome")}. The session is held for safety, not missed.`,
  "before/new-not-asked": () => "Nobody has asked yet whether anything is new since last time.",
  "before/new-other": (data) =>
    `New, and on no list here: ${names(data, "said")}. Ask a clinician what it means for training; nothing is guessed.`,
  "before/screened-again": (data) =>
    `New since the screening: ${newNames(data)}. The screening was done again with it.`,
  "before/other-rule": (data) =>
    `The rule “${said(data, "rule")}” (${said(data, "dated")}) would ${BEFORES[said(data, "before")] ?? "?"}; sources differ, and the coach chooses.`,
  "before/pressure-hold": (data) =>
    `${pressure(data)} seated: no lifting today. The rule "${said(data, "rule")}" holds from ${pressure(dataIn(data, "limit"))}, either number alone. Tell the doctor; at once if anything feels wrong. The session is held for safety, not missed.`,
  "before/pressure-light": (data) =>
    data["note"] === true
      ? `${pressure(data)} seated: light work only, as the clinician's note allows. The rule "${said(data, "rule")}" asks for it from ${pressure(dataIn(data, "limit"))}.`
      : `${pressure(data)} seated: no lifting today without a clinician's note that allows light work. The rule "${said(data, "rule")}" asks for it from ${pressure(dataIn(data, "limit"))}.`,
  "before/pressure-fine": (data) => `${pressure(data)}: under the limits of "${said(data, "rule")}".`,
  "before/pressure-again": (data) => `${pressure(data)}: sit for 5 minutes and take it once more.`,
  "before/glucose-impossible": (data) =>
    `${said(data, "value")} ${said(data, "unit")} cannot be right: look at the meter's unit.`,
  "before/glucose-low": (data) => {
    const grams = dataIn(data, "carbohydrate");
    const eat = grams === undefined ? "?" : printSpan(numberIn(grams, "from"), numberIn(grams, "to"));
    return `${glucose(data)} is under ${edge(data)}: ${eat} g of fast carbohydrate first, then measure again.${data["hard"] === true ? " Short or very hard work may not need it: ask." : ""} The person's own plan decides.`;
  },
  "before/glucose-very-low": (data) =>
    `${glucose(data)} is low: treat it first by the person's own plan, measure again, and do not train alone.`,
  "before/glucose-carbohydrate-from-start": (data) =>
    `${glucose(data)}: go; long work takes carbohydrate from the start.`,
  "before/glucose-fine": (data) => `${glucose(data)}: go; carbohydrate waits until it is under ${edge(data)}.`,
  "before/glucose-ketones": (data) =>
    `${glucose(data)} is ${edge(data)} or more: test ketones first. Hard work waits until it is under that.`,
  "before/glucose-no-exercise": (data) =>
    `${glucose(data)} with ${said(data, "ketones")} ketones: no training; the clinic's own plan applies.`,
  "before/glucose-moderate-only": (data) =>
    `${glucose(data)}, ketones not raised: mild to moderate work only until it is under ${edge(data)}.`,
  "before/severe-low": (data) =>
    `A severe low in the last ${said(data, "hours")} hours: no training today; tell the clinic.`,
  "before/pain-go": (data) => `${pain(data)} ${score(data)}: go on ("${said(data, "rule")}").`,
  "before/pain-hold": (data) => `${pain(data)} ${score(data)}: same load, not more ("${said(data, "rule")}").`,
  "before/pain-reduce": (data) =>
    `${pain(data)} ${score(data)}${data["rising"] === true ? ", rising from week to week" : ""}: take the load off and ask a clinician ("${said(data, "rule")}", firm edge 5).`,
  "before/pain-not-by-rule": (data) =>
    `${typeof data["where"] === "string" ? `${data["where"]}, ` : ""}${names(data, "signs")}: no pain rule is made for this; a clinician looks first.`,
  "before/ill-rest": (data) => `${names(data, "signs")}: rest. The session is held, not missed.`,
  "before/ill-easy-trial": () =>
    "A head cold only: 10 easy minutes, then see. The neck check is common practice; no study stands behind it.",
  "before/ill-doctor": (data) => `${names(data, "signs")}: no training; a doctor first.`,
  "before/ill-wait": (data) => {
    const days = plural(numberIn(data, "days"), "day", "days");
    return `${days} without symptoms; "${said(data, "rule")}" (${said(data, "dated")}) wants ${said(data, "want")} before the first step.`;
  },
  "before/ill-step": (data) => {
    const percent = data["percent"];
    const hard = typeof percent === "number" ? `, at most ${percent} % of the maximum heart rate` : "";
    return `Up to ${said(data, "minutes")} min${hard}, ${said(data, "resistance") === "none" ? "no" : said(data, "resistance")} resistance work ("${said(data, "rule")}", ${said(data, "dated")}). Any symptom: one step back.`;
  },
  "before/slept-little": (data) =>
    `${said(data, "hours")} h of sleep, under ${said(data, "limit")}: softer today if the person wants (common practice).`,
  "request/nothing-to-ask": () => "Nothing to ask a clinician.",
  "request/no-consent": (data) =>
    `No request: whether it may be shared with the clinician is ${SHARE_STATES[said(data, "state")] ?? "?"}.`,
  "request/active": (data) =>
    data["active"] === true
      ? "Active on 3 days a week or more, 30 minutes each, for the last 3 months."
      : "Not active on 3 days a week, 30 minutes each, for the last 3 months.",
  "request/disease": (data) => `Said to be known: ${names(data, "names")}.`,
  "request/signs": (data) => `Said to be felt: ${names(data, "names")}.`,
  "request/not-answered": (data) => `Asked and not answered: ${names(data, "names")}.`,
  "request/cleared": (data) =>
    `Earlier: ${said(data, "who")} agreed to ${said(data, "effort")} work on ${printDate(said(data, "on"))}.`,
  "request/other": (data) => `In their own words: ${names(data, "said")}.`,
  "request/past": (data) => `Said to be over: ${names(data, "past")}.`,
  "request/pressure": (data) =>
    `Blood pressure today, seated at rest: ${listed(dataListIn(data, "readings").map(pressure), "then")}${byRule(data)}.`,
  "request/glucose": (data) =>
    `Glucose today, before training: ${said(data, "value")} ${said(data, "unit")}${typeof data["ketones"] === "string" ? `, ketones ${data["ketones"]}` : ""}${byRule(data)}.`,
  "request/pain": (data) =>
    `${pain(data)}: ${score(data)}${wordsIn(data, "signs").length > 0 ? `; ${names(data, "signs")}` : ""}.`,
  "request/ill": (data) => `Today: ${names(data, "signs")}.`,
  "request/said": (data) => `New, in their own words: ${names(data, "said")}.`,
  "before/stop-now": (data) =>
    `${names(data, "signs")}: stop now and call the emergency number; then the doctor before anything else.`,
};
