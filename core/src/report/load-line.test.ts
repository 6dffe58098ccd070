import { describe, expect, test } from "vitest";
import type { LoadMeaning } from "../model/index.ts";
import { madeUpExercise } from "../testing/index.ts";
import type { Load } from "../units.ts";
import { loadLine, loadWords } from "./load-line.ts";

const KG = (value: number): Load => ({ value, unit: "kg" });
const because = { code: "loads/nothing-known", data: {} };

function taking(loadMeaning: LoadMeaning, amounts: "reps" | "hold" | "metres" | "time" = "reps") {
  return madeUpExercise({ id: "any", loadMeaning, amounts });
}

describe("a known load stands in the terms of its exercise", () => {
  test.each([
    ["per hand", { label: "load", text: "2 × 8 kg" }],
    ["total", { label: "load", text: "8 kg" }],
    ["one implement", { label: "load", text: "8 kg" }],
    ["stack", { label: "setting", text: "8 kg" }],
    ["assist", { label: "help", text: "8 kg" }],
    ["added to body", { label: "load", text: "body + 8 kg" }],
  ] as const)("%s", (meaning, line) => expect(loadLine(taking(meaning), { load: KG(8) }, "kg")).toEqual(line));

  test("12.5 kg keeps its half", () => expect(loadWords(taking("per hand"), KG(12.5), "kg")).toBe("2 × 12.5 kg"));
});

describe("who thinks in the other unit reads both, to a tenth", () => {
  // 60 kg = 132.277 lb and 25 lb = 11.3398 kg by the exact pound of 1959.
  test("kilograms for a person of pounds", () => {
    expect(loadWords(taking("total"), KG(60), "lb")).toBe("60 kg (132.3 lb)");
    expect(loadWords(taking("per hand"), { value: 25, unit: "lb" }, "kg")).toBe("2 × 25 lb (11.3 kg)");
  });
  test("the numbers of a stack are labels and stay alone", () => {
    expect(loadWords(taking("stack"), KG(60), "lb")).toBe("60 kg");
    expect(loadWords(taking("assist"), KG(60), "lb")).toBe("60 kg");
  });
});

test("a load that changes from set to set is told once for each change", () => {
  const loads = [KG(100), KG(90), KG(90), KG(100)];
  expect(loadLine(taking("total"), { load: KG(100), loads }, "kg").text).toBe("100 kg, then 90 kg, then 100 kg");
  expect(loadLine(taking("total"), { load: KG(90), loads: [KG(90), KG(90)] }, "kg").text).toBe("90 kg");
});

describe("a load that has to be found", () => {
  test.each([
    ["per hand", KG(1), { label: "load", text: "find: begin with 2 × 1 kg" }],
    ["stack", KG(5), { label: "setting", text: "find: begin with 5 kg" }],
    ["assist", KG(80), { label: "help", text: "find: begin with 80 kg" }],
    ["total", undefined, { label: "load", text: "find: begin light" }],
    ["assist", undefined, { label: "help", text: "find: begin with much help" }],
  ] as const)("%s from %o", (meaning, from, line) => {
    const find = { because, ...(from === undefined ? {} : { from }) };
    expect(loadLine(taking(meaning), { find }, "kg")).toEqual(line);
  });

  test("among bands, the weakest here by the owner's own label", () => {
    const find = { because: { code: "loads/bands", data: { labels: ["B", "C"] } } };
    expect(loadLine(taking("band"), { find }, "kg")).toEqual({ label: "band", text: "find: begin with B" });
    expect(loadLine(taking("assist"), { find }, "kg")).toEqual({ label: "band", text: "find: begin with B" });
  });

  test("no word of the reason is printed", () => {
    const find = { because: { code: "offer/over-limit", data: { who: "Dr Someone" } } };
    expect(JSON.stringify(loadLine(taking("total"), { find }, "kg"))).not.toContain("Someone");
  });
});

describe("without a load it says what the boxes count, or leaves a blank", () => {
  test.each([
    ["body only", "reps", { label: null, text: "own weight" }],
    ["body only", "hold", { label: null, text: "seconds" }],
    ["none", "metres", { label: null, text: "metres" }],
    ["none", "time", { label: null, text: "minutes" }],
    ["height", "reps", { label: "height", text: "find: begin low" }],
    ["band", "reps", { label: "band", text: "find: begin light" }],
    ["added to body", "reps", { label: "load", text: "own weight" }],
    ["total", "reps", { label: "load", text: "find: begin light" }],
    ["stack", "reps", { label: "setting", text: "find: begin light" }],
    ["assist", "reps", { label: "help", text: "find: begin with much help" }],
  ] as const)("%s, %s", (meaning, amounts, line) => expect(loadLine(taking(meaning, amounts), {}, "kg")).toEqual(line));
});
