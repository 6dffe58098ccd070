import fc from "fast-check";
import { expect, test } from "vitest";
import { doses } from "../testing/index.ts";
import { printDose } from "./dose-print.ts";
import { readDose } from "./dose-read.ts";
import { DOSE_PROBLEMS } from "./dose-scan.ts";

function canonical(text: string): string {
  const read = readDose(text);
  return read.ok ? printDose(read.value) : `cannot be read: ${JSON.stringify(read.problems)}`;
}

const SPELLINGS: readonly (readonly [written: string, canonical: string])[] = [
  ["3 × 8–10, rest 90 s, 2 in reserve", "3 × 8–10, rest 90 s, 2 in reserve"],
  ["3x8-10 rest 1:30 2 RIR", "3 × 8–10, rest 90 s, 2 in reserve"],
  ["3 sets of 8-10 reps, 90 s rest between sets, leave 2 in reserve", "3 × 8–10, rest 90 s, 2 in reserve"],
  ["3 sets, 8 to 10 reps, RIR 2; rest: 90", "3 × 8–10, rest 90 s, 2 in reserve"],
  ["３×８－１０，rest ９０ s，2 in reserve", "3 × 8–10, rest 90 s, 2 in reserve"],
  ["3 ×\u00a08\u202f–\u202f10, 2 in reserve", "3 × 8–10, 2 in reserve"],
  ["3*8", "3 × 8"],
  ["3X8", "3 × 8"],
  ["3 х 8", "3 × 8"],
  ["3×8〜10", "3 × 8–10"],
  ["3 × 8 — 10", "3 × 8–10"],
  ["8 reps", "1 × 8"],
  ["10, 8, 8", "10, 8, 8"],
  ["8/6/4", "8, 6, 4"],
  ["10,8,8", "10, 8, 8"],
  ["3 × 10/8/6", "10, 8, 6"],
  ["3 × 10, 8, 6 each side @20%", "10, 8, 6 each side @20 %"],
  ["12, 8, 8, 8", "1 × 12 + 3 × 8"],
  ["8, 8, 8", "3 × 8"],
  ["3x30s/side", "3 × 30 s each side"],
  ["2 × 20–30 s each side", "2 × 20–30 s each side"],
  ['3 × 30"', "3 × 30 s"],
  ["3 × 1 min hold", "3 × 60 s"],
  ["30/30/20 s", "30 s, 30 s, 20 s"],
  ["3 × 8e", "3 × 8 each side"],
  ["3 × 8 ea.", "3 × 8 each side"],
  ["3 × 8 per leg", "3 × 8 each side"],
  ["3 × 8, each arm, rest 60 s", "3 × 8 each side, rest 60 s"],
  ["3 × as many as possible", "3 × as many as possible"],
  ["3 x AMRAP (at least 5)", "3 × as many as possible, at least 5"],
  ["3 × max, at least 5, rest 2 min", "3 × as many as possible, at least 5, rest 2 min"],
  ["2 × 5, 1 × 5+", "2 × 5 + 1 × as many as possible, at least 5"],
  ["AMRAP (5+)", "1 × as many as possible, at least 5"],
  ["2 × 30 m", "2 × 30 m"],
  ["1 × 1,5 km", "1 × 1500 m"],
  ["400 m, 300 m", "400 m, 300 m"],
  ["8 min", "1 × 8 min"],
  ["1 × 10 min", "1 × 10 min"],
  ["1 × 8–10 min", "1 × 8–10 min"],
  ["8 × 0:30 min", "8 × 0:30 min"],
  ["6 × 1.5 min", "6 × 1:30 min"],
  ["6 × 1'30\"", "6 × 1:30 min"],
  ["3 × 5 contacts", "3 × 5 contacts"],
  ["5x3 @85%", "5 × 3 @85 %"],
  ["3 × 8 @ 80 % of 1RM", "3 × 8 @80 %"],
  ["1 × 5 @85% + 2 × 8 @75%", "1 × 5 @85 % + 2 × 8 @75 %"],
  ["1×5 @85%, 2×8 @75%", "1 × 5 @85 % + 2 × 8 @75 %"],
  ["5 @80%, 3 @85%, 1 @90%", "1 × 5 @80 % + 1 × 3 @85 % + 1 × 1 @90 %"],
  ["10, 8, 8 @60 kg", "10, 8, 8 @60 kg"],
  ["3 × 8 @ 62,5 kg", "3 × 8 @62.5 kg"],
  ["3x8x60kg", "3 × 8 @60 kg"],
  ["3x8@135 lbs", "3 × 8 @135 lb"],
  ["3 × 8, RPE 8", "3 × 8, 2 in reserve"],
  ["3 × 8 @ RPE 8,5", "3 × 8, 1–2 in reserve"],
  ["3 × 8 @8 RPE", "3 × 8, 2 in reserve"],
  ["3 × 8 RPE 7-8.5", "3 × 8, 1–3 in reserve"],
  ["3 × 8, 1–2 reps in reserve", "3 × 8, 1–2 in reserve"],
  ["3 × 8 to failure", "3 × 8, 0 in reserve"],
  ["1 × 5 (1 in reserve) + 2 × 8 (3 in reserve)", "1 × 5 (1 in reserve) + 2 × 8 (3 in reserve)"],
  ["1 × 5, 1 in reserve + 2 × 8, 3 in reserve", "1 × 5 (1 in reserve) + 2 × 8 (3 in reserve)"],
  ["1 × 5 + 3 × 8, 3 in reserve", "1 × 5 + 3 × 8, 3 in reserve"],
  ["1 × 5 + 3 × 8 3 in reserve", "1 × 5 + 3 × 8 (3 in reserve)"],
  ["3 × 8, no rest", "3 × 8, rest 0 s"],
  ["3 × 8, rest 2'", "3 × 8, rest 2 min"],
  ["3 × 8, rest 2 m", "3 × 8, rest 2 min"],
  ["3 × 8, 90s rest", "3 × 8, rest 90 s"],
  ["3 × 8, tempo 3-1-1-0", "3 × 8, tempo 3-1-1-0"],
  ["3 × 8, tempo 3-1-1", "3 × 8, tempo 3-1-1-0"],
  ["3 × 8, 3-1-1-0", "3 × 8, tempo 3-1-1-0"],
  ["3 × 8, tempo 31X0", "3 × 8, tempo 3-1-0-0"],
  ["3 × 4+4+4, 15 s inside", "3 × 4+4+4, 15 s inside"],
  ["3 × 4 + 4 + 4, 15 s inside, rest 2 min", "3 × 4+4+4, rest 2 min, 15 s inside"],
];

for (const [written, print] of SPELLINGS) {
  test(`${written} is read as ${print}`, () => {
    expect(canonical(written)).toBe(print);
    expect(canonical(print)).toBe(print);
  });
}

test("a full dose, all parts", () => {
  expect(readDose("2 × 8–10 each side @62,5 kg + 1 × 12, rest 2 min, 1–2 in reserve, tempo 3-1-1")).toEqual({
    ok: true,
    value: {
      sets: [
        ...Array(2).fill({
          amount: { kind: "reps", span: { from: 8, to: 10 } },
          eachSide: true,
          load: { value: 62.5, unit: "kg" },
          reserve: { from: 1, to: 2 },
        }),
        { amount: { kind: "reps", span: { from: 12, to: 12 } }, eachSide: false, reserve: { from: 1, to: 2 } },
      ],
      restS: 120,
      tempo: [3, 1, 1, 0],
    },
  });
});

/** `code offset [found] maybe`, several divided by a semicolon. */
function problems(text: string): string {
  const read = readDose(text);
  if (read.ok) return `read as ${printDose(read.value)}`;
  return read.problems
    .map(({ code, offset, found, maybe }) => `${code.slice(5)} ${offset} [${found}]${maybe ? ` ${maybe}` : ""}`)
    .join("; ");
}

const SLIPS: readonly (readonly [written: string, problems: string])[] = [
  ["", "empty 0 []"],
  ["   ", "empty 0 []"],
  ["8", "no-sets 0 [8] 1 × 8"],
  ["8–10", "no-sets 0 [8–10] 1 × 8–10"],
  ["3 ×", "unfinished 0 [3 ×]"],
  ["3 x , rest 90 s", "unfinished 0 [3 x]"],
  ["3 × 8,", "unfinished 5 [,]"],
  ["3 × 8 +", "unfinished 6 [+]"],
  ["3 × 8–", "unfinished 4 [8–] 8–10"],
  ["3 × 8, rest", "unfinished 7 [rest] rest 90 s"],
  ["3 × 8 @", "unfinished 6 [@] @80 %"],
  ["3 × 8, RPE", "unfinished 7 [RPE] RPE 8"],
  ["3 × 8, tempo 3", "unfinished 7 [tempo 3] tempo 3-1-1-0"],
  ["3 × 8 (2 in reserve", "unfinished 6 [(2 in reserve]"],
  ["3 × 12-8", "reversed 4 [12-8] 8–12"],
  ["3 × 60–30 s", "reversed 4 [60–30 s] 30–60 s"],
  ["3 × 8, 3-2 in reserve", "reversed 7 [3-2] 2–3"],
  ["3 × 8, RPE 9-8", "reversed 11 [9-8] RPE 8–9"],
  ["0 × 8", "out-of-range 0 [0]"],
  ["21 × 8", "out-of-range 0 [21]"],
  ["15 × 8 + 15 × 6", "out-of-range 0 [15 × 8 + 15 × 6]"],
  ["3 × 0", "out-of-range 4 [0]"],
  ["3 × 101", "out-of-range 4 [101]"],
  ["3 × 10^9", "out-of-range 4 [10^9]"],
  ["3 × 1e9", "out-of-range 4 [1e9]"],
  ["10^9 × 8", "out-of-range 0 [10^9]"],
  ["3 × 601 s", "out-of-range 4 [601 s]"],
  ["3 × 10001 m", "out-of-range 4 [10001 m]"],
  ["1 × 301 min", "out-of-range 4 [301 min]"],
  ["3 × 8, rest 901 s", "out-of-range 12 [901 s]"],
  ["3 × 8 @101%", "out-of-range 6 [@101%]"],
  ["3 × 8 @0 kg", "out-of-range 6 [@0 kg]"],
  ["3 × 8 @1200 kg", "out-of-range 6 [@1200 kg]"],
  ["3 × 8, RPE 12", "out-of-range 11 [12]"],
  ["3 × 8, RPE 6", "out-of-range 11 [6] 4–6 in reserve"],
  ["3 × 8, 11 in reserve", "out-of-range 7 [11]"],
  ["3 × 8, tempo 30-1-1", "out-of-range 13 [30-1-1]"],
  ["3 × 8, tempo 0-0-0", "out-of-range 13 [0-0-0]"],
  ["3 × 8.5", "not-whole 4 [8.5] 8 reps"],
  ["1.5 × 8", "not-whole 0 [1.5] 1 sets"],
  ["3 × 8 @82.5%", "not-whole 6 [@82.5%] 82 %"],
  ["3 × 8 @62.1234 kg", "not-whole 6 [@62.1234 kg] @62.123 kg"],
  ["3 × 8, RPE 8.3", "not-whole 11 [8.3]"],
  ["3 × 8, rest 2-3 min", "one-number 12 [2-3 min] rest 3 min"],
  ["3 × 8 @70-75%", "one-number 6 [@70-75%] @70 %"],
  ["3 × 8-10-12", "one-number 4 [8-10-12] 8, 10, 12"],
  ["3 × 8, rest 2", "unit-missing 12 [2] rest 2 min"],
  ["3 × 8 @60", "unit-missing 6 [@60] @60 %, @60 kg"],
  ["3 × 8 @8", "unit-missing 6 [@8] RPE 8"],
  ["3 × 1:30", "unit-missing 4 [1:30] 90 s"],
  ["3 × 8, 90 s", "mixed-units 7 [90 s] rest 90 s"],
  ["10, 8, 8, 90 s", "mixed-units 10 [90 s] rest 90 s"],
  ["30 s, 20", "mixed-units 6 [20] 20 s"],
  ["3 × 20 s–30 m", "mixed-units 4 [20 s–30 m]"],
  ["3 × 30 s–1 min", "mixed-units 4 [30 s–1 min] 30–60 s"],
  ["3 × 8 + 1 × 30 s", "mixed-units 12 [30 s]"],
  ["3 × 60 kg", "no-amount 4 [60 kg] 8 @60 kg"],
  ["3 × many", "no-amount 4 [many]"],
  ["× 8", "no-amount 0 [× 8]"],
  ["3 × -8", "no-amount 4 [-8]"],
  ["3 × 10, 8", "count 0 [3 × 10, 8] 10, 8"],
  ["3 × 8 @80% @60 kg", "percent-and-load 11 [@60 kg]"],
  ["3 × 8 @80%, 60 kg", "percent-and-load 12 [60 kg]"],
  ["3 × 8 @2x12 kg", "pair-load 6 [@2x12 kg] @12 kg"],
  ["3 × 8 @20 kg each side", "side-of-load 12 [each side] each side @20 kg"],
  ["3 × 8 @1,000 lb", "comma 6 [@1,000 lb] @1000 lb, @1.000 lb"],
  ["3 × 8, rest 60 s, rest 90 s", "twice 18 [rest 90 s]"],
  ["3 × 8, 2 RIR, RPE 8", "twice 14 [RPE 8]"],
  ["3 × 8 each side, each leg", "twice 17 [each leg]"],
  ["AMRAP, at least 5 (at least 3)", "twice 19 [at least 3]"],
  ["3 × 8, at least 5", "at-least-alone 7 [at least 5]"],
  ["3 × 8, 15 s inside", "inside-alone 7 [15 s inside]"],
  ["3 × 4+4+4", "inside-missing 4 [4+4+4] 4+4+4, 15 s inside"],
  ["3 × 8, rset 90 s", "unknown-word 7 [rset 90 s] rest"],
  ["3 × 8 please do it well", "unknown-word 6 [please do it well]"],
  ["3 × 20 breaths", "unknown-word 7 [breaths]"],
  ["３ × １２－８", "reversed 4 [１２－８] 8–12"],
];

for (const [written, told] of SLIPS) test(`${written}: ${told}`, () => expect(problems(written)).toBe(told));

test("every problem that a dose can have is shown above or below", () => {
  const shown = new Set(SLIPS.flatMap(([, told]) => told.split("; ").map((one) => `dose/${one.split(" ")[0]}`)));
  expect(DOSE_PROBLEMS.filter((code) => !shown.has(code))).toEqual(["dose/too-long"]);
});

test("each problem says what is allowed", () => {
  for (const [written] of SLIPS) {
    const read = readDose(written);
    expect(read.ok ? ["read"] : read.problems.filter(({ allowed }) => allowed === "")).toEqual([]);
  }
});

test("all that is wrong with one dose is told at once, in order", () => {
  expect(problems("0 × 12-8, rest 2000 s, RPE 12, 11 in reserve blah")).toBe(
    "out-of-range 0 [0]; reversed 4 [12-8] 8–12; out-of-range 15 [2000 s]; out-of-range 27 [12]; out-of-range 31 [11]; unknown-word 45 [blah]",
  );
});

test("a dose of more than 2,000 characters is refused unread", () => {
  expect(problems(`3 × 8${" ".repeat(2000)}`)).toBe("too-long 0 [2005]");
});

test("nothing that is typed makes it fall, and every problem points into the text at what it found", () => {
  const pieces =
    "3 × x 8 – - 10 12 , ; + / ( ) @ % kg lb RPE rest s min m km each side in reserve at least AMRAP as many as possible tempo 3-1-1 15 inside contacts 1:30 10^9 1e9 ' \" . ５ \u00a0 İ ß 😀".split(
      " ",
    );
  const typed = fc.oneof(
    fc.string({ unit: "grapheme", maxLength: 30 }),
    fc.array(fc.constantFrom(...pieces, " "), { maxLength: 25 }).map((all) => all.join(" ")),
    fc.array(fc.constantFrom(...pieces, " "), { maxLength: 25 }).map((all) => all.join("")),
  );
  fc.assert(
    fc.property(typed, (text) => {
      const read = readDose(text);
      if (read.ok) {
        expect(readDose(printDose(read.value))).toEqual(read);
        return;
      }
      expect(read.problems.length).toBeGreaterThan(0);
      for (const { offset, found, allowed } of read.problems) {
        expect(
          text.startsWith(
            found.replace(/…$/, ""),
            offset + (text.slice(offset).length - text.slice(offset).trimStart().length),
          ),
        ).toBe(true);
        expect(allowed).not.toBe("");
      }
    }),
    { numRuns: 3000 },
  );
});

test("one slip in a good dose is told or makes another good dose, never anything between", () => {
  fc.assert(
    fc.property(doses, fc.nat(), fc.constantFrom("", "0", "x", ",", "+", " ", "q"), (dose, where, letter) => {
      const print = printDose(dose);
      const at = where % print.length;
      const read = readDose(print.slice(0, at) + letter + print.slice(at + 1));
      if (read.ok) expect(readDose(printDose(read.value))).toEqual(read);
      else expect(read.problems.length).toBeGreaterThan(0);
    }),
    { numRuns: 2000 },
  );
});
