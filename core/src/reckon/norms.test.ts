import { describe, expect, test } from "vitest";
import { reckon } from "./reckon.ts";

const first = (line: string) => {
  const [name, ...answers] = line.split("; ") as [string, ...string[]];
  const reckoned = reckon(name, answers);
  return reckoned.ok ? reckoned.value.figures.at(-1)!.value : reckoned.problems[0]!.code;
};

describe("more than anybody has been seen to do is a slip of the pen; the most is still taken", () => {
  test.each([
    ["heel-raises; sex=woman; age=52; reps=100", 10_000 / 21],
    ["heel-raises; sex=woman; age=52; reps=101", "reckon/refused"],
    ["chair-stand; sex=woman; age=72; stands=60", 10],
    ["chair-stand; sex=woman; age=72; stands=61", "reckon/refused"],
    ["push-ups; sex=man; age=34; reps=150", "excellent"],
    ["push-ups; sex=man; age=34; reps=151", "reckon/refused"],
  ])("%s", (line, wanted) => expect(first(line)).toEqual(wanted));
});
