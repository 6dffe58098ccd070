import { printDay } from "@stave/core/day";
import { CATALOGUE } from "@stave/core/exercises";
import type { Reason } from "@stave/core/model";
import { type DiabetesRule, readAnswers, type Screened, screen as screenAnswers } from "@stave/core/screen";
import { en, namesFrom, sayReason } from "@stave/core/text";
import { type Answer, failed } from "./answer.ts";
import { readInput } from "./read-input.ts";

const NAMES = namesFrom(CATALOGUE);

function lines(reasons: readonly Reason[]): readonly string[] {
  return reasons.map((reason) => `  ${sayReason(reason, NAMES)}`);
}

function words(person: string, { screening, because, locked, ruleSet }: Screened): string {
  const { outcome, on, until, by, agreed } = screening;
  const agreement = agreed === undefined ? "" : `, agreed by ${agreed.who} on ${en.print.date(printDay(agreed.on))}`;
  return [
    `${person}: ${en.words.outcomes[outcome]}${agreement}.`,
    `Asked on ${en.print.date(printDay(on))} by ${by}; stands until ${en.print.date(printDay(until))}, or until something is new.`,
    ...lines(because),
    ...lines(locked),
    `  By the published logic of ${ruleSet.dated} (Riebe et al.), diabetes alone: ${ruleSet.diabetes}. It clears nobody: a clinician's word comes first.`,
    "",
  ].join("\n");
}

/** The screening outcome of a file of answers: what was decided, by which facts, what stays locked and until when. */
export async function screen(file: string, options: { readonly diabetes: DiabetesRule }): Promise<Answer> {
  const command = "screen";
  const input = await readInput(file);
  const read = input.ok ? readAnswers(input.value, file) : input;
  if (!read.ok) return failed(command, read.problems);
  const { person, born, answers } = read.value.value;
  const screened = screenAnswers(answers, born, options.diabetes);
  const { on, until, agreed, ...said } = screened.screening;
  const screening = {
    ...said,
    on: printDay(on),
    until: printDay(until),
    ...(agreed === undefined ? {} : { agreed: { ...agreed, on: printDay(agreed.on) } }),
  };
  const result = { person, ...screened, screening };
  return { command, result, findings: [], problems: [], words: words(person, screened) };
}
