import fc from "fast-check";
import { expect, test } from "vitest";
import { z } from "zod";
import { civil, day, printDay } from "../day.ts";
import { dayPiece, given, idPiece, knownPiece, loadsPiece, namePiece, readDay, tellSameIds } from "./file-pieces.ts";

function told(schema: z.ZodType, value: unknown): readonly unknown[] {
  return (schema.safeParse(value).error?.issues ?? []).map((issue) => ("params" in issue ? issue.params : issue.code));
}

test("a day is read when, and only when, the platform's own calendar has it", () => {
  const numbers = fc.tuple(
    fc.integer({ min: 1900, max: 2199 }),
    fc.integer({ min: 1, max: 12 }),
    fc.integer({ min: 1, max: 31 }),
  );
  fc.assert(
    fc.property(numbers, ([year, month, date]) => {
      const text = [year, month, date].map((part) => String(part).padStart(2, "0")).join("-");
      const platform = new Date(Date.UTC(year, month - 1, date));
      const exists = platform.getUTCMonth() === month - 1;
      const read = dayPiece.safeParse(text);
      expect(read.success).toBe(exists);
      if (read.success) expect(read.data * 86_400_000).toBe(platform.getTime());
    }),
  );
});

test("a day beyond the end of its month is told the last one that there is", () => {
  for (const [text, last] of [
    ["2027-02-29", "2027-02-28"],
    ["2028-02-30", "2028-02-29"],
    ["2027-04-31", "2027-04-30"],
  ] as const) {
    expect(told(dayPiece, text)).toEqual([{ code: "date/none", found: text, maybe: last }]);
  }
  expect(told(dayPiece, "2027-00-10")).toEqual([{ code: "date/none", found: "2027-00-10" }]);
  expect(told(dayPiece, "2027-12-32")).toEqual([{ code: "date/none", found: "2027-12-32" }]);
});

test("a day that stands alone is read as one in a file", () => {
  expect(readDay("2027-01-11")).toEqual({ ok: true, value: day("2027-01-11") });
  for (const text of ["monday", "2027-02-29", "2200-01-01", ""]) {
    expect(readDay(text)).toMatchObject({ ok: false, wrong: told(dayPiece, text)[0] });
  }
});

test("years from 1900 to 2199", () => {
  expect(dayPiece.parse("1900-01-01")).toBe(day("1900-01-01"));
  expect(printDay(dayPiece.parse("2199-12-31"))).toBe("2199-12-31");
  expect(civil(dayPiece.parse("2000-02-29")).date).toBe(29);
  for (const text of ["1899-12-31", "2200-01-01"]) expect(told(dayPiece, text)).toMatchObject([{ code: "date/years" }]);
});

test("names: counted by character and not by half, trimmed, without marks that cannot be seen", () => {
  expect(namePiece(3).parse("😀😀😀")).toBe("😀😀😀");
  expect(told(namePiece(3), "😀😀😀😀")).toMatchObject([{ code: "value/long", found: "4" }]);
  expect(namePiece(9).parse(" Åsa ")).toBe("Åsa");
  expect(namePiece(9).parse("א\u200Fב")).toBe("א\u200Fב");
  for (const mark of ["\u0000", "\u007F", "\u0085", "\u2028", "\u202E", "\u2066", "\uD800", "\n"]) {
    expect(told(namePiece(9), `a${mark}b`), mark).toMatchObject([{ code: "name/marks", offset: 1 }]);
  }
  expect(namePiece(9, "lines").parse("a\n\tb")).toBe("a\n\tb");
  expect(told(namePiece(9, "lines"), "a\u0007")).toMatchObject([{ code: "name/marks", found: "U+0007" }]);
});

test("ids, and the id that was likely meant", () => {
  for (const id of ["ann", "ann-2", "2-ann", "a".repeat(40)]) expect(idPiece.parse(id)).toBe(id);
  for (const [text, maybe] of [
    ["Ann", "ann"],
    ["bao linh", "bao-linh"],
    ["Sölve!", "solve"],
    ["-a-", "a"],
    ["a".repeat(41), "a".repeat(40)],
  ] as const) {
    expect(told(idPiece, text)).toMatchObject([{ code: "id/form", maybe }]);
  }
  expect(told(idPiece, "ليان")[0]).not.toHaveProperty("maybe");
});

test("an id must be known where any are known, also where none is", () => {
  expect(knownPiece(undefined).parse("anything")).toBe("anything");
  expect(told(knownPiece(new Set(["room"])), "rooms")).toMatchObject([{ code: "name/unknown", maybe: "room" }]);
  expect(told(knownPiece(new Set()), "room")).toMatchObject([{ code: "name/unknown", allowed: "" }]);
});

test("loads rise through all entries of a list", () => {
  expect(
    loadsPiece(1)
      .parse(["1–3 kg by 1", "5 kg"])
      .map(({ value }) => value),
  ).toEqual([1, 2, 3, 5]);
  expect(told(loadsPiece(1), ["1–3 kg by 1", "3 kg"])).toMatchObject([{ code: "load/order", allowed: "> 3 kg" }]);
  expect(told(loadsPiece(2), "3 kg")).toMatchObject([{ code: "load/count", allowed: "2–400" }]);
});

test("what was not given is not there at all", () => {
  expect(Object.keys(given({ a: 1, b: undefined, c: null }))).toEqual(["a", "c"]);
});

test("an id that stands twice is told at its second place, whatever else is wrong", () => {
  const list = z.array(z.strictObject({ id: z.string() })).superRefine(tellSameIds, { when: () => true });
  const issues = list.safeParse([{ id: "a" }, { id: "b" }, { id: "a" }, 5]).error?.issues ?? [];
  expect(issues.map((issue) => [issue.code, issue.path])).toEqual([
    ["invalid_type", [3]],
    ["custom", [2, "id"]],
  ]);
});
