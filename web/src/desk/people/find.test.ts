import { expect, test } from "vitest";
import { findPeople, type Line } from "./find.ts";

const line = (name: string, more: Partial<Line> = {}): Line => ({
  id: name,
  name,
  programme: "Harbour Steps",
  waiting: 0,
  ...more,
});
const PEOPLE = [
  line("Loïc Le Gall", { last: "2027-03-01", waiting: 2, next: { day: "2027-03-05", from: 990, title: "A" } }),
  line("Ömer Aydın", { programme: "Slipway Strength", last: "2027-02-11" }),
  line("Bao-Linh Tran", { waiting: 1, next: { day: "2027-03-05", from: 465, title: "B" } }),
];
const names = (text: string, by: Parameters<typeof findPeople>[2] = "name") =>
  findPeople(PEOPLE, text, by).map(({ name }) => name.split(" ")[0]);

test("finds by any part of name or programme, without capitals and accents", () => {
  expect(names("loic")).toEqual(["Loïc"]);
  expect(names("OMER")).toEqual(["Ömer"]);
  expect(names("slip")).toEqual(["Ömer"]);
  expect(names("  ")).toHaveLength(3);
  expect(names("tran bao")).toEqual(["Bao-Linh"]);
  expect(names("nobody")).toEqual([]);
});

test("orders: names, the silent first, the next session first, the most decisions first", () => {
  expect(names("")).toEqual(["Bao-Linh", "Loïc", "Ömer"]);
  expect(names("", "last")).toEqual(["Bao-Linh", "Ömer", "Loïc"]);
  expect(names("", "next")).toEqual(["Bao-Linh", "Loïc", "Ömer"]);
  expect(names("", "waiting")).toEqual(["Loïc", "Bao-Linh", "Ömer"]);
  expect(names("", "programme")).toEqual(["Bao-Linh", "Loïc", "Ömer"]);
});
