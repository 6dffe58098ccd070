import { expect, test } from "vitest";
import { published, reps, sets } from "../testing/index.ts";
import { askedOf, leastAsked } from "./asked.ts";

const two = { from: 1, to: 2 };

published("nscaEssentialsTable", "share for 5 reps with 2 in reserve, per cent", [
  ["worked", "row of 7", () => askedOf(sets(3, reps(5, { reserve: two }))).percent ?? Number.NaN, 83, 0],
]);
published("nscaEssentialsTable", "share for 8–10 reps with 2 in reserve, per cent", [
  [
    "worked",
    "row of 12",
    () => askedOf(sets(3, reps({ from: 8, to: 10 }, { reserve: two }))).percent ?? Number.NaN,
    67,
    0,
  ],
]);

test("where nothing is said of effort, 2 are left in reserve", () => {
  expect(askedOf(sets(3, reps(8)))).toEqual({ reps: 10, percent: 75 });
});

test("half a repetition in reserve is counted as a whole one", () => {
  expect(askedOf(sets(1, reps(5, { reserve: { from: 1.5, to: 1.5 } })))).toEqual({ reps: 7, percent: 83 });
});

test("the coach's own per cent stands before the table", () => {
  expect(askedOf(sets(3, reps(8, { percent: 60 })))).toEqual({ reps: 10, percent: 60 });
});

test("one load for all sets: the most repetitions and the least share count", () => {
  const dose = { sets: [reps(5, { percent: 85 }), reps(8, { percent: 70 }), reps(3, { percent: 90 })] };
  expect(askedOf(dose)).toEqual({ reps: 10, percent: 70 });
});

test("beyond the table's last row there is no share, also when only one set goes there", () => {
  expect(askedOf(sets(3, reps(20)))).toEqual({ reps: 22 });
  expect(askedOf({ sets: [reps(5), reps(30)] })).toEqual({ reps: 32 });
});

test("sets without a number of repetitions say nothing, beside others they do not disturb", () => {
  const most = { amount: { kind: "most", least: 5 }, eachSide: false } as const;
  expect(askedOf({ sets: [most] })).toEqual({});
  expect(askedOf({ sets: [{ amount: { kind: "hold", span: two }, eachSide: false }] })).toEqual({});
  expect(askedOf({ sets: [reps(5), reps(5), most] })).toEqual({ reps: 7, percent: 83 });
});

test("what every set can be begun with: the low end of its range and the fewest left, of all sets the most", () => {
  expect(leastAsked(sets(3, reps({ from: 8, to: 12 }, { reserve: { from: 3, to: 3 } })))).toBe(11);
  expect(leastAsked(sets(3, reps({ from: 8, to: 12 })))).toBe(10);
  expect(leastAsked({ sets: [] })).toBeUndefined();
});
