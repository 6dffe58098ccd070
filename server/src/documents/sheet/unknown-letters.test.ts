import { expect, test } from "vitest";
import { unknownLetters, withoutLetters } from "./unknown-letters.ts";

/** As the typesetter's error prints itself. */
const COMPLAINT =
  'Error: [SourceDiagnostic { message: "PDF/UA-1 error: the text `\\"ተ\\"` could not be displayed with font `\\"A\\"`" }, SourceDiagnostic { message: "PDF/UA-1 error: the text `\\"\\\\u{20e3}\\"` could not be displayed with font `\\"A\\"`" }, SourceDiagnostic { message: "PDF/UA-1 error: the text `\\"1\\"` could not be displayed with font `\\"A\\"`" }]';

test("reads the letters from the complaint, escapes too", () => {
  expect(unknownLetters(COMPLAINT)).toEqual(["ተ", "\u20e3", "1"]);
  expect(unknownLetters("file not found")).toEqual([]);
});

test("a joining mark goes first, and what it stood on stays", () => {
  expect(withoutLetters({ name: "1\u20e3 ተ", list: ["1", 1, null] }, ["ተ", "\u20e3", "1"])).toEqual({
    name: "1 ተ",
    list: ["1", 1, null],
  });
});

test("a letter becomes a square; keys and numbers stay", () => {
  expect(withoutLetters({ ተ: "ተስ", count: 3 }, ["ተ"])).toEqual({ ተ: "□ስ", count: 3 });
});

test("plain letters and the square itself are never taken out", () => {
  expect(withoutLetters({ name: "1 □" }, ["1", "□"])).toBeUndefined();
  expect(withoutLetters({ name: "x" }, [])).toBeUndefined();
});
