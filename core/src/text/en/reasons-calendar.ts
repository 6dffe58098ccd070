import type { CalendarCode } from "../../calendar/index.ts";
import { type Data, dataListIn, numberIn, said, wordsIn } from "../facts.ts";
import type { Names, Say } from "../names.ts";
import { listed, plural, printNumber } from "./number.ts";
import { printDate, printHours, WEEKDAY_NAMES } from "./units.ts";
import { muscles } from "./words.ts";

function musclesOf(data: Data): string {
  return listed(wordsIn(data, "muscles").map((muscle) => muscles[muscle as keyof typeof muscles] ?? muscle));
}

function between(data: Data): string {
  return `from ${printDate(said(data, "from"))} to ${printDate(said(data, "to"))}`;
}

function other(data: Data, names: Names): string {
  return data["with"] === null ? "the last session" : names.session(said(data, "with"));
}

function datesOf(data: Data, name: string): string {
  return listed(wordsIn(data, name).map(printDate));
}

const WELCOME = ["gladly", "well", "if need be", "unwillingly", "only if it must be"] as const;

/** Other days that could have been used: said, so that nobody thinks that there were none. */
function others(data: Data): string {
  const count = numberIn(data, "others");
  return count > 0 ? `${plural(count, "other day", "other days")} could be used instead` : "there are no other days";
}

/** What the points of a plan stand for. */
const PARTS = {
  window: "less welcome hours",
  late: "days after its week",
  moved: "moves",
  nextDay: "days in a row",
  close: "hours missing",
} as const;

function missedOne(data: Data, names: Names): string {
  return `${names.session(said(data, "session"))} on ${printDate(said(data, "day"))} was missed`;
}

/** Why a session stands on its day, why it was dropped, why the slots of a week were dealt anew. */
export const calendarReasons: Readonly<Record<CalendarCode, Say>> = {
  "calendar/close": (data, names) =>
    `${printHours(numberIn(data, "hours"))} after ${other(data, names)} on ${printDate(said(data, "day"))}, and ${printHours(numberIn(data, "wanted"))} are wanted: both load ${musclesOf(data)} hard.`,
  "calendar/next-day": (data, names) =>
    `The day after ${other(data, names)}, ${printHours(numberIn(data, "hours"))} on; no muscle is loaded hard by both.`,
  "calendar/late": (data) => `${plural(numberIn(data, "days"), "day", "days")} after the end of its week.`,
  "calendar/unwelcome-hour": (data) =>
    `At an hour that this person takes ${WELCOME[numberIn(data, "cost")] ?? "unwillingly"}.`,
  "calendar/only-day": () => "1 day of its week has a window that is long enough: this one.",
  "calendar/own-day": () => "A date of its own.",
  "calendar/not-as-announced": (data) =>
    `Announced for ${printDate(said(data, "day"))} and moved to this day, hour or place.`,
  "calendar/in-a-row": (data) =>
    `${plural(numberIn(data, "days"), "day", "days")} in a row ${between(data)}, ${said(data, "most")} at most; ${others(data)}.`,
  "calendar/no-window": (data) => `0 windows ${between(data)}, so it has no day.`,
  "calendar/away": (data) => `Away ${between(data)}, ${plural(numberIn(data, "days"), "day", "days")}.`,
  "calendar/waits": (data) =>
    `Away ${between(data)}, ${plural(numberIn(data, "days"), "day", "days")}: the plan waits, and goes on in the week in which it stood.`,
  "calendar/other-hours": (data) => `Other hours than usual ${between(data)}.`,
  "calendar/equal-plans": (data) =>
    `${numberIn(data, "count") > 0 && data["more"] === true ? `More than ${printNumber(numberIn(data, "count"))}` : printNumber(numberIn(data, "count"))} plans are as good; this one trains first where they differ.`,
  "calendar/sessions-a-week": (data) => {
    const weeks = dataListIn(data, "weeks").map(
      (week) =>
        `${said(week, "sessions")} in ${week["name"] === null ? `the week of ${printDate(said(week, "first"))}` : said(week, "name")}`,
    );
    const begins = WEEKDAY_NAMES[said(data, "begins") as keyof typeof WEEKDAY_NAMES] ?? said(data, "begins");
    return `Sessions a week, weeks from ${begins}: ${weeks.length === 0 ? "0" : weeks.join(", ")}.`;
  },
  "calendar/only-plan": () => "0 other plans are as good.",
  "calendar/not-proven": (data) =>
    `Not proven best: ${plural(numberIn(data, "dropped"), "session", "sessions")} without a day and ${plural(numberIn(data, "points"), "point", "points")}; no plan can have fewer than ${said(data, "leastDropped")} and ${said(data, "leastPoints")}.`,
  "calendar/other-way": (data, names) => {
    const moves = dataListIn(data, "sessions").map((one) => {
      const name = names.session(said(one, "session"));
      return one["day"] === null ? `${name} without a day` : `${name} on ${printDate(said(one, "day"))}`;
    });
    const points = numberIn(data, "points");
    const parts = Object.entries(PARTS).flatMap(([part, name]) => {
      const more = numberIn(data, part);
      return more === 0 ? [] : [`${more > 0 ? "" : "−"}${Math.abs(more)} for ${name}`];
    });
    const cost = points === 0 && parts.length === 0 ? "as good" : `${plural(points, "point", "points")} more`;
    return `Week ${said(data, "week")} otherwise: ${listed(moves)}; ${cost}${parts.length === 0 ? "" : ` (${parts.join(", ")})`}.`;
  },
  "calendar/lacks-kit": (data) =>
    `Every window ${between(data)} is at ${listed(wordsIn(data, "places"))}, which lacks what it needs, so it has no day.`,
  "calendar/windows-too-short": (data) =>
    `${said(data, "need")} min are needed, and the longest window ${between(data)} has ${said(data, "longest")}, so it has no day.`,
  "calendar/fewer-days": (data, names) => {
    const sessions = wordsIn(data, "sessions");
    const days = wordsIn(data, "days");
    return `${plural(days.length, "day", "days")} (${datesOf(data, "days")}) for ${plural(sessions.length, "session", "sessions")}: ${listed(sessions.map((id) => names.session(id)))}. One has no day.`;
  },
  "calendar/rest-day": (data) =>
    `${plural(numberIn(data, "most"), "day", "days")} in a row at most, so the day that is left stays free. Without this rule it would have a day.`,
  "calendar/order": (data) => `It would fit on ${datesOf(data, "days")}, but not in the order of the sessions.`,
  "calendar/would-shorter": (data) =>
    `${said(data, "minutes")} min instead of ${said(data, "need")} would give it a day.`,
  "calendar/would-longer": (data) =>
    `${said(data, "more")} min more in the window of ${printDate(said(data, "day"))} would give it a day.`,
  "calendar/would-window": (data) =>
    `A window of ${said(data, "need")} min on ${listed(wordsIn(data, "days").map(printDate), "or")} would give it a day.`,
  "calendar/would-kit": (data) => `All that it needs at ${said(data, "place")} would give it a day.`,
  "calendar/would-row": (data) =>
    `${plural(numberIn(data, "most"), "day", "days")} in a row instead of one less would give it a day.`,
  "calendar/would-carry": (data) =>
    `Up to ${plural(numberIn(data, "days"), "day", "days")} after its week would give it a day.`,
  "calendar/would-before": (data, names) =>
    `In its turn before ${names.session(said(data, "before"))} it would have a day.`,
  "calendar/would-after": (data, names) =>
    `In its turn after ${names.session(said(data, "after"))} it would have a day.`,
  "calendar/missed-nothing": (data) => `0 sessions stood on ${printDate(said(data, "day"))}, so nothing follows.`,
  "calendar/missed-ill": (data, names) =>
    `${missedOne(data, names)}, ill: skipped, and not made up. The days ahead stay.`,
  "calendar/missed-pain": (data, names) =>
    `${missedOne(data, names)}, pain: skipped, and not made up. The days ahead stay; what hurt waits for an answer of its own.`,
  "calendar/missed-tired": (data, names) =>
    `${missedOne(data, names)}, tired: skipped, and not made up. The plan goes on with the next session on its day, from the loads last done.`,
  "calendar/missed-moved": (data, names) =>
    `${missedOne(data, names)}, ${data["because"] === "away" ? "away" : "busy"}: moved to ${printDate(said(data, "to"))}, and no hours are missing for it.`,
  "calendar/missed-no-day": (data, names) =>
    `${missedOne(data, names)}, ${data["because"] === "away" ? "away" : "busy"}: skipped, and not made up. 0 days are left on which every session would have its place.`,
  "calendar/missed-close": (data, names) =>
    `${missedOne(data, names)}, ${data["because"] === "away" ? "away" : "busy"}: skipped, and not made up. On the best day left it would stand ${printHours(numberIn(data, "hours"))} from ${other(data, names)}, and ${printHours(numberIn(data, "wanted"))} are wanted: both load ${musclesOf(data)} hard.`,
  "calendar/not-back": (data, names) =>
    `${names.session(said(data, "session"))} on ${printDate(said(data, "day"))} lies before ${printDate(said(data, "back"))}: skipped, and not made up.`,
  "calendar/moved": (data, names) =>
    `${names.session(said(data, "session"))} goes from ${printDate(said(data, "day"))} to ${printDate(said(data, "to"))} to make room.`,
  "calendar/ease-in": (data, names) =>
    `Ask before ${names.session(said(data, "session"))} on ${printDate(said(data, "day"))}: ${data["because"] === "pain" ? "what hurts at rest, rises, or is over 5 of 10 holds it" : "fever or signs in the chest hold it"}. It is done easier than written${numberIn(data, "since") > 0 ? `, ${plural(numberIn(data, "since"), "day", "days")} after the last session` : ""}.`,
  "calendar/days-as-they-are": (data) =>
    `${plural(numberIn(data, "days"), "day", "days")} ${between(data)}, and ${others(data)}: so the slots are dealt anew and not the days.`,
  "calendar/slot-moved": (data, names) =>
    `${names.slot(said(data, "slot"))} goes from ${names.session(said(data, "from"))} to ${names.session(said(data, "to"))}: else ${musclesOf(data)} would be loaded hard again after ${printHours(numberIn(data, "hours"))}, and ${printHours(numberIn(data, "wanted"))} are wanted.`,
  "calendar/slot-moved-along": (data, names) =>
    `${names.slot(said(data, "slot"))} goes from ${names.session(said(data, "from"))} to ${names.session(said(data, "to"))}, to make room or to keep the minutes.`,
  "calendar/slot-kept": (data, names) =>
    `${names.slot(said(data, "slot"))} stays in ${names.session(said(data, "session"))}.`,
  "calendar/still-close": (data, names) =>
    `${printHours(numberIn(data, "hours"))} between ${names.session(said(data, "earlier"))} and ${names.session(said(data, "later"))}, and ${printHours(numberIn(data, "wanted"))} are wanted: both load ${musclesOf(data)} hard, and no other deal of the slots avoids it.`,
  "calendar/over-minutes": (data, names) =>
    `${printNumber(numberIn(data, "minutes"))} min for ${names.session(said(data, "session"))}, which has ${said(data, "limit")}: no deal that keeps the days apart is shorter.`,
};
