import fc from "fast-check";
import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { kg, type Load, massOf } from "../units.ts";
import { barLoadings, reachableTotals } from "./bar-loadings.ts";

const unit = fc.constantFrom("kg" as const, "lb" as const);
const plate = fc.record({
  load: fc.record({ value: fc.constantFrom(0.5, 1.25, 2.5, 5, 10, 15, 20, 25, 45), unit }),
  pairs: fc.integer({ min: 0, max: 3 }),
});
const bar = fc.record({ value: fc.constantFrom(10, 15, 20, 35, 45), unit });
const kgs = (...values: readonly number[]) => values.map((value): Load => ({ value, unit: "kg" }));
const competition = [25, 20, 15, 10, 5, 2.5, 1.25].map((value) => ({
  load: { value, unit: "kg" } as const,
  pairs: value === 25 ? 8 : 1,
}));
const sideOf = (total: number, from: ReturnType<typeof barLoadings>) =>
  from.find((loading) => loading.total.value === total)?.side.reduce((sum, each) => sum + each.value, 0) ?? Number.NaN;

published("practice", "a side of 62.5 kg on a 20 kg bar", [
  [
    "worked",
    "(62.5 − 20) / 2",
    () => sideOf(62.5, barLoadings({ value: 20, unit: "kg" }, undefined, competition)),
    21.25,
    0,
  ],
]);
published("practice", "a side of 57.5 kg on a 15 kg bar", [
  [
    "worked",
    "(57.5 − 15) / 2",
    () => sideOf(57.5, barLoadings({ value: 15, unit: "kg" }, undefined, competition)),
    21.25,
    0,
  ],
]);
published("practice", "a side of 185 lb on a 45 lb bar", [
  [
    "worked",
    "(185 − 45) / 2",
    () =>
      sideOf(
        185,
        barLoadings({ value: 45, unit: "lb" }, undefined, [
          { load: { value: 45, unit: "lb" }, pairs: 1 },
          { load: { value: 25, unit: "lb" }, pairs: 1 },
        ]),
      ),
    70,
    0,
  ],
]);

test("a total is the bar, the collars and twice one side, to the last digit or less than a gram over", () => {
  fc.assert(
    fc.property(
      bar,
      fc.option(fc.constantFrom(...kgs(0.5, 2.5)), { nil: undefined }),
      fc.array(plate, { maxLength: 4 }),
      (on, collars, plates) => {
        let before = -1;
        for (const { total, side } of barLoadings(on, collars, plates)) {
          const mass =
            massOf(on) + (collars ? massOf(collars) : 0) + 2 * side.reduce((sum, each) => sum + massOf(each), 0);
          const over = massOf(total) - mass;
          expect(over >= 0 && over < kg(0.001)).toBe(true);
          expect(massOf(total)).toBeGreaterThan(before);
          before = massOf(total);
        }
      },
    ),
  );
});

test("each side has at most one plate of every owned pair", () => {
  fc.assert(
    fc.property(bar, fc.array(plate, { maxLength: 4 }), (on, plates) => {
      for (const { side } of barLoadings(on, undefined, plates)) {
        for (const { load } of plates) {
          const pairs = plates
            .filter((each) => massOf(each.load) === massOf(load))
            .reduce((n, each) => n + each.pairs, 0);
          expect(side.filter((each) => massOf(each) === massOf(load)).length).toBeLessThanOrEqual(pairs);
        }
      }
    }),
  );
});

test("one more pair never takes a total away, and the order of plates never matters", () => {
  fc.assert(
    fc.property(bar, fc.array(plate, { maxLength: 4 }), plate, (on, plates, another) => {
      const now = reachableTotals(on, undefined, plates);
      expect(reachableTotals(on, undefined, [...plates].reverse())).toEqual(now);
      const more = reachableTotals(on, undefined, [another, ...plates]).map((total) => massOf(total));
      for (const total of now) expect(more).toContain(massOf(total));
    }),
  );
});

test("collars count on the empty bar too", () => {
  expect(reachableTotals({ value: 20, unit: "kg" }, { value: 5, unit: "kg" }, [])).toEqual(kgs(25));
});

test("a bar in kilograms with plates in pounds", () => {
  const plates = [{ load: { value: 25, unit: "lb" } as const, pairs: 1 }];
  expect(reachableTotals({ value: 20, unit: "kg" }, undefined, plates)).toEqual(kgs(20, 42.68));
  expect(reachableTotals({ value: 45, unit: "lb" }, undefined, plates).map((total) => total.value)).toEqual([45, 95]);
});
