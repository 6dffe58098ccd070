import type { OfferCode } from "../../offer/index.ts";
import { type Data, dataIn, dataListIn, listIn, MISSING, numberIn, said } from "../facts.ts";
import type { Names, Say } from "../names.ts";
import { listed, printNumber } from "./number.ts";
import { loadIn, printDate } from "./units.ts";
import { amounts, lanes, statements, tags } from "./words.ts";

function statementOf(id: string): string {
  if (id === "tag") return "a limit set for this alone";
  if (id === "cannot") return "what this person cannot do";
  if (id === "screening") return "the screening outcome";
  return statements[id as keyof typeof statements] ?? id;
}

function because(data: Data): string {
  const from = listIn(data, "from").map((each) => {
    if (typeof each === "string") return statementOf(each);
    return typeof each === "object" && each !== null && !Array.isArray(each)
      ? statementOf(said(each as Data, "by"))
      : MISSING;
  });
  return listed([...new Set(from)]);
}

function tagOf(data: Data): string {
  return tags[said(data, "tag") as keyof typeof tags] ?? said(data, "tag");
}

function groupsOf(data: Data): string {
  const groups = listIn(data, "groups").map((group) =>
    listed(Array.isArray(group) ? group.map(String) : [String(group)], "or"),
  );
  return listed(groups);
}

function orderOf(data: Data): string {
  return `ordered by ${said(data, "who")} until ${printDate(said(data, "to"))}`;
}

/** What an order takes out: an arm, a leg, a movement, everything. */
function taken(data: Data, names: Names): string {
  const side = said(data, "side");
  const which = side === "both" || side === MISSING ? "" : `${side} `;
  const movement = data["movement"] === undefined ? "" : names.exercise(said(data, "movement"));
  const part = data["part"] === undefined ? "" : `${which}${said(data, "part")}`;
  if (part !== "" && movement !== "") return `${part} in ${movement}`;
  if (part !== "") return part;
  const sided = which === "" ? "" : ` on the ${side}`;
  return movement === "" ? `all loading${sided}` : `${movement}${sided}`;
}

function needOf(data: Data, names: Names): string {
  const need = dataIn(data, "needs") ?? {};
  const sets = numberIn(need, "sets");
  const times = Number.isFinite(sets) ? `${printNumber(sets)} × ` : "";
  const reps = numberIn(need, "reps");
  const amount = Number.isFinite(reps) ? printNumber(reps) : `${printNumber(numberIn(need, "holdS"))} s`;
  return `${times}${amount} of ${names.exercise(said(need, "of"))}`;
}

function most(data: Data): string {
  const where = said(data, "applies") === "hand" ? "in a hand" : "in all";
  const side = said(data, "side");
  return `${loadIn(data, "atMost") ?? "no load"} ${where}${side === "left" || side === "right" ? ` on the ${side}` : ""}`;
}

/** @returns what a limit asks for */
export function limitAsked(data: Data, names: Names): string {
  return said(data, "kind") === "load" ? `at most ${most(data)}` : `no ${taken(data, names)}`;
}

/** @returns what a caution is about */
export function cautionOf(data: Data): string {
  return data["statement"] === undefined ? tagOf(data) : statementOf(said(data, "statement"));
}

/** What stands on some days of a phase binds on all of them. */
function throughout(data: Data): string {
  return `it binds on every day from ${printDate(said(data, "first"))} to ${printDate(said(data, "last"))}, since one choice serves the whole phase.`;
}

function spanIn(data: Data, name: string): string {
  const span = dataIn(data, name) ?? {};
  const [from, to] = [said(span, "from"), said(span, "to")];
  return from === to ? from : `${from}–${to}`;
}

function amountOf(value: string): string {
  return amounts[value as keyof typeof amounts] ?? value;
}

/** Why a form is set aside, what was changed, what must be asked, why nothing is printed. Loads and holds come first. */
export const offerReasons: Readonly<Record<OfferCode, Say>> = {
  "offer/equipment": (data) => `Needs ${groupsOf(data)}, and this place has none.`,
  "offer/out-of-order": (data) => {
    const out = dataListIn(data, "out").map((each) => {
      return `${said(each, "what")} out of order from ${printDate(said(each, "from"))} to ${printDate(said(each, "to"))}`;
    });
    return `Needs ${groupsOf(data)}: ${listed(out)}.`;
  },
  "offer/ceiling": (data) =>
    `${tagOf(data)}: grade ${said(data, "grade")}, and ${said(data, "ceiling")} is the most for ${because(data)}.`,
  "offer/cannot": (data) =>
    `${tagOf(data)}: grade ${said(data, "grade")}, and this person cannot go over ${said(data, "ceiling")}.`,
  "offer/lane-withheld": (data) =>
    `${lanes[said(data, "lane") as keyof typeof lanes] ?? said(data, "lane")} is left out for now: ${because(data)}.`,
  "offer/seated-only": (data) => `Seated forms only: ${because(data)}.`,
  "offer/arms-used": (data) => `It loads the arms, which rest for now: ${because(data)}.`,
  "offer/lowering-only": (data) => `No lowering-only sets: ${because(data)}.`,
  "offer/coach-only": () => "Only a coach adds it, by hand.",
  "offer/wheelchair": () => "It is done in a wheelchair.",
  "offer/above-rung": (data, names) => {
    const form = names.exercise(said(data, "stands"));
    return data["assessed"] === true
      ? `This person stands on ${form}; steps up come by the entry criteria.`
      : `Not assessed on this ladder, so it starts on ${form}.`;
  },
  "offer/not-shown": (data, names) =>
    `Not assessed on ${names.ladder(said(data, "ladder"))}: its hardest forms with body mass alone have to be shown first.`,
  "offer/count-not-shown": (data, names) => `${needOf(data, names)} has to be shown first.`,
  "offer/over-limit": (data) =>
    `${loadIn(data, "held") ?? MISSING} would be held, and ${most(data)} is the most, ${orderOf(data)}.`,
  "offer/load-unknown": (data) =>
    `${most(data)} is the most, ${orderOf(data)}, and the true load of this equipment is not known.`,
  "offer/rest-order": (data, names) => `Rest of ${taken(data, names)}, ${orderOf(data)}.`,
  "offer/forbidden": (data, names) => `No ${taken(data, names)}, ${orderOf(data)}.`,
  "offer/hold-range": (data) => `${spanIn(data, "asked")} s are asked, and ${spanIn(data, "range")} s suit this hold.`,
  "offer/amount": (data) =>
    `The dose asks for ${amountOf(said(data, "asked"))}, and this is counted in ${amountOf(said(data, "takes"))}.`,
  "offer/percent-cut": (data) =>
    `${said(data, "limit")} % of the 1RM instead of ${said(data, "asked")} %: ${because(data)}.`,
  "offer/reserve-raised": (data) => {
    const asked = data["asked"] === null ? "" : ` instead of ${said(data, "asked")}`;
    return `${said(data, "limit")} in reserve${asked}: ${because(data)}.`;
  },
  "offer/hold-cut": (data) => {
    const asked = data["asked"] === null ? "" : ` instead of ${said(data, "asked")} s`;
    return `${said(data, "limit")} s${asked}: ${because(data)}.`;
  },
  "offer/hold-short-of-best": (data) => `Holds end at ${said(data, "limit")} % of the best: ${because(data)}.`,
  "offer/in-sentences": (data) => `Easy enough to speak in whole sentences: ${because(data)}.`,
  "offer/one-side": (data, names) =>
    `The ${said(data, "train")} side only: rest of ${taken(data, names)}, ${orderOf(data)}.`,
  "offer/other-hand": (data, names) =>
    `Hold on with the ${said(data, "hand")} hand: rest of ${taken(data, names)}, ${orderOf(data)}.`,
  "offer/not-assessed": (data, names) => `Not assessed on ${names.ladder(said(data, "ladder"))}: watch the first sets.`,
  "offer/body-mass-unknown": () => "Body mass is not recorded, so the load moved cannot be told.",
  "offer/ask-caution": (data) =>
    `${cautionOf(data)}: to be asked again since ${printDate(said(data, "recheck"))} (set by ${said(data, "who")}). It stays until then.`,
  "offer/ask-limit": (data, names) =>
    `${printDate(said(data, "to"))} has passed for a limit of ${said(data, "who")} (${limitAsked(data, names)}). It stays until a review is recorded: ask.`,
  "offer/ask-screening": (data) =>
    `The screening outcome stands until ${printDate(said(data, "until"))}: ask again before then.`,
  "offer/limit-throughout": (data, names) =>
    `${limitAsked(data, names)}, ordered by ${said(data, "who")} from ${printDate(said(data, "from"))} until ${printDate(said(data, "to"))}: ${throughout(data)}`,
  "offer/caution-throughout": (data) =>
    `${cautionOf(data)}, from ${printDate(said(data, "from"))} on (set by ${said(data, "who")}): ${throughout(data)}`,
  "offer/no-screening": () => "0 screening outcomes on record, so nothing is printed. Enter a dated one.",
  "offer/screening-not-yet": (data) =>
    `The screening outcome is dated ${printDate(said(data, "on"))}, which is still to come, so nothing is printed before that day.`,
  "offer/screening-expired": (data) =>
    `The screening outcome ended on ${printDate(said(data, "until"))}, so nothing is printed. Ask again and enter the answer.`,
  "offer/ask-doctor": (data) =>
    `Screening on ${printDate(said(data, "on"))} by ${said(data, "by")}: ask a doctor first. Nothing is printed until a clinician's written agreement is entered.`,
  "offer/stop": (data) =>
    `Screening on ${printDate(said(data, "on"))} by ${said(data, "by")}: stop. Nothing is printed; this person sees a doctor before training.`,
};
