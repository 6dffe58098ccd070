import { expect, test } from "vitest";
import { asText } from "./as-text.ts";

test.each([
  "=1+1",
  "+44",
  "-2",
  "@SUM(A1)",
  "\t=1",
  "\r=1",
  "\n=1",
  " =1",
  "\u00a0=1",
  "＝1",
  "＋1",
  "－1",
  "＠a",
  "\tx",
])("%j cannot begin a formula", (words) => expect(asText(words)).toBe(`'${words}`));

test.each(["Dagny", "a=1", "1-2", "'=1", "", "−2", "–", "ليان", "8–10"])("%j stays", (words) =>
  expect(asText(words)).toBe(words),
);
