import fc from "fast-check";
import { expect, test } from "vitest";
import { inKg, type Load, massOf } from "../units.ts";
import { type PlateKind, plateSums } from "./plate-sums.ts";

const kilograms = (value: number, count: number): PlateKind => ({ load: { value, unit: "kg" }, count });
const pounds = (value: number, count: number): PlateKind => ({ load: { value, unit: "lb" }, count });
const weight = (plates: readonly Load[]) => plates.reduce((sum, plate) => sum + massOf(plate), 0);

const kind = fc.record({
  load: fc.record({
    value: fc.constantFrom(0.25, 0.5, 1.25, 2.5, 5, 10, 15, 20, 25, 35, 45),
    unit: fc.constantFrom("kg" as const, "lb" as const),
  }),
  count: fc.integer({ min: 0, max: 3 }),
});
const few = fc.array(kind, { maxLength: 4 });

/** Every choice of plates, tried one by one: the plain way, for comparison. */
function everySum(kinds: readonly PlateKind[]): Map<number, number> {
  let sums = new Map([[0, 0]]);
  for (const { load, count } of kinds) {
    for (let i = 0; i < count; i++) {
      const next = new Map(sums);
      for (const [sum, plates] of sums) {
        const more = sum + massOf(load);
        next.set(more, Math.min(plates + 1, next.get(more) ?? 99));
      }
      sums = next;
    }
  }
  return new Map([...sums].filter(([, plates]) => plates <= 10));
}

test("finds exactly the sums that trying every choice finds, each with as few plates", () => {
  fc.assert(
    fc.property(few, (kinds) => {
      const plain = everySum(kinds);
      const found = plateSums(kinds);
      expect(found.map((sum) => sum.mass)).toEqual([...plain.keys()].sort((a, b) => a - b));
      for (const { mass, plates } of found) expect(plates.length).toBe(plain.get(mass));
    }),
  );
});

test("uses no more plates than are owned, and they weigh what is said, to the last digit", () => {
  fc.assert(
    fc.property(few, (kinds) => {
      for (const { mass, plates } of plateSums(kinds)) {
        expect(weight(plates)).toBe(mass);
        for (const { load } of kinds) {
          const owned = kinds
            .filter((each) => massOf(each.load) === massOf(load))
            .reduce((n, each) => n + each.count, 0);
          expect(plates.filter((plate) => massOf(plate) === massOf(load)).length).toBeLessThanOrEqual(owned);
        }
      }
    }),
  );
});

test("the order of the plates does not matter", () => {
  fc.assert(
    fc.property(few, (kinds) => {
      expect(plateSums([...kinds].reverse())).toEqual(plateSums(kinds));
    }),
  );
});

test("one more plate never takes a sum away", () => {
  fc.assert(
    fc.property(few, kind, (kinds, another) => {
      const more = new Set(plateSums([...kinds, another]).map((sum) => sum.mass));
      for (const { mass } of plateSums(kinds)) expect(more.has(mass)).toBe(true);
    }),
  );
});

test("of two ways with as many plates the larger plate is taken", () => {
  const sums = plateSums([kilograms(5, 2), kilograms(15, 1), kilograms(10, 2)]);
  expect(sums.find((sum) => inKg(sum.mass) === 20)?.plates.map((plate) => plate.value)).toEqual([15, 5]);
  expect(sums.find((sum) => inKg(sum.mass) === 25)?.plates.map((plate) => plate.value)).toEqual([15, 10]);
});

test("kinds that stand twice are added up, and less than one plate is none", () => {
  expect(plateSums([kilograms(10, 1), kilograms(10, 1)]).map((sum) => inKg(sum.mass))).toEqual([0, 10, 20]);
  for (const count of [0, 0.5, -1, Number.NaN]) expect(plateSums([kilograms(10, count)])).toHaveLength(1);
});

test("kilograms and pounds mix without a rounding", () => {
  const [, lightest, , both] = plateSums([kilograms(20, 1), pounds(45, 1)]).map((sum) => sum.mass);
  expect(lightest).toBe(massOf({ value: 20, unit: "kg" }));
  expect(both).toBe(massOf({ value: 20, unit: "kg" }) + massOf({ value: 45, unit: "lb" }));
});

test("hundreds of plates of every kind are searched with few together, each unit further alone", () => {
  const values = [0.25, 0.5, 1, 1.25, 1.5, 2, 2.5, 5, 10, 15, 20, 25, 35, 45, 50, 0.125];
  const kinds = values.flatMap((value) => [kilograms(value, 30), pounds(value, 30)]);
  const masses = new Set<number>(plateSums(kinds).map((sum) => sum.mass));
  for (const { load } of kinds) expect(masses.has(massOf(load))).toBe(true);
  expect(masses.has(massOf({ value: 500, unit: "kg" }))).toBe(true);
  expect(masses.has(massOf({ value: 500, unit: "lb" }))).toBe(true);
});

test("three hundred odd kinds end with an answer", () => {
  const kinds = Array.from({ length: 300 }, (_, i) => (i % 2 ? kilograms : pounds)(1 + i * 0.317, 10));
  expect(plateSums(kinds).length).toBeGreaterThan(300);
});
