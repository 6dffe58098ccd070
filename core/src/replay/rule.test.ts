import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readRule, TWO_FOR_TWO } from "./rule.ts";

const good = `stave: 1
rule: mine
title: Mine
up: { over: 1, sessions: 2 }
`;

describe("a file of a rule", () => {
  test("says what it says; what is left out is the last set, reserve that counts, 14 days, and no way back", () => {
    expect(readRule(good, "mine.yaml")).toMatchObject({
      ok: true,
      value: {
        value: {
          rule: "mine",
          title: "Mine",
          up: { over: 1, sessions: 2, sets: "last", reserve: "counts" },
          within: 14,
        },
      },
    });
    const read = readRule(good, "mine.yaml");
    expect(read.ok && "back" in read.value.value).toBe(false);
  });
  test("that of the examples is read", () => {
    const read = readRule(readFileSync("examples/ropewalk/rule-three-over.yaml", "utf8"), "rule");
    expect(read).toMatchObject({
      ok: true,
      value: { value: { back: { under: 2, sessions: 1 }, up: { sets: "all" } } },
    });
  });
  test.each<[name: string, text: string, code: string, line: number]>([
    ["a name that is not known", `${good}evry: 2\n`, "key/unknown", 5],
    ["another kind of set", good.replace("sessions: 2", "sessions: 2, sets: some"), "value/choice", 4],
    ["half a session", good.replace("sessions: 2", "sessions: 0.5"), "value/type", 4],
    ["nine sessions", good.replace("sessions: 2", "sessions: 9"), "value/big", 4],
    ["no way up", good.replace(/^up.*\n/m, ""), "key/missing", 1],
    ["a way back by nothing", `${good}back: { under: 0, sessions: 1 }\n`, "value/small", 5],
  ])("%s is told with its line", (_, text, code, line) => {
    const read = readRule(text, "mine.yaml");
    expect(read.ok ? [] : read.problems.map((each) => [each.code, each.line])).toEqual([[code, line]]);
  });
});

test("haffTriplett2016: the rule that is held against others", () => {
  expect(TWO_FOR_TWO.up).toEqual({ over: 2, sessions: 2, sets: "last", reserve: "is left out" });
});
