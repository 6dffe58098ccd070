import { easierOf, harderOf, nearExercises } from "@stave/core/exercises";
import { type Catalogue, type Exercise, nearNames, PATTERNS } from "@stave/core/model";
import { type Answer, failed } from "./answer.ts";
import { readCatalogue } from "./catalogue.ts";

export interface ExercisesOptions {
  readonly pattern?: string;
  /** A file of the coach's own exercises. */
  readonly exercises?: string;
}

function fits(exercise: Exercise, word: string): boolean {
  return [exercise.id, exercise.name, exercise.pattern, ...exercise.synonyms].some((text) =>
    text.toLowerCase().includes(word),
  );
}

function full(exercise: Exercise, catalogue: Catalogue): string {
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
    ...list("easier", easierOf(catalogue, exercise.id)),
    ...list("harder", harderOf(catalogue, exercise.id)),
  ].join("\n");
}

/** Lists exercises, or tells one whole when a single one is meant. */
export async function exercises(word: string | undefined, options: ExercisesOptions): Promise<Answer> {
  const command = "exercises";
  const read = await readCatalogue(options.exercises);
  if (!read.ok) return failed(command, read.problems);
  const catalogue = read.value;
  const all = [...catalogue.exercises.values()];
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
    const near = nearExercises(catalogue, wanted).map(({ id }) => id);
    return refused("exercises/none", wanted, `${all.length} exercises`, near[0]);
  }
  const one = chosen.find(({ id }) => id === wanted) ?? (chosen.length === 1 ? chosen[0] : undefined);
  const words =
    one === undefined
      ? chosen.map(({ id, name, pattern: of }) => `${id.padEnd(34)} ${name.padEnd(42)} ${of}`).join("\n")
      : full(one, catalogue);
  return { command, result: one === undefined ? chosen : [one], findings: [], problems: [], words: `${words}\n` };
}
