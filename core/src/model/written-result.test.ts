import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readWrittenResult } from "./written-result.ts";

const sets = (...list: readonly object[]) => ({ kind: "sets", sets: list, eachSide: false });

describe("im-09: the result column of a paper log (constructed case)", () => {
  test.each([
    ["10/10/8", sets({ reps: 10 }, { reps: 10 }, { reps: 8 })],
    ["3x10", sets({ reps: 10 }, { reps: 10 }, { reps: 10 })],
    ["10,10,8", sets({ reps: 10 }, { reps: 10 }, { reps: 8 })],
    ["30s", sets({ holdS: 30 })],
    ["1:30", sets({ holdS: 90 })],
    ["8e", { kind: "sets", sets: [{ reps: 8 }], eachSide: true }],
    ["AMRAP 14", sets({ reps: 14, most: true })],
    ["-", { kind: "not done" }],
    ["sick", { kind: "not done", because: "sick" }],
  ])("%s", (text, want) => {
    expect(readWrittenResult(text)).toEqual(want);
  });
});

describe("as people write it (common practice, no source)", () => {
  test.each([
    ["10 10 8", sets({ reps: 10 }, { reps: 10 }, { reps: 8 })],
    ["3 × 30 s", sets({ holdS: 30 }, { holdS: 30 }, { holdS: 30 })],
    ["12 / 10 / 0", sets({ reps: 12 }, { reps: 10 }, { reps: 0 })],
    ["2 min", sets({ holdS: 120 })],
    ['45"', sets({ holdS: 45 })],
    ["14+", sets({ reps: 14, most: true })],
    ["8/8/6 each", { kind: "sets", sets: [{ reps: 8 }, { reps: 8 }, { reps: 6 }], eachSide: true }],
    ["30s/side", { kind: "sets", sets: [{ holdS: 30 }], eachSide: true }],
    ["3x8 per side", { kind: "sets", sets: [{ reps: 8 }, { reps: 8 }, { reps: 8 }], eachSide: true }],
    ["Holiday", { kind: "not done", because: "away" }],
    ["", { kind: "not done" }],
  ])("%s", (text, want) => {
    expect(readWrittenResult(text)).toEqual(want);
  });
});

describe("what is not known, or cannot be, is listed and never 0", () => {
  test.each(["good", "10/ten/8", "21x10", "0x5", "501", "10.5", "1:75", "61 min", "0s", "__proto__"])("%s", (text) => {
    expect(readWrittenResult(text)).toEqual({ kind: "unknown", text });
  });
  test("21 sets are no session's", () => {
    expect(readWrittenResult(Array(21).fill("9").join("/")).kind).toBe("unknown");
    expect(readWrittenResult(Array(20).fill("9").join("/")).kind).toBe("sets");
  });
  test("any text is answered", () => {
    fc.assert(fc.property(fc.string({ maxLength: 200 }), (text) => typeof readWrittenResult(text).kind === "string"));
  });
});
