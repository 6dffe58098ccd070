import { expect, test } from "vitest";
import { madeUpExercise } from "../testing/index.ts";
import { kg, type Load, lb } from "../units.ts";
import type { LoadSet } from "./load-set.ts";
import { underCap } from "./under-cap.ts";

const kgs = (...values: readonly number[]) => values.map((value): Load => ({ value, unit: "kg" }));
const masses = (...values: readonly number[]): LoadSet => ({ kind: "masses", loads: kgs(...values) });
const goblet = madeUpExercise({ id: "goblet", loadMeaning: "one implement", hands: "two" });
const pair = madeUpExercise({ id: "pair", loadMeaning: "per hand", hands: "two" });
const assisted = madeUpExercise({ id: "assisted", loadMeaning: "assist", hands: "two" });
const stack: LoadSet = { kind: "stack", machine: "cable", stack: { unit: "kg", pins: [5, 10, 15] }, help: false };
const help: LoadSet = { ...stack, help: true };

test("a limit in pounds counts exactly against loads in kilograms, everything held together", () => {
  expect(underCap(goblet, masses(8, 11, 12), { total: lb(25) })).toEqual({ set: masses(8, 11) });
  expect(underCap(pair, masses(5, 6), { total: lb(25) })).toEqual({ set: masses(5) });
  expect(underCap(pair, masses(5, 6), { hand: kg(6) })).toEqual({ set: masses(5, 6) });
  expect(underCap(pair, masses(5, 6), { hand: kg(5), total: kg(50) })).toEqual({ set: masses(5) });
});

test("says the lightest when even that is over the limit", () => {
  expect(underCap(goblet, masses(8), { total: lb(10) })).toEqual({
    because: { code: "loads/lightest-over-limit", data: { lightest: { value: 8, unit: "kg" } } },
  });
});

test("what nobody can weigh is not under a limit", () => {
  const unknown = { because: { code: "loads/unknown-under-limit", data: {} } };
  expect(underCap({ ...goblet, loadMeaning: "stack" }, stack, { total: kg(500) })).toEqual(unknown);
  expect(underCap(assisted, help, { hand: kg(500) })).toEqual(unknown);
  expect(underCap({ ...goblet, loadMeaning: "band" }, { kind: "bands", labels: ["A"] }, { total: kg(500) })).toEqual(
    unknown,
  );
  expect(underCap(goblet, { kind: "none" }, { total: kg(500) })).toEqual(unknown);
  const hanging = { ...goblet, loadMeaning: "added to body" } as const;
  expect(underCap(hanging, masses(5), { hand: kg(500) })).toEqual(unknown);
  expect(underCap(hanging, masses(5), { total: kg(500) })).toEqual({ set: masses(5) });
});

test("a share of the maximum takes away heavier loads, or on a machine that helps the smaller help", () => {
  expect(underCap(goblet, masses(8, 12, 16), {}, kg(12))).toEqual({ set: masses(8, 12) });
  expect(underCap({ ...goblet, loadMeaning: "stack" }, stack, {}, kg(12))).toMatchObject({
    set: { stack: { pins: [5, 10] } },
  });
  expect(underCap(assisted, help, {}, kg(10))).toMatchObject({ set: { stack: { pins: [10, 15] } } });
  expect(underCap(assisted, help, {}, kg(20))).toMatchObject({ because: { data: { lightest: { value: 15 } } } });
});

test("without a limit nothing is taken away", () => {
  for (const set of [masses(8), stack, { kind: "none" }, { kind: "bands", labels: ["A"] }] as const) {
    expect(underCap(goblet, set, {})).toEqual({ set });
  }
});
