import { describe, expect, test } from "vitest";
import { PRESSURE_RULES, pressureBefore } from "./pressure.ts";

const at = (systolic: number, diastolic: number) => ({ systolic, diastolic });
const twice = (systolic: number, diastolic: number) =>
  [at(systolic, diastolic), at(systolic, diastolic)] as const satisfies readonly unknown[];
const test2013 = PRESSURE_RULES.find(({ id }) => id === "exercise test")!;

describe("liftingPressure2024, printed: 180/110 no lifting, 160/100 only as the note allows", () => {
  test.each([
    [159, 99, true, "go"],
    [159, 99, false, "go"],
    [160, 99, true, "soften"],
    [160, 99, false, "hold"],
    [159, 100, true, "soften"],
    [159, 100, false, "hold"],
    [179, 109, true, "soften"],
    [180, 90, true, "hold"],
    [150, 110, true, "hold"],
  ] as const)("%d/%d twice, note %s: %s", (systolic, diastolic, note, want) => {
    expect(pressureBefore(twice(systolic, diastolic), note).before).toBe(want);
  });
  test("a first reading over a limit asks for another after five minutes; the last decides", () => {
    expect(pressureBefore([at(184, 112)], true)).toEqual({
      before: "ask",
      because: [{ code: "before/pressure-again", data: { systolic: 184, diastolic: 112, rule: "lifting 2024" } }],
    });
    expect(pressureBefore([at(184, 112), at(138, 84)], false).before).toBe("go");
  });
  test("the limit used and its rule are part of the answer", () => {
    expect(pressureBefore([at(184, 112), at(182, 111)], true).because[0]?.data).toEqual({
      systolic: 182,
      diastolic: 111,
      rule: "lifting 2024",
      limit: { systolic: 180, diastolic: 110 },
    });
  });
});

describe("acsmGuidelines9, printed: 200/110 before a test", () => {
  test("the systolic value alone would pass, the diastolic one does not", () => {
    expect(pressureBefore(twice(182, 111), true, test2013).before).toBe("hold");
    expect(pressureBefore(twice(182, 109), true, test2013).before).toBe("go");
    expect(pressureBefore(twice(200, 90), true, test2013).before).toBe("hold");
    expect(pressureBefore(twice(150, 110), true, test2013).before).toBe("hold");
  });
});

test.each([
  [88, 150],
  [120, 120],
  [Number.NaN, 80],
  [120, Number.NaN],
  [59, 40],
  [301, 90],
  [210, 201],
  [70, 29],
])("%d/%d is refused", (systolic, diastolic) => {
  expect(() => pressureBefore([at(systolic, diastolic)], true)).toThrow(RangeError);
});

test.each([
  [60, 30],
  [300, 200],
  [201, 200],
])("%d/%d is what somebody can have", (systolic, diastolic) => {
  expect(() => pressureBefore([at(systolic, diastolic)], true)).not.toThrow();
});
