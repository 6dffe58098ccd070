import { type Day, printDay } from "../day.ts";
import type { Reason, Screening } from "../model/index.ts";
import type { Answers } from "./answers.ts";
import type { AnswersFile } from "./answers-read.ts";
import { newSince, withNews } from "./anything-new.ts";
import { type Before, type BeforeAnswer, strictest } from "./before.ts";
import { type ConsentState, consentsOn, type Purpose } from "./consent.ts";
import { glucoseBefore } from "./glucose.ts";
import { illBefore, returnBefore } from "./illness.ts";
import { painBefore } from "./pain.ts";
import { pressureBefore } from "./pressure.ts";
import { reason } from "./reasons.ts";
import type { RuleName } from "./rule-name.ts";
import { type BeforeRules, PRINTED_RULES, usualRules } from "./rules.ts";
import { type DiabetesRule, type Screened, screen } from "./screen.ts";
import { sleepBefore } from "./sleep.ts";
import { stopBefore } from "./stop-list.ts";
import type { NewToday, Today } from "./today.ts";

/** What is looked at before a session, in this order. "new" is the question "anything new since last time?". */
export const CHECKED = [
  "stop list",
  "consent",
  "screening",
  "new",
  "pressure",
  "glucose",
  "pain",
  "illness",
  "sleep",
] as const;
export type CheckedName = (typeof CHECKED)[number];

/** One check of today, with the rule that ran and the printed rules of its kind that would answer otherwise. */
export interface CheckedToday extends BeforeAnswer {
  readonly kind: CheckedName;
  readonly rule?: RuleName;
  readonly others: readonly { readonly rule: RuleName; readonly before: Before }[];
}

export interface BeforeSession extends BeforeAnswer {
  readonly checks: readonly CheckedToday[];
  /** The outcome as it stands on that day, after what is new; it never stands longer than what it began with. */
  readonly screening: Screening;
  readonly screened: Screened;
  /** The answers with what is new. */
  readonly answers: Answers;
  /** Whether something new asked for the screening again. */
  readonly again: boolean;
  readonly consents: readonly { readonly purpose: Purpose; readonly state: ConsentState }[];
}

function plain(kind: CheckedName, answer: BeforeAnswer): CheckedToday {
  return { kind, ...answer, others: [] };
}

function judged<Rule extends RuleName>(
  kind: CheckedName,
  printed: readonly Rule[],
  chosen: Rule,
  judge: (rule: Rule) => BeforeAnswer,
): CheckedToday {
  const answer = judge(chosen);
  const others = printed
    .filter(({ id }) => id !== chosen.id)
    .map((rule) => ({ rule, before: judge(rule).before }))
    .filter(({ before }) => before !== answer.before);
  return { kind, ...answer, rule: chosen, others };
}

function consentChecked(state: ConsentState): CheckedToday {
  if (state === "given") return plain("consent", { before: "go", because: [] });
  const code = {
    "never asked": "before/consent-not-asked",
    "needs a guardian": "before/consent-guardian",
    withdrawn: "before/consent-withdrawn",
  } as const;
  return plain("consent", { before: state === "withdrawn" ? "soften" : "ask", because: [reason(code[state])] });
}

function screeningChecked({ screening, locked }: Screened, until: Day, today: Today, sealed: boolean): CheckedToday {
  const { outcome, agreed } = screening;
  const said = { outcome, until: printDay(until) };
  if (outcome === "stop" || (outcome === "ask a doctor first" && agreed === undefined)) {
    return plain("screening", { before: "hold", because: [reason("before/screening-holds", said), ...locked] });
  }
  if (today.on > until) return plain("screening", { before: "ask", because: [reason("before/screening-old", said)] });
  const stands = reason("before/screening-stands", said);
  const more = sealed ? [reason("before/screening-sealed")] : locked;
  return plain("screening", { before: "go", because: [stands, ...more] });
}

function newChecked(
  news: NewToday | undefined,
  fresh: readonly string[],
  again: boolean,
  holds: boolean,
): CheckedToday {
  if (news === undefined) return plain("new", { before: "ask", because: [reason("before/new-not-asked")] });
  const other = news.other ?? [];
  const answers: BeforeAnswer[] = [
    ...(again ? [newFound(news, fresh, holds)] : []),
    ...(other.length > 0 ? [{ before: "ask" as const, because: [reason("before/new-other", { said: other })] }] : []),
  ];
  return plain("new", strictest(answers.length > 0 ? answers : [{ before: "go", because: [] }]));
}

function newFound(news: NewToday, fresh: readonly string[], holds: boolean): BeforeAnswer {
  const said = { names: fresh, wanted: news.wanted ?? null, active: news.active ?? null };
  return { before: holds ? "hold" : "soften", because: [reason("before/screened-again", said)] };
}

/** Everything that was measured or said of today's health, each by its rule. */
function healthChecked(today: Today, rules: BeforeRules): readonly CheckedToday[] {
  const { pressure, glucose, pain, ill, lastIll, slept } = today;
  const free = lastIll === undefined ? undefined : (ill ?? []).length > 0 ? 0 : today.on - lastIll;
  return [
    ...(pressure === undefined
      ? []
      : [
          judged("pressure", PRINTED_RULES.pressure, rules.pressure, (rule) =>
            pressureBefore(pressure.readings, pressure.note, rule),
          ),
        ]),
    ...(glucose === undefined
      ? []
      : [judged("glucose", PRINTED_RULES.glucose, rules.glucose, (rule) => glucoseBefore(glucose, rule))]),
    ...pain.map((place) =>
      judged("pain", PRINTED_RULES.pain, rules.pain, (rule) => {
        const { before, because } = painBefore(place, rule);
        return { before, because: because.map(({ code, data }) => ({ code, data: { ...data, where: place.where } })) };
      }),
    ),
    ...(ill === undefined ? [] : [plain("illness", illBefore(ill))]),
    ...(free === undefined
      ? []
      : [judged("illness", PRINTED_RULES.illness, rules.illness, (rule) => returnBefore(free, rule))]),
    ...(slept === undefined
      ? []
      : [judged("sleep", PRINTED_RULES.sleep, rules.sleep, (rule) => sleepBefore(slept, rule))]),
  ];
}

/** @returns what other printed rules would say, as reasons */
export function otherRules(others: CheckedToday["others"]): readonly Reason[] {
  return others.map(({ rule, before }) => reason("before/other-rule", { rule: rule.id, dated: rule.dated, before }));
}

/** What of today was not looked at, since the person took their consent back. */
function unused(today: Today): readonly Reason[] {
  const names = (["pressure", "glucose", "ill", "lastIll", "slept"] as const).filter(
    (name) => today[name] !== undefined,
  );
  const all = [...names, ...(today.pain.length > 0 ? ["pain"] : []), ...(today.news === undefined ? [] : ["new"])];
  return all.length === 0 ? [] : [reason("before/not-used", { answers: all })];
}

function asksAgain(before: Answers, now: Answers): boolean {
  return newSince(before, now).length > 0 || now.wanted !== before.wanted || now.active !== before.active;
}

/**
 * Whether the session of today may be held, softer, after a question, or not at all, with every ground, the rule behind
 * it and the printed rules that would say otherwise.
 *
 * What is new is added to the answers of the screening, and the published logic runs anew with the whole; the outcome
 * keeps its last day. The stop list is looked at whatever was agreed to. Without consent to use health answers nothing
 * else of today's health is: the outcome stays until its last day, its grounds are not shown, and work is softer.
 *
 * @param today of the day of the screening or later
 * @throws RangeError when it is earlier
 * @source riebe2015, ours
 */
export function beforeSession(
  file: Pick<AnswersFile, "answers" | "born" | "consents" | "consentAge">,
  today: Today,
  rules: BeforeRules = usualRules(),
  diabetes: DiabetesRule = "strict",
): BeforeSession {
  const { answers, born } = file;
  if (!(answers.on <= today.on)) {
    throw new RangeError(`Cannot judge a day before the screening: current value is ${printDay(today.on)}`);
  }
  const consents = consentsOn({ ...file, consents: [...file.consents, ...today.consents] }, today.on);
  const consent = consents.find(({ purpose }) => purpose === "use my health answers")!.state;
  const sealed = consent === "withdrawn";
  const news = sealed ? undefined : today.news;
  const first = screen(answers, born, diabetes);
  const now = news === undefined ? answers : withNews(answers, news, today.on, today.by, news.active);
  const again = asksAgain(answers, now);
  const screened = again ? screen(now, born, diabetes) : first;
  const until = Math.min(first.screening.until, screened.screening.until) as Day;
  const standing = screeningChecked(screened, until, today, sealed);
  const checks = [
    ...(today.stop.length > 0 ? [plain("stop list", stopBefore(today.stop))] : []),
    consentChecked(consent),
    standing,
    ...(sealed
      ? [plain("new", { before: "go", because: unused(today) })]
      : [newChecked(news, newSince(answers, now), again, standing.before === "hold"), ...healthChecked(today, rules)]),
  ];
  return {
    ...strictest(checks),
    checks,
    screening: { ...screened.screening, until },
    screened,
    answers: now,
    again,
    consents,
  };
}
