import { CHECKS, type CheckId } from "../checks/index.ts";
import type { Finding, Problem, Reason, Remedy } from "../model/index.ts";
import { SOURCES } from "../sources.ts";
import { en, type Messages } from "./en.ts";
import type { Names, Say } from "./names.ts";

/** A first letter in capitals, as a sentence begins. */
function begun(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

/** @returns what a finding says, as one or two sentences; an unknown check gives its own id */
export function sayFinding({ check, data }: Pick<Finding, "check" | "data">, words: Messages = en): string {
  const say = (words.findings as Readonly<Record<string, Messages["findings"][CheckId]>>)[check];
  return say === undefined ? check : begun(say(data));
}

/** @returns what a remedy would do, as the words of its link */
export function sayRemedy({ id, data }: Pick<Remedy, "id" | "data">, words: Messages = en): string {
  const say = (words.remedies as Readonly<Record<string, Messages["remedies"]["shorten"]>>)[id];
  return say === undefined ? id : begun(say(data));
}

/** @returns what a check rests on, our own choices and common practice named as such */
export function saySources(check: string, words: Messages = en): string {
  const found = CHECKS.find(({ id }) => id === check);
  return found === undefined ? "" : words.frames.source(found.sources.map((id) => SOURCES[id].cite));
}

/**
 * What is wrong with an input: what it is, what was found, what is allowed, a likely cure. `{name}` in a sentence is the
 * name in the file that the problem is about.
 *
 * @example sayProblem(problem) //=> "A whole number is wanted here. Found: 2.5. Allowed: 1–20 sets. Maybe: 2 sets."
 */
export function sayProblem({ code, at, found, allowed, maybe }: Problem, words: Messages = en): string {
  const name = String(at.findLast((part) => typeof part === "string") ?? "");
  const what = ((words.problems as Readonly<Record<string, string>>)[code] ?? code).replace("{name}", name);
  const { frames } = words;
  // What a formula refuses says in its own words why, and what it takes.
  if (code === "reckon/refused" && allowed !== undefined) return `${allowed}.`;
  return [
    `${what}.`,
    ...(found === undefined || found === "" ? [] : [frames.found(found)]),
    ...(allowed === undefined || allowed === "" ? [] : [frames.allowed(allowed)]),
    ...(maybe === undefined || maybe === "" ? [] : [frames.maybe(maybe)]),
  ].join(" ");
}

/** @returns where a problem stands; without lines, the file alone */
export function sayPlace({ file, line, column }: Problem, words: Messages = en): string {
  return line === 0 ? file : words.frames.place(file, line, column);
}

/** @returns a reason of the offer, the loads, the plan or the calendar as a sentence; an unknown one gives its own code */
export function sayReason(reason: Pick<Reason, "code" | "data">, names: Names, words: Messages = en): string {
  const say = (words.reasons as Readonly<Record<string, Say>>)[reason.code];
  if (say === undefined) return reason.code;
  return begun(say(reason.data, names, (inner) => sayReason(inner, names, words)));
}
