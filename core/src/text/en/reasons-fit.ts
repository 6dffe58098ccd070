import type { FitCode } from "../../fit/index.ts";
import type { PlanCode } from "../../revise/index.ts";
import { type Data, dataListIn, MISSING, numberIn, said, wordsIn } from "../facts.ts";
import type { Names, Say } from "../names.ts";
import { listed, plural, printNumber } from "./number.ts";
import { cautionOf, limitAsked } from "./reasons-offer.ts";
import { loadIn, printDate } from "./units.ts";
import { patterns, tags } from "./words.ts";

/** The reasons that stand inside another one, each as a clause. */
function inner(data: Data, say: Parameters<Say>[2]): string {
  return dataListIn(data, "why")
    .map((reason) => say({ code: said(reason, "code"), data: (reason["data"] ?? {}) as Data }))
    .join(" ");
}

function exercise(data: Data, names: Names, name = "exercise"): string {
  return names.exercise(said(data, name));
}

function tagNames(data: Data): string {
  return listed(wordsIn(data, "tags").map((tag) => tags[tag as keyof typeof tags] ?? tag));
}

/** Why a slot was given what it was given, or stays open. */
export const fitReasons: Readonly<Record<FitCode, Say>> = {
  "fit/first-choice": () => "The coach's first choice.",
  "fit/instead": (data, names, say) => `Instead of ${exercise(data, names, "first")}. ${inner(data, say)}`,
  "fit/right-rung": (data, names) => {
    const steps = numberIn(data, "steps");
    const where =
      steps === 0 ? "level with" : `${plural(Math.abs(steps), "step", "steps")} ${steps < 0 ? "below" : "above"}`;
    return `This person's place on the ladder: ${where} ${exercise(data, names, "first")}.`;
  },
  "fit/more-points": (data, names) => `More points for the whole phase than with ${exercise(data, names, "first")}.`,
  "fit/pinned": () => "Pinned by the coach for this person.",
  "fit/pin-beaten": (data, names, say) => `The pin on ${exercise(data, names)} gives way. ${inner(data, say)}`,
  "fit/unknown-exercise": (data) => `${said(data, "exercise")} is not in the catalogue.`,
  "fit/watch": (data) => `At the limit for ${tagNames(data)}: watch, and ask afterwards.`,
  "fit/liked": () => "This person likes it.",
  "fit/disliked": () => "This person does not like it; nothing else has as many points.",
  "fit/sets-changed": (data) => {
    const [asked, sets] = [numberIn(data, "asked"), numberIn(data, "sets")];
    const why =
      sets < asked
        ? "so that the session keeps its minutes or the week its bands"
        : "so that the week reaches its bands";
    return `${plural(sets, "set", "sets")} where the programme has ${asked}, ${why}.`;
  },
  "fit/no-room": (data, names) =>
    `Left open: no room in the session's minutes, or its forms stand in another slot of it. ${exercise(data, names, "could")} would come first.`,
  "fit/nothing-fits": (data) =>
    `Left open: of ${plural(numberIn(data, "tried"), "form", "forms")} for ${patterns[said(data, "pattern") as keyof typeof patterns] ?? said(data, "pattern")} none may be offered here.`,
  "fit/set-aside": (data, names, say) => `${exercise(data, names)} is set aside. ${inner(data, say)}`,
  "fit/if-equipment": (data) => `with ${said(data, "what")} here`,
  "fit/if-minutes": (data) => `with ${said(data, "more")} min more for every session`,
  "fit/if-caution": (data) =>
    `without the caution ${cautionOf(data)} (set by ${said(data, "who")}), if the clinician agrees`,
  "fit/if-limit": (data, names) =>
    `without the limit ${limitAsked(data, names)} (ordered by ${said(data, "who")}), if the clinician agrees`,
  "fit/if-day": (data) => `with ${plural(numberIn(data, "days"), "training day", "training days")} a week`,
  "fit/rule-kit": (data) => `only what ${said(data, "place")} has is used`,
  "fit/rule-earned": () => "only forms that this person has been assessed on or has shown are given",
  "fit/rule-caution": (data) => `the caution ${cautionOf(data)} (set by ${said(data, "who")})`,
  "fit/rule-limit": (data, names) => `${limitAsked(data, names)}, ordered by ${said(data, "who")}`,
  "fit/rule-cannot": (data) =>
    `this person cannot do ${tags[said(data, "tag") as keyof typeof tags] ?? said(data, "tag")}`,
  "fit/rule-band": (data) => {
    const [low, high] = [numberIn(data, "low") / 4, numberIn(data, "high") / 4];
    return `${printNumber(low)}–${printNumber(high)} sets a week of ${said(data, "muscle")}`;
  },
  "fit/rule-minutes": (data, names) =>
    `${said(data, "minutes")} min for ${names.session(said(data, "session"))}, at the upper estimate`,
  "fit/rule-once": (data, names) => `no form twice in ${names.session(said(data, "session"))}`,
  "fit/rule-stations": () => "the stations that are there",
  "fit/rule-fill": (data, names) => `a form in ${names.slot(said(data, "slot"))}`,
};

/** What a plan says about itself. */
export const planReasons: Readonly<Record<PlanCode, Say>> = {
  "plan/long-sets-instead": () =>
    "Sets of 15–30 close to the limit, lowered slowly: they build muscle, but maximal strength is not kept with this equipment. One heavier weight, or a filled backpack, would change that.",
  "plan/no-day": (data) =>
    `0 days a week leave a window of ${said(data, "minutes")} min or of the shortest session. The plan shows one session a week; no date can be given.`,
  "plan/in-turn": (data) =>
    `${plural(numberIn(data, "days"), "day", "days")} a week for ${plural(numberIn(data, "sessions"), "session", "sessions")}: they are done in turn.`,
  "plan/load-decided": (data) => `${loadIn(data, "load") ?? MISSING}, as the coach decided.`,
  "plan/load-beaten": (data) =>
    `The coach decided on ${loadIn(data, "load") ?? MISSING}, which is not here or over a limit: ${loadIn(data, "chosen") ?? MISSING} instead.`,
  "plan/load-cannot-be": (data) =>
    `The coach decided on ${loadIn(data, "load") ?? MISSING}, and neither it nor anything easier is here and allowed.`,
  "plan/nothing-spares": (data, names) =>
    `${exercise(data, names)} waits: nothing that is offered spares this place (${said(data, "where")}).`,
  "plan/nothing-else-here": (data, names) =>
    `${exercise(data, names)} waits: nothing that is offered does without its equipment.`,
  "plan/dose-decided": () => "Dosed as the coach decided.",
  "plan/paused": (data, names) => {
    const until = data["until"];
    const what = typeof data["exercise"] === "string" ? names.exercise(data["exercise"]) : "This slot";
    return `${what} waits${typeof until === "string" ? ` until ${printDate(until)}` : " until the coach takes it up again"}.`;
  },
};

/** What a constraint of the fit is called in a comparison of two plans. */
export const constraints: Readonly<Record<string, string>> = {
  "fit/open-slot": "slots left open",
  "fit/weekly-sets": "weekly sets outside their band",
  "fit/balance": "push and pull, or knee and hip, far apart",
  "fit/suits": "the right rung",
  "fit/own-rung": "a form that the person has under them",
  "fit/usual-rung": "about the middle of a ladder that nobody assessed them on",
  "fit/pattern": "the pattern asked for",
  "fit/neighbour-pattern": "a neighbouring pattern",
  "fit/muscles": "the muscles it is for",
  "fit/steps-outside": "steps beyond what the slot allows",
  "fit/liked": "likes",
  "fit/disliked": "dislikes",
  "fit/watch": "stresses at their limit",
  "fit/too-light": "loads here too light",
  "fit/kept": "what the slot had before",
  "fit/sets-changed": "sets changed",
  "fit/conditioning-cut": "conditioning cut",
};
