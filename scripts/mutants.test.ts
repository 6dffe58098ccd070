import { expect, test } from "vitest";
import { besideFirst, mutantsOf, mutated, wilsonLower } from "./mutants.ts";

const changes = (text: string) => mutantsOf(text).map(({ from, to }) => `${from} ${to}`);

test("operators, numbers, truths and calls are changed, one at a time", () => {
  expect(changes("const far = a < 3;")).toEqual(["< <=", "3 4"]);
  expect(changes("return !known && list.some(isFar) ? -1 : Math.max(a, 1_000);")).toEqual([
    "! ",
    "&& ||",
    ".some( .every(",
    "- ",
    "1 2",
    "Math.max( Math.min(",
    "1_000 1001",
  ]);
  expect(changes("\n  if (left > 0) continue;\n")).toEqual([
    "if ( if (false && ",
    "if ( if (true || ",
    "> >=",
    "0 1",
    "continue; ;",
  ]);
});

test("a call that stands alone is left out", () => {
  expect(changes("\n  picks.push(o);\n  const taken = f(o);\n")).toEqual(["picks.push(o); ;"]);
});

test("texts, comments, patterns and generics stay", () => {
  expect(changes('// a < 3\n/* 1 + 1 */ say("a < 3", `b && 1`, /a < 3/);')).toEqual([]);
  expect(changes("const list: Array<Map<string, Set<T>>> = make<T>();")).toEqual([]);
  expect(changes("const half = step2 * 0.5;")).toEqual(["* /"]);
});

test("a mutant stands where its fault stands", () => {
  const text = "a < b && c < d";
  expect(mutantsOf(text).map((mutant) => mutated(text, mutant))).toEqual([
    "a <= b && c < d",
    "a < b || c < d",
    "a < b && c <= d",
  ]);
});

test("the tests beside a source file come first, all others after them", () => {
  const tests = ["a/x.test.ts", "a/xx.test.ts", "b/x.test.ts"];
  expect(besideFirst(tests, (path) => path, "a/x.ts")).toEqual([["a/x.test.ts"], ["a/xx.test.ts", "b/x.test.ts"]]);
  expect(besideFirst(tests, (path) => path, "a/y.ts")).toEqual([[], tests]);
});

test("Wilson's lower end: 0 for nothing known, and the worked values of the score interval", () => {
  expect(wilsonLower(0, 0)).toBe(0);
  // Worked from (p + z²/2n − z·√(p(1 − p)/n + z²/4n²)) / (1 + z²/n), z = 1.96.
  expect(wilsonLower(9, 10)).toBeCloseTo(0.5958, 4);
  expect(wilsonLower(270, 300)).toBeCloseTo(0.8608, 4);
  expect(wilsonLower(300, 300)).toBeCloseTo(0.9874, 4);
});
