import { expect, test } from "vitest";
import { madeUpPerson } from "../testing/index.ts";
import { find } from "./find.ts";
import type { LoadSet } from "./load-set.ts";

const two = { value: 2, unit: "kg" } as const;
const set: LoadSet = { kind: "masses", loads: [two, { value: 4, unit: "kg" }] };

test("a novice begins at the lightest load here; of others nothing is said", () => {
  expect(find(madeUpPerson(), set, "loads/nothing-known")).toEqual({
    kind: "find",
    from: two,
    because: { code: "loads/nothing-known", data: { from: two } },
  });
  expect(find(madeUpPerson({ status: "advanced" }), set, "loads/nothing-known")).toEqual({
    kind: "find",
    because: { code: "loads/nothing-known", data: { from: null } },
  });
});

test("a machine that helps is begun with the most help", () => {
  const help = {
    kind: "stack",
    machine: "assisted pull-up machine",
    stack: { unit: "kg", pins: [5, 50] },
    help: true,
  } as const;
  expect(find(madeUpPerson(), help, "loads/nothing-known").from).toEqual({ value: 50, unit: "kg" });
  expect(find(madeUpPerson(), { kind: "none" }, "loads/not-listed")).not.toHaveProperty("from");
});
