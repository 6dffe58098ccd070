import type { RuleCode } from "../../watch/index.ts";
import { numberIn, said } from "../facts.ts";
import type { Say } from "../names.ts";
import { plural, printNumber } from "./number.ts";
import { printDate } from "./units.ts";

/** Why a standing rule leaves a proposal to the coach. */
export const ruleReasons: Readonly<Record<RuleCode, Say>> = {
  "rule/other-change": () => "The rule takes no change of this kind.",
  "rule/stop": () => "A stop is never a rule's.",
  "rule/limit": (data) =>
    `A limit by ${said(data, "who")} binds until ${printDate(said(data, "to"))} and longer while nobody lifts it.`,
  "rule/clearance": () => "Screening or a caution binds: never a rule's.",
  "rule/pain": (data) => `Pain on ${printDate(said(data, "on"))}, ${said(data, "where")}.`,
  "rule/new-form": (data) => `${plural(numberIn(data, "sessions"), "session", "sessions")} of this form: it is new.`,
  "rule/first-sessions": (data) =>
    `${plural(numberIn(data, "sessions"), "session", "sessions")} so far: the first two are the coach's.`,
  "rule/comeback": (data) =>
    `${plural(numberIn(data, "days"), "day", "days")} of a break, or since an illness: a comeback.`,
  "rule/pregnancy": () => "Pregnancy or the year after birth: never a rule's.",
  "rule/minor": () => "Under 18: never a rule's.",
  "rule/step": (data) => {
    const percent = numberIn(data, "percent");
    const size = Number.isFinite(percent) ? `A step of ${printNumber(percent, 1)} %` : "A step nobody can measure";
    return `${size}; the rule takes ${said(data, "most")} % at most.`;
  },
  "rule/chance": (data) => {
    const chance = numberIn(data, "chance");
    const found = Number.isFinite(chance) ? `${chance} % sure` : "Nobody can tell how sure";
    return `${found}; the rule wants ${said(data, "least")} %.`;
  },
  "rule/few-sessions": (data) =>
    `${plural(numberIn(data, "sessions"), "session", "sessions")} behind it; the rule wants ${said(data, "least")}.`,
};
