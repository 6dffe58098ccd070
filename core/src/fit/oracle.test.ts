import fc from "fast-check";
import loadHighs from "highs";
import { expect, test } from "vitest";
import { fitModel, type ModelGoal, madeUpTasks } from "../testing/index.ts";
import { breach, score } from "./score.ts";
import { solve } from "./search.ts";
import { type FitTask, optionsOf } from "./task.ts";

const highs = await loadHighs();

/** HiGHS, a general solver, on the plain scorer's own numbers; undefined when it finds that there is no plan. */
function most(task: FitTask, goal: ModelGoal): number | undefined {
  const { Status, ObjectiveValue } = highs.solve(fitModel(task, goal), { mip_rel_gap: 0, mip_abs_gap: 0.5 });
  if (Status === "Infeasible") return undefined;
  expect(Status).toBe("Optimal");
  return Math.round(ObjectiveValue);
}

/** Both levels and the sum of ranks, one after the other. */
function byModel(task: FitTask) {
  const must = most(task, { least: "must" });
  if (must === undefined) return undefined;
  const want = most(task, { most: "want", must })!;
  return { must, want, rank: most(task, { least: "rank", must, want })! };
}

function bySearch(task: FitTask) {
  const found = solve(task);
  if (found === undefined) return undefined;
  expect(breach(task, found.choice)).toBeUndefined();
  expect(found).toMatchObject({ proven: true, bound: found.want, least: found.must });
  const { must, want } = score(task, found.choice);
  expect({ must, want }).toEqual({ must: found.must, want: found.want });
  const ranks = task.blocks.flatMap((block, index) => optionsOf(block, found.choice[index]!).map(({ rank }) => rank));
  return { must, want, rank: ranks.reduce((sum, rank) => sum + rank, 0) };
}

function agree(task: FitTask): void {
  expect(bySearch(task)).toEqual(byModel(task));
}

test("the search and HiGHS agree on small tasks: must points, want points, sum of ranks, and whether there is a plan", () => {
  const tasks = madeUpTasks({ sessions: 3, blocks: 5, rows: 4, options: 6, musts: true, mayStayOpen: false });
  fc.assert(fc.property(tasks, agree), { numRuns: 60, seed: 11 });
});

test("and on middle ones, with weekly bands that must hold", () => {
  const tasks = madeUpTasks({ sessions: 4, blocks: 10, rows: 6, options: 12, musts: true });
  fc.assert(fc.property(tasks, agree), { numRuns: 40, seed: 12 });
});

test("and on middle ones, where open slots are the only musts", () => {
  const tasks = madeUpTasks({ sessions: 4, blocks: 12, rows: 8, options: 20, musts: false });
  fc.assert(fc.property(tasks, agree), { numRuns: 40, seed: 13 });
});
