import { expect, test } from "vitest";
import { day } from "../day.ts";
import { readResults } from "./results-read.ts";

const WHOLE = `stave: 1
person: dagny
born: 1954-05-02
sex: woman
results:
  - { test: chair-stand-30, on: 2026-12-14, value: 9 }
  - { test: one-leg-stand, on: 2026-12-14, left: 6.5, right: 11, under: { feet: bare } }
  - { test: grip, on: 2026-12-14, left: 17, right: 19.5, under: { device: the grey one } }
`;
const problemsOf = (text: string) => readResults(text, "r.yaml").problems.map(({ code, line }) => [code, line]);

test("a whole file", () => {
  const read = readResults(WHOLE, "r.yaml");
  expect(read.problems).toEqual([]);
  expect(read.ok && read.value.value).toEqual({
    person: "dagny",
    born: day("1954-05-02"),
    sex: "woman",
    results: [
      { test: "chair-stand-30", on: day("2026-12-14"), value: 9, conditions: {} },
      { test: "one-leg-stand", on: day("2026-12-14"), left: 6.5, right: 11, conditions: { feet: "bare" } },
      { test: "grip", on: day("2026-12-14"), left: 17, right: 19.5, conditions: { device: "the grey one" } },
    ],
  });
});

test.each([
  ["value: 9 }", "value: 9.5 }", "results/size", 6],
  ["value: 9 }", "value: 61 }", "results/size", 6],
  ["value: 9 }", "left: 9 }", "results/one-value", 6],
  ["left: 6.5, right: 11", "value: 6.5", "results/sides", 7],
  ["feet: bare", "feet: socks", "results/condition", 7],
  ["feet: bare", "foot: bare", "results/condition", 7],
  ["chair-stand-30, on: 2026-12-14", "chair-stand-30, on: 1954-05-01", "results/before-birth", 6],
  ["test: grip", "test: gripp", "value/choice", 8],
])("%s → %s: %s in line %d", (from, to, code, line) => {
  expect(problemsOf(WHOLE.replace(from, to))).toContainEqual([code, line]);
});
