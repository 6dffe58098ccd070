import { expect, test } from "vitest";
import type { Load } from "../units.ts";
import type { LoadSet } from "./load-set.ts";
import { writtenLoad } from "./written-load.ts";

const kgOf = (value: number): Load => ({ value, unit: "kg" });
const masses = (...values: readonly number[]): LoadSet => ({ kind: "masses", loads: values.map(kgOf) });
const code = (start: ReturnType<typeof writtenLoad>) => ("evidence" in start ? start.evidence : start);

test("a load that exists is taken as written", () => {
  expect(writtenLoad(kgOf(50), masses(40, 50), masses(40, 50))).toEqual({
    kind: "load",
    load: kgOf(50),
    evidence: { code: "loads/as-written", data: { load: kgOf(50) } },
  });
});

test("between two loads the lower is taken and both are said; above all there is none up", () => {
  const set = masses(40, 50);
  expect(code(writtenLoad(kgOf(45), set, set))).toEqual({
    code: "loads/written-not-here",
    data: { asked: kgOf(45), down: kgOf(40), up: kgOf(50) },
  });
  expect(code(writtenLoad(kgOf(60), set, set))).toMatchObject({ data: { down: kgOf(50), up: null } });
});

test("below the lightest the tool is wrong", () => {
  expect(writtenLoad(kgOf(14), masses(15, 20), masses(15, 20))).toEqual({
    kind: "too heavy",
    lightest: kgOf(15),
    because: { code: "loads/lightest-too-heavy", data: { lightest: kgOf(15), aim: kgOf(14) } },
  });
});

test("a limit that takes the written load away is named as the reason", () => {
  expect(code(writtenLoad(kgOf(50), masses(40, 50), masses(40)))).toEqual({
    code: "loads/written-over-limit",
    data: { asked: kgOf(50), chosen: kgOf(40) },
  });
  expect(code(writtenLoad(kgOf(45), masses(40, 50), masses(40)))).toMatchObject({ code: "loads/written-not-here" });
});

test("where the place lists nothing the coach's word stands, and this is said", () => {
  expect(code(writtenLoad(kgOf(50), { kind: "none" }, masses(50)))).toMatchObject({ code: "loads/written-not-listed" });
});
