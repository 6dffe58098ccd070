import { type Day, printDay } from "../day.ts";
import type { Reason } from "../model/index.ts";
import { type Answers, DISEASES, EFFORTS, type Effort, SIGNS } from "./answers.ts";
import type { AnswersFile } from "./answers-read.ts";
import type { BeforeSession, CheckedName } from "./before-session.ts";
import { type Consent, type ConsentState, consentFor, STRICTEST_AGE } from "./consent.ts";
import { reason } from "./reasons.ts";
import type { Screened } from "./screen.ts";
import type { Today } from "./today.ts";

/** What a clinician is asked about one person: the question and no more facts than it needs. */
export interface AdviceRequest {
  readonly name: string;
  readonly born: Day;
  readonly on: Day;
  readonly by: string;
  /** What the person wants to train at, and what may be ticked: that and everything below it. */
  readonly wanted: Effort;
  readonly efforts: readonly Effort[];
  readonly facts: readonly Reason[];
  /** Who agreed that it is shared, and when. */
  readonly consent: { readonly on: Day; readonly by: string; readonly guardian: boolean };
}

export type RequestAnswer =
  | { readonly ok: true; readonly request: AdviceRequest }
  | { readonly ok: false; readonly reason: Reason };

const SHARE = "share with my clinician";

function lastShare(consents: readonly Consent[], on: Day): Consent {
  const said = consents.filter(({ purpose, on: day, given }) => purpose === SHARE && given && day <= on);
  return said.reduce((late, now) => (now.on >= late.on ? now : late));
}

function asksOf({ readiness, screening }: Screened): boolean {
  return readiness.includes("doctor") && screening.agreed === undefined;
}

/** What was answered and caused the question. An unanswered one is named as such and never as a yes. */
function screeningFacts(answers: Answers, screened: Screened): readonly Reason[] {
  if (!asksOf(screened)) return [];
  const { active, disease, signs, cleared } = answers;
  const known = DISEASES.filter((name) => disease[name] === true);
  const felt = SIGNS.filter((name) => signs[name] === true);
  const open = [
    ...DISEASES.filter((name) => disease[name] === undefined),
    ...SIGNS.filter((name) => signs[name] === undefined),
  ];
  return [
    ...(active === undefined ? [] : [reason("request/active", { active })]),
    ...(known.length > 0 ? [reason("request/disease", { names: known })] : []),
    ...(felt.length > 0 ? [reason("request/signs", { names: felt })] : []),
    ...(open.length > 0 ? [reason("request/not-answered", { names: open })] : []),
    ...(cleared === undefined
      ? []
      : [reason("request/cleared", { on: printDay(cleared.on), who: cleared.who, effort: cleared.effort })]),
  ];
}

/** What was measured today, of those checks alone that hold the session. */
function todayFacts(today: Today, session: BeforeSession): readonly Reason[] {
  const holds = (kind: CheckedName) => session.checks.some((each) => each.kind === kind && each.before === "hold");
  const ruleOf = (kind: CheckedName) => {
    const rule = session.checks.find((each) => each.kind === kind)?.rule;
    return { rule: rule?.id ?? null, dated: rule?.dated ?? null };
  };
  const { pressure, glucose, pain, ill, news } = today;
  return [
    ...(pressure !== undefined && holds("pressure")
      ? [
          reason("request/pressure", {
            readings: pressure.readings.map((each) => ({ ...each })),
            ...ruleOf("pressure"),
          }),
        ]
      : []),
    ...(glucose !== undefined && holds("glucose")
      ? [
          reason("request/glucose", {
            value: glucose.value,
            unit: glucose.unit,
            ketones: glucose.ketones ?? null,
            ...ruleOf("glucose"),
          }),
        ]
      : []),
    ...(holds("pain")
      ? pain.map(({ where, score, morning, signs }) =>
          reason("request/pain", { where, score, morning: morning ?? null, signs }),
        )
      : []),
    ...(ill !== undefined && holds("illness") ? [reason("request/ill", { signs: ill })] : []),
    ...(news?.other === undefined || news.other.length === 0 ? [] : [reason("request/said", { said: news.other })]),
  ];
}

/**
 * The question to a clinician that a screening or a day asks for. It holds what caused it and nothing else, and it is
 * there only when the person agreed that it is shared with their clinician.
 *
 * @param session a day on which something was measured or new; its answers and outcome are used instead
 */
export function adviceRequest(
  file: AnswersFile,
  screened: Screened,
  session?: { readonly today: Today; readonly before: BeforeSession },
): RequestAnswer {
  const answers = session?.before.answers ?? file.answers;
  const on = session?.today.on ?? answers.on;
  const consents = [...file.consents, ...(session?.today.consents ?? [])];
  const facts = [
    ...screeningFacts(answers, screened),
    ...((answers.other ?? []).length > 0 ? [reason("request/other", { said: answers.other ?? [] })] : []),
    ...((answers.past ?? []).length > 0 ? [reason("request/past", { past: answers.past ?? [] })] : []),
    ...(session === undefined ? [] : todayFacts(session.today, session.before)),
  ];
  if (facts.length === 0) return { ok: false, reason: reason("request/nothing-to-ask") };
  const state: ConsentState = consentFor(SHARE, consents, file.born, on, file.consentAge ?? STRICTEST_AGE);
  if (state !== "given") return { ok: false, reason: reason("request/no-consent", { state }) };
  const { on: agreedOn, by } = lastShare(consents, on);
  const name = file.name ?? file.person;
  const wanted = answers.wanted ?? "vigorous";
  return {
    ok: true,
    request: {
      name,
      born: file.born,
      on,
      by: session?.today.by ?? answers.by,
      wanted,
      efforts: EFFORTS.slice(0, EFFORTS.indexOf(wanted) + 1),
      facts,
      consent: { on: agreedOn, by: by.who === "guardian" ? by.name : name, guardian: by.who === "guardian" },
    },
  };
}
