import { type Data, dataListIn, numberIn, said } from "../facts.ts";
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
};
