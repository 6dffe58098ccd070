import { describe, expect, test } from "vitest";
import type { WhyNot } from "../fit/index.ts";
import { madeUpCatalogue, madeUpExercise } from "../testing/index.ts";
import { sayConflict, sayGains, sayPoints, sayWhyNot } from "./explain.ts";
import { namesFrom } from "./names.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "goblet", name: "Goblet squat" }),
  madeUpExercise({ id: "box", name: "Box squat" }),
]);
const names = namesFrom(catalogue, { sessions: new Map([["a", "Session A"]]) });
const whyNot = (answer: WhyNot) => sayWhyNot("goblet", answer, names);
const costs = (must: number, want: number, proven = true): WhyNot => ({
  kind: "costs",
  must,
  want,
  proven,
  lines: [
    { id: "fit/suits", level: "want", best: 100, forced: 70 },
    { id: "fit/liked", level: "want", best: 0, forced: 15 },
  ],
});

describe("why not", () => {
  test("every answer has a sentence of its own that names the form", () => {
    const answers: readonly WhyNot[] = [
      { kind: "chosen" },
      { kind: "set aside", why: [{ code: "offer/coach-only", data: {} }] },
      { kind: "pinned", exercise: "box" },
      { kind: "not thought of" },
      { kind: "does not fit" },
      costs(0, 0),
      costs(0, 15),
    ];
    const first = answers.map((answer) => whyNot(answer)[0]!);
    expect(new Set(first).size).toBe(answers.length);
    for (const sentence of first) expect(sentence).toContain("Goblet squat");
    expect(whyNot(answers[1]!)).toHaveLength(2);
    expect(whyNot(answers[2]!)[0]).toContain("Box squat");
  });

  test("a loss says its levels in order and each constraint with its sign", () => {
    expect(whyNot(costs(0, 15))).toEqual([
      "With Goblet squat here, the best plan of the phase has 15 want points fewer:",
      "−30 the right rung",
      "+15 likes",
    ]);
    expect(whyNot(costs(10, -1))[0]).toContain("10 must points more and 1 want point more:");
    expect(whyNot(costs(1, 0))[0]).toContain("has 1 must point more:");
  });

  test("what is not proven says so", () => {
    expect(whyNot(costs(0, 15, false))).toHaveLength(4);
  });
});

test("points stand with their sign; a constraint without a name is shown by its id", () => {
  expect(
    sayPoints([
      { id: "fit/suits", points: 100 },
      { id: "fit/watch", points: -5 },
      { id: "fit/new", points: 1 },
    ]),
  ).toEqual(["+100 the right rung", "−5 stresses at their limit", "+1 fit/new"]);
});

test("a conflict names every rule, bands in whole sets and sessions by their titles", () => {
  const rules = [
    { code: "fit/rule-fill", data: { slot: "squat-a" } },
    { code: "fit/rule-minutes", data: { session: "a", minutes: 40 } },
    { code: "fit/rule-band", data: { muscle: "chest", low: 24, high: 38 } },
  ];
  const [first, ...rest] = sayConflict(rules, names);
  expect(first).toContain("drop any one");
  expect(rest).toEqual([
    "A form in squat-a",
    "40 min for Session A, at the upper estimate",
    "6–9.5 sets a week of chest",
  ]);
});

describe("single changes", () => {
  const gain = (code: string, data: Record<string, string | number>, must: number, want: number, proven = true) => ({
    change: { code, data },
    must,
    want,
    proven,
  });

  test("say what changes and what it gains, must points first", () => {
    const [first, ...rest] = sayGains(
      [
        gain("fit/if-equipment", { what: "rack" }, 10, -4),
        gain("fit/if-minutes", { more: 5 }, 0, 30),
        gain("fit/if-day", { days: 3 }, 0, 1),
      ],
      names,
    );
    expect(first).toContain("every single one tried");
    expect(rest).toEqual([
      "With rack here: 10 must points fewer and 4 want points fewer",
      "With 5 min more for every session: 30 want points more",
      "With 3 training days a week: 1 want point more",
    ]);
  });

  test("of a caution or a limit say who set it, and that a clinician has to agree", () => {
    const [, caution, limit] = sayGains(
      [
        gain("fit/if-caution", { tag: "knee_deep", who: "Dr Hale" }, 0, 40),
        gain(
          "fit/if-limit",
          { kind: "movement", movement: "goblet", side: "both", who: "Dr Hale", to: "2027-05-01" },
          0,
          5,
        ),
      ],
      names,
    );
    for (const line of [caution, limit]) {
      expect(line).toContain("Dr Hale");
      expect(line).toContain("if the clinician agrees");
    }
    expect(limit).toContain("no Goblet squat");
  });

  test("none that helps is an answer, and one that is not proven says so", () => {
    expect(sayGains([], names)).toHaveLength(1);
    expect(sayGains([gain("fit/if-minutes", { more: 5 }, 0, 30, false)], names)).toHaveLength(3);
  });
});
