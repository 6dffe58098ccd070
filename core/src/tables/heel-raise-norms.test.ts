import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { HEEL_RAISE_NORMS, usualHeelRaises } from "./heel-raise-norms.ts";

const at = (sex: "man" | "woman", age: number) => () => usualHeelRaises(sex, age) ?? Number.NaN;
published("hebertLosier2017", "one-leg heel raises, restated", [
  ["printed", "men in their twenties", at("man", 20), 37, 0],
  ["printed", "women in their fifties", at("woman", 59.9), 21, 0],
  ["printed", "men in their eighties", at("man", 89.9), 10, 0],
]);

test("the copy is complete: 7 decades, sums 163 and 150, falling with age", () => {
  const { rows } = HEEL_RAISE_NORMS;
  expect([rows.reduce((sum, { man }) => sum + man, 0), rows.reduce((sum, { woman }) => sum + woman, 0)]).toEqual([
    163, 150,
  ]);
  rows.slice(1).forEach(({ man, woman, decade }, i) => {
    expect([man < rows[i]!.man, woman < rows[i]!.woman, decade]).toEqual([true, true, rows[i]!.decade + 10]);
  });
});

test("no row, no answer", () => {
  for (const age of [19.9, 90, Number.NaN]) expect(usualHeelRaises("man", age)).toBeUndefined();
});
