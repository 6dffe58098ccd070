import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { Answers } from "./answers.ts";
import { medicineFacts } from "./medicines.ts";
import { screen } from "./screen.ts";

const NO = { disease: false };
const DISEASE = {
  heart: false,
  vessels: false,
  stroke: false,
  "diabetes type 1": false,
  "diabetes type 2": false,
  kidney: false,
};
const SIGNS = Object.fromEntries(
  [
    "chest pain",
    "breathless at rest",
    "faint",
    "breathless lying flat",
    "ankle swelling",
    "palpitations",
    "calf cramp",
    "murmur",
    "unusual tiredness",
  ].map((sign) => [sign, NO.disease]),
);
const on = day("2027-01-11");
const screened = (more: Partial<Answers>) =>
  screen(
    { on, by: "The coach", active: true, disease: DISEASE, signs: SIGNS, wanted: "moderate", ...more },
    day("1994-05-01"),
  );
const codes = (more: Partial<Answers>) => screened(more).because.map(({ code }) => code);

// Names from memory, no source: beta-blockers end in -olol.
test.each([
  ["bisoprolol 2.5 mg", "screen/slows-heart"],
  ["Metoprolol", "screen/slows-heart"],
  ["insulin glargine", "screen/lowers-sugar"],
  ["Gliclazide", "screen/lowers-sugar"],
  ["apixaban", "screen/thins-blood"],
  ["levothyroxine", "screen/medicine-unknown"],
])("%s: %s", (name, code) => {
  expect(medicineFacts([name])).toMatchObject([{ code, data: { medicines: [name] } }]);
});

test("nothing said is nothing told, and an unknown one is never passed over beside a known one", () => {
  expect(medicineFacts([])).toEqual([]);
  expect(medicineFacts(["ramipril", "bisoprolol"]).map(({ code }) => code)).toEqual([
    "screen/slows-heart",
    "screen/medicine-unknown",
  ]);
});

describe("pregnant, active, well, wants to go on training", () => {
  test("light until the midwife or doctor has been asked for the printed reasons against it", () => {
    const found = screened({ also: ["pregnant"] });
    expect(found.screening).toMatchObject({ outcome: "start light to moderate", effort: "light" });
    expect(found.locked.map(({ code }) => code)).toContain("screen/also-locked");
    expect(codes({ also: ["pregnant"] })).toContain("screen/pregnant");
  });
  test("with their written word for moderate work nothing more is locked, and the same woman not pregnant starts freely", () => {
    const cleared = { on, who: "A midwife", effort: "moderate" } as const;
    expect(screened({ also: ["pregnant"], cleared }).screening.outcome).toBe("no reason found");
    expect(screened({}).screening.outcome).toBe("no reason found");
  });
  test("it never makes a stop milder", () => {
    expect(screened({ also: ["pregnant"], signs: { ...SIGNS, faint: true } }).screening.outcome).toBe("stop");
  });
});

test("a knee that hurts is told for the roster and locks nothing; an operation within the year waits for its limits", () => {
  expect(codes({ also: ["knee"] })).toContain("screen/also");
  expect(screened({ also: ["knee"] }).screening.outcome).toBe("no reason found");
  expect(screened({ also: ["surgery-leg"] }).screening).toMatchObject({ effort: "light" });
});
