import { type Data, dataListIn, numberIn, said, wordsIn } from "../facts.ts";
import { listed, plural } from "./number.ts";
import { minutesOf, printDuration, printMinutes } from "./units.ts";

export const REMEDY_IDS = [
  "take-near-name",
  "add-slot",
  "more-sets",
  "fewer-sets",
  "shorten",
  "longer-session",
  "share-that-fits",
  "reps-that-fit",
  "say-each-side",
  "drop-each-side",
  "hold-that-fits",
  "add-warm-up",
  "do-later",
  "rest-enough",
  "share-for-novices",
  "into-table",
  "over-two-sessions",
  "do-apart",
  "drop-light",
  "more-in-reserve",
  "light-weeks",
  "go-up",
  "usual-way",
  "do-first",
  "shorter-warm-up",
  "quicker-repetitions",
  "within-limits",
  "lighter-load",
  "load-that-is-here",
] as const;
export type RemedyId = (typeof REMEDY_IDS)[number];

/** Slots whose sets change alike are told together. */
function setsOf(slots: readonly Data[]): string {
  const alike = new Map<string, string[]>();
  for (const slot of slots) {
    const change = `${plural(numberIn(slot, "to"), "set", "sets")} instead of ${said(slot, "from")}`;
    alike.set(change, [...(alike.get(change) ?? []), said(slot, "name")]);
  }
  return [...alike].map(([change, names]) => `${change} of ${listed(names)}`).join("; ");
}

function shorten(data: Data): string {
  const pairs = dataPairs(data);
  const fewer = dataListIn(data, "fewer");
  const steps = [
    ...(Number.isFinite(numberIn(data, "restS")) ? [`rest ${printDuration(numberIn(data, "restS"))}`] : []),
    ...(pairs.length > 0 ? [`pair ${listed(pairs)}`] : []),
    ...(fewer.length > 0 ? [setsOf(fewer)] : []),
  ].join("; ");
  const over = numberIn(data, "overS");
  const left = over > 0 ? `, ${printMinutes(over)} still over at most` : "";
  const then = `${printMinutes(numberIn(data, "typicalS"))}, up to ${minutesOf(numberIn(data, "highS"))}${left}`;
  return `${steps.charAt(0).toUpperCase()}${steps.slice(1)}: ${then}.`;
}

function dataPairs(data: Data): readonly string[] {
  const pairs = data["pairs"];
  if (!Array.isArray(pairs)) return [];
  return pairs.map((pair) => (Array.isArray(pair) ? pair.map(String).join(" with ") : String(pair)));
}

function fromTo(data: Data): string {
  return `Write “${said(data, "to")}” instead of “${said(data, "from")}”.`;
}

/** What each remedy would do, as the words of its link. */
export const remedies: Readonly<Record<RemedyId, (data: Data) => string>> = {
  "take-near-name": (data) => `Take ${said(data, "name")} (${said(data, "id")}).`,
  "add-slot": (data) =>
    `Add ${plural(numberIn(data, "sets"), "set", "sets")} of ${said(data, "name")} to “${said(data, "session")}”.`,
  "more-sets": (data) => `Ask for ${setsOf(dataListIn(data, "slots"))}.`,
  "fewer-sets": (data) => `Ask for ${setsOf(dataListIn(data, "slots"))}.`,
  shorten,
  "longer-session": (data) => `Give the session ${said(data, "to")} min instead of ${said(data, "from")}.`,
  "share-that-fits": (data) => `${fromTo(data)} The share of the 1RM then fits the repetitions.`,
  "reps-that-fit": (data) => `${fromTo(data)} The repetitions then fit the share of the 1RM.`,
  "say-each-side": fromTo,
  "drop-each-side": fromTo,
  "hold-that-fits": fromTo,
  "add-warm-up": (data) => `Begin with ${printDuration(numberIn(data, "seconds"))} of ${said(data, "name")}.`,
  "do-later": (data) => `Do ${said(data, "name")} after ${said(data, "before")}.`,
  "rest-enough": fromTo,
  "share-for-novices": fromTo,
  "into-table": fromTo,
  "over-two-sessions": (data) =>
    `Do half of the sets of ${listed(wordsIn(data, "names"))} in another session of the week.`,
  "do-apart": (data) => `Do ${listed(wordsIn(data, "names"))} one after the other, and not in turn.`,
  "drop-light": (data) => `Let week ${said(data, "week")} be a full week.`,
  "more-in-reserve": (data) =>
    `Leave ${said(data, "reserve")} in reserve in ${plural(numberIn(data, "slots"), "slot", "slots")}.`,
  "light-weeks": (data) =>
    `Take it lightly in ${listed(dataListIn(data, "weeks").map((each) => `week ${said(each, "week")} of “${said(each, "title")}”`))}.`,
  "go-up": (data) => `Let ${plural(numberIn(data, "slots"), "slot", "slots")} go up in the usual way of their dose.`,
  "usual-way": (data) => `Let ${said(data, "name")} go up by ${said(data, "way")}.`,
  "do-first": (data) => `Do ${said(data, "name")} before ${said(data, "after")}.`,
  "shorter-warm-up": (data) =>
    `Ask for ${printDuration(numberIn(data, "seconds"))} of ${said(data, "name")} before the work.`,
  "quicker-repetitions": fromTo,
  "within-limits": fromTo,
  "load-that-is-here": fromTo,
  "lighter-load": fromTo,
};
