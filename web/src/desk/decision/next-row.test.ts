import { expect, test } from "vitest";
import { nextRow } from "./next-row.ts";

const rows = ["a", "b", "c", "d"];
const next = (answered: readonly string[], closed: readonly string[] = []) =>
  nextRow(rows, new Set(answered), (row) => !closed.includes(row));

test("the next open row, else the nearest before, else none", () => {
  expect(next(["a"])).toBe("b");
  expect(next(["a"], ["b"])).toBe("c");
  expect(next(["d"])).toBe("c");
  expect(next(["d"], ["c"])).toBe("b");
  expect(next(["b", "c"])).toBe("d");
  expect(next(["a", "b", "c", "d"])).toBe(undefined);
  expect(next([], [])).toBe("a");
});
