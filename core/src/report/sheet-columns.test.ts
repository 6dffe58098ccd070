import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { Plan, PlanPhase, PlanSession } from "../model/index.ts";
import { reps, sets } from "../testing/index.ts";
import { type Column, columnsOf, sideBySide } from "./sheet-columns.ts";

function session(key: string, count = 3): PlanSession {
  const slot = { key: "s", exercise: "squat", dose: sets(count, reps(8)), why: [], offer: [] };
  const blocks = [{ kind: "straight", slots: [slot] }] as const;
  return { key, title: key, warmup: [], blocks, conditioning: [], open: [], minutes: { low: 20, high: 30 } };
}

function phase(key: string, weeks: number): PlanPhase {
  return {
    key,
    title: key,
    score: { must: 0, want: 0, bound: 0, proven: true },
    weeks: Array.from({ length: weeks }, (_, at) => ({
      week: at + 1,
      light: at === weeks - 1,
      sessions: [session("a"), session("b")],
    })),
  };
}

const [ground, build] = [phase("ground", 4), phase("build", 3)];
const plan = { phases: [ground, build] } as unknown as Plan;

describe("columns of a session", () => {
  test("without dates, every week of the phase", () => {
    expect(columnsOf(plan, ground, "a", undefined).map(({ week, light }) => [week, light])).toEqual([
      [1, false],
      [2, false],
      [3, false],
      [4, true],
    ]);
  });

  test("weeks are counted over the whole programme", () =>
    expect(columnsOf(plan, build, "b", undefined).map(({ week }) => week)).toEqual([5, 6, 7]));

  test("with dates, the weeks in which the session has its turn, each with its day where it has one", () => {
    const sessions = [1, 3].map((planWeek) => ({ id: `build/${planWeek}/a`, phase: "build", planWeek, session: "a" }));
    const placed = { placements: [{ session: "build/3/a", day: day("2027-03-02"), start: 600 }] };
    const columns = columnsOf(plan, build, "a", { sessions, placed });
    expect(columns.map((column) => [column.week, column.day])).toEqual([
      [5, undefined],
      [7, day("2027-03-02")],
    ]);
  });

  test("a session that has no turn has no columns, and so no pages", () => {
    const columns = columnsOf(plan, build, "b", { sessions: [], placed: { placements: [] } });
    expect(columns).toEqual([]);
    expect(sideBySide(columns)).toEqual([]);
  });
});

describe("weeks side by side", () => {
  const columns = (weeks: number, count: number): readonly Column[] =>
    Array.from({ length: weeks }, (_, at) => ({ week: at + 1, light: false, session: session("a", count) }));
  test.each([
    [4, 3, [4]],
    [5, 3, [3, 2]],
    [8, 3, [4, 4]],
    [4, 4, [2, 2]],
    [5, 4, [3, 2]],
    [4, 5, [2, 2]],
    [3, 20, [2, 1]],
    [1, 1, [1]],
  ])("%s weeks of %s sets", (weeks, count, pages) => {
    const dealt = sideBySide(columns(weeks, count));
    expect(dealt.map((page) => page.length)).toEqual(pages);
    expect(dealt.flat().map(({ week }) => week)).toEqual(columns(weeks, count).map(({ week }) => week));
  });
});
