import { expect, test } from "vitest";
import { givenBy } from "./reckoning.ts";

const given = givenBy(new Map([["load", { value: 45, unit: "lb" }]]), new Map([["sex", "man"]]));

test("what was answered is handed out by name", () => {
  expect([given.number("load"), given.unit("load"), given.word("sex")]).toEqual([45, "lb", "man"]);
  expect([given.numberIf("reps"), given.wordIf("lift")]).toEqual([undefined, undefined]);
});

test("asking for what was never asked of anybody is a slip of ours", () => {
  expect(() => given.number("reps")).toThrow(TypeError);
  expect(() => given.unit("reps")).toThrow(TypeError);
  expect(() => given.word("lift")).toThrow(TypeError);
});
