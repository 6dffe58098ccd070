import fc from "fast-check";
import { expect, test } from "vitest";
import { kg, type Load, massOf } from "../units.ts";
import type { LoadSet } from "./load-set.ts";
import { nearest } from "./nearest.ts";

const kgOf = (value: number): Load => ({ value, unit: "kg" });
const set = (...values: readonly number[]): LoadSet => ({ kind: "masses", loads: values.map(kgOf) });
const help: LoadSet = {
  kind: "stack",
  machine: "assisted pull-up machine",
  stack: { unit: "kg", pins: [36, 43, 50] },
  help: true,
};

test("says both neighbours and takes the lower one by default", () => {
  expect(nearest(kg(55), set(50, 60), "down")).toEqual({ down: kgOf(50), up: kgOf(60), chosen: kgOf(50) });
  expect(nearest(kg(56), set(50, 60), "either").chosen).toEqual(kgOf(60));
  expect(nearest(kg(55), set(50, 60), "either").chosen).toEqual(kgOf(50));
});

test("a load that exists is its own neighbour", () => {
  expect(nearest(kg(60), set(50, 60, 70), "down")).toEqual({ down: kgOf(60), up: kgOf(60), chosen: kgOf(60) });
});

test("below the lightest nothing is chosen unless the coach allows up; above the heaviest nothing is up", () => {
  expect(nearest(kg(14), set(15, 20), "down")).toEqual({ up: kgOf(15) });
  expect(nearest(kg(14), set(15, 20), "either")).toEqual({ up: kgOf(15), chosen: kgOf(15) });
  expect(nearest(kg(90), set(15, 20), "down")).toEqual({ down: kgOf(20), chosen: kgOf(20) });
});

test("less help is harder: down is more help", () => {
  expect(nearest(kg(40), help, "down")).toEqual({ down: kgOf(43), up: kgOf(36), chosen: kgOf(43) });
  expect(nearest(kg(60), help, "down")).toEqual({ up: kgOf(50) });
});

test("bands and body mass have no neighbours", () => {
  expect(nearest(kg(10), { kind: "bands", labels: ["A"] }, "either")).toEqual({});
  expect(nearest(kg(10), { kind: "none" }, "down")).toEqual({});
});

test("rounding down never passes the target and leaves nothing closer below it", () => {
  const values = fc.uniqueArray(fc.integer({ min: 1, max: 400 }), { minLength: 1, maxLength: 30 });
  const unit = fc.constantFrom("kg" as const, "lb" as const);
  fc.assert(
    fc.property(values, unit, fc.integer({ min: 1, max: 250_000 }), (halves, in_, grams) => {
      const loads = halves.map((half): Load => ({ value: half / 2, unit: in_ })).sort((a, b) => a.value - b.value);
      const target = kg(grams / 1000);
      const { chosen, up } = nearest(target, { kind: "masses", loads }, "down");
      const below = loads.filter((load) => massOf(load) <= target);
      expect(chosen).toEqual(below.at(-1));
      expect(up === undefined || massOf(up) >= target).toBe(true);
    }),
  );
});
