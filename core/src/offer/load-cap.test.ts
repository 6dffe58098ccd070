import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { Exercise, Limit, Place, SetDose } from "../model/index.ts";
import { madeUpExercise, madeUpPlace, reps, sets } from "../testing/index.ts";
import { kg, type Load, lb } from "../units.ts";
import { underLoadLimits } from "./load-cap.ts";

const LIMIT: Limit = {
  kind: "load",
  atMost: { value: 25, unit: "lb" },
  applies: "total",
  side: "both",
  from: day("2027-02-08"),
  to: day("2027-03-22"),
  who: "the surgeon",
};
const HAND: Limit = { ...LIMIT, applies: "hand", side: "left", atMost: { value: 2, unit: "kg" } };
const kilos = (...values: number[]): Load[] => values.map((value) => ({ value, unit: "kg" }));
const room = madeUpPlace({
  equipment: { dumbbell: 10, kettlebell: 3, barbell: 1, "leg press": 1, band: 3 },
  dumbbells: { loads: kilos(1, 2, 3, 5, 6, 12, 14), pairs: true },
  kettlebells: kilos(12, 16, 24),
  bars: kilos(20),
  bands: ["A"],
  stacks: { "leg press": { unit: "kg", pins: [5, 10] } },
});

const goblet = madeUpExercise({ id: "goblet", loadMeaning: "one implement", hands: "two", needs: [["dumbbell"]] });
const swing = madeUpExercise({ id: "swing", loadMeaning: "one implement", hands: "two", needs: [["kettlebell"]] });
const pair = madeUpExercise({ id: "pair", loadMeaning: "per hand", hands: "two", needs: [["dumbbell"]] });
const bar = madeUpExercise({ id: "bar", loadMeaning: "total", hands: "two", needs: [["barbell"]] });
const oneArm = madeUpExercise({
  id: "one-arm",
  loadMeaning: "one implement",
  hands: "one",
  limb: "one arm",
  needs: [["dumbbell"]],
});
const press = madeUpExercise({
  id: "leg-press",
  loadMeaning: "stack",
  hands: "two",
  position: "seated",
  needs: [["leg press"]],
});
const bandRow = madeUpExercise({
  id: "band-row",
  loadMeaning: "band",
  hands: "two",
  limb: "two arms",
  needs: [["band"]],
});
const pushUp = madeUpExercise({ id: "push-up", loadMeaning: "body only", hands: "two", limb: "two arms" });

function under(
  exercise: Exercise,
  limits: readonly Limit[],
  more: { set?: SetDose; place?: Place; side?: "left" | "right" } = {},
) {
  return underLoadLimits(exercise, sets(3, more.set ?? reps(8)), more.place ?? room, limits, more.side);
}
const asking = (value: number) => ({ set: reps(8, { load: { value, unit: "kg" } }) });

describe("25 lb in all", () => {
  const data = {
    atMost: { value: 25, unit: "lb" },
    applies: "total",
    side: "both",
    who: "the surgeon",
    to: "2027-03-22",
  };
  test("is an exact cap where something lighter is here", () => {
    expect(under(goblet, [LIMIT])).toEqual({ cap: { total: lb(25) }, why: [] });
    expect(under(pair, [LIMIT])).toEqual({ cap: { total: lb(25) }, why: [] });
  });
  test("counts both hands: 2 × 5 kg may, 2 × 6 kg may not, nor 12 kg in one piece", () => {
    expect(under(pair, [LIMIT], asking(5)).why).toEqual([]);
    expect(under(pair, [LIMIT], asking(6)).why).toEqual([
      { code: "offer/over-limit", data: { ...data, held: { value: 26.455, unit: "lb" } } },
    ]);
    expect(under(goblet, [LIMIT], asking(12)).why.map((why) => why.code)).toEqual(["offer/over-limit"]);
  });
  test("leaves nothing where the lightest is heavier: an empty bar, a rack of kettlebells", () => {
    expect(under(bar, [LIMIT]).why[0]?.data["held"]).toEqual({ value: 44.092, unit: "lb" });
    expect(under(swing, [LIMIT]).why.length).toBe(1);
  });
  test("a load that nobody knows is not under it", () => {
    for (const exercise of [press, bandRow]) {
      expect(under(exercise, [LIMIT])).toEqual({ cap: {}, why: [{ code: "offer/load-unknown", data }] });
    }
  });
  test("body mass alone holds nothing", () => {
    expect(under(pushUp, [LIMIT])).toEqual({ cap: {}, why: [] });
  });
  test("a place that does not say what it has leaves the cap to decide", () => {
    const place = madeUpPlace({ equipment: { dumbbell: 2 } });
    expect(under(goblet, [LIMIT], { place })).toEqual({ cap: { total: lb(25) }, why: [] });
  });
  test("the lowest of several binds", () => {
    const lower = { ...LIMIT, who: "Lise", atMost: { value: 10, unit: "lb" } as const };
    expect(under(goblet, [LIMIT, lower]).cap).toEqual({ total: lb(10) });
  });
  test("a limit on another movement does not", () => {
    expect(under(goblet, [{ ...LIMIT, movement: "hinge" }])).toEqual({ cap: {}, why: [] });
    expect(under(goblet, [{ ...LIMIT, movement: "goblet" }]).cap).toEqual({ total: lb(25) });
  });
});

describe("2 kg in the left hand", () => {
  test("caps one hand, and a bar by its half", () => {
    expect(under(pair, [HAND])).toEqual({ cap: { hand: kg(2) }, why: [] });
    expect(under(pair, [HAND], asking(3)).why[0]?.data["held"]).toEqual({ value: 3, unit: "kg" });
    expect(under(bar, [HAND]).why[0]?.data["held"]).toEqual({ value: 10, unit: "kg" });
  });
  test("does not touch a form that leaves the hand free, or trains the right side only", () => {
    expect(under(press, [HAND])).toEqual({ cap: {}, why: [] });
    expect(under(madeUpExercise({ id: "squat" }), [HAND])).toEqual({ cap: {}, why: [] });
    expect(under(oneArm, [HAND], { side: "right" })).toEqual({ cap: {}, why: [] });
    expect(under(oneArm, [HAND]).cap).toEqual({ hand: kg(2) });
  });
  test("body mass on that hand is not known, so not under it", () => {
    expect(under(pushUp, [HAND]).why.map((why) => why.code)).toEqual(["offer/load-unknown"]);
  });
  test("a limit in all that names a side counts what that hand holds", () => {
    expect(under(pair, [{ ...HAND, applies: "total" }]).cap).toEqual({ hand: kg(2) });
  });
});

test("a limit that names no load allows none", () => {
  const { atMost: _, ...unnamed } = LIMIT;
  expect(under(goblet, [unnamed]).why[0]?.data["held"]).toEqual({ value: 1, unit: "kg" });
  expect(under(pushUp, [unnamed]).why).toEqual([]);
});
