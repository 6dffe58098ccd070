import { expect, test } from "vitest";
import { PATTERNS } from "../../model/index.ts";
import { sheet } from "./sheet.ts";

test("weeks side by side", () => {
  expect(sheet.weeks([5])).toBe("week 5");
  expect(sheet.weeks([5, 6])).toBe("weeks 5 and 6");
  expect(sheet.weeks([5, 6, 7])).toBe("weeks 5 to 7");
  expect(sheet.weeks([1, 2, 4])).toBe("weeks 1, 2 and 4");
});

test("days are short", () => {
  // 2 March 2027 is a Tuesday by the Gregorian calendar.
  expect(sheet.shortDay("2027-03-02")).toBe("Tue 2 Mar");
  expect(sheet.screened("2027-03-02", "2027-09-30")).toBe("screened 2 Mar 2027, until 30 Sep 2027");
});

test("what stays open is told once, in the order of the session", () =>
  expect(sheet.open(["hinge", "anti-extension", "anti-rotation"])).toBe(
    "Left open: hip hinge and trunk work. Ask your coach.",
  ));

test("every pattern has words of its own that hold no word of the trade's theory", () => {
  for (const pattern of PATTERNS) expect(sheet.open([pattern])).not.toMatch(/anti-|isolation|locomotion|undefined/);
});

test("a letter is called a session, a title stands alone", () => {
  expect(sheet.session("B")).toBe("Session B");
  expect(sheet.session("Legs first")).toBe("Legs first");
});
