import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { matchNames, nameKey } from "./same-name.ts";

const ZOE = "Zoë Nuñez";

describe("im-07: one name in many spellings (known fault of imports)", () => {
  test.each([
    [ZOE.normalize("NFD"), "same"],
    ["ZOË NUÑEZ ", "same"],
    ["  Zoë   Nuñez", "same"],
    ["Zoe Nunez", "maybe"],
    ["Zoë Nuñes", "different"],
    ["Zoë", "different"],
  ] as const)("%j: %s", (other, want) => {
    expect(matchNames(ZOE, other)).toBe(want);
    expect(matchNames(other, ZOE)).toBe(want);
  });
});

test.each([
  ["Straße", "STRASSE"],
  ["ΣΊΣΥΦΟΣ", "σίσυφος"],
])("unicode15, case folding: %s and %s are one", (one, other) => {
  expect(matchNames(one, other)).toBe("same");
});

test("scripts without case or with marks that carry meaning stay apart where they differ", () => {
  expect(matchNames("王小明", "王小明")).toBe("same");
  expect(matchNames("王小明", "王小名")).toBe("different");
  expect(matchNames("يوسف", "يوسف ")).toBe("same");
});

test("a name is itself, whatever it is; its key is stable", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme", maxLength: 40 }), (name) => {
      expect(matchNames(name, name.normalize("NFD"))).toBe("same");
      expect(nameKey(nameKey(name))).toBe(nameKey(name));
    }),
  );
});
