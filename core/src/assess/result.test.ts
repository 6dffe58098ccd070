import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { differing, scoreOf, type TestResult } from "./result.ts";
import { ASSESSMENT_TESTS } from "./tests.ts";

const named = (id: string) => ASSESSMENT_TESTS.find((each) => each.id === id)!;
const chair = named("chair-stand-30");
const at = (conditions: TestResult["conditions"]): TestResult => ({
  test: chair.id,
  on: day("2027-03-01"),
  value: 9,
  conditions,
});

describe("mo-05: three chair stands (handbook)", () => {
  test("arms used score 0, what was done stays as a note; crossed they score", () => {
    expect(scoreOf(chair, 9, { arms: "used" })).toEqual({
      value: 0,
      notes: [{ code: "assess/arms-score-zero", data: { test: "chair-stand-30", note: 9 } }],
    });
    expect(scoreOf(chair, 9, { arms: "crossed" })).toEqual({ value: 9, notes: [] });
  });
  test("a chair of another height is another series; the arms are not", () => {
    expect(differing(chair, at({}), at({ seat: "50 cm" }))).toEqual([
      { code: "assess/other-conditions", data: { condition: "seat", before: "43 cm", now: "50 cm" } },
    ]);
    expect(differing(chair, at({ arms: "used" }), at({ arms: "crossed", seat: "43 cm" }))).toEqual([]);
  });
});

test.each([
  ["chair-stand-30", -1],
  ["chair-stand-30", 9.5],
  ["chair-stand-30", 61],
  ["chair-stand-30", Number.NaN],
  ["grip", 121],
  ["one-leg-stand", 61],
])("%s of %d is refused", (id, value) => {
  expect(() => scoreOf(named(id), value, {})).toThrow(RangeError);
});

test("half seconds are fine where seconds are counted", () => {
  expect(scoreOf(named("one-leg-stand"), 17.5, {}).value).toBe(17.5);
});
