import fc from "fast-check";
import { expect, test } from "vitest";
import { readJson } from "./read-json.ts";

const nested = (depth: number) => "[".repeat(depth) + "]".repeat(depth);

test("what JSON.parse reads is read as it reads it", () => {
  fc.assert(
    fc.property(fc.jsonValue({ stringUnit: "grapheme", maxDepth: 10 }), (value) => {
      const text = JSON.stringify(value);
      if (text.includes("\\u0000") || text.includes("__proto__")) return;
      expect(readJson(Buffer.from(text))).toEqual(JSON.parse(text));
    }),
  );
  expect(readJson(Buffer.from(nested(32)))).toEqual(JSON.parse(nested(32)));
});

test.each([
  ["nothing", ""],
  ["half of it", '{"events":['],
  ["two values", "{} {}"],
  ["NaN", "[NaN]"],
  ["a byte-order mark before nothing", "\uFEFF"],
  ["too deep", nested(33)],
  ["so deep that a recursion would end", nested(100_000)],
  ["a prototype", '{"a":{"__proto__":{"admin":true}}}'],
  ["a prototype, spelled otherwise", '{"\\u005f_proto__":1}'],
  ["NUL", '{"a":"\\u0000"}'],
  ["NUL in a name", '{"\\u0000":1}'],
  ["half of a surrogate pair", '["\\ud83d"]'],
])("%s is refused with status 400", (_, text) => {
  expect(() => readJson(Buffer.from(text))).toThrow(expect.objectContaining({ statusCode: 400 }));
});

test("bytes that are not UTF-8 are refused", () => {
  for (const bytes of [
    [0x22, 0xff, 0x22],
    [0x22, 0xc0, 0xaf, 0x22],
    [0xff, 0xfe, 0x22, 0x00],
  ])
    expect(() => readJson(Buffer.from(bytes))).toThrow("UTF-8");
});
