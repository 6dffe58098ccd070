import { z } from "zod";
import type { Day } from "../day.ts";
import {
  ALWAYS,
  dayPiece,
  given,
  idPiece,
  loadPiece,
  namePiece,
  type Read,
  readYaml,
  tell,
  type YamlDocument,
} from "../model/index.ts";
import type { Load } from "../units.ts";
import { scoreOf, type TestResult } from "./result.ts";
import { ASSESSMENT_TESTS } from "./tests.ts";

/** What can be wrong with a file of results beyond the form of its values. Each names a sentence. */
export const RESULT_PROBLEMS = [
  "results/sides",
  "results/one-value",
  "results/size",
  "results/condition",
  "results/before-birth",
] as const;

/** Somebody's results with what the file says of them. */
export interface ResultsFile {
  readonly person: string;
  readonly born: Day;
  /** For norms that are printed for men and women apart; left out when the person did not say. */
  readonly sex?: "man" | "woman";
  /** An injured side, where the tests are to tell whether it does as much as the other. */
  readonly injured?: Injured;
  readonly results: readonly TestResult[];
}

/** Which side was injured, and what it is held against. */
export interface Injured {
  readonly side: "left" | "right";
  /** Day of the injury or the operation. */
  readonly since: Day;
  /** Per cent of the other side that each test must exceed. */
  readonly over: number;
  /** Body mass, for torque per kilogram. */
  readonly mass?: Load;
}

/** What each test must exceed where the file does not say, per cent of the other side. Common practice, no source. */
const OVER_PERCENT = 90;
const TEST_IDS = ASSESSMENT_TESTS.map(({ id }) => id);
const value = z.number().min(0).max(1000);

const result = z
  .strictObject({
    test: z.enum(TEST_IDS as [string, ...string[]]),
    on: dayPiece,
    value: value.optional(),
    left: value.optional(),
    right: value.optional(),
    under: z.record(z.string().max(20), namePiece(60)).optional(),
  })
  .superRefine((said, ctx) => {
    const test = ASSESSMENT_TESTS.find(({ id }) => id === said?.test);
    if (test === undefined) return;
    const { left, right, under = {} } = said;
    if (test.sides && (left === undefined || right === undefined || said.value !== undefined)) {
      tell(ctx, ["test"], { code: "results/sides", found: test.id, allowed: "left, right" });
    }
    if (!test.sides && (said.value === undefined || left !== undefined || right !== undefined)) {
      tell(ctx, ["test"], { code: "results/one-value", found: test.id, allowed: "value" });
    }
    for (const [name, found] of [
      ["value", said.value],
      ["left", left],
      ["right", right],
    ] as const) {
      if (typeof found === "number" && !isScored(test.id, found)) {
        tell(ctx, [name], { code: "results/size", found: String(found), allowed: `0–${test.most} ${test.unit}` });
      }
    }
    for (const [name, found] of Object.entries(under)) {
      const condition = test.conditions.find(({ id }) => id === name);
      if (condition !== undefined && (condition.choices.length === 0 || condition.choices.includes(found))) continue;
      const allowed = condition?.choices ?? test.conditions.map(({ id }) => id);
      tell(ctx, ["under", name], {
        code: "results/condition",
        found: condition ? found : name,
        allowed: allowed.join(", "),
      });
    }
  }, ALWAYS)
  .transform(({ under, ...rest }): TestResult => ({ ...given(rest), conditions: under ?? {} }));

function isScored(id: string, found: number): boolean {
  try {
    return scoreOf(ASSESSMENT_TESTS.find((each) => each.id === id)!, found, {}).value === found;
  } catch {
    return false;
  }
}

const resultsFile = z
  .strictObject({
    stave: z.literal(1),
    person: idPiece,
    born: dayPiece,
    sex: z.enum(["man", "woman"]).optional(),
    injured: z
      .strictObject({
        side: z.enum(["left", "right"]),
        since: dayPiece,
        over: z.int().min(50).max(100).default(OVER_PERCENT),
        mass: loadPiece.optional(),
      })
      .transform((said): Injured => given(said))
      .optional(),
    results: z.array(result).min(1).max(500),
  })
  .superRefine((file, ctx) => {
    const { born, results } = file ?? {};
    if (typeof born !== "number" || !Array.isArray(results)) return;
    results.forEach((each, at) => {
      if (typeof each?.on === "number" && !(born <= each.on))
        tell(ctx, ["results", at, "on"], { code: "results/before-birth" });
    });
  }, ALWAYS)
  .transform(({ stave: _, ...file }): ResultsFile => given(file));

/** Reads one person's results of tests. */
export function readResults(text: string, file: string): Read<YamlDocument<ResultsFile>> {
  return readYaml(text, file, resultsFile);
}
