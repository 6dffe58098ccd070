import { ageOn, type Day, printDay } from "../day.ts";
import { exerciseHistory } from "../measures/index.ts";
import type { Exercise, Json, Patch, PlanSlot, Reason, StandingRule } from "../model/index.ts";
import { clearanceOf } from "../offer/index.ts";
import { type Load, massOf } from "../units.ts";
import type { WatchInput } from "./watch-input.ts";

/** Why a standing rule leaves something to the coach. */
export const RULE_CODES = [
  /** change: what no rule of this kind takes */
  "rule/other-change",
  "rule/stop",
  /** who, to */
  "rule/limit",
  "rule/clearance",
  /** where, on */
  "rule/pain",
  /** sessions: of this form so far */
  "rule/new-form",
  /** sessions: of this person so far */
  "rule/first-sessions",
  /** days: without a record, or since an illness */
  "rule/comeback",
  "rule/pregnancy",
  "rule/minor",
  /** percent or null, most */
  "rule/step",
  /** chance or null: per cent, least */
  "rule/chance",
  /** sessions, least */
  "rule/few-sessions",
] as const;
export type RuleCode = (typeof RULE_CODES)[number];

/** A proposal as a rule looks at it. */
export interface RuleCase {
  readonly patch: Patch;
  readonly stop: boolean;
  /** As it is asked next. */
  readonly slot: PlanSlot;
  readonly exercise: Exercise;
  readonly certainty?: { readonly chance: number; readonly sessions: number };
}

const ADULT_AT = 18;
/** Two sessions of a person or of a form come first. Ours, no source. */
const FIRST = 2;
/** Pain, illness and breaks keep rules away for so many days; a break is as long. Ours, no source. */
const AFTER_DAYS = 14;
const LOOK_BACK_DAYS = 28;

/**
 * Why a rule may not take a proposal; nothing when it may. Limits, pain, clearance, a new form, the first two sessions,
 * a comeback, pregnancy and minors are never a rule's, whatever it says.
 *
 * @source ours
 */
export function ruleLeaves(rule: StandingRule, one: RuleCase, input: WatchInput): readonly Reason[] {
  return [...neverTaken(one, input), ...beyond(rule, one)];
}

function because(code: RuleCode, data: Readonly<Record<string, Json>> = {}): Reason {
  return { code, data };
}

function neverTaken({ stop, patch, slot, exercise }: RuleCase, input: WatchInput): readonly Reason[] {
  const { person, record, log, today, dayOf } = input;
  const clearance = clearanceOf(person, today);
  const limit = person.limits.find(({ from, lifted }) => from <= today && lifted === undefined);
  const stated = person.cautions.some(
    ({ from, statement }) => from <= today && (statement === "pregnant" || statement === "postnatal"),
  );
  const bound =
    clearance.outcome === undefined ||
    clearance.outcome === "stop" ||
    clearance.outcome === "ask a doctor first" ||
    clearance.effort !== undefined ||
    clearance.asks.length > 0 ||
    [clearance.percent, clearance.reserve, clearance.holdS].some((each) => each !== undefined) ||
    Object.keys(clearance.ceilings).length > 0;
  const hurt = record.hurts.findLast(({ at, howMuch }) => howMuch >= 1 && today - dayOf(at) <= AFTER_DAYS);
  const form = "exercise" in patch && patch.exercise !== undefined ? patch.exercise : slot.exercise;
  const ofForm = form === slot.exercise ? exerciseHistory(log, exercise.id).length : 0;
  const break_ = comeback(input);
  return [
    ...(stop ? [because("rule/stop")] : []),
    ...(limit === undefined ? [] : [because("rule/limit", { who: limit.who, to: printDay(limit.to) })]),
    ...(stated ? [because("rule/pregnancy")] : []),
    ...(ageOn(person.born, today) >= ADULT_AT ? [] : [because("rule/minor")]),
    ...(bound ? [because("rule/clearance")] : []),
    ...(hurt === undefined ? [] : [because("rule/pain", { where: hurt.where, on: printDay(dayOf(hurt.at)) })]),
    ...(record.sessions.length > FIRST ? [] : [because("rule/first-sessions", { sessions: record.sessions.length })]),
    ...(ofForm > FIRST ? [] : [because("rule/new-form", { sessions: ofForm })]),
    ...(break_ === undefined ? [] : [because("rule/comeback", { days: break_ })]),
  ];
}

/** Days of a break that ended lately or still lasts, or since an illness. */
function comeback({ record, today, dayOf }: WatchInput): number | undefined {
  const sick = record.missed
    .filter(({ data }) => data.because === "sick")
    .map(({ at }) => today - dayOf(at))
    .find((days) => days <= AFTER_DAYS);
  if (sick !== undefined) return sick;
  const days = [...record.sessions.map(({ at }) => dayOf(at)), today].sort((a, b) => a - b);
  const gaps = days.slice(1).map((day, at) => ({ day, gap: day - (days[at] as Day) }));
  return gaps.findLast(({ day, gap }) => gap > AFTER_DAYS && today - day <= LOOK_BACK_DAYS)?.gap;
}

/** What lies beyond what this rule says. */
function beyond(rule: StandingRule, { patch, slot, certainty }: RuleCase): readonly Reason[] {
  const { takes, leastChance, leastSessions, mostPercent } = rule;
  const taken = (takes as readonly string[]).includes(patch.change) && isMore(patch, slot);
  if (!taken) return [because("rule/other-change", { change: patch.change })];
  const percent = patch.change === "load" && slot.load !== undefined ? percentOf(slot.load, patch.load) : undefined;
  const large = patch.change === "load" && !(percent !== undefined && percent <= mostPercent);
  const { chance, sessions = 0 } = certainty ?? {};
  return [
    ...(large ? [because("rule/step", { percent: percent ?? null, most: mostPercent })] : []),
    ...(chance !== undefined && chance >= leastChance
      ? []
      : [
          because("rule/chance", {
            chance: chance === undefined ? null : Math.round(100 * chance),
            least: Math.round(100 * leastChance),
          }),
        ]),
    ...(sessions >= leastSessions ? [] : [because("rule/few-sessions", { sessions, least: leastSessions })]),
  ];
}

function percentOf(from: Load, to: Load): number {
  return Math.round(1000 * (massOf(to) / massOf(from) - 1)) / 10;
}

/** Rules take what goes up: less is a coach's word. */
function isMore(patch: Patch, slot: PlanSlot): boolean {
  if (patch.change === "load") return slot.load === undefined || massOf(patch.load) > massOf(slot.load);
  if (patch.change !== "reps") return false;
  const [now, then] = [slot.dose.sets, patch.dose.sets].map((sets) => {
    const amount = sets[0]?.amount;
    return { sets: sets.length, to: amount === undefined || amount.kind === "most" ? Number.NaN : amount.span.to };
  });
  return then!.to > now!.to && then!.sets >= now!.sets;
}
