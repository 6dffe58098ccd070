import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readWrittenLoad } from "./written-load.ts";

describe("im-09: the load column of a paper log (constructed case)", () => {
  test.each([
    ["135lb", { kind: "load", load: { value: 135, unit: "lb" } }],
    ["60", { kind: "number", value: 60 }],
    ["60 kg", { kind: "load", load: { value: 60, unit: "kg" } }],
    ["BW", { kind: "body" }],
    ["BW+10", { kind: "added", value: 10 }],
    ["BW-20", { kind: "help", value: 20 }],
    ["2x20", { kind: "pair", each: 20 }],
    ["bar", { kind: "empty bar" }],
    ["red band", { kind: "band", name: "red" }],
    ["plate 7", { kind: "setting", value: 7 }],
    ["-", { kind: "nothing" }],
  ])("%s", (text, want) => {
    expect(readWrittenLoad(text)).toEqual(want);
  });
});

describe("as people write it (common practice, no source)", () => {
  test.each([
    ["22,5kg", { kind: "load", load: { value: 22.5, unit: "kg" } }],
    ["22.5 KG", { kind: "load", load: { value: 22.5, unit: "kg" } }],
    ["45 lbs", { kind: "load", load: { value: 45, unit: "lb" } }],
    ["bw + 2,5 kg", { kind: "added", value: 2.5, unit: "kg" }],
    ["BW − 15 lb", { kind: "help", value: 15, unit: "lb" }],
    ["2 × 12.5 kg", { kind: "pair", each: 12.5, unit: "kg" }],
    ["empty bar", { kind: "empty bar" }],
    ["band C", { kind: "band", name: "c" }],
    ["light green band", { kind: "band", name: "light green" }],
    ["pin 12", { kind: "setting", value: 12 }],
    ["135#", { kind: "load", load: { value: 135, unit: "lb" } }],
    ["60 kilo", { kind: "load", load: { value: 60, unit: "kg" } }],
    ["+10", { kind: "added", value: 10 }],
    ["20 each", { kind: "pair", each: 20 }],
    ["17.5kg/hand", { kind: "pair", each: 17.5, unit: "kg" }],
    ["25/side", { kind: "a side", each: 25 }],
    ["45 lb a side", { kind: "a side", each: 45, unit: "lb" }],
    ["KB 16kg", { kind: "load", load: { value: 16, unit: "kg" } }],
    ["2x20 DBs", { kind: "pair", each: 20 }],
    ["level 5", { kind: "setting", value: 5 }],
    ["#7", { kind: "setting", value: 7 }],
    ["", { kind: "nothing" }],
  ])("%s", (text, want) => {
    expect(readWrittenLoad(text)).toEqual(want);
  });
});

describe("what is not known is listed and never 0", () => {
  test.each([
    "heavy",
    "20 stone",
    "1.250",
    "1,250",
    "20-30",
    "BW+",
    "2 plates",
    "bar+20",
    "L3",
    "3x20",
    "9999 kg",
    "12.345",
    "constructor",
  ])("%s", (text) => {
    expect(readWrittenLoad(text)).toEqual({ kind: "unknown", text });
  });
  test("a long cell is cut", () => {
    expect(readWrittenLoad("x".repeat(100))).toEqual({ kind: "unknown", text: "x".repeat(40) });
  });
  test("any text is answered", () => {
    fc.assert(fc.property(fc.string({ maxLength: 200 }), (text) => typeof readWrittenLoad(text).kind === "string"));
  });
});
