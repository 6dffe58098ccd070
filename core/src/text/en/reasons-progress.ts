import type { CapacityCode } from "../../capacity/index.ts";
import type { ProgressCode } from "../../progress/index.ts";
import { type Data, dataIn, dataListIn, MISSING, numberIn, numbersIn, said, wordsIn } from "../facts.ts";
import type { Names, Say } from "../names.ts";
import { listed, plural, printNumber, printSpan } from "./number.ts";
import { lightReasons } from "./reasons-light.ts";
import { sheet } from "./sheet.ts";
import { loadIn, printDate } from "./units.ts";
import { capital, muscles, tags } from "./words.ts";

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

/** "12 on 1 Mar and 13 on 4 Mar in the last set with 5 kg". */
function lastSets(data: Data): string {
  const done = dataListIn(data, "sessions").map(
    (session) => `${said(session, "reps")} on ${sheet.shortDay(said(session, "on"))}`,
  );
  const weight = loadIn(data, "load");
  return `${listed(done)} in the last set${weight === undefined ? "" : ` with ${weight}`}`;
}

function inReserve(data: Data): string {
  const reserves = dataListIn(data, "sessions").map((session) => numberIn(session, "reserve"));
  const left = reserves.map((reserve) => (Number.isFinite(reserve) ? printNumber(reserve) : "not said"));
  return reserves.some(Number.isFinite) ? `In reserve: ${listed(left)}.` : "Reserve not said.";
}

/** "3 on 1 Mar and 4 on 4 Mar". */
function reserves(data: Data): string {
  return listed(
    dataListIn(data, "sessions").map(
      (session) => `${said(session, "reserve")} on ${sheet.shortDay(said(session, "on"))}`,
    ),
  );
}

function muscle(data: Data): string {
  const name = said(data, "muscle");
  return muscles[name as keyof typeof muscles] ?? name;
}

function nth(data: Data): string {
  return numberIn(data, "exposures") === 1 ? ", and one session since" : "";
}

/** "1 Mar and 4 Mar". */
function days(data: Data): string {
  return listed(dataListIn(data, "sessions").map((session) => sheet.shortDay(said(session, "on"))));
}

function withLoad(data: Data): string {
  const weight = loadIn(data, "load");
  return weight === undefined ? "" : ` with ${weight}`;
}

/** "85 % sure: 8 repetitions with 50 kg and 2 in reserve, from 6 sessions". */
function chance(data: Data): string {
  const reserve = numberIn(data, "reserve");
  const left = reserve > 0 ? `, ${printNumber(reserve)} in reserve` : "";
  const carried = typeof data["carried"] === "string" ? ", carried from sets of other repetitions" : "";
  const reps = plural(numberIn(data, "reps"), "repetition", "repetitions");
  const sessions = plural(numberIn(data, "sessions"), "session", "sessions");
  return `${said(data, "chance")} % sure: ${reps}${withLoad(data)}${left}; from ${sessions}${carried}`;
}

const RUN_ENDED: Readonly<Record<string, string>> = {
  breath: "breath: the same level, slower",
  legs: "tired legs: the same level again",
  pain: "pain that grew while running: not before walking is free of pain",
};

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
  "progress/slow-down": (data, names) =>
    `${form(data, names)}: lower over ${numbersIn(data, "tempo")[0]} s, pause, same load.`,
  "progress/add-set": (data, names) =>
    `${form(data, names)}: ${plural(numberIn(data, "to"), "set", "sets")} (${said(data, "from")} now).`,
  "progress/try-set": (data, names) =>
    `${form(data, names)}: the first set with ${load(data, "load")}, ${amount(data)}; the others stay.`,
  "progress/begin-again": (data, names) => {
    const weight = loadIn(data, "load");
    const reserve = numberIn(data, "reserve");
    const left = Number.isFinite(reserve) ? `, ${printNumber(reserve)} or more in reserve` : "";
    return `${form(data, names)}: begin again with ${plural(numberIn(data, "sets"), "set", "sets")}${weight === undefined ? "" : ` of ${weight}`}${left}.`;
  },
  "progress/two-for-two": (data) =>
    `${lastSets(data)}: ${said(data, "over")} or more over the goal of ${said(data, "goal")}, 2 sessions running. ${inReserve(data)}`,
  "progress/bottom-reached": (data) =>
    `${lastSets(data)}: the ${said(data, "goal")} asked done in every set, 2 sessions running. ${inReserve(data)}`,
  "progress/step-fine": (data) => `${step(data)}; up to ${said(data, "most")} % is a usual step.`,
  "progress/step-too-large": (data) =>
    `${step(data)}, and up to ${said(data, "most")} % is usual: more repetitions come first.`,
  "progress/step-large-sure": (data) =>
    `${step(data)}, where up to ${said(data, "most")} % is usual; the record says that it can be done.`,
  "progress/step-earned": (data) =>
    `${step(data)}, where up to ${said(data, "most")} % is usual; ${said(data, "reps")} repetitions make up for it, ${said(data, "needed")} are needed.`,
  "progress/share-unknown": (data) =>
    `At most ${said(data, "most")} % of today's best is allowed, and today's best is not known. About ${plural(numberIn(data, "reps"), "repetition", "repetitions")} with ${load(data, "to")} would be more than that. More repetitions come first.`,
  "progress/waits-sessions": (data) =>
    `${plural(numberIn(data, "sessions"), "session", "sessions")} on record; ${said(data, "needed")} running are needed, of the same form and less than 14 days apart.`,
  "progress/waits-load": (data) =>
    `${load(data, "done")} was done and ${load(data, "asked")} is asked: more is earned with what is asked. Set what is to hold.`,
  "progress/waits-repetitions": (data) =>
    `Waits for ${said(data, "goal")} repetitions or more in the last set of ${said(data, "needed")} sessions running.`,
  "progress/waits-all-sets": (data) =>
    `Waits for ${said(data, "goal")} repetitions in every set of ${said(data, "needed")} sessions running, with what is to be left.`,
  "progress/waits-no-harder": () =>
    "0 harder forms may follow here: the slot allows none above its first choice (up), or none can be done here.",
  "progress/waits-way": (data) =>
    `What its way up (${said(data, "way")}) counts was not shown in two sessions running yet.`,
  "progress/nothing-heavier": (data) => `${load(data, "load")} is the heaviest that is here and allowed.`,
  "progress/expect": (data) =>
    `About ${plural(numberIn(data, "reps"), "repetition", "repetitions")} with ${load(data, "load")}; past 10 no equation is sure.`,
  "progress/pain": (data, names) => {
    const during = typeof data["exercise"] === "string" ? ` at ${form(data, names)}` : "";
    return `${said(data, "howMuch")} of 10, ${said(data, "where")}, on ${sheet.shortDay(said(data, "on"))}${during}.`;
  },
  "progress/shares-stress": (data, names) =>
    `${form(data, names)} stresses the same: ${listed(wordsIn(data, "tags").map((tag) => tags[tag as keyof typeof tags] ?? tag))}.`,
  "progress/all-sets": (data) =>
    `${said(data, "goal")} in every set${withLoad(data)} on ${days(data)}, 2 sessions running.`,
  "progress/likely": (data) => `${chance(data)}.`,
  "progress/unlikely": (data) => `Only ${chance(data)}: the step waits.`,
  "progress/likely-hold": (data) =>
    `${said(data, "chance")} % sure: ${said(data, "seconds")} s held; from ${plural(numberIn(data, "sessions"), "session", "sessions")}.`,
  "progress/more-in-reserve": (data) =>
    `At least ${reserves(data)} left in every set${withLoad(data)} (${range(data, "asked")} asked).`,
  "progress/less-in-reserve": (data) =>
    `Only ${reserves(data)} left in a set${withLoad(data)} (${range(data, "asked")} asked).`,
  "progress/reserve-missing": (data) =>
    `Cannot judge: the reserve of the last ${said(data, "sessions")} sessions was not said, and the load follows it.`,
  "progress/held": (data) => `${said(data, "seconds")} s or more in every hold on ${days(data)}.`,
  "progress/hold-full": (data, names) =>
    `${said(data, "most")} s is where ${form(data, names)} ends: a harder form tells more than more seconds.`,
  "progress/gate-met": (data) => {
    const done = dataIn(data, "amount") ?? {};
    const unit = UNITS[said(done, "kind")] ?? MISSING;
    return `${plural(numberIn(data, "sets"), "set", "sets")} of ${said(done, "value")} ${unit} on ${days(data)}: enough for the next form.`;
  },
  "progress/gate-conditions": (data) => `To be seen by the coach: ${listed(wordsIn(data, "conditions"))}.`,
  "progress/try-first": (data, names) => `Try one set of 3 to 5 of ${form(data, names)} first; a hold at its shortest.`,
  "progress/gate-too-soon": (data, names) =>
    `Enough for ${form(data, names)}, but the two sessions lie less than ${said(data, "days")} days apart.`,
  "progress/contacts-done": (data) =>
    `All done on ${days(data)}: ${said(data, "from")} contacts to ${said(data, "to")}, of ${said(data, "most")} at most.`,
  "progress/under-floor": (data) => {
    const unit = UNITS[said(data, "kind")] ?? MISSING;
    const first = `${said(data, "done")} ${unit} in the first set${withLoad(data)} on ${sheet.shortDay(said(data, "on"))}`;
    return numberIn(data, "sessions") === 1
      ? `${first}: ${said(data, "floor")} asked, and at ${said(data, "limit")} one session is enough to go back.`
      : `${first}: under the ${said(data, "floor")} asked, 2 sessions running.`;
  },
  "progress/technique-lost": (data) =>
    `Technique lost on ${days(data)}: nothing rises before ${said(data, "clean")} clean sessions running.`,
  "progress/technique-unseen": (data) =>
    `Under ${said(data, "under")}: a load rises only when technique was seen to be kept, ${said(data, "clean")} sessions running.`,
  "progress/last-clean": (data) =>
    `${load(data, "load")} on ${sheet.shortDay(said(data, "on"))} was the last clean load.`,
  "progress/fast-rise": (data) =>
    `${load(data, "from")} to ${load(data, "to")} in ${plural(numberIn(data, "days"), "day", "days")}: ${said(data, "percent")} % a week, more than strength grows (${said(data, "most")} %). Look first.`,
  "progress/morning-unanswered": (data) =>
    `The morning after ${sheet.shortDay(said(data, "on"))} is not answered (${said(data, "where")}): nothing rises.`,
  "progress/morning-late": (data) =>
    `The morning after ${sheet.shortDay(said(data, "on"))} was answered more than ${plural(numberIn(data, "days"), "day", "days")} late (${said(data, "where")}): nothing rises.`,
  "progress/morning-normal": (data) =>
    `${said(data, "morning")} of 10 the morning after, ${said(data, "where")}; usual is ${said(data, "usual")}.`,
  "progress/morning-above": (data) =>
    `${said(data, "morning")} of 10 the morning after ${sheet.shortDay(said(data, "on"))}, ${said(data, "where")}; usual is ${said(data, "usual")}, ${said(data, "most")} at most${data["rising"] === true ? ", and it rises" : ""}.`,
  "progress/weekly-growth": (data) =>
    `${muscle(data)}: ${said(data, "from")} sets a week to ${said(data, "to")}; ${said(data, "most")} at most in four weeks.`,
  "progress/comeback": (data) => {
    const cause = data["ill"] === true ? " after illness" : "";
    return `${plural(numberIn(data, "days"), "day", "days")} without it${cause}, since ${sheet.shortDay(said(data, "since"))}${loadIn(data, "load") === undefined ? "" : `, last${withLoad(data)}`}. By the ${said(data, "rule") === "gentle" ? "gentle" : "stricter"} rule sets are cut more than load; what is printed ranges from no loss in 3 weeks to half the load.`;
  },
  "progress/well-first": () => "With fever, or signs in the chest, there is no session.",
  "progress/tells-most": (data, names) =>
    `Ask the repetitions and the reserve of one set of ${form(data, names)}: it settles ${said(data, "settles")} open ${numberIn(data, "settles") === 1 ? "decision" : "decisions"} on average, in ${said(data, "seconds")} s with its rest.`,
  "progress/back-again": (data) =>
    `Done as asked on ${days(data)} since the break; ${load(data, "load")} was the load before it.`,
  "progress/muscle-new": (data) =>
    `${capital(muscle(data))}: nothing trained it in the ${said(data, "days")} days that are known${nth(data)}. At most ${plural(numberIn(data, "most"), "set", "sets")} a session that it drives, 3 or more in reserve.`,
  "progress/muscle-back": (data) =>
    `${capital(muscle(data))}: ${said(data, "days")} days without it${nth(data)}, ${printNumber(numberIn(data, "usual"))} sets a week before. At most ${printNumber(numberIn(data, "most"))} sets in this week: half to two thirds is common practice.`,
  "progress/lowering-first": (data, names) =>
    `${form(data, names)} only lowers, which muscles lose first (12 % in two weeks in one study): one set to begin with.`,
  "progress/muscles-used": (data) =>
    `Other movements kept ${listed(wordsIn(data, "muscles"))} trained: the sets stay, the load is found again.`,
  "progress/full-again": (data) =>
    `Done as asked on ${days(data)} with ${plural(numberIn(data, "from"), "set", "sets")}: ${plural(numberIn(data, "to"), "set", "sets")} again${said(data, "why") === "first" ? ", one more at a time" : ""}.`,
  ...lightReasons,
  "progress/run-level": (data) =>
    `Run–walk level ${said(data, "level")}: ${sheet.intervals(numberIn(data, "bouts"), numberIn(data, "runS"), numberIn(data, "walkS"))}.`,
  "progress/runs-good": (data) =>
    `${plural(dataListIn(data, "sessions").length, "good run", "good runs")} of level ${said(data, "level")} running, on ${days(data)}.`,
  "progress/run-ended": (data) =>
    `The run of level ${said(data, "level")} on ${sheet.shortDay(said(data, "on"))} was ended by ${RUN_ENDED[said(data, "end")] ?? MISSING}.`,
  "progress/runs-away": (data) =>
    `No run for ${said(data, "days")} days or more, since ${sheet.shortDay(said(data, "since"))}: levels go back, and nothing is made up.`,
  "progress/run-no-room": (data) =>
    `Level ${said(data, "level")} needs ${plural(numberIn(data, "more"), "minute", "minutes")} more than the session has.`,
  "progress/run-cut": (data) =>
    `The session has room for half the bouts of level ${said(data, "level")}: no next level before it has room for all.`,
  "progress/stop-sign": (data) => `${said(data, "where")}: everything waits until a doctor has been asked.`,
};

const CARRIED: Readonly<Record<string, string>> = {
  tool: "the same work with other equipment",
  arms: "one arm for two",
  rung: "the next rung",
};

/** Why nobody can say what somebody can lift. */
export const capacityReasons: Readonly<Record<CapacityCode, Say>> = {
  "capacity/carried-from": (data, names) =>
    `Carried from ${form(data, names)} (${CARRIED[said(data, "by")] ?? MISSING}), wider: between ${load(data, "low")} and ${load(data, "high")} once, from ${plural(numberIn(data, "sessions"), "session", "sessions")} of that. It is no figure of this form.`,
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
