import { expect, test } from "vitest";
import { newId } from "./new-id.ts";

test("the example of RFC 9562, appendix A.6 (from memory): 2022-02-22 19:22:22 UTC", () => {
  // rand_a 0xCC3, rand_b 0x18C4DC0C0C07398F, as printed there.
  const chance = Uint8Array.of(0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f);
  expect(newId(0x017f22e279b0, chance)).toBe("017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
});

test("later ids sort after earlier ones, and no two are alike", () => {
  const ids = Array.from({ length: 200 }, (_, at) => newId(1_790_000_000_000 + at));
  expect([...ids].sort()).toEqual(ids);
  expect(new Set(ids).size).toBe(200);
});
