import { describe, expect, test } from "vitest";
import { readNumberColumn } from "./decimal-column.ts";

describe("im-03: decimal commas, one point among them (known fault of imports)", () => {
  const { mark, cells } = readNumberColumn(["22,5", "1.250,0", "17.5"]);
  test("the column is written with a comma", () => {
    expect(mark).toBe(",");
    expect(cells[0]).toEqual({ kind: "number", value: 22.5 });
  });
  test("thousands and decimals together are read and asked", () => {
    expect(cells[1]).toEqual({ kind: "ask", text: "1.250,0", maybe: [1250], because: "grouped" });
  });
  test("the other mark is asked, and offers neither 175 nor 17", () => {
    expect(cells[2]).toEqual({ kind: "ask", text: "17.5", maybe: [17.5], because: "other mark" });
  });
  test("in a column of points the same cell is a number", () => {
    const points = readNumberColumn(["17.5", "22,5", "20.25"]);
    expect(points.mark).toBe(".");
    expect(points.cells.map(({ kind }) => kind)).toEqual(["number", "ask", "number"]);
  });
  test.each(["1.250", "1,250"])("a lone %s is thousands or decimals: both are offered", (text) => {
    const column = readNumberColumn([text]);
    expect(column.mark).toBeUndefined();
    expect(column.cells[0]).toEqual({ kind: "ask", text, maybe: [1.25, 1250], because: "thousands or decimals" });
  });
});

test("whole numbers, blanks and words are what they are", () => {
  expect(readNumberColumn(["8", " 10 ", "", "ten", "-3", "1.2.3", "1,000,000.5", "1.000.000"]).cells).toEqual([
    { kind: "number", value: 8 },
    { kind: "number", value: 10 },
    { kind: "blank" },
    { kind: "text", text: "ten" },
    { kind: "text", text: "-3" },
    { kind: "text", text: "1.2.3" },
    { kind: "ask", text: "1,000,000.5", maybe: [1_000_000.5], because: "grouped" },
    { kind: "text", text: "1.000.000" },
  ]);
});

test("a tie goes to the first mark", () => {
  expect(readNumberColumn(["1,5", "2.5"]).mark).toBe(",");
  expect(readNumberColumn(["2.5", "1,5"]).mark).toBe(".");
});
