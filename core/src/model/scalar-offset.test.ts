import { expect, test } from "vitest";
import { parse } from "yaml";
import { offsetInScalar } from "./scalar-offset.ts";

/** Where the first X of the value stands in the written scalar, by our count; there is one X in each. */
function findX(written: string, style: "plain" | "single" | "double"): string {
  const value = String(parse(written));
  return written.slice(offsetInScalar(written, style, value.indexOf("X")))[0] ?? "";
}

test("the character counted to is the one that the YAML library reads there", () => {
  expect(findX("3 × 8 X", "plain")).toBe("X");
  expect(findX("'it''s ''X'''", "single")).toBe("X");
  expect(findX('"a\\tb\\x41\\u00e9\\U0001F600X"', "double")).toBe("X");
  expect(findX('"a \\"X\\""', "double")).toBe("X");
  expect(findX('"one\n  two\n\n\n  X"', "double")).toBe("X");
  expect(findX('"one \\\n  X"', "double")).toBe("X");
  expect(findX("'one  \n   X'", "single")).toBe("X");
});

test("beyond the end it stays at the closing quote, in a block at the start", () => {
  expect(offsetInScalar('"ab"', "double", 99)).toBe(3);
  expect(offsetInScalar("ab", "plain", 99)).toBe(2);
  expect(offsetInScalar("|\n  ab", "block", 1)).toBe(0);
});
