import { printDay } from "@stave/core/day";
import { CATALOGUE } from "@stave/core/exercises";
import type { Problem } from "@stave/core/model";
import {
  type BeforeSession,
  beforeSession,
  type CheckedToday,
  type DiabetesRule,
  otherRules,
  type RuleName,
  readAnswers,
  readRules,
  readToday,
  STOP_SIGNS,
  usualRules,
} from "@stave/core/screen";
import { SOURCES } from "@stave/core/sources";
import { en, namesFrom, sayReason } from "@stave/core/text";
import { type Answer, failed } from "./answer.ts";
import { printedScreening } from "./printed-screening.ts";
import { readInput } from "./read-input.ts";
import { type RequestOptions, requestWords, writeRequest } from "./request.ts";

export interface BeforeOptions extends RequestOptions {
  readonly rules?: string;
  readonly diabetes: DiabetesRule;
}

const NAMES = namesFrom(CATALOGUE);

/** Reads one file by its reader. */
async function readFile<T>(file: string, read: (text: string, file: string) => T) {
  const input = await readInput(file);
  return input.ok ? read(input.value, file) : input;
}

function ruleOf({ id, dated, source, by }: RuleName) {
  return { id, dated, ...(source === undefined ? {} : { source }), ...(by === undefined ? {} : { by }) };
}

function ruleWords({ id, dated, source, by }: RuleName): string {
  return `by “${id}” (${dated}): ${source === undefined ? by : SOURCES[source].cite}`;
}

function checkWords({ kind, before, because, rule, others }: CheckedToday): readonly string[] {
  if (because.length === 0) return [];
  return [
    `${kind}: ${en.words.befores[before]}`,
    ...[...because, ...otherRules(others)].map((each) => `  ${sayReason(each, NAMES)}`),
    ...(rule === undefined ? [] : [`  ${ruleWords(rule)}`]),
  ];
}

function words(person: string, day: string, session: BeforeSession): readonly string[] {
  const { effort } = session.screening;
  return [
    `${person}, ${en.print.date(day)}: ${en.words.befores[session.before]}.`,
    ...(effort === undefined || session.before === "hold" ? [] : [`At most ${effort} work, by the screening.`]),
    ...session.checks.flatMap(checkWords),
    `Stop at once at: ${STOP_SIGNS.join("; ")}. Then the emergency number.`,
  ];
}

/** Whether the session of a day may be held: what is new, what was measured, what was agreed to, by named rules. */
export async function before(answersFile: string, todayFile: string, options: BeforeOptions): Promise<Answer> {
  const command = "before";
  const answers = await readFile(answersFile, readAnswers);
  const said = await readFile(todayFile, readToday);
  const rules = options.rules === undefined ? undefined : await readFile(options.rules, readRules);
  if (!answers.ok || !said.ok || rules?.ok === false) {
    const all = [answers, said, ...(rules === undefined ? [] : [rules])];
    return failed(
      command,
      all.flatMap((each) => (each.ok ? [] : each.problems)),
    );
  }
  const file = answers.value.value;
  const { person, today } = said.value.value;
  const at = (name: string, code: string, found: string, allowed: string): Problem => ({
    code,
    file: todayFile,
    at: [name],
    ...said.value.positions.at([name]),
    found,
    allowed,
  });
  if (person !== file.person) return failed(command, [at("person", "before/other-person", person, file.person)]);
  if (!(file.answers.on <= today.on)) {
    const allowed = `≥ ${printDay(file.answers.on)}`;
    return failed(command, [at("on", "before/day-early", printDay(today.on), allowed)]);
  }
  const session = beforeSession(file, today, rules?.value.value ?? usualRules(), options.diabetes);
  const request = await writeRequest(options, file, session.screened, { today, before: session });
  if ("problem" in request) return failed(command, [request.problem]);
  const day = printDay(today.on);
  const result = {
    person,
    on: day,
    by: today.by,
    before: session.before,
    because: session.because,
    screening: printedScreening(session.screening),
    screenedAgain: session.again,
    consents: session.consents,
    checks: session.checks.map(({ rule, others, ...check }) => ({
      ...check,
      ...(rule === undefined ? {} : { rule: ruleOf(rule) }),
      others: others.map((other) => ({ rule: ruleOf(other.rule), before: other.before })),
    })),
    stopList: STOP_SIGNS,
    ...(request.requested === undefined ? {} : { request: request.requested }),
  };
  const lines = [...words(person, day, session), ...requestWords(request.requested)];
  const stops = session.before === "hold" || session.before === "ask";
  return { command, result, findings: [], problems: [], words: `${lines.join("\n")}\n`, stops };
}
