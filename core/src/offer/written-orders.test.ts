import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { Exercise, Limit } from "../model/index.ts";
import { madeUpExercise } from "../testing/index.ts";
import { underOrders } from "./written-orders.ts";

const REST: Limit = {
  kind: "rest",
  part: "arm",
  side: "left",
  from: day("2027-02-01"),
  to: day("2027-03-08"),
  who: "Dr A",
};
const DATA = { part: "arm", side: "left", who: "Dr A", to: "2027-03-08" };
const none = { rests: [], movements: [] };
const rest = (...rests: Limit[]) => ({ rests, movements: [] });
const oneArm = madeUpExercise({ id: "press", hands: "one", limb: "one arm", eachSide: true });

function tried(said: Partial<Exercise>, limits: Parameters<typeof underOrders>[1]) {
  return underOrders(madeUpExercise({ id: "form", pattern: "hinge", ...said }), limits);
}

test("no orders, nothing said", () => {
  expect(underOrders(oneArm, none)).toEqual({ why: [], notes: [] });
});

describe("a left arm that rests", () => {
  test("takes out what both hands hold", () => {
    expect(tried({ hands: "two" }, rest(REST))).toEqual({ why: [{ code: "offer/rest-order", data: DATA }], notes: [] });
  });
  test("leaves the right arm to train alone", () => {
    expect(underOrders(oneArm, rest(REST))).toEqual({
      why: [],
      notes: [{ code: "offer/one-side", data: { train: "right", ...DATA } }],
      side: "right",
    });
  });
  test("leaves both legs when one hand only holds on: the right one", () => {
    expect(tried({ hands: "one", limb: "split stance", eachSide: true }, rest(REST))).toEqual({
      why: [],
      notes: [{ code: "offer/other-hand", data: { hand: "right", ...DATA } }],
    });
  });
  test("says nothing of legs that need no hand", () => {
    expect(tried({ hands: "none" }, rest(REST))).toEqual({ why: [], notes: [] });
  });
  test("with the right one too, or a letter for both, leaves neither", () => {
    expect(underOrders(oneArm, rest(REST, { ...REST, side: "right" })).why.length).toBe(2);
    expect(underOrders(oneArm, rest({ ...REST, side: "both" })).why.length).toBe(1);
  });
});

test("a resting left leg leaves the right one to work off the feet", () => {
  const lying = madeUpExercise({ id: "form", limb: "one leg", position: "supine", eachSide: true });
  expect(underOrders(lying, rest({ ...REST, part: "leg" }))).toMatchObject({ side: "right", why: [] });
});

test("a resting trunk takes out what braces it, a resting leg what stands on it", () => {
  expect(tried({ stress: { abd_press: 1 } }, rest({ ...REST, part: "trunk", side: "both" })).why.length).toBe(1);
  expect(tried({ seated: true }, rest({ ...REST, part: "trunk", side: "both" })).why).toEqual([]);
  expect(tried({ position: "standing" }, rest({ ...REST, part: "leg" })).why.length).toBe(1);
  expect(tried({ seated: true }, rest({ ...REST, part: "leg" })).why).toEqual([]);
});

test("an order that names no part takes out everything", () => {
  const { part: _, ...whole } = REST;
  expect(tried({ hands: "none" }, rest({ ...whole, side: "both" })).why.length).toBe(1);
});

describe("a forbidden movement", () => {
  const ban = (movement: string, side: Limit["side"] = "both") => {
    const { part: _, ...limit } = REST;
    return { rests: [], movements: [{ ...limit, kind: "movement" as const, movement, side }] as Limit[] };
  };
  test("takes out the form, its pattern, and what also counts as it", () => {
    for (const movement of ["form", "hinge"]) expect(tried({}, ban(movement)).why[0]?.code).toBe("offer/forbidden");
    expect(tried({ alsoCounts: "squat" }, ban("squat")).why.length).toBe(1);
    expect(tried({}, ban("squat")).why).toEqual([]);
  });
  test("on one side leaves the other, where the form is done side by side", () => {
    expect(tried({ eachSide: true }, ban("hinge", "left"))).toMatchObject({ why: [], side: "right" });
    expect(tried({ eachSide: false }, ban("hinge", "left")).why.length).toBe(1);
  });
  test("and a rest order on the other side leave nothing", () => {
    const both = { rests: [{ ...REST, side: "right" as const }], movements: ban("press", "left").movements };
    expect(underOrders(oneArm, both).why.map((why) => why.code)).toEqual(["offer/one-side", "offer/one-side"]);
  });
});
