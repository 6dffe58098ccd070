import { expect, test } from "vitest";
import { makeId, makeToken } from "./made.ts";

/** The time of the example in RFC 9562, appendix A.6: 2022-02-22T19:22:22Z. */
const EXAMPLE_TIME = 0x017f22e279b0;

test("an id begins with its time as RFC 9562 prints it, and says that it is version 7 of the common variant", () => {
  expect(makeId(EXAMPLE_TIME)).toMatch(/^017f22e2-79b0-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
});
test("ids of one instant differ", () => {
  expect(new Set(Array.from({ length: 1000 }, () => makeId(EXAMPLE_TIME))).size).toBe(1000);
});
test("a clock before 1970 or none makes an id all the same", () => {
  expect(makeId(-5)).toMatch(/^00000000-0000-7/);
});
test("a token is 32 bytes in base64url", () => {
  expect(makeToken()).toMatch(/^[0-9A-Za-z_-]{43}$/);
  expect(Buffer.from(makeToken(), "base64url")).toHaveLength(32);
});
