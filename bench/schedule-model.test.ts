import { placeSessions, score } from "@stave/core/calendar";
import loadHighs from "highs";
import { expect, test } from "vitest";
import { modelOf } from "./schedule-model.ts";
import { anyTask, weekOfFour } from "./schedule-task.ts";

/** Weights of several levels make large numbers: the solver must not stop at a gap that hides a point. */
const EXACT = { mip_rel_gap: 0, mip_abs_gap: 0.5 };

test("the calendar and HiGHS, a general solver, find the same value level by level on 200 tasks", async () => {
  const highs = await loadHighs();
  let [several, close] = [0, 0];
  for (let seed = 1; seed <= 200; seed++) {
    const task = seed <= 40 ? weekOfFour(seed + 99) : anyTask(seed);
    const model = modelOf(task);
    const solved = highs.solve(model.text, EXACT);
    expect(solved.Status, `seed ${seed}`).toBe("Optimal");
    const theirs = score(
      task,
      [...model.placements(solved.Columns as never)].sort((a, b) => a.day - b.day),
    ).value;
    const ours = placeSessions(task);
    expect.soft(ours.value, `seed ${seed}`).toEqual(theirs);
    expect.soft(ours.proven, `seed ${seed}`).toBe(true);
    if (ours.value.dropped > 0 && ours.value.points > 0) several++;
    if (ours.parts.close > 0) close++;
  }
  expect(several, "the tasks would not test levels").toBeGreaterThan(40);
  expect(close, "the tasks would not test hours").toBeGreaterThan(60);
}, 300_000);
