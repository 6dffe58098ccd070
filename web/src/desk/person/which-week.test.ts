import type { PlanPhase } from "@stave/core/model";
import { expect, test } from "vitest";
import { weeksOf, whichWeek } from "./which-week.ts";

const phase = (key: string, ...weeks: readonly number[]): PlanPhase => ({
  key,
  title: key,
  score: { must: 0, want: 0, bound: 0, proven: true },
  weeks: weeks.map((week) => ({ week, light: false, sessions: [] })),
});
const WEEKS = weeksOf({ phases: [phase("groundwork", 1, 2), phase("build", 3, 13)] } as never);
const DATES = [
  { session: "groundwork/2/a", day: "2027-03-02", from: 465 },
  { session: "groundwork/1/a", day: "2027-02-23", from: 465 },
  { session: "build/13/a", day: "2027-03-09", from: 465 },
];
const which = (asked: string | undefined, today: string, dates = DATES) => whichWeek(WEEKS, asked, dates, today)?.id;

test("the week asked for, else that of the next session, else of the last, else the first", () => {
  expect(which("build/3", "2027-02-20")).toBe("build/3");
  expect(which(undefined, "2027-02-20")).toBe("groundwork/1");
  expect(which(undefined, "2027-02-24")).toBe("groundwork/2");
  expect(which("gone/9", "2027-03-09")).toBe("build/13");
  expect(which(undefined, "2027-05-01")).toBe("build/13");
  expect(which(undefined, "2027-05-01", [])).toBe("groundwork/1");
  expect(whichWeek([], undefined, [], "2027-05-01")).toBe(undefined);
});
