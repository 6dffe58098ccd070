import { RECKONINGS, reckon as reckonOne } from "@stave/core/reckon";
import { en } from "@stave/core/text";
import { type Answer, failed } from "./answer.ts";

/** Lists what can be reckoned, or reckons one thing from answers written as name=value. */
export function reckon(name: string | undefined, answers: readonly string[]): Answer {
  const command = "reckon";
  if (name === undefined) {
    const result = RECKONINGS.map(({ name: each, asks }) => ({ name: each, asks }));
    return { command, result: { list: result }, findings: [], problems: [], words: en.reckon.list(RECKONINGS) };
  }
  const reckoned = reckonOne(name, answers);
  if (!reckoned.ok) return failed(command, reckoned.problems);
  return { command, result: reckoned.value, findings: [], problems: [], words: en.reckon.say(reckoned.value) };
}
