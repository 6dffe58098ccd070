import { expect, test } from "vitest";
import { reps, sets } from "../testing/index.ts";
import { isLight, lightDose } from "./light-week.ts";

test("half the sets, rounded up", () => {
  const counts = [1, 2, 3, 4, 5].map((count) => lightDose(sets(count, reps(8))).sets.length);
  expect(counts).toEqual([1, 1, 2, 2, 3]);
});

test("one more in reserve, at both ends; rest stays; what was not said stays unsaid", () => {
  const light = lightDose(sets(2, reps(8, { reserve: { from: 1, to: 3 } }), { restS: 75 }));
  expect(light).toEqual({ sets: [reps(8, { reserve: { from: 2, to: 4 } })], restS: 75 });
  expect(lightDose(sets(2, reps(8))).sets[0]).toEqual(reps(8));
});

test("as many as possible leaves one in a light week", () => {
  const set = { amount: { kind: "most" }, eachSide: false } as const;
  expect(lightDose({ sets: [set] }).sets).toEqual([{ ...set, reserve: { from: 1, to: 1 } }]);
});

test("the top set of unlike sets is kept", () => {
  expect(lightDose({ sets: [reps(5), reps(8), reps(8), reps(12)] }).sets).toEqual([reps(5), reps(8)]);
});

test("a phase without light weeks has none", () => {
  const phase = { key: "a", title: "A", weeks: 4, sessions: [] };
  expect(isLight(phase, 4)).toBe(false);
  expect(isLight({ ...phase, light: [4] }, 4)).toBe(true);
});
