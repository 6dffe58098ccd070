import { expect, test } from "vitest";
import { addDays, day, weekdayOf } from "../day.ts";
import type { Missed } from "../model/index.ts";
import { afterAMiss } from "./after-a-miss.ts";
import { afterMisses } from "./after-misses.ts";
import { placeSessions } from "./place-sessions.ts";
import type { CalendarTask } from "./task.ts";

const MONDAY = day("2027-03-01");
/** Three sessions a week for two weeks, every evening free, each loading the same muscle hard. */
const task: CalendarTask = {
  start: MONDAY,
  days: 14,
  weekDays: 7,
  sessions: [0, 1].flatMap((week) =>
    ["A", "B", "C"].map((key) => ({ id: `${week}/${key}`, week, minutes: 45, hard: 1 })),
  ),
  windows: Array.from({ length: 14 }, () => [{ from: 1080, to: 1140, cost: 0 }]),
  carry: 0,
  maxInRow: 3,
  gapHours: 48,
};
const plan = placeSessions(task);
const missed = (after: number, because: Missed["because"], back?: number): Missed => ({
  on: addDays(MONDAY, after),
  because,
  ...(back === undefined ? {} : { back: addDays(MONDAY, back) }),
});
const days = ({ placements }: Pick<typeof plan, "placements">) =>
  placements.map(({ session, day: on }) => `${session} ${weekdayOf(on)}`);

test("without a miss everything stands as it stood, the very task and plan", () => {
  const then = afterMisses(task, plan, []);
  expect([then.task, then.placed, then.skipped, then.why]).toEqual([task, plan, [], []]);
  expect(then.task).toBe(task);
});

test("one miss is answered as afterAMiss answers it, with the day on which the person is back", () => {
  expect(days(plan)).toEqual(["0/A mon", "0/B wed", "0/C fri", "1/A mon", "1/B wed", "1/C fri"]);
  const one = afterAMiss(task, plan, { session: "0/B", because: "ill", back: addDays(MONDAY, 5) });
  const then = afterMisses(task, plan, [missed(2, "ill", 5)]);
  expect([then.task, then.placed, then.skipped, then.why]).toEqual([one.task, one.placed, one.skipped, one.why]);
  expect(then.skipped).toEqual(["0/B", "0/C"]);
});

test("the second is answered on the days that the first left, whatever order they are told in", () => {
  const both = [missed(3, "tired"), missed(0, "busy")];
  const then = afterMisses(task, plan, both);
  // Busy on Monday: Tuesday, Thursday, Saturday. Then Thursday itself is missed, tired.
  expect(days(then.placed)).toEqual(["0/A tue", "0/C sat", "1/A mon", "1/B wed", "1/C fri"]);
  expect(then.skipped).toEqual(["0/B"]);
  expect(afterMisses(task, plan, both.toReversed())).toEqual(then);
  expect(then.why.map(({ code }) => code)).toEqual([
    "calendar/missed-moved",
    "calendar/moved",
    "calendar/moved",
    "calendar/missed-tired",
  ]);
});

test("a day without a session says so and changes nothing; days outside the weeks say nothing", () => {
  const then = afterMisses(task, plan, [missed(1, "ill"), missed(-1, "ill"), missed(14, "busy")]);
  expect(then.why).toEqual([{ code: "calendar/missed-nothing", data: { day: "2027-03-02" } }]);
  expect(then.task).toBe(task);
  expect(then.placed).toBe(plan);
  expect(afterMisses(task, plan, [missed(13, "tired")]).why[0]?.code).toBe("calendar/missed-nothing");
});
