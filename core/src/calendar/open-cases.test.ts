import { describe, expect, test } from "vitest";
import { addDays, day, printDay, type Weekday, weekdayOf } from "../day.ts";
import { HARD_SETS } from "../measures/index.ts";
import { MISS_CAUSES, type Muscle, type Window } from "../model/index.ts";
import { madeUpPerson, madeUpPlace } from "../testing/index.ts";
import { type AfterMiss, afterAMiss, type Miss } from "./after-a-miss.ts";
import { explainPlacements } from "./explain.ts";
import { maskOf } from "./muscle-mask.ts";
import { daysCanMend, placeSessions } from "./place-sessions.ts";
import { type RecutSlot, recut } from "./recut.ts";
import type { CalendarTask } from "./task.ts";
import { isoWeek, sessionsByWeek } from "./week-of.ts";
import { windowsOf } from "./windows-of.ts";

const monday = day("2027-03-01");
const evening = (weekday: Window["day"]): Window => ({ day: weekday, from: 1080, to: 1125, cost: 0 });

describe("ca-01: three people on the same Monday, Wednesday and Friday miss Monday: ill, slept 4 hours, a late meeting", () => {
  const hard = maskOf(["front thigh", "chest", "lats"]);

  /** Full body three times; windows on the days of the plan and on the days that are free besides. */
  function weekOf(free: readonly Window["day"][], said: Partial<CalendarTask> = {}): CalendarTask {
    const person = madeUpPerson({ windows: free.map(evening) });
    return {
      start: monday,
      days: 14,
      weekDays: 7,
      sessions: [0, 1].flatMap((week) =>
        ["A", "B", "C"].map((key) => ({ id: `${week}/${key}`, week, minutes: 45, hard })),
      ),
      windows: windowsOf(person, madeUpPlace(), monday, 14),
      carry: 0,
      maxInRow: 3,
      gapHours: 48,
      ...said,
    };
  }
  const task = weekOf(["mon", "tue", "wed", "thu", "fri", "sat"]);
  const plan = placeSessions(task);
  const firstWeek = ({ placed }: Pick<AfterMiss, "placed">) =>
    placed.placements
      .filter(({ day: on }) => on < addDays(monday, 7))
      .map(({ session, day: on }) => `${session} ${weekdayOf(on)}`);
  const after = (because: Miss["because"], of = task) => afterAMiss(of, placeSessions(of), { session: "0/A", because });

  test("the plan is Monday, Wednesday, Friday", () => {
    expect(firstWeek({ placed: plan })).toEqual(["0/A mon", "0/B wed", "0/C fri"]);
  });

  test("ill: skipped, no make-up, and the first session back is eased", () => {
    const ill = after("ill");
    expect(ill.answer).toBe("skip");
    expect(firstWeek(ill)).toEqual(["0/B wed", "0/C fri"]);
    expect(ill.why.find(({ code }) => code === "calendar/ease-in")?.data).toMatchObject({ session: "0/B" });
  });

  test("worn out: skipped, on with Wednesday, and nothing is eased", () => {
    const tired = after("tired");
    expect(tired.answer).toBe("skip");
    expect(firstWeek(tired)).toEqual(["0/B wed", "0/C fri"]);
    expect(tired.why.map(({ code }) => code)).toEqual(["calendar/missed-tired"]);
  });

  test("busy: Tuesday, and then Thursday and Saturday, so that a day stays between hard sessions", () => {
    const busy = after("busy");
    expect(busy.answer).toBe("move");
    expect(firstWeek(busy)).toEqual(["0/A tue", "0/B thu", "0/C sat"]);
    expect(busy.placed.parts.close).toBe(0);
    const moved = busy.why.filter(({ code }) => code === "calendar/moved").map(({ data }) => data["session"]);
    expect(moved).toEqual(["0/B", "0/C"]);
  });

  test("neighbour: with Saturday taken, the rest of the week keeps no day between: skipped", () => {
    const busy = after("busy", weekOf(["mon", "tue", "wed", "thu", "fri"]));
    expect(busy.answer).toBe("skip");
    expect(firstWeek(busy)).toEqual(["0/B wed", "0/C fri"]);
    expect(busy.why[0]).toMatchObject({ code: "calendar/missed-close", data: { hours: 24, wanted: 48 } });
  });

  test("neighbour: sessions that share no hard muscle move to Tuesday, and the rest stays", () => {
    const sessions = task.sessions.map((session, n) => ({ ...session, hard: 1 << (n % 3) }));
    const apart = { ...weekOf(["mon", "tue", "wed", "thu", "fri"]), sessions };
    const placed = placeSessions({
      ...apart,
      windows: apart.windows.map((list, d) => (d % 7 === 1 || d % 7 === 3 ? [] : list)),
    });
    const busy = afterAMiss(apart, placed, { session: "0/A", because: "busy" });
    expect(firstWeek(busy)).toEqual(["0/A tue", "0/B wed", "0/C fri"]);
  });

  test("nothing is owed: the next week has its three sessions and no more, and no day has two", () => {
    for (const because of MISS_CAUSES) {
      const { placed, skipped } = after(because);
      expect(placed.placements.filter(({ day: on }) => on >= addDays(monday, 7)).map(({ session }) => session)).toEqual(
        ["1/A", "1/B", "1/C"],
      );
      expect(new Set(placed.placements.map(({ day: on }) => on)).size).toBe(placed.placements.length);
      expect(skipped).toEqual(["busy", "away"].includes(because) ? [] : ["0/A"]);
    }
  });
});

describe("ca-03: nights on Thursday, Friday and Saturday leave Monday, Tuesday and Wednesday, 45 minutes each", () => {
  const kinds: readonly (readonly [string, string, Partial<Record<Muscle, number>>, number])[] = [
    ["squat", "squat", { "front thigh": 3, buttocks: 3 }, 430],
    ["press", "push", { chest: 3, triceps: 3 }, 400],
    ["row", "pull", { lats: 3, "mid back": 3 }, 400],
    ["trunk", "trunk", { "front trunk": 2 }, 200],
  ];
  const sessions = ["A", "B", "C"].map((key) => ({
    key,
    fixedS: 300,
    slots: kinds.map(([name, lane, hard, seconds]): RecutSlot => ({ key: `${key}-${name}`, lane, hard, seconds })),
  }));
  const hard = maskOf(kinds.flatMap(([, , muscles]) => (Object.keys(muscles) as Muscle[]).slice(0, 2)));

  function weekOf(days: readonly Window["day"][]): CalendarTask {
    const nurse = madeUpPerson({ windows: days.map(evening) });
    return {
      start: monday,
      days: 14,
      weekDays: 7,
      sessions: [0, 1].flatMap((week) =>
        sessions.map(({ key }) => ({ id: `${week}/${key}`, week, minutes: 45, hard })),
      ),
      windows: windowsOf(nurse, madeUpPlace(), monday, 14),
      carry: 0,
      maxInRow: 3,
      gapHours: 48,
    };
  }
  const nurse = weekOf(["mon", "tue", "wed"]);
  const placed = placeSessions(nurse);
  const firstWeek = placed.placements.slice(0, 3);
  const newDeal = recut({
    sessions,
    starts: firstWeek,
    gapHours: 48,
    minutes: 45,
    weekDays: 7,
    otherDays: 0,
  });

  test("all three sessions stand, on three days in a row, and it is said that there are no others", () => {
    expect(firstWeek.map((placement) => weekdayOf(placement.day))).toEqual(["mon", "tue", "wed"]);
    expect(placed.dropped).toEqual([]);
    const [row] = explainPlacements(nurse, placed).rows;
    expect(row).toEqual({
      code: "calendar/in-a-row",
      data: { from: "2027-03-01", to: "2027-03-03", days: 3, most: 3, others: 0 },
    });
  });

  test("no session on a night-shift day, nor on the Sunday morning after the last night", () => {
    const days = placed.placements.map((placement) => weekdayOf(placement.day));
    for (const never of ["thu", "fri", "sat", "sun"] as const) expect(days).not.toContain(never);
  });

  test("days cannot mend it, so the slots are dealt anew: no muscle hard twice within 48 hours", () => {
    expect(daysCanMend(nurse)).toBe(false);
    expect(newDeal.closeBefore).toBeGreaterThan(0);
    expect(newDeal.closeAfter).toBe(0);
    const [first, second, third] = newDeal.sessions.map((session) => new Set(session.hard));
    expect([...second!].filter((muscle) => first!.has(muscle) || third!.has(muscle))).toEqual([]);
    // The first and the third day are exactly 48 hours apart: they may share, and here they do.
    expect([...first!].some((muscle) => third!.has(muscle))).toBe(true);
  });

  test("weekly sets stay, every session keeps its 45 minutes, the hardest day is the first, and it is proven", () => {
    const before = sessions.flatMap(({ slots }) => slots.map(({ key }) => key)).sort();
    expect(newDeal.sessions.flatMap(({ slots }) => slots).sort()).toEqual(before);
    for (const { minutes } of newDeal.sessions) expect(minutes).toBeLessThanOrEqual(45);
    const setsOf = (keys: readonly string[]) =>
      sessions
        .flatMap(({ slots }) => slots.filter(({ key }) => keys.includes(key)))
        .reduce((sum, slot) => sum + Object.values(slot.hard).reduce((all, n) => all + n, 0), 0);
    const load = newDeal.sessions.map(({ slots }) => setsOf(slots));
    expect(load[0]).toBe(Math.max(...load));
    expect(newDeal.proven).toBe(true);
  });

  test("why is said: the days are accepted as they are, and each moved slot names the muscles and the hours", () => {
    expect(newDeal.why[0]).toEqual({
      code: "calendar/days-as-they-are",
      data: { days: 3, from: "2027-03-01", to: "2027-03-03", others: 0 },
    });
    const moved = newDeal.why.filter(({ code }) => code === "calendar/slot-moved");
    expect(moved.length).toBeGreaterThan(0);
    for (const { data } of moved) expect(data).toMatchObject({ hours: 24, wanted: 48 });
  });

  test("neighbour: with Friday free too, days mend it and nothing is dealt anew", () => {
    const other = weekOf(["mon", "tue", "wed", "fri"]);
    const there = placeSessions(other);
    expect(daysCanMend(other)).toBe(true);
    expect(there.parts.close).toBe(0);
    expect(there.placements.slice(0, 3).map((placement) => weekdayOf(placement.day))).toEqual(["mon", "wed", "fri"]);
    expect(explainPlacements(other, there).rows).toEqual([]);
    const same = recut({
      sessions,
      starts: there.placements.slice(0, 3),
      gapHours: 48,
      minutes: 45,
      weekDays: 7,
      otherDays: 1,
    });
    expect(same.sessions.map(({ slots }) => slots)).toEqual(sessions.map(({ slots }) => slots.map(({ key }) => key)));
  });

  test("neighbour: a week whose slots are all below three hard sets needs nothing", () => {
    const light = sessions.map((session) => ({
      ...session,
      slots: session.slots.map((one) => ({ ...one, hard: { "front thigh": HARD_SETS - 1 } })).slice(0, 1),
    }));
    const kept = recut({ sessions: light, starts: firstWeek, gapHours: 48, minutes: 45, weekDays: 7, otherDays: 0 });
    expect(kept.closeBefore).toBe(0);
    expect(kept.sessions.map(({ slots }) => slots)).toEqual(light.map(({ slots }) => slots.map(({ key }) => key)));
  });
});

describe("ca-07: days in a row are days of the calendar, on the nights when the clocks change too", () => {
  function pair(saturday: string, free: number): CalendarTask {
    return {
      start: day(saturday),
      days: 3,
      weekDays: 7,
      sessions: ["A", "B"].map((id) => ({ id, week: 0, minutes: 45, hard: 1 })),
      windows: [0, 1, 2].map((d) => (d < free ? [{ from: 1080, to: 1140, cost: 0 }] : [])),
      carry: 0,
      maxInRow: 3,
      gapHours: 48,
    };
  }
  const changes = [
    ["2027-03-27", "2027-03-28"],
    ["2027-10-30", "2027-10-31"],
  ] as const;

  test.each(changes)("%s and the day after count as next-day, 24 wall hours apart", (saturday, sunday) => {
    const task = pair(saturday, 2);
    const got = explainPlacements(task, placeSessions(task));
    expect(got.sessions.map((placement) => printDay(placement.day))).toEqual([saturday, sunday]);
    expect(got.sessions[1]!.why.find(({ code }) => code === "calendar/close")?.data).toMatchObject({
      with: "A",
      day: saturday,
      hours: 24,
    });
  });

  test.each(changes)("neighbour: with the Monday free as well, %s keeps a day between", (saturday) => {
    const got = placeSessions(pair(saturday, 3));
    expect(got.placements.map((placement) => placement.day - day(saturday))).toEqual([0, 2]);
    expect(got.parts.close).toBe(0);
  });

  test("a day is a date: the day after 27 March is the 28th, and 5 September 2027 is one like any other", () => {
    expect(printDay(addDays(day("2027-03-27"), 1))).toBe("2027-03-28");
    const task = { ...pair("2027-09-04", 2), windows: [[], [{ from: 0, to: 60, cost: 0 }], []] };
    const got = placeSessions(task);
    expect(got.placements.map((placement) => [printDay(placement.day), placement.start])).toEqual([["2027-09-05", 0]]);
  });
});

describe("ca-10: two coaches look at one week from two sides, across New Year", () => {
  const days = ["2026-12-26", "2026-12-27", "2026-12-28", "2027-01-03"].map((text) => day(text));
  const told = (begins: Weekday) =>
    sessionsByWeek(days, begins).map(({ first, name, sessions }) => [printDay(first), name, sessions]);

  test("weeks from Monday: 2 and 2, and the second is 2026-W53", () => {
    expect(told("mon")).toEqual([
      ["2026-12-21", "2026-W52", 2],
      ["2026-12-28", "2026-W53", 2],
    ]);
  });

  test("weeks from Sunday: 1, 2 and 1, and no ISO name is given to them", () => {
    expect(told("sun")).toEqual([
      ["2026-12-20", undefined, 1],
      ["2026-12-27", undefined, 2],
      ["2027-01-03", undefined, 1],
    ]);
  });

  test("the programme's own weeks know nothing of it: the same task, whatever weekday it begins on, has the same weeks", () => {
    const task = (start: string): CalendarTask => ({
      start: day(start),
      days: 14,
      weekDays: 7,
      sessions: [0, 1].map((week) => ({ id: `${week}`, week, minutes: 45, hard: 0 })),
      windows: Array.from({ length: 14 }, () => [{ from: 1080, to: 1140, cost: 0 }]),
      carry: 0,
      maxInRow: 3,
      gapHours: 48,
    });
    for (const start of ["2026-12-26", "2026-12-27", "2026-12-28"]) {
      expect(placeSessions(task(start)).placements.map((one) => one.day - day(start))).toEqual([0, 7]);
    }
  });

  test("neighbour: a year earlier the same dates cross into 2026-W01", () => {
    expect(isoWeek(day("2025-12-29"))).toBe("2026-W01");
    expect(isoWeek(day("2026-01-03"))).toBe("2026-W01");
  });
});
