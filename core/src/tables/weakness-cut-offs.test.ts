import { describe, expect, test } from "vitest";
import { weaknessBy } from "./weakness-cut-offs.ts";

const by = (...args: Parameters<typeof weaknessBy>) => weaknessBy(...args).map(({ source }) => source);

describe("ewgsop2019 and awgs2019, printed edges (read in restatements)", () => {
  test.each([
    ["grip", 26.9, "man", ["ewgsop2019", "awgs2019"]],
    ["grip", 27, "man", ["awgs2019"]],
    ["grip", 28, "man", []],
    ["grip", 15.9, "woman", ["ewgsop2019", "awgs2019"]],
    ["grip", 17.9, "woman", ["awgs2019"]],
    ["gait", 0.8, "woman", ["ewgsop2019", "awgs2019"]],
    ["gait", 0.9, "man", ["awgs2019"]],
    ["gait", 1, "man", []],
    ["five chair rises", 12, "woman", ["awgs2019"]],
    ["five chair rises", 15, "man", ["awgs2019"]],
    ["five chair rises", 15.1, "man", ["ewgsop2019", "awgs2019"]],
    ["five chair rises", 11.9, "man", []],
    ["up and go", 20, "man", ["ewgsop2019"]],
    ["up and go", 19.9, "woman", []],
  ] as const)("%s %d, %s", (name, value, sex, want) => {
    expect(by(name, value, sex)).toEqual(want);
  });
});

test.each([0, -1, Number.NaN])("%d is refused", (value) => {
  expect(() => weaknessBy("grip", value, "man")).toThrow(RangeError);
});
