import { expect, test } from "vitest";
import { hold, reps } from "../testing/index.ts";
import { setSeconds } from "./set-seconds.ts";

const timing = { secondsPerRep: 3.5, switchS: 5, setupS: 30, changeS: 10, moveS: 40 };
const metres = { amount: { kind: "metres", span: { from: 30, to: 30 } }, eachSide: false } as const;

test("repetitions times seconds, both sides and the change of sides", () => {
  expect(setSeconds(timing, reps(10), undefined).seconds).toBe(35);
  expect(setSeconds(timing, reps(10, { eachSide: true }), undefined).seconds).toBe(75);
});
test("part seconds are rounded up", () => {
  expect(setSeconds(timing, reps(3), undefined).seconds).toBe(11);
});
test("a tempo replaces the usual seconds, a tempo of nothing does not", () => {
  expect(setSeconds(timing, reps(10), [3, 1, 1, 0]).seconds).toBe(50);
  expect(setSeconds(timing, reps(10), [0, 0, 0, 0]).seconds).toBe(35);
});
test("a hold takes its seconds, a carry its metres", () => {
  expect(setSeconds(timing, hold(30, { eachSide: true }), undefined).seconds).toBe(65);
  expect(setSeconds({ ...timing, secondsPerRep: 0.9 }, metres, [3, 1, 1, 0]).seconds).toBe(27);
});
test("short rests inside the set count", () => {
  expect(setSeconds(timing, reps(8, { within: { bouts: [2, 2], restS: 20 } }), undefined).seconds).toBe(82);
});
test("as many as possible is taken as 12, and says so", () => {
  const open = { amount: { kind: "most" }, eachSide: false } as const;
  expect(setSeconds(timing, open, undefined)).toEqual({ seconds: 42, said: false });
});

test("contacts and repetitions to the limit: a tempo paces repetitions only", () => {
  const contacts = { amount: { kind: "contacts", span: { from: 5, to: 5 } }, eachSide: false } as const;
  expect(setSeconds(timing, contacts, [3, 1, 1, 0]).seconds).toBe(18);
  const open = { amount: { kind: "most", least: 6 }, eachSide: false } as const;
  expect(setSeconds(timing, open, [3, 1, 1, 0])).toEqual({ seconds: 30, said: true });
  const timed = { amount: { kind: "time", span: { from: 60, to: 90 } }, eachSide: false } as const;
  expect(setSeconds(timing, timed, [3, 1, 1, 0]).seconds).toBe(75);
});

test("short bouts are paced and done on both sides as the set is", () => {
  const set = reps(4, { eachSide: true, within: { bouts: [2], restS: 10 } });
  // (4 + 2) × 5 s and a rest of 10 s on each side, 5 s to change sides.
  expect(setSeconds(timing, set, [3, 1, 1, 0]).seconds).toBe(85);
});
