import fc from "fast-check";
import { expect, test } from "vitest";
import { canonicalJson } from "./canonical-json.ts";

test("RFC 8785 3.2.2 and 3.2.3 (from memory): numbers, escapes and literals of its example", () => {
  const value = {
    numbers: [Number("333333333.33333329"), 1e30, 4.5, 2e-3, 0.000000000000000000000000001],
    string: "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"/",
    literals: [null, true, false],
  };
  expect(canonicalJson(value)).toBe(
    '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
  );
});

test("RFC 8785 3.2.3 (from memory): members go by UTF-16 code units, numerals too", () => {
  const names = ["\u20ac", "\r", "\ufb33", "1", "\ud83d\ude00", "\u0080", "\u00f6", "10", "9"];
  const order = ["\r", "1", "10", "9", "\u0080", "\u00f6", "\u20ac", "\ud83d\ude00", "\ufb33"];
  const text = canonicalJson(Object.fromEntries(names.map((name) => [name, 0])));
  expect(text).toBe(`{${order.map((name) => `${JSON.stringify(name)}:0`).join(",")}}`);
});

test("any JSON value comes back as it was, whatever the order of its members", () => {
  const storable = fc.jsonValue({ stringUnit: "binary" }).filter((value) => !JSON.stringify(value).includes("\\u0000"));
  fc.assert(
    fc.property(storable, (value) => {
      const turned = (inner: unknown): unknown =>
        inner === null || typeof inner !== "object"
          ? inner
          : Array.isArray(inner)
            ? inner.map(turned)
            : Object.fromEntries(
                Object.entries(inner)
                  .reverse()
                  .map(([name, one]) => [name, turned(one)]),
              );
      const text = canonicalJson(value);
      expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
      expect(canonicalJson(turned(value))).toBe(text);
    }),
  );
});

test("a member that is undefined is absent", () => {
  expect(canonicalJson({ a: undefined, b: 1 })).toBe('{"b":1}');
});

test.each([
  ["NaN", { a: Number.NaN }],
  ["an infinity", [Number.POSITIVE_INFINITY]],
  ["undefined in a list", [undefined]],
  ["a bigint", { a: 1n }],
  ["a date", { a: new Date(0) }],
  ["a map", new Map()],
  ["NUL in a text", { a: "x\0y" }],
  ["NUL in a name", { "\0": 1 }],
  ["half of a surrogate pair", ["\ud83d"]],
])("%s is refused", (_, value) => {
  expect(() => canonicalJson(value)).toThrow(RangeError);
});
