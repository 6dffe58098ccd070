import { printDay } from "@stave/core/day";
import { CATALOGUE } from "@stave/core/exercises";
import type { Reason } from "@stave/core/model";
import { consentsOn, type DiabetesRule, readAnswers, type Screened, screen as screenAnswers } from "@stave/core/screen";
import { en, namesFrom, sayReason } from "@stave/core/text";
import { type Answer, failed } from "./answer.ts";
import { printedScreening } from "./printed-screening.ts";
import { readInput } from "./read-input.ts";
import { type RequestOptions, requestWords, writeRequest } from "./request.ts";

const NAMES = namesFrom(CATALOGUE);

/** How an answer about one purpose stands, in a word. */
const STATES = {
  given: "yes",
  withdrawn: "no",
  "needs a guardian": "waits for a parent or guardian",
  "never asked": "not asked",
} as const;

function lines(reasons: readonly Reason[]): readonly string[] {
  return reasons.map((reason) => `  ${sayReason(reason, NAMES)}`);
}

function words(
  person: string,
  consents: ReturnType<typeof consentsOn>,
  { screening, readiness, because, locked, ruleSet }: Screened,
): string {
  const { on, until, by, agreed } = screening;
  const agreement = agreed === undefined ? "" : `, agreed by ${agreed.who} on ${en.print.date(printDay(agreed.on))}`;
  return [
    `${person}: ${en.words.readinesses[readiness]}${agreement}.`,
    `Asked on ${en.print.date(printDay(on))} by ${by}; stands until ${en.print.date(printDay(until))}, or until something is new.`,
    ...lines(because),
    ...lines(locked),
    `  By the published logic of ${ruleSet.dated} (Riebe et al.), diabetes alone: ${ruleSet.diabetes}. It clears nobody: a clinician's word comes first.`,
    ...consentWords(consents),
  ].join("\n");
}

function consentWords(consents: ReturnType<typeof consentsOn>): readonly string[] {
  const said = consents.filter(({ state }) => state !== "never asked");
  return said.length === 0
    ? []
    : [`  Agreed to: ${said.map(({ purpose, state }) => `${purpose}: ${STATES[state]}`).join("; ")}.`];
}

/** The screening outcome of a file of answers: what was decided, by which facts, what stays locked and until when. */
export async function screen(
  file: string,
  options: RequestOptions & { readonly diabetes: DiabetesRule },
): Promise<Answer> {
  const command = "screen";
  const input = await readInput(file);
  const read = input.ok ? readAnswers(input.value, file) : input;
  if (!read.ok) return failed(command, read.problems);
  const { person, born, answers } = read.value.value;
  const screened = screenAnswers(answers, born, options.diabetes);
  const consents = consentsOn(read.value.value, answers.on);
  const request = await writeRequest(options, read.value.value, screened);
  if ("problem" in request) return failed(command, [request.problem]);
  const result = {
    person,
    ...screened,
    screening: printedScreening(screened.screening),
    consents,
    ...(request.requested === undefined ? {} : { request: request.requested }),
  };
  const lines = [words(person, consents, screened), ...requestWords(request.requested)];
  return { command, result, findings: [], problems: [], words: `${lines.join("\n")}\n` };
}
