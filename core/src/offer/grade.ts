import type { Dose, Exercise, Grade, StressTag } from "../model/index.ts";
import { STRESS_TAGS } from "../model/index.ts";
import { type DoseFacts, doseWords } from "./dose-words.ts";
import { type DoseWord, RAISED_BY } from "./raised-by.ts";

/**
 * Grade of one tag at one set, by four rules in this order.
 *
 *   1. base 0 stays 0, except that `pressor` becomes 1 when breath or near failure is true
 *   2. a word that raises the tag: base + 1, at most 3
 *   3. else a light dose, where it lowers the tag: base - 1, at least 1
 *   4. else the base
 *
 * @param base grade of the movement at a middle dose, 0 to 3
 * @source ours
 * @example
 * gradeAt("grip", 2, new Set(["heavy"])) //=> 3
 */
export function gradeAt(tag: StressTag, base: Grade, words: ReadonlySet<DoseWord>): Grade {
  if (base === 0) return tag === "pressor" && (words.has("breath") || words.has("near failure")) ? 1 : 0;
  const { raisedBy, lightLowers } = RAISED_BY[tag];
  if (raisedBy.some((word) => words.has(word))) return Math.min(3, base + 1) as Grade;
  if (lightLowers && words.has("light")) return Math.max(1, base - 1) as Grade;
  return base;
}

/**
 * Grades of a form at a dose: for every tag the highest of all its sets. Tags at 0 are left out; a dose without sets
 * has the base grades.
 *
 * @param tags only these are graded; all when left out
 */
export function gradesOf(
  exercise: Exercise,
  dose: Dose,
  facts: DoseFacts,
  tags: readonly StressTag[] = STRESS_TAGS,
): Partial<Record<StressTag, Grade>> {
  const grades: Partial<Record<StressTag, Grade>> = {};
  if (tags.length === 0) return grades;
  const sets = [...new Set(dose.sets)].map((set) => doseWords(exercise, set, facts));
  for (const tag of tags) {
    const base = exercise.stress[tag] ?? 0;
    // Only strain that raises pressure comes from a dose alone.
    if (base === 0 && tag !== "pressor") continue;
    let grade: Grade = sets.length === 0 ? base : 0;
    for (const words of sets) grade = Math.max(grade, gradeAt(tag, base, words)) as Grade;
    if (grade > 0) grades[tag] = grade;
  }
  return grades;
}
