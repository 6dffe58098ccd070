import { placeSessions } from "@stave/core/calendar";
import loadHighs from "highs";
import { expect, test } from "vitest";
import { asLp, weekOfFour } from "./schedule-1x4.ts";

test("the calendar and HiGHS, a general solver, find the same value on 40 weeks", async () => {
  const highs = await loadHighs();
  for (let seed = 100; seed < 140; seed++) {
    const task = weekOfFour(seed);
    const found = placeSessions(task);
    const solved = highs.solve(asLp(task));
    expect(solved.Status).toBe("Optimal");
    expect(Math.round(solved.ObjectiveValue)).toBe(found.dropped.length * 10_000 + found.cost);
  }
});
