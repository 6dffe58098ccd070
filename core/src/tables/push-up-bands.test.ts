import { expect, test } from "vitest";
import { PUSH_UP_BANDS } from "./push-up-bands.ts";
import { pushUpClass } from "./push-up-norms.ts";

const numbers = (sex: "men" | "women") =>
  PUSH_UP_BANDS[sex].flatMap(({ over, good, aboveAverage, average, belowAverage, poor }) => [
    over,
    ...[good, aboveAverage, average, belowAverage, poor].flat(),
  ]);

test("the copy is complete: 6 and 6 age groups, numbers sum to 1391 and 1048", () => {
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  expect([PUSH_UP_BANDS.men.length, PUSH_UP_BANDS.women.length]).toEqual([6, 6]);
  expect([sum(numbers("men")), sum(numbers("women"))]).toEqual([1391, 1048]);
});

test("each band stands under the one before, touching or overlapping by one where it is printed so", () => {
  const touching = (["men", "women"] as const).flatMap((sex) =>
    PUSH_UP_BANDS[sex].flatMap(({ ageY, good, aboveAverage }) =>
      aboveAverage[1] >= good[0] ? [`${sex} ${ageY.from}`] : [],
    ),
  );
  expect(touching).toEqual(["men 20", "men 40", "women 17", "women 30"]);
});

test("sources disagree: a man of 35 with 30 is above average here and excellent in the other table", () => {
  const [from, to] = PUSH_UP_BANDS.men[2]!.aboveAverage;
  expect(from <= 30 && 30 <= to).toBe(true);
  expect(pushUpClass(30, 35, "man")).toBe("excellent");
});
