import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readDelimited } from "./delimited.ts";

const textsOf = (text: string) => {
  const read = readDelimited(text);
  return read.ok ? [read.heading, ...read.rows].map(({ cells }) => cells.map((cell) => cell.text)) : read;
};

describe("im-03, im-05 (open cases): what spreadsheets write", () => {
  test("the first line tells what parts the cells, not a comma further down", () => {
    expect(textsOf("Name;Last;Wdh\nMüller;22,5;8\nIvić;1.250,0;5\nNg;17.5;10")).toEqual([
      ["Name", "Last", "Wdh"],
      ["Müller", "22,5", "8"],
      ["Ivić", "1.250,0", "5"],
      ["Ng", "17.5", "10"],
    ]);
  });
  test("a mark before the first heading does not become part of it, names in any script stay", () => {
    expect(textsOf("\uFEFFname\tday\n林美玲\t2027-01-12\r\nנועה\t2027-01-13\r\n")).toEqual([
      ["name", "day"],
      ["林美玲", "2027-01-12"],
      ["נועה", "2027-01-13"],
    ]);
  });
});

test("another reader of the same files reads the same (csv-parse, RFC 4180)", () => {
  const cell = fc.string({
    unit: fc.constantFrom("a", "é", ",", ";", '"', "\n", "\r\n", " ", "7", "|"),
    maxLength: 8,
  });
  const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;
  fc.assert(
    fc.property(fc.array(fc.tuple(cell, cell, cell), { minLength: 1, maxLength: 6 }), (rows) => {
      const text = `x,y,z\n${rows.map((row) => row.map(quoted).join(",")).join("\n")}`;
      const theirs = (parse(text) as string[][])
        .map((row) => row.map((each) => each.normalize("NFC").trim()))
        .filter((row, at) => at === 0 || row.some((each) => each !== ""));
      const ours = textsOf(text);
      if (theirs.length === 1) expect(ours).toMatchObject({ ok: false, code: "table/empty" });
      else expect(ours).toEqual(theirs);
    }),
    { seed: 20_270_111 },
  );
});

describe("places and bounds", () => {
  test("lines and columns are those of the file, also after a cell of several lines", () => {
    const read = readDelimited('a,b\n"one\ntwo",x\n\n7,"y"');
    expect(read.ok && read.rows.map(({ line, cells }) => [line, cells.map(({ column }) => column)])).toEqual([
      [2, [1, 6]],
      [5, [1, 3]],
    ]);
  });
  test.each([
    ["", "table/empty", 1, 1],
    ["a,b\n", "table/empty", 1, 1],
    ['a,b\n1,"x', "table/quote-open", 2, 3],
    ['a,b\n"1"2,x', "table/after-quote", 2, 4],
    ["a,A\n1,2", "table/heading-twice", 1, 3],
    ["a,b\n1,2,3", "table/more-cells", 2, 5],
    [`a,b\n${"x".repeat(501)},2`, "table/cell-too-long", 2, 1],
    [`a,b\n${",".repeat(60)}x`, "table/too-many-cells", 2, 61],
  ])("%j", (text, code, line, column) => {
    expect(readDelimited(text)).toEqual({ ok: false, code, line, column });
  });
  test("a million lines of one cell are refused soon", () => {
    expect(readDelimited(`a\n${"1\n".repeat(1_000_000)}`)).toMatchObject({ ok: false, code: "table/too-many-rows" });
  });
});
