import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { expect, test } from "vitest";
import { writeTable } from "./write-table.ts";

test("begins with a byte order mark, ends every line as RFC 4180 says", () => {
  expect(writeTable(["a", "b"], [[1.5, "x"]])).toBe("\ufeffa,b\r\n1.5,x\r\n");
});

test("commas, quotes and line breaks are quoted; yes and no are words", () => {
  expect(writeTable(["a"], [['x,"y"\nz'], [true], [false]])).toBe('\ufeffa\r\n"x,""y""\nz"\r\nyes\r\nno\r\n');
});

test("a point for decimals, no thousands, no exponent, for every load there is", () => {
  const back = parse(writeTable(["a"], [[1234.5], [0.125], [22000]]), { bom: true }) as string[][];
  expect(back.slice(1).flat()).toEqual(["1234.5", "0.125", "22000"]);
});

test("whatever is written is read back by another reader", () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.string({ unit: "binary" }), fc.string({ unit: "binary" })), { minLength: 1 }),
      (rows) => {
        const back = parse(writeTable(["a", "b"], rows), { bom: true, record_delimiter: "\r\n" }) as string[][];
        expect(back).toEqual([["a", "b"], ...rows]);
      },
    ),
  );
});
