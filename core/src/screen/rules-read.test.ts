import { describe, expect, test } from "vitest";
import { PRINTED_RULES, readRules, usualRules } from "./index.ts";

const read = (more: string) => readRules(`stave: 1\n${more}`, "rules.yaml");
const rulesOf = (more: string) => {
  const found = read(more);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value.value;
};
const wrong = (more: string) =>
  read(more).problems.map(({ code, at, line, found, allowed }) => [code, at.join("."), line, found, allowed]);

test("what is left out is the first of the printed ones", () => {
  expect(rulesOf("")).toEqual(usualRules());
});

test("each printed rule is chosen by its name", () => {
  for (const [kind, rules] of Object.entries(PRINTED_RULES)) {
    for (const rule of rules)
      expect(rulesOf(`${kind}: ${JSON.stringify(rule.id)}`)).toEqual({ ...usualRules(), [kind]: rule });
  }
});

test("every printed rule is named, dated and has its source", () => {
  for (const { id, dated, source } of Object.values(PRINTED_RULES).flat()) {
    expect(id).not.toBe("");
    expect(dated).toMatch(/^(\d{4}|undated)$/);
    expect(source).toBeDefined();
  }
});

const own = "name: Ours, dated: 2026-11-02, by: Dr Aziz";
test("a practice's own rules", () => {
  expect(
    rulesOf(`pressure: { ${own}, hold: 170/105, light: 150/95 }
glucose: { ${own}, low: 5.5 mmol/L, carbohydrate: 160 mg/dL, ketones: 14 mmol/L }
pain: { ${own}, free: 1, most: 4 }
illness: { ${own}, free: 3, steps: [{ minutes: 20, percent: 60, resistance: light, days: 2 }, { minutes: 40, resistance: full, days: 1 }] }
sleep: { ${own}, under: 6 }
`),
  ).toEqual({
    pressure: {
      id: "Ours",
      dated: "2026-11-02",
      by: "Dr Aziz",
      hold: { systolic: 170, diastolic: 105 },
      light: { systolic: 150, diastolic: 95 },
    },
    glucose: { id: "Ours", dated: "2026-11-02", by: "Dr Aziz", low: 99, carbohydrate: 160, ketones: 252 },
    pain: { id: "Ours", dated: "2026-11-02", by: "Dr Aziz", free: 1, most: 4 },
    illness: {
      id: "Ours",
      dated: "2026-11-02",
      by: "Dr Aziz",
      freeDays: 3,
      steps: [
        { minutes: 20, percent: 60, resistance: "light", days: 2 },
        { minutes: 40, resistance: "full", days: 1 },
      ],
    },
    sleep: { id: "Ours", dated: "2026-11-02", by: "Dr Aziz", under: 6 },
  });
});

describe("refused, with its place and what is allowed", () => {
  test.each([
    ["pressure: lifting", "value/type", "pressure"],
    [`pressure: { ${own}, hold: 201/110, light: 150/95 }`, "rules/looser", "pressure.hold"],
    [`pressure: { ${own}, hold: 200/111, light: 150/95 }`, "rules/looser", "pressure.hold"],
    [`pressure: { ${own}, hold: 180/110, light: 181/95 }`, "rules/order", "pressure.light"],
    [`pressure: { ${own}, hold: 180/100, light: 170/101 }`, "rules/order", "pressure.light"],
    [`pressure: { ${own}, hold: 180/110 }`, "key/missing", "pressure.light"],
    [`glucose: { ${own}, low: 69 mg/dL, carbohydrate: 150 mg/dL, ketones: 250 mg/dL }`, "rules/looser", "glucose.low"],
    [
      `glucose: { ${own}, low: 90 mg/dL, carbohydrate: 150 mg/dL, ketones: 271 mg/dL }`,
      "rules/looser",
      "glucose.ketones",
    ],
    [
      `glucose: { ${own}, low: 90 mg/dL, carbohydrate: 89 mg/dL, ketones: 250 mg/dL }`,
      "rules/order",
      "glucose.carbohydrate",
    ],
    [
      `glucose: { ${own}, low: 90 mg/dL, carbohydrate: 251 mg/dL, ketones: 250 mg/dL }`,
      "rules/order",
      "glucose.carbohydrate",
    ],
    [`pain: { ${own}, free: 4, most: 5 }`, "rules/looser", "pain.free"],
    [`pain: { ${own}, free: 2, most: 6 }`, "rules/looser", "pain.most"],
    [`pain: { ${own}, free: 3, most: 2 }`, "rules/order", "pain.free"],
    [
      `illness: { ${own}, free: 0, steps: [{ minutes: 20, resistance: none, days: 2 }] }`,
      "value/small",
      "illness.free",
    ],
    [`illness: { ${own}, free: 1, steps: [] }`, "value/few", "illness.steps"],
    [`sleep: { ${own}, under: 2 }`, "value/small", "sleep.under"],
    ["sleep: { name: Ours, dated: last week, by: Ann, under: 6 }", "rules/dated", "sleep.dated"],
    ["sleep: { name: Ours, dated: 2026-02-30, by: Ann, under: 6 }", "rules/dated", "sleep.dated"],
    ["sleep: { name: Ours, dated: 2026, by: Ann, under: 6, over: 9 }", "key/unknown", "sleep.over"],
    ["mood: fine", "key/unknown", "mood"],
  ])("%s", (more, code, at) => {
    const problems = wrong(more);
    expect(problems.map(([first, second]) => [first, second])).toContainEqual([code, at]);
    expect(problems[0]![2]).toBe(2);
  });
  test("steps last 1 to 60 days, 5 to 120 minutes, 40 to 90 per cent", () => {
    const step = (said: string) =>
      wrong(`illness: { ${own}, free: 1, steps: [{ resistance: none, ${said} }] }`).map(([code]) => code);
    expect(step("minutes: 5, days: 1, percent: 40")).toEqual([]);
    expect(step("minutes: 120, days: 60, percent: 90")).toEqual([]);
    expect(step("minutes: 4, days: 0, percent: 39")).toEqual(["value/small", "value/small", "value/small"]);
    expect(step("minutes: 121, days: 61, percent: 91")).toEqual(["value/big", "value/big", "value/big"]);
  });
  test("bands of one width of nothing are still in order", () => {
    const glucose = `glucose: { ${own}, low: 90 mg/dL, carbohydrate: 250 mg/dL, ketones: 250 mg/dL }`;
    expect(rulesOf(glucose).glucose).toMatchObject({ low: 90, carbohydrate: 250, ketones: 250 });
  });
  test("the loosest printed edges are still taken", () => {
    expect(rulesOf(`pressure: { ${own}, hold: 200/110, light: 200/110 }`).pressure.hold.systolic).toBe(200);
    expect(rulesOf(`pain: { ${own}, free: 3, most: 5 }`).pain.most).toBe(5);
    expect(
      rulesOf(`glucose: { ${own}, low: 70 mg/dL, carbohydrate: 70 mg/dL, ketones: 270 mg/dL }`).glucose.ketones,
    ).toBe(270);
  });
});
