import { expect, test } from "vitest";
import { STEP_TEST_BANDS, stepTestClass } from "./step-test-bands.ts";

test("golding1986, printed: both ends of every band of women of 26 to 35", () => {
  for (const row of STEP_TEST_BANDS.rows) {
    expect(stepTestClass("woman", 26, row.fromBpm)).toBe(row.class);
    expect(stepTestClass("woman", 35, row.toBpm)).toBe(row.class);
  }
});

test("the copy is complete: 7 bands, ends sum to 711 and 802", () => {
  expect(STEP_TEST_BANDS.rows.reduce((sum, { fromBpm }) => sum + fromBpm, 0)).toBe(711);
  expect(STEP_TEST_BANDS.rows.reduce((sum, { toBpm }) => sum + toBpm, 0)).toBe(802);
});

test("a value in a gap belongs to the lower class", () => {
  expect(stepTestClass("woman", 30, 81)).toBe("good");
  expect(stepTestClass("woman", 30, 133)).toBe("very poor");
});

test("others than the table's people have no class", () => {
  expect(stepTestClass("man", 30, 80)).toBeUndefined();
  for (const age of [25, 36, Number.NaN]) expect(stepTestClass("woman", age, 80)).toBeUndefined();
  for (const bpm of [57, 172, Number.NaN]) expect(stepTestClass("woman", 30, bpm)).toBeUndefined();
});
