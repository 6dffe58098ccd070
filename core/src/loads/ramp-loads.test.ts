import fc from "fast-check";
import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { type Load, massOf } from "../units.ts";
import type { LoadSet } from "./load-set.ts";
import { rampLoads } from "./ramp-loads.ts";

const kgOf = (value: number): Load => ({ value, unit: "kg" });
const every = (step: number, to = 200): LoadSet => ({
  kind: "masses",
  loads: Array.from({ length: to / step }, (_, i) => kgOf((i + 1) * step)),
});
const values = (working: number, set: LoadSet, sets?: number) =>
  rampLoads(kgOf(working), set, sets).map((load) => load.value);

published("ribeiro2020", "first warm-up load for work with 80 kg (1RM 100)", [
  ["worked", "40 % of the working load", () => values(80, every(2))[0]!, 32, 0],
]);
published("ribeiro2020", "second warm-up load for work with 80 kg (1RM 100)", [
  ["worked", "80 % of the working load", () => values(80, every(2))[1]!, 64, 0],
]);

test("rounds down to what exists", () => {
  expect(values(61, every(2.5))).toEqual([22.5, 47.5]);
  expect(values(60, { kind: "masses", loads: [20, 40, 50, 60].map(kgOf) })).toEqual([20, 40]);
});

test("one set is the heavy one, three go in even steps", () => {
  expect(values(80, every(2), 1)).toEqual([64]);
  expect(values(80, every(2), 3)).toEqual([32, 48, 64]);
});

test("where the lightest is too heavy there are fewer sets, or none", () => {
  expect(values(25, { kind: "masses", loads: [20, 22.5, 25].map(kgOf) })).toEqual([20]);
  expect(values(22, { kind: "masses", loads: [20, 22].map(kgOf) })).toEqual([]);
});

test("help, bands and body mass give no ramp", () => {
  const stack = { unit: "kg", pins: [10, 20, 30, 40] } as const;
  expect(rampLoads(kgOf(30), { kind: "stack", machine: "assisted pull-up machine", stack, help: true })).toEqual([]);
  expect(rampLoads(kgOf(30), { kind: "stack", machine: "leg press", stack, help: false })).toEqual([
    kgOf(10),
    kgOf(20),
  ]);
  expect(rampLoads(kgOf(30), { kind: "bands", labels: ["A"] })).toEqual([]);
  expect(rampLoads(kgOf(30), { kind: "none" })).toEqual([]);
});

test("ramp loads rise, differ, exist and stay below the work", () => {
  const loads = fc.uniqueArray(fc.integer({ min: 1, max: 300 }), { minLength: 1, maxLength: 20 });
  fc.assert(
    fc.property(loads, fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 5 }), (own, working, sets) => {
      const rising = own.sort((a, b) => a - b).map(kgOf);
      const ramp = rampLoads(kgOf(working), { kind: "masses", loads: rising }, sets);
      expect(ramp.length).toBeLessThanOrEqual(sets);
      ramp.forEach((load, i) => {
        expect(rising).toContainEqual(load);
        expect(massOf(load)).toBeLessThan(massOf(kgOf(working)));
        if (i > 0) expect(massOf(load)).toBeGreaterThan(massOf(ramp[i - 1]!));
      });
    }),
  );
});
