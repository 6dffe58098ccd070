import type { Reason } from "../model/index.ts";
import { normOf } from "./norm.ts";
import { differing, scoreOf, type TestResult } from "./result.ts";
import type { ResultsFile } from "./results-read.ts";
import { type SideGap, sideGap } from "./sides.ts";
import { ASSESSMENT_TESTS, type AssessmentTest } from "./tests.ts";

/** One result with all that can be said of it. */
export interface Judged {
  readonly result: TestResult;
  /** By the rules of the protocol; each side for itself. */
  readonly score: { readonly value: number } | { readonly left: number; readonly right: number };
  readonly gap?: SideGap;
  readonly notes: readonly Reason[];
  /** Against the last result under the same conditions; undefined when there is none. */
  readonly change?: { readonly since: TestResult["on"]; readonly value: number } | SideChange;
}

interface SideChange {
  readonly since: TestResult["on"];
  readonly left: number;
  readonly right: number;
}

/** The results of one test, oldest first. */
export interface Series {
  readonly test: AssessmentTest;
  readonly results: readonly Judged[];
}

/** Tenths keep 0.1 + 0.2 from showing more digits than anybody measured. */
const tenths = (value: number) => Math.round(value * 10) / 10;

function scored(test: AssessmentTest, { value, left, right, conditions }: TestResult) {
  if (left === undefined || right === undefined) {
    const { value: score, notes } = scoreOf(test, value!, conditions);
    return { score: { value: score }, notes };
  }
  const sides = { left: scoreOf(test, left, conditions).value, right: scoreOf(test, right, conditions).value };
  return { score: sides, notes: [] };
}

function changeOf(since: TestResult["on"], was: Judged["score"], is: Judged["score"]): NonNullable<Judged["change"]> {
  return "value" in is && "value" in was
    ? { since, value: tenths(is.value - was.value) }
    : { since, left: gained(was, is, "left"), right: gained(was, is, "right") };
}

function gained(was: Judged["score"], is: Judged["score"], side: "left" | "right"): number {
  const of = (score: Judged["score"]) => ("value" in score ? score.value : score[side]);
  return tenths(of(is) - of(was));
}

/**
 * A person's results by test, each scored, set beside its norm and compared with the last one like it. Results under
 * other conditions stand in the series and are not compared.
 *
 * @returns tests in the order of the list, results by day
 * @source ours
 */
export function seriesOf({ born, sex, results }: Pick<ResultsFile, "born" | "sex" | "results">): readonly Series[] {
  return ASSESSMENT_TESTS.flatMap((test) => {
    const own = results.filter((result) => result.test === test.id).toSorted((a, b) => a.on - b.on);
    if (own.length === 0) return [];
    const judged: Judged[] = [];
    for (const result of own) {
      const { score, notes } = scored(test, result);
      const before = judged.at(-1);
      const like = judged.findLast((each) => differing(test, each.result, result).length === 0);
      const unlike = before !== undefined && like !== before ? differing(test, before.result, result) : [];
      // Grip is judged by the better hand, as its sources do; everything else by the weaker side.
      const pick = test.id === "grip" ? Math.max : Math.min;
      const judgedBy = "value" in score ? score.value : pick(score.left, score.right);
      const sides = "value" in score || (score.left === 0 && score.right === 0) ? undefined : score;
      judged.push({
        result,
        score,
        ...(sides === undefined ? {} : { gap: sideGap(sides, test.better) }),
        notes: [...notes, ...unlike, ...normOf(test.id, judgedBy, born, result.on, sex)],
        ...(like === undefined ? {} : { change: changeOf(like.result.on, like.score, score) }),
      });
    }
    return [{ test, results: judged }];
  });
}
