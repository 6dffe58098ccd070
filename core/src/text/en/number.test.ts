import fc from "fast-check";
import { expect, test } from "vitest";
import { listed, plural, printNumber, printSpan, runs } from "./number.ts";

test("a point, no empty decimals, a narrow space from ten thousand on", () => {
  expect([12.5, 10, 0.125, 1000, 10_000, 1_234_567.5, -3, 0].map((value) => printNumber(value))).toEqual([
    "12.5",
    "10",
    "0.13",
    "1000",
    "10\u202f000",
    "1\u202f234\u202f567.5",
    "−3",
    "0",
  ]);
});

test("a number that is none is shown as missing, and what rounds to nothing has no sign", () => {
  expect([Number.NaN, Number.POSITIVE_INFINITY].map((value) => printNumber(value))).toEqual(["?", "?"]);
  expect(printNumber(-0.001)).toBe("0");
});

test("what is printed reads back as the number, to its decimals", () => {
  fc.assert(
    fc.property(fc.integer({ min: -9_999_999, max: 9_999_999 }), (hundredths) => {
      const text = printNumber(hundredths / 100)
        .replaceAll("\u202f", "")
        .replace("−", "-");
      expect(Number(text)).toBe(hundredths / 100 + 0);
    }),
  );
});

test("one and many", () => {
  expect([0, 1, 1.5, 2].map((count) => plural(count, "set", "sets"))).toEqual([
    "0 sets",
    "1 set",
    "1.5 sets",
    "2 sets",
  ]);
});

test("spans and runs", () => {
  expect([printSpan(8, 10), printSpan(8, 8)]).toEqual(["8–10", "8"]);
  expect([runs([1, 2, 3, 5, 7, 8]), runs([4]), runs([])]).toEqual(["1–3, 5, 7–8", "4", ""]);
});

test("lists", () => {
  expect([listed(["a"]), listed(["a", "b"]), listed(["a", "b", "c"], "or"), listed([])]).toEqual([
    "a",
    "a and b",
    "a, b or c",
    "?",
  ]);
});
