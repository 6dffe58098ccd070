import { expect, test } from "vitest";
import { askedAmount, askedInSet, askedReserve } from "./asked-amount.ts";

test("a range stands for its middle, rounded up", () => {
  expect(askedAmount({ kind: "reps", span: { from: 8, to: 10 } })).toEqual({ count: 9, said: true });
  expect(askedAmount({ kind: "reps", span: { from: 8, to: 11 } })).toEqual({ count: 10, said: true });
  expect(askedAmount({ kind: "hold", span: { from: 30, to: 30 } })).toEqual({ count: 30, said: true });
});

test("as many as possible takes the least number said, or our own and says so", () => {
  expect(askedAmount({ kind: "most", least: 6 })).toEqual({ count: 6, said: true });
  expect(askedAmount({ kind: "most" })).toEqual({ count: 12, said: false });
});

test("short bouts belong to the set", () => {
  const set = { amount: { kind: "reps", span: { from: 8, to: 8 } }, eachSide: false } as const;
  expect(askedInSet({ ...set, within: { bouts: [3, 2], restS: 20 } }).count).toBe(13);
  expect(askedInSet(set).count).toBe(8);
});

test("a reserve that is not said is not a number", () => {
  const set = { amount: { kind: "reps", span: { from: 8, to: 8 } }, eachSide: false } as const;
  expect(askedReserve(set)).toBeUndefined();
  expect(askedReserve({ ...set, reserve: { from: 2, to: 3 } })).toBe(2.5);
});
