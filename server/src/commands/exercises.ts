import { CATALOGUE, easierOf, harderOf, nearExercises } from "@stave/core/exercises";
import { type Exercise, nearNames, PATTERNS } from "@stave/core/model";
import { type Answer, failed } from "./answer.ts";

export interface ExercisesOptions {
  readonly pattern?: string;
}

function fits(exercise: Exercise, word: string): boolean {
  return [exercise.id, exercise.name, exercise.pattern, ...exercise.synonyms].some((text) =>
    text.toLowerCase().includes(word),
  );
}

function full(exercise: Exercise): string {
  const shares = Object.entries(exercise.muscles).map(([muscle, share]) => `${muscle} ${share}`);
  const needs = exercise.needs.map((group) => group.join(" or "));
  const list = (label: string, items: readonly string[]) =>
    items.length === 0 ? [] : [`  ${label}: ${items.join(", ")}`];
  return [
    `${exercise.name} (${exercise.id}), ${exercise.pattern}`,
    `  ${exercise.setUp} ${exercise.move}`,
    ...exercise.cues.map((cue) => `  · ${cue}`),
    ...exercise.faults.map(({ see, why, fix }) => `  ${see} → ${why} → ${fix}`),
    ...list("sets count for", shares),
    ...list("needs", needs),
    ...list("easier", easierOf(CATALOGUE, exercise.id)),
    ...list("harder", harderOf(CATALOGUE, exercise.id)),
  ].join("\n");
}

/** Lists exercises, or tells one whole when a single one is meant. */
export function exercises(word: string | undefined, options: ExercisesOptions): Answer {
  const command = "exercises";
  const all = [...CATALOGUE.exercises.values()];
  const { pattern } = options;
  const refused = (code: string, found: string, allowed: string, maybe: string | undefined): Answer =>
    failed(command, [
      {
        code,
        file: "stave exercises",
        at: [],
        line: 0,
        column: 0,
        found,
        allowed,
        ...(maybe === undefined ? {} : { maybe }),
      },
    ]);
  if (pattern !== undefined && !PATTERNS.some((each) => each === pattern)) {
    return refused("exercises/no-such-pattern", pattern, PATTERNS.join(", "), nearNames(pattern, PATTERNS)[0]);
  }
  const wanted = word?.toLowerCase().trim() ?? "";
  const chosen = all.filter(
    (exercise) => (pattern === undefined || exercise.pattern === pattern) && fits(exercise, wanted),
  );
  if (chosen.length === 0) {
    const near = nearExercises(CATALOGUE, wanted).map(({ id }) => id);
    return refused("exercises/none", wanted, `${all.length} exercises`, near[0]);
  }
  const one = chosen.find(({ id }) => id === wanted) ?? (chosen.length === 1 ? chosen[0] : undefined);
  const words =
    one === undefined
      ? chosen.map(({ id, name, pattern: of }) => `${id.padEnd(34)} ${name.padEnd(42)} ${of}`).join("\n")
      : full(one);
  return { command, result: one === undefined ? chosen : [one], findings: [], problems: [], words: `${words}\n` };
}
