import type { Gain, WhyNot } from "../fit/index.ts";
import type { Reason } from "../model/index.ts";
import { en, type Messages } from "./en.ts";
import type { Names } from "./names.ts";
import { sayReason } from "./say.ts";

/** What a constraint is called; one that is not known is shown by its id. */
function constraint(id: string, words: Messages): string {
  return (words.words.constraints as Readonly<Record<string, string>>)[id] ?? id;
}

/** Points of a form in its slot, a line each: `+100 the right rung`. */
export function sayPoints(
  lines: readonly { readonly id: string; readonly points: number }[],
  words: Messages = en,
): readonly string[] {
  return lines.map(({ id, points }) => words.explain.points(constraint(id, words), points));
}

/** Why not another form: a sentence, then a line for each reason or for each constraint that differs. */
export function sayWhyNot(exercise: string, answer: WhyNot, names: Names, words: Messages = en): readonly string[] {
  const name = names.exercise(exercise);
  const { explain } = words;
  switch (answer.kind) {
    case "chosen":
      return [explain.chosen(name)];
    case "set aside":
      return [explain.setAside(name), ...answer.why.map((reason) => sayReason(reason, names, words))];
    case "pinned":
      return [explain.pinned(name, names.exercise(answer.exercise))];
    case "not thought of":
      return [explain.notThoughtOf(name)];
    case "does not fit":
      return [explain.doesNotFit(name)];
    case "costs": {
      if (answer.must === 0 && answer.want === 0) return [explain.asGood(name)];
      const lines = answer.lines.map(({ id, best, forced }) => ({ id, points: forced - best }));
      const proven = answer.proven ? [] : [explain.unproven()];
      return [explain.costs(name, answer.must, answer.want), ...sayPoints(lines, words), ...proven];
    }
  }
}

/** Rules that cannot all be kept: a sentence, then a line for each rule. */
export function sayConflict(rules: readonly Reason[], names: Names, words: Messages = en): readonly string[] {
  return [words.explain.conflict(), ...rules.map((rule) => sayReason(rule, names, words))];
}

/** What single changes gain: a sentence, then a line for each, the most first. */
export function sayGains(gains: readonly Gain[], names: Names, words: Messages = en): readonly string[] {
  if (gains.length === 0) return [words.explain.nothingHelps()];
  const lines = gains.map(({ change, must, want }) => words.explain.gain(sayReason(change, names, words), must, want));
  const proven = gains.every((gain) => gain.proven) ? [] : [words.explain.unproven()];
  return [words.explain.helps(), ...lines, ...proven];
}
