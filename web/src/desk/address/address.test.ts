import * as fc from "fast-check";
import { expect, test } from "vitest";
import { type Address, ORDERS, printAddress, readAddress } from "./address.ts";

const at = (text: string) => readAddress(new URL(text, "http://127.0.0.1"));

test("every page has its address", () => {
  expect(at("/")).toEqual({ page: "morning" });
  expect(at("/morning")).toEqual({ page: "morning" });
  expect(at("/rules")).toEqual({ page: "rules" });
  expect(printAddress({ page: "rules" })).toBe("/rules");
  expect(at("/people")).toEqual({ page: "people", find: "", by: "name" });
  expect(at("/people?find=bao&by=last")).toEqual({ page: "people", find: "bao", by: "last" });
  expect(at("/people/bao-linh?week=build%2F3")).toEqual({ page: "person", id: "bao-linh", week: "build/3" });
});

test("what leads nowhere says where it came from, and a strange order is none", () => {
  expect(at("/programmes")).toEqual({ page: "nowhere", path: "/programmes" });
  expect(at("/people/a/b")).toEqual({ page: "nowhere", path: "/people/a/b" });
  expect(at("/people/%E0%A4%A")).toEqual({ page: "nowhere", path: "/people/%E0%A4%A" });
  expect(at("/people?by=shoe")).toEqual({ page: "people", find: "", by: "name" });
});

test("an address that was printed leads to the same place, whatever stands in it", () => {
  const addresses: fc.Arbitrary<Address> = fc.oneof(
    fc.record({
      page: fc.constant("people" as const),
      find: fc.string({ unit: "grapheme", maxLength: 20 }).map((text) => text.slice(0, 40)),
      by: fc.constantFrom(...ORDERS),
    }),
    fc.record({
      page: fc.constant("person" as const),
      id: fc.string({ minLength: 1, unit: "grapheme" }).filter((id) => id !== "." && id !== ".."),
      week: fc.string({ minLength: 1 }),
    }),
  );
  fc.assert(
    fc.property(addresses, (address) => {
      const text = printAddress(address);
      const cut = text.indexOf("?");
      const pathname = cut < 0 ? text : text.slice(0, cut);
      expect(readAddress({ pathname, search: cut < 0 ? "" : text.slice(cut) })).toEqual(address);
    }),
  );
});
