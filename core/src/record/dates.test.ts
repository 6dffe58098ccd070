import { expect, test } from "vitest";
import { day } from "../day.ts";
import { printDays, readDates } from "./dates.ts";

const turned = (text: string) => ({ kind: "day", day: day(text), turned: true });

test("as ISO 8601 writes them, nothing is repaired; a blank stays one", () => {
  expect(readDates(["2027-01-12", ""])).toEqual([
    { kind: "day", day: day("2027-01-12"), turned: false },
    { kind: "blank" },
  ]);
});

test("the serial number of a spreadsheet is its date: 46244 is 10 August 2026 (open case im-01)", () => {
  expect(readDates(["46244"])).toEqual([turned("2026-08-10")]);
});

test("one cell that can be read in one order only tells the order of the column", () => {
  expect(readDates(["02/03/2027", "13/01/2027"])).toEqual([turned("2027-03-02"), turned("2027-01-13")]);
  expect(readDates(["02.03.2027", "01.13.2027"])).toEqual([turned("2027-02-03"), turned("2027-01-13")]);
});

test("nobody tells the order: asked, unless both are one day", () => {
  const [either, same] = readDates(["02/03/2027", "04/04/2027"]);
  expect(either).toEqual({ kind: "either", maybe: [day("2027-03-02"), day("2027-02-03")] });
  expect(either?.kind === "either" && printDays(either.maybe)).toBe("2027-03-02 or 2027-02-03");
  expect(same).toEqual(turned("2027-04-04"));
});

test("a column that shows both orders is not read by either; what the coach says stands", () => {
  const cells = ["13/01/2027", "01/13/2027", "02/03/2027"];
  expect(readDates(cells)[2]!.kind).toBe("either");
  expect(readDates(cells, "day first")).toEqual([turned("2027-01-13"), { kind: "no date" }, turned("2027-03-02")]);
});

test.each(["32/01/2027", "2027-02-30", "12-Aug", "46", "soon"])("%s is no date", (text) => {
  expect(readDates([text])).toEqual([{ kind: "no date" }]);
});

// Forms that spreadsheets and telephones write; common practice, no source.
test.each([
  ["27 Oct 2026", "2026-10-27"],
  ["Tue 27.10.2026", "2026-10-27"],
  ["27.10.26", "2026-10-27"],
  ["2026/10/27", "2026-10-27"],
  ["2026-1-5", "2026-01-05"],
  ["2026-10-27T18:30", "2026-10-27"],
  ["27/10/2026 18:30", "2026-10-27"],
  ["46322.75", "2026-10-27"],
  ["October 27th, 2026", "2026-10-27"],
  ["27. März 2027", "2027-03-27"],
  ["3 août 2026", "2026-08-03"],
  ["1 de mayo de 2027", "2027-05-01"],
  ["29-Feb-2028", "2028-02-29"],
])("%s is %s, and is shown", (text, wanted) => {
  expect(readDates([text])).toEqual([turned(wanted)]);
});

test("an hour with a zone may be of another day, 29 February needs its year, and no year is guessed", () => {
  for (const text of ["2026-10-27T23:30Z", "29 Feb 2027", "27/10", "27 Oct"])
    expect(readDates([text])).toEqual([{ kind: "no date" }]);
});
