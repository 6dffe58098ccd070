import { describe, expect, test } from "vitest";
import { type ResultsFile, readResults, returnList } from "./index.ts";

const TESTS = `
  - { test: knee-extension-torque, on: 2027-03-08, left: 168, right: 142 }
  - { test: single-hop, on: 2027-03-08, left: 160, right: 151 }
  - { test: triple-hop, on: 2027-03-08, left: 505, right: 470 }
  - { test: side-hop, on: 2027-03-08, left: 39, right: 31 }`;
function file(injured: string, results = TESTS): ResultsFile {
  const text = `stave: 1\nperson: tom\nborn: 2003-02-11\n${injured === "" ? "" : `injured: ${injured}\n`}results:${results}\n`;
  const read = readResults(text, "results.yaml");
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value.value;
}
const list = (injured: string, results?: string) => returnList(file(injured, results));
const unmet = (injured: string, results?: string) =>
  list(injured, results)!
    .lines.filter(({ passed }) => !passed)
    .map((line) => line.test);

describe("mo-03 (open case, published study): a knee six and a half months after a graft, from a file of results", () => {
  const injured = "{ side: right, since: 2026-08-24, mass: 71 kg }";

  test("injured ÷ sound in every test; strength and side hop are named, torque is 2.0 against 3.0 N m per kg", () => {
    const found = list(injured)!;
    expect(found).toMatchObject({ side: "right", weeks: 28, over: 90, passed: false });
    expect(found.lines.map(({ test: id, percent }) => [id, percent])).toEqual([
      ["knee-extension-torque", 84.5],
      ["single-hop", 94.4],
      ["triple-hop", 93.1],
      ["side-hop", 79.5],
    ]);
    expect(unmet(injured)).toEqual(["knee-extension-torque", "side-hop"]);
    expect(found.torque).toEqual({ perKg: 2, least: 3, passed: false });
  });

  test("its neighbours: the mean of the four is over 87 %, and passes nothing; the other leg injured passes every line", () => {
    const { lines } = list(injured)!;
    expect(lines.reduce((sum, { percent }) => sum + percent, 0) / 4).toBeGreaterThan(87);
    expect(list(injured.replace("since", "over: 85, since"))!.passed).toBe(false);
    expect(unmet("{ side: left, since: 2026-08-24, mass: 50 kg }")).toEqual([]);
    expect(list("{ side: left, since: 2026-08-24, mass: 50 kg }")).toMatchObject({
      passed: true,
      torque: { perKg: 3.36 },
    });
  });

  test("without the body mass torque cannot be judged and does not pass; lb is a mass too", () => {
    expect(list("{ side: left, since: 2026-08-24 }")).toMatchObject({
      passed: false,
      torque: { least: 3, passed: false },
    });
    expect(list("{ side: left, since: 2026-08-24 }")!.torque!.perKg).toBeUndefined();
    // 156.5 lb are 71.0 kg: 1 lb = 0.45359237 kg.
    expect(list("{ side: right, since: 2026-08-24, mass: 156.5 lb }")!.torque!.perKg).toBe(2);
  });
});

test("the last result of each test since the injury counts; what lies before it does not", () => {
  const later = `${TESTS}
  - { test: side-hop, on: 2027-04-05, left: 39, right: 38 }
  - { test: single-hop, on: 2026-07-01, left: 160, right: 100 }`;
  const found = list("{ side: right, since: 2026-08-24, mass: 71 kg }", later)!;
  expect(found.lines.map(({ percent }) => percent)).toEqual([84.5, 94.4, 93.1, 97.4]);
  expect(found.weeks).toBe(32);
});

test("nobody injured, or nothing tested since: nothing is said; a sound side of 0 passes nothing", () => {
  expect(list("")).toBeUndefined();
  expect(list("{ side: right, since: 2027-03-09 }")).toBeUndefined();
  const none = "\n  - { test: side-hop, on: 2027-03-08, left: 0, right: 3 }";
  expect(list("{ side: right, since: 2026-08-24 }", none)).toMatchObject({ lines: [], passed: false });
});

test.each([
  ["{ side: both, since: 2026-08-24 }"],
  ["{ side: right }"],
  ["{ side: right, since: 2026-08-24, over: 120 }"],
  ["{ side: right, since: 2026-08-24, mass: 71 }"],
])("%s is refused", (injured) => {
  expect(() => file(injured)).toThrow();
});
