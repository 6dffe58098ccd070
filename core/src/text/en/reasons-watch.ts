import type { WatchCode } from "../../watch/index.ts";
import { type Data, dataIn, listIn, numberIn, said, wordsIn } from "../facts.ts";
import type { Say } from "../names.ts";
import { listed, plural, printNumber } from "./number.ts";
import { sheet } from "./sheet.ts";
import { printDate } from "./units.ts";

const WHY: Readonly<Record<string, string>> = {
  sick: "sick",
  away: "away",
  tired: "tired",
  busy: "busy",
  pain: "because of pain",
  "not said": "no reason said",
};

function day(data: Data, name = "on"): string {
  return printDate(said(data, name));
}

/** @example signed(3) //=> "+3" */
function signed(value: number): string {
  return `${value > 0 ? "+" : value < 0 ? "−" : ""}${printNumber(Math.abs(value), 1)}`;
}

/** "80 % between −1 and +7 %, 9 sessions in 6 weeks" */
function interval(data: Data): string {
  const [low, high] = [signed(numberIn(data, "low")), signed(numberIn(data, "high"))];
  return `80 % between ${low} and ${high} %, ${plural(numberIn(data, "sessions"), "session", "sessions")} in ${said(data, "weeks")} weeks`;
}

/** What a person's record tells. */
export const watchReasons: Readonly<Record<WatchCode, Say>> = {
  "watch/silent": (data) =>
    `${plural(numberIn(data, "days"), "day", "days")} without a record; ${plural(numberIn(data, "sessions"), "session was", "sessions were")} planned. Ask how things are.`,
  "watch/away": (data) => `Away until ${day(data, "until")}.`,
  "watch/missed": (data) => `Not done on ${day(data)}: ${WHY[said(data, "because")] ?? said(data, "because")}.`,
  "watch/ask-morning": (data) =>
    `${said(data, "howMuch")} of 10, ${said(data, "where")}, on ${day(data)}: ask how the morning after was.`,
  "watch/morning-worse": (data) =>
    `${said(data, "now")} of 10, ${said(data, "where")}, on the morning after; ${said(data, "was")} in the session on ${day(data)}. Ease it, and see a clinician if it rises again.`,
  "watch/morning-late": (data) =>
    `${said(data, "now")} of 10, ${said(data, "where")}, said ${plural(numberIn(data, "days"), "day", "days")} late: it does not tell how the morning after ${day(data)} was.`,
  "watch/ask-after-first": (data) =>
    `First session on ${day(data)}: ask about soreness, swelling, weakness and dark urine. The last three want a doctor on the same day.`,
  "watch/ask-after-new": (data) =>
    `New or back on ${day(data)} after two weeks or more: ${listed(wordsIn(data, "muscles"))}. Ask about soreness, swelling, weakness and dark urine; the last three want a doctor on the same day.`,
  "watch/two-devices": (data) =>
    `${sheet.shortDay(said(data, "on"))}: told by ${said(data, "devices")} devices; each set counts once, with the later word.`,
  "watch/noted": (data) => `${sheet.shortDay(said(data, "on"))}: ${said(data, "text")}`,
  "watch/clock": (data, names) =>
    `A device's clock showed ${day(data)} for ${names.session(said(data, "session"))}: the sets count in their place in the plan; ask which day it was.`,
  "watch/much-more": (data) =>
    `${printNumber(numberIn(data, "sets"), 1)} sets of ${said(data, "muscle")} in 7 days; ${printNumber(numberIn(data, "mean"), 1)} a week in the ${said(data, "weeks")} before.`,
  "watch/fall": (data, names) => `${names.exercise(said(data, "exercise"))}: less, ${interval(data)}.`,
  "watch/level": (data, names) => `${names.exercise(said(data, "exercise"))}: no change, ${interval(data)}.`,
  "watch/gain": (data, names) => `${names.exercise(said(data, "exercise"))}: more, ${interval(data)}.`,
  "watch/unclear": (data, names) =>
    `${names.exercise(said(data, "exercise"))}: cannot tell a change from noise yet, ${interval(data)}.`,
  "watch/trends-known": (data) =>
    numberIn(data, "known") === 0
      ? `Cannot judge the change of ${said(data, "weeks")} weeks in any of ${plural(numberIn(data, "of"), "movement", "movements")}: loads, repetitions or reserves are missing.`
      : `The change of ${said(data, "weeks")} weeks is known in ${said(data, "known")} of ${plural(numberIn(data, "of"), "movement", "movements")}. A set tells something with its load, its repetitions and its reserve.`,
  "watch/adherence": (data) => {
    const missed = Object.entries(dataIn(data, "missed") ?? {}).map(
      ([because, count]) => `${String(count)} ${WHY[because] ?? because}`,
    );
    const early = numberIn(data, "early");
    const sessions = `${said(data, "done")} of ${plural(numberIn(data, "asked"), "session", "sessions")} in ${said(data, "days")} days`;
    const sets = `${said(data, "setsDone")} of ${plural(numberIn(data, "setsAsked"), "set", "sets")} in them`;
    const inThem = numberIn(data, "done") > 0 ? [sets] : [];
    return `${[sessions, ...inThem, ...(early > 0 ? [`${early} ended early`] : []), ...missed].join("; ")}.`;
  },
  "watch/week-load": (data) => {
    const [monotony, strain] = [numberIn(data, "monotony"), numberIn(data, "strain")];
    const alike = Number.isFinite(monotony)
      ? `monotony ${printNumber(monotony, 2)}, strain ${printNumber(strain, 0)} (SD of n − 1)`
      : "every day alike, so no monotony";
    const before = listIn(data, "before").map((total) => (total === null ? "not known" : String(total)));
    const weeks = before.length === 0 ? "" : ` Weeks before: ${before.join(", ")}.`;
    return `${said(data, "total")} of load in 7 days (effort × minutes), ${alike}.${weeks} It compares with this person's own weeks only and says nothing of injury.`;
  },
  "watch/load-unrated": (data) =>
    `Cannot judge the load of 7 days: the effort is missing on ${listed(wordsIn(data, "days").map(sheet.shortDay))}.`,
};
