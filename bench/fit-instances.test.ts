import { breach, score, solve } from "@stave/core/fit";
import { fitModel } from "@stave/core/testing";
import loadHighs from "highs";
import { expect, test } from "vitest";
import { fitInstance, SHAPES } from "./fit-instances.ts";

/** Little enough for a general solver to be quick, with everything that the large ones have. */
const SMALL = { ...SHAPES["3x4"], forms: 60 };

test("the fit and HiGHS, a general solver, find the same must and want points on 30 phases, some with open slots", async () => {
  const highs = await loadHighs();
  const exact = { mip_rel_gap: 0, mip_abs_gap: 0.5 };
  let open = 0;
  for (let seed = 1; seed <= 30; seed++) {
    const tight = seed % 3 === 0 ? { ...SMALL, minutes: [8, 12] as const, kit: 0.2 } : SMALL;
    const task = fitInstance(seed, tight);
    const found = solve(task)!;
    expect(breach(task, found.choice), `seed ${seed}`).toBeUndefined();
    const { must, want } = score(task, found.choice);
    expect(found, `seed ${seed}`).toMatchObject({ must, want, least: must, bound: want, proven: true });
    const least = highs.solve(fitModel(task, { least: "must" }), exact);
    const most = highs.solve(fitModel(task, { most: "want", must }), exact);
    expect([Math.round(least.ObjectiveValue) + 0, Math.round(most.ObjectiveValue) + 0], `seed ${seed}`).toEqual([
      must,
      want,
    ]);
    if (must > 0) open++;
  }
  expect(open, "the phases would not test the must level").toBeGreaterThan(3);
}, 300_000);

test("the same seed gives the same phase, another seed another one", () => {
  const text = (seed: number) => JSON.stringify(fitInstance(seed, SMALL));
  expect(text(1)).toBe(text(1));
  expect(text(1)).not.toBe(text(2));
});
