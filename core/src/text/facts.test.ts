import { expect, test } from "vitest";
import { dataIn, dataListIn, listIn, MISSING, numberIn, numbersIn, said, wordsIn } from "./facts.ts";

const data = { name: "Squat", sets: 3, open: null, weeks: [1, 2], inner: { a: 1 }, many: [{ a: 1 }, "x", { a: 2 }] };

test("what is there is given, what is missing is never a word of the machine", () => {
  expect([said(data, "name"), said(data, "sets"), said(data, "gone"), said(data, "open")]).toEqual([
    "Squat",
    "3",
    MISSING,
    MISSING,
  ]);
  expect(numberIn(data, "sets")).toBe(3);
  expect(numberIn(data, "name")).toBeNaN();
});

test("lists are lists, one value is a list of one, nothing an empty one", () => {
  expect(numbersIn(data, "weeks")).toEqual([1, 2]);
  expect(wordsIn(data, "name")).toEqual(["Squat"]);
  expect(listIn(data, "open")).toEqual([]);
});

test("data inside data", () => {
  expect(dataIn(data, "inner")).toEqual({ a: 1 });
  expect(dataIn(data, "weeks")).toBeUndefined();
  expect(dataListIn(data, "many")).toEqual([{ a: 1 }, { a: 2 }]);
});
