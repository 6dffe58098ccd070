import { describe, expect, test } from "vitest";
import { MUSCLES, PATTERNS, type Programme } from "../model/index.ts";
import { madeUpProgramme } from "../testing/index.ts";
import { balanceEntry, KNEE_HIP, muscleRow, PUSH_PULL, weeklyRows } from "./bands.ts";

const rowsOf = (more: Partial<Programme>, sessions = 3, perWeek = 3) =>
  weeklyRows(madeUpProgramme([], more), sessions, perWeek);

describe("weekly rows", () => {
  test("20 muscles in their order, then push against pull and knee against hip", () => {
    const rows = rowsOf({});
    expect(rows.map(({ id }) => id)).toEqual([...MUSCLES, "push − pull", "knee − hip"]);
    expect(rows.map(({ muscle }) => muscle)).toEqual([...MUSCLES, undefined, undefined]);
    expect(MUSCLES.map(muscleRow)).toEqual([...MUSCLES.keys()]);
    expect([PUSH_PULL, KNEE_HIP]).toEqual([20, 21]);
  });

  test("without a rule, the band of the status in quarter-sets; calves and forearms may stand at nothing", () => {
    // The bands that the table of weekly sets states: novice 4–10, intermediate 8–16, advanced 10–20.
    for (const [status, low, high] of [
      ["novice", 16, 40],
      ["intermediate", 32, 64],
      ["advanced", 40, 80],
    ] as const) {
      const rows = rowsOf({ status });
      expect(rows[muscleRow("chest")]).toMatchObject({ level: "want", low, high, underPoints: 3, overPoints: 4 });
      expect(rows[muscleRow("calf")]).toMatchObject({ low: 0, high });
      expect(rows[muscleRow("forearm")]).toMatchObject({ low: 0, high });
    }
  });

  test("the coach's own band stands before the table's, and may be a must: then a quarter-set is one point", () => {
    const rows = rowsOf({ weekly: { sets: { chest: { from: 6, to: 9 } }, must: ["chest", "lats"] } });
    expect(rows[muscleRow("chest")]).toEqual({
      id: "chest",
      muscle: "chest",
      level: "must",
      low: 24,
      high: 36,
      underPoints: 1,
      overPoints: 1,
    });
    expect(rows[muscleRow("lats")]).toMatchObject({ level: "must", low: 16, high: 40 });
    expect(rows[muscleRow("biceps")]).toMatchObject({ level: "want", underPoints: 3, overPoints: 4 });
  });

  test("opposites may differ by two sets a week, at 3 points for each quarter-set more", () => {
    const balance = { level: "want", low: -8, high: 8, underPoints: 3, overPoints: 3 };
    expect(rowsOf({}).slice(20)).toEqual([
      { id: "push − pull", ...balance },
      { id: "knee − hip", ...balance },
    ]);
  });

  test("a round of sessions that takes longer than a week has wider bands, never narrower than they are", () => {
    const rows = rowsOf({ status: "novice", weekly: { sets: { chest: { from: 5, to: 7 } } } }, 4, 3);
    // 4 sessions at 3 a week are 4/3 of a week: 20 × 4/3 = 26.7 and 28 × 4/3 = 37.3 quarter-sets.
    expect(rows[muscleRow("chest")]).toMatchObject({ low: 26, high: 38 });
    expect(rows[PUSH_PULL]).toMatchObject({ low: -11, high: 11 });
  });
});

describe("balance", () => {
  test("pushes and knee work count up, pulls and hip work count down, four quarters a set", () => {
    expect(balanceEntry("horizontal push", 3)).toEqual([PUSH_PULL, 12]);
    expect(balanceEntry("vertical push", 2)).toEqual([PUSH_PULL, 8]);
    expect(balanceEntry("horizontal pull", 3)).toEqual([PUSH_PULL, -12]);
    expect(balanceEntry("vertical pull", 1)).toEqual([PUSH_PULL, -4]);
    expect(balanceEntry("squat", 3)).toEqual([KNEE_HIP, 12]);
    expect(balanceEntry("single leg", 3)).toEqual([KNEE_HIP, 12]);
    expect(balanceEntry("hinge", 3)).toEqual([KNEE_HIP, -12]);
    expect(balanceEntry("bridge", 5)).toEqual([KNEE_HIP, -20]);
  });

  test("every other pattern stands in no balance", () => {
    const in8 = PATTERNS.filter((pattern) => balanceEntry(pattern, 1) !== undefined);
    expect(in8).toHaveLength(8);
  });
});
