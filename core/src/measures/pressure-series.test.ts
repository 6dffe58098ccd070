import { expect, test } from "vitest";
import type { Day } from "../day.ts";
import { madeUpEvent } from "../testing/index.ts";
import { foldRecord, pressureSeries } from "./index.ts";

const dayOf = (at: number) => Math.floor(at / 86_400_000) as Day;
const read = (readings: readonly (readonly [number, number])[], when: "before" | "after" = "before") =>
  pressureSeries(
    foldRecord(
      readings.map(([systolic, diastolic], at) =>
        madeUpEvent(`pressure-${at}`, at + 1, "pressure", { systolic, diastolic, when }, { at: at * 86_400_000 }),
      ),
    ),
    dayOf,
  );
const FIRST = [
  [156, 86],
  [149, 82],
  [153, 84],
] as const;
const LAST = [
  [128, 76],
  [124, 72],
  [121, 74],
] as const;

test("mo-08 (open case, published study): the means of the first three and of the last three", () => {
  expect(read([...FIRST, [140, 80], ...LAST])).toMatchObject([
    { when: "before", means: { first: [152.7, 84], last: [124.3, 74] } },
  ]);
});

test("before and after are two series; under six readings there are no means", () => {
  expect(read(FIRST, "after")).toMatchObject([{ when: "after" }]);
  expect(read(FIRST)[0]!.means).toBeUndefined();
  expect(read([])).toEqual([]);
});

test("six readings are enough for means, five are not", () => {
  expect(read([...FIRST, ...LAST])[0]!.means).toEqual({ first: [152.7, 84], last: [124.3, 74] });
  expect(read([...FIRST, ...LAST.slice(1)])[0]!.means).toBeUndefined();
});

test("readings stand by their day, whatever the order in which they were written down", () => {
  const events = [3, 1, 2].map((on, n) =>
    madeUpEvent(
      `p-${on}`,
      n + 1,
      "pressure",
      { systolic: 120 + on, diastolic: 80, when: "before" },
      { at: on * 86_400_000 },
    ),
  );
  const [series] = pressureSeries(foldRecord(events), dayOf);
  expect(series!.readings).toEqual([1, 2, 3].map((on) => ({ day: on, systolic: 120 + on, diastolic: 80 })));
});

test("one figure of a series never stands in the other", () => {
  const one = madeUpEvent("a", 1, "pressure", { systolic: 128, diastolic: 76, when: "before" }, { at: 0 });
  const other = madeUpEvent("b", 2, "pressure", { systolic: 140, diastolic: 80, when: "after" }, { at: 0 });
  expect(
    pressureSeries(foldRecord([other, one]), dayOf).map(({ when, readings }) => [when, readings[0]!.systolic]),
  ).toEqual([
    ["before", 128],
    ["after", 140],
  ]);
});
