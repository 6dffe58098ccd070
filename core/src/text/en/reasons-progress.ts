import type { CapacityCode } from "../../capacity/index.ts";
import type { ProgressCode } from "../../progress/index.ts";
import { type Data, dataIn, dataListIn, MISSING, numberIn, said, wordsIn } from "../facts.ts";
import type { Names, Say } from "../names.ts";
import { listed, plural, printNumber, printSpan } from "./number.ts";
import { sheet } from "./sheet.ts";
import { loadIn, printDate } from "./units.ts";
import { tags } from "./words.ts";

/** The movement that a reason is about, where it names one. */
function form(data: Data, names: Names, name = "exercise"): string {
  const id = data[name];
  return typeof id === "string" ? names.exercise(id) : "this movement";
}

function load(data: Data, name: string): string {
  return loadIn(data, name) ?? MISSING;
}

function range(data: Data, name: string): string {
  const span = dataIn(data, name) ?? {};
  return printSpan(numberIn(span, "from"), numberIn(span, "to"));
}

function step(data: Data): string {
  return `${load(data, "from")} to ${load(data, "to")} is ${printNumber(numberIn(data, "percent"))} % more`;
}

const UNITS: Readonly<Record<string, string>> = {
  reps: "repetitions",
  most: "as many as possible",
  hold: "s held",
  metres: "m",
  time: "s",
  contacts: "contacts",
};

function amount(data: Data): string {
  const asked = dataIn(data, "amount") ?? {};
  const unit = UNITS[said(asked, "kind")] ?? MISSING;
  return said(asked, "kind") === "most" ? unit : `${range(data, "amount")} ${unit}`;
}

/** What is proposed or was decided, and with what it rests. */
export const progressReasons: Readonly<Record<ProgressCode, Say>> = {
  "progress/go-to-load": (data, names) => {
    const from = loadIn(data, "from");
    const percent = numberIn(data, "percent");
    const size = Number.isFinite(percent) ? `, ${percent > 0 ? "+" : ""}${printNumber(percent)} %` : "";
    return `${form(data, names)}: go to ${load(data, "to")}${from === undefined ? "" : ` (${from} now${size})`}.`;
  },
  "progress/widen-range": (data, names) =>
    `${form(data, names)}: range ${range(data, "to")} (${range(data, "from")} now).`,
  "progress/set-dose": (data, names) =>
    `${form(data, names)}: ${plural(numberIn(data, "sets"), "set", "sets")} of ${amount(data)}.`,
  "progress/use-form": (data, names) =>
    data["from"] === null
      ? `${form(data, names)} in this slot.`
      : `${form(data, names)} instead of ${form(data, names, "from")}.`,
  "progress/pause": (data, names) => {
    const until = data["until"];
    return `Pause ${form(data, names)}${typeof until === "string" ? ` until ${printDate(until)}` : ""}.`;
  },
  "progress/pause-all": (data) => `Everything waits (${said(data, "where")}).`,
  "progress/resume": (data, names) => `Take up ${form(data, names)} again.`,
  "progress/two-for-two": (data) => {
    const sessions = dataListIn(data, "sessions");
    const done = sessions.map((session) => `${said(session, "reps")} on ${sheet.shortDay(said(session, "on"))}`);
    const reserves = sessions.map((session) => numberIn(session, "reserve"));
    const left = reserves.map((reserve) => (Number.isFinite(reserve) ? printNumber(reserve) : "not said"));
    const reserve = reserves.some(Number.isFinite) ? `In reserve: ${listed(left)}.` : "Reserve not said.";
    const weight = loadIn(data, "load");
    const lifted = weight === undefined ? "" : ` with ${weight}`;
    return `${listed(done)} in the last set${lifted}: ${said(data, "over")} or more over the goal of ${said(data, "goal")}, 2 sessions running. ${reserve}`;
  },
  "progress/step-fine": (data) => `${step(data)}; up to ${said(data, "most")} % is a usual step.`,
  "progress/step-too-large": (data) =>
    `${step(data)}, and up to ${said(data, "most")} % is usual: more repetitions come first.`,
  "progress/step-earned": (data) =>
    `${step(data)}, where up to ${said(data, "most")} % is usual; ${said(data, "reps")} repetitions make up for it, ${said(data, "needed")} are needed.`,
  "progress/share-unknown": (data) =>
    `At most ${said(data, "most")} % of today's best is allowed, and today's best is not known. About ${plural(numberIn(data, "reps"), "repetition", "repetitions")} with ${load(data, "to")} would be more than that. More repetitions come first.`,
  "progress/nothing-heavier": (data) => `${load(data, "load")} is the heaviest that is here and allowed.`,
  "progress/expect": (data) =>
    `About ${plural(numberIn(data, "reps"), "repetition", "repetitions")} with ${load(data, "load")}; past 10 no equation is sure.`,
  "progress/pain": (data, names) => {
    const during = typeof data["exercise"] === "string" ? ` at ${form(data, names)}` : "";
    return `${said(data, "howMuch")} of 10, ${said(data, "where")}, on ${sheet.shortDay(said(data, "on"))}${during}.`;
  },
  "progress/shares-stress": (data, names) =>
    `${form(data, names)} stresses the same: ${listed(wordsIn(data, "tags").map((tag) => tags[tag as keyof typeof tags] ?? tag))}.`,
  "progress/stop-sign": (data) => `${said(data, "where")}: everything waits until a doctor has been asked.`,
};

/** Why nobody can say what somebody can lift. */
export const capacityReasons: Readonly<Record<CapacityCode, Say>> = {
  "capacity/no-scale": () =>
    "Cannot judge: it is moved by the body, a band or with help, so its number is no weight on one scale.",
  "capacity/body-unknown": () => "Cannot judge: the body is part of what is moved, and its weight is not known.",
  "capacity/not-recorded": (data) => `Cannot judge: no set in the last ${said(data, "weeks")} weeks.`,
  "capacity/load-unknown": (data) =>
    `Cannot judge: ${plural(numberIn(data, "sets"), "set", "sets")}, and the load of none is known.`,
  "capacity/reps-unsaid": (data) =>
    `Cannot judge: ${plural(numberIn(data, "sets"), "set", "sets")}, and the repetitions of none were entered.`,
  "capacity/reserve-unsaid": (data) =>
    `Cannot judge: ${plural(numberIn(data, "sets"), "set", "sets")}, and the reserve of none was said.`,
  "capacity/hold-as-asked": (data) =>
    `Cannot judge: ${plural(numberIn(data, "sets"), "hold", "holds")}, each ended when its time was over.`,
  "capacity/few-sessions": (data) =>
    `Cannot judge: ${plural(numberIn(data, "sessions"), "session", "sessions")} with load, repetitions and reserve; ${said(data, "needed")} are needed.`,
  "capacity/contradict": () => "Cannot judge: two sessions are too far apart for both to be right. The next will tell.",
  "capacity/over-ten": (data) =>
    `Cannot judge: every set had more than ${said(data, "most")} repetitions with those in reserve, and past that no equation is sure.`,
};
