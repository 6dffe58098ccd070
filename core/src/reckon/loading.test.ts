/** Loads as a coach meets them in a room with few plates, odd bars and two units. Each answer is a sum written beside it. */
import { describe, expect, test } from "vitest";
import { reckon } from "./index.ts";

const told = (name: string, ...answers: readonly string[]) => {
  const reckoned = reckon(name, answers);
  if (!reckoned.ok) return reckoned.problems.map(({ code }) => code);
  return reckoned.value.figures.map(({ what, value }) => [what, value]);
};

describe("plates for a bar: the largest plate first fails as soon as the set has gaps", () => {
  const garage = ["bar=20 kg", "plates=15 kg: 1; 10 kg: 2"];
  test.each([
    // 20 + 2 × (10 + 10); 15 first would end at 50
    [
      "60 kg",
      [
        ["load-here", 60],
        ["plates-a-side", "10 kg + 10 kg"],
      ],
    ],
    [
      "55 kg",
      [
        ["load-easier", 50],
        ["plates-a-side", "15 kg"],
        ["load-harder", 60],
        ["plates-a-side", "10 kg + 10 kg"],
      ],
    ],
    [
      "42.5 kg",
      [
        ["load-easier", 40],
        ["plates-a-side", "10 kg"],
        ["load-harder", 50],
        ["plates-a-side", "15 kg"],
      ],
    ],
    // nothing under an empty bar
    [
      "14 kg",
      [
        ["bar-too-heavy", 20],
        ["plates-a-side", "none"],
      ],
    ],
    // 20 + 2 × (15 + 10 + 10) is all there is
    [
      "100 kg",
      [
        ["load-easier", 90],
        ["plates-a-side", "15 kg + 10 kg + 10 kg"],
      ],
    ],
  ])("%s", (load, wanted) => {
    expect(told("bar-load", `load=${load}`, ...garage)).toEqual(wanted);
  });
  test("pounds: 45 + 2 × (45 + 45) = 225, 45 + 2 × 45 + 2 × 2.5 = 140", () => {
    const room = ["bar=45 lb", "plates=45 lb: 2; 25 lb; 10 lb: 2; 5 lb; 2.5 lb"];
    expect(told("bar-load", "load=225 lb", ...room)[0]).toEqual(["load-here", 225]);
    expect(told("bar-load", "load=142 lb", ...room).slice(0, 2)).toEqual([
      ["load-easier", 140],
      ["plates-a-side", "45 lb + 2.5 lb"],
    ]);
  });
  test("collars of 2.5 kg each count, also on the empty bar: 25 + 50 = 75", () => {
    const bar = ["bar=20 kg", "collars=5 kg", "plates=25 kg: 2; 2.5 kg; 1.25 kg"];
    expect(told("bar-load", "load=75 kg", ...bar)[0]).toEqual(["load-here", 75]);
    expect(told("bar-load", "load=20 kg", ...bar)[0]).toEqual(["bar-too-heavy", 25]);
  });
  // intPound1959: 45 lb = 20.41165665 kg, so 20 + 2 × 20.41165665 = 60.8233133 kg
  test("pound plates on a kilogram bar are added as they are", () => {
    expect(told("bar-load", "load=61 kg", "bar=20 kg", "plates=45 lb: 1")[0]).toEqual(["load-easier", 60.824]);
  });
});

describe("steps between loads that exist", () => {
  test("5 to 7.5 kg is half as much again, over the 2 to 10 % of acsm2009; 100 to 102.5 is within", () => {
    expect(told("nearest-load", "load=5 kg", "loads=2.5; 5; 7.5; 10 kg")).toEqual([
      ["load-here", 5],
      ["load-next", 7.5],
      ["load-step", 50],
      ["load-step-class", "over 2 to 10 %"],
    ]);
    expect(told("load-step", "from=100 kg", "to=102.5 kg")).toContainEqual(["load-step-class", "within 2 to 10 %"]);
    expect(told("load-step", "from=300 kg", "to=302.5 kg")).toContainEqual(["load-step-class", "under 2 to 10 %"]);
    expect(told("load-step", "from=20 kg", "to=18 kg")).toEqual([["load-step", -10]]);
  });
  test("halfway between two loads the easier is named first", () => {
    expect(told("nearest-load", "load=11.25 kg", "loads=10; 12.5 kg").slice(0, 2)).toEqual([
      ["load-easier", 10],
      ["load-harder", 12.5],
    ]);
  });
  // 77 − 43 = 34, 77 − 36 = 41, 41 ÷ 34 = 1.206
  test("with help the next pin is less help, and its step is told of what is moved", () => {
    const pins = ["load=43 kg", "loads=29–64 kg by 7", "help=yes"];
    const next = [
      ["load-here", 43],
      ["load-next", 36],
    ];
    expect(told("nearest-load", ...pins)).toEqual(next);
    const [, , step] = told("nearest-load", ...pins, "mass=77 kg") as [unknown, unknown, [string, number]];
    expect(step[1]).toBeCloseTo(20.59, 2);
  });
  test("lighter than the lightest: another tool", () => {
    expect(told("nearest-load", "load=1 kg", "loads=2; 4 kg")).toEqual([["lightest-too-heavy", 2]]);
  });
});

describe("what is held, moved and written", () => {
  // intPound1959: 25 lb = 11.339809 kg
  test("25 lb at once: 2 × 6 kg are over, 2 × 5 kg within, one of 12 over", () => {
    const verdict = (load: string, hands: string) =>
      told("held", `load=${load}`, `hands=${hands}`, "limit=25 lb").at(-1);
    expect(verdict("6 kg", "two")).toEqual(["against-limit", "over it"]);
    expect(verdict("5 kg", "two")).toEqual(["against-limit", "within it"]);
    expect(verdict("12 kg", "one")).toEqual(["against-limit", "over it"]);
    expect(verdict("25 lb", "one")).toEqual(["against-limit", "within it"]);
  });
  test("a belt adds, a machine takes off, and more help than body is refused", () => {
    expect(told("with-body", "mass=80 kg", "added=20 kg")).toEqual([["moved-in-all", 100]]);
    expect(told("with-body", "mass=82 kg", "help=64 kg")).toEqual([["moved-in-all", 18]]);
    expect(told("with-body", "mass=60 kg", "help=64 kg")).toEqual(["reckon/refused"]);
  });
  test.each(["10 kg; 8 kg", "kg", "2; 4", "10 kg: 0", "10 kg; 10 kg"])("%s is no list of loads", (list) => {
    expect(told("nearest-load", "load=5 kg", `loads=${list}`)).toContain("reckon/list-form");
  });
  test("a decimal comma stays one number", () => {
    expect(told("nearest-load", "load=2.5 kg", "loads=2,5 kg; 5,0 kg")[0]).toEqual(["load-here", 2.5]);
  });
});
