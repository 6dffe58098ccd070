import { expect, test } from "vitest";
import { easiestFirst } from "./load-set.ts";

const stack = { unit: "kg", pins: [5, 10, 15] } as const;

test("more weight is harder, more help is easier", () => {
  const values = (help: boolean) =>
    easiestFirst({ kind: "stack", machine: "cable", stack, help }).map((load) => load.value);
  expect(values(false)).toEqual([5, 10, 15]);
  expect(values(true)).toEqual([15, 10, 5]);
  expect(easiestFirst({ kind: "masses", loads: [{ value: 4, unit: "kg" }] })).toEqual([{ value: 4, unit: "kg" }]);
});

test("bands and body mass have no numbers", () => {
  expect(easiestFirst({ kind: "bands", labels: ["A"] })).toEqual([]);
  expect(easiestFirst({ kind: "none" })).toEqual([]);
});
