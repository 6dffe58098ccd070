import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { shareSeen } from "./wilson.ts";

// The four examples on which the methods are compared there; score method without correction. From memory.
published(
  "newcombe1998",
  "Wilson's interval",
  (
    [
      [81, 263, 0.2553, 0.3662],
      [15, 148, 0.0624, 0.1605],
      [0, 20, 0, 0.1611],
      [1, 29, 0.0061, 0.1718],
    ] as const
  ).flatMap(([happened, n, low, high]) => [
    ["printed", `${happened} of ${n}, low`, () => shareSeen(happened, n)!.low, low, 0.00006] as const,
    ["printed", `${happened} of ${n}, high`, () => shareSeen(happened, n)!.high, high, 0.00006] as const,
  ]),
);

test("without a case there is no share", () => expect(shareSeen(0, 0)).toBeUndefined());
test("never under 0 or over 1", () => {
  expect(shareSeen(0, 3)).toMatchObject({ value: 0, low: 0, n: 3 });
  expect(shareSeen(3, 3)).toMatchObject({ value: 1, high: 1 });
});
