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
