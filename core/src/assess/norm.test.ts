import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { normOf } from "./norm.ts";

const ON = day("2027-03-01");
const born = (age: number) => day(`${2027 - age}-01-01`);
const codes = (...args: Parameters<typeof normOf>) => normOf(...args).map(({ code }) => code);

describe("rikliJones1999: below average is fewer than the lower end", () => {
  test.each([
    [10, 76, "man", "assess/below-average"],
    [11, 76, "man", "assess/middle-half"],
    [25, 76, "man", "assess/middle-half"],
    [9, 72, "woman", "assess/below-average"],
    [9, 59, "woman", "assess/no-norm"],
  ] as const)("%d stands at %d, %s: %s", (value, age, sex, code) => {
    expect(codes("chair-stand-30", value, born(age), ON, sex)).toEqual([code]);
  });
});

test("the age of the day of the test is used, also on the eve of a birthday", () => {
  const eve = day("1962-03-02");
  expect(codes("chair-stand-30", 13, eve, ON, "man")).toEqual(["assess/below-average"]);
  expect(codes("chair-stand-30", 13, eve, day("2027-03-02"), "man")).toEqual(["assess/middle-half"]);
});

test("csepPushUps: men from the toes and women from the knees; the other protocol has no row", () => {
  expect(normOf("push-up-toes", 20, born(34), ON, "man")[0]?.data).toMatchObject({ class: "good" });
  expect(normOf("push-up-knees", 7, born(52), ON, "woman")[0]?.data).toMatchObject({ class: "good" });
  expect(codes("push-up-knees", 20, born(34), ON, "man")).toEqual(["assess/no-norm"]);
  expect(codes("push-up-toes", 20, born(34), ON, "woman")).toEqual(["assess/no-norm"]);
});

test("bohannon2006 needs no sex; ewgsop2019 speaks of older people only, and never of a diagnosis", () => {
  expect(normOf("one-leg-stand", 12, born(72), ON, undefined)[0]?.data).toMatchObject({ mean: 17.2 });
  expect(codes("grip", 15, born(72), ON, "woman")).toEqual(["assess/talk-to-doctor", "assess/talk-to-doctor"]);
  expect(codes("grip", 15, born(40), ON, "woman")).toEqual([]);
  expect(codes("usual-walk", 1.2, born(72), ON, "woman")).toEqual([]);
});

test("a sex that nobody said is told, and tests without an open norm say nothing", () => {
  expect(codes("chair-stand-30", 9, born(72), ON, undefined)).toEqual(["assess/sex-unknown"]);
  expect(codes("front-plank", 60, born(30), ON, "man")).toEqual([]);
});
