import { expect, test } from "vitest";
import { day } from "../day.ts";
import { span, startsOn } from "./starts.ts";
import type { CalendarTask } from "./task.ts";

const task: CalendarTask = {
  start: day("2027-03-01"),
  days: 10,
  sessions: [],
  weekDays: 4,
  windows: [
    [
      { from: 700, to: 760, cost: 0, place: "room" },
      { from: 700, to: 760, cost: 3 },
      { from: 600, to: 630, cost: 0 },
      { from: 700, to: 800, cost: 1 },
      { from: 650, to: 695, cost: 2 },
    ],
    ...Array.from({ length: 9 }, () => []),
  ],
  carry: 2,
  maxInRow: 7,
  gapHours: 48,
};

const session = (week: number, minutes = 45) => ({ id: "A", week, minutes, hard: 0 });

test("starts: long enough, earliest first, then by place; the same start at its lower cost", () => {
  expect(startsOn(task, 0, session(0))).toEqual([
    { from: 650, cost: 2 },
    { from: 700, cost: 1 },
    { from: 700, cost: 0, place: "room" },
  ]);
  expect(startsOn(task, 0, session(0, 90))).toEqual([{ from: 700, cost: 1 }]);
  expect(startsOn(task, 5, session(1))).toEqual([]);
});

test("span: the home week and the days carried, never past the end of the task", () => {
  expect(span(task, session(0))).toEqual({ first: 0, homeEnd: 3, last: 5 });
  expect(span(task, session(2))).toEqual({ first: 8, homeEnd: 11, last: 9 });
  expect(span(task, session(3)).last).toBeLessThan(span(task, session(3)).first);
});
