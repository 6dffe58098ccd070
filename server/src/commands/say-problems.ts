import type { Problem } from "@stave/core/model";
import { sayPlace, sayProblem } from "@stave/core/text";

/** Problems in words, one a line, in the order of the files. */
export function sayProblems(problems: readonly Problem[]): string {
  return problems.map((problem) => `${sayPlace(problem)}: ${sayProblem(problem)}\n`).join("");
}
