import { describe, expect, test } from "vitest";
import { addDays, type Day } from "../day.ts";
import type { StaveEvent } from "../model/index.ts";
import { madeUpEvent, noonOf, PLAN_START, published } from "../testing/index.ts";
import { foldRecord, loadWeeks, ratedSessions } from "./index.ts";

const DAY_MS = 86_400_000;
const dayOf = (at: number) => Math.floor(at / DAY_MS) as Day;
const NEXT_MONDAY = addDays(PLAN_START, 7);

/** One rated session a day, so many minutes at effort 6; 0 for a day of rest; `sport`: outside the plan. */
function week(minutes: readonly number[], sport = false): readonly StaveEvent[] {
  return minutes.flatMap((length, day): StaveEvent[] => {
    if (length === 0) return [];
    const [id, at] = [`rated-${day}-${sport}`, noonOf(day)];
    if (sport) return [madeUpEvent(id, day + 1, "outside", { what: "sport", minutes: length, effort: 6 }, { at })];
    const of = { plan: "p", session: `base/1/${day}` };
    return [
      madeUpEvent(`${id}-began`, 2 * day + 1, "session-started", {}, { of, at }),
      madeUpEvent(id, 2 * day + 2, "rated", { effort: 6, minutes: length }, { of, at }),
    ];
  });
}
const of = (events: Parameters<typeof foldRecord>[0]) => {
  const [answer] = loadWeeks(foldRecord(events), dayOf, NEXT_MONDAY, 1);
  if (!answer!.known) throw new Error("a day is missing");
  return answer!.week;
};

// Loads 240, 0, 360, 120, 0, 450, 180 with n − 1.
published("foster1998", "a week of sessions from their records", [
  ["worked", "total", () => of(week([40, 0, 60, 20, 0, 75, 30])).total, 1350, 0],
  ["worked", "monotony, SD of n − 1", () => of(week([40, 0, 60, 20, 0, 75, 30])).monotony!, 1.126, 0.001],
  ["worked", "strain, SD of n − 1", () => of(week([40, 0, 60, 20, 0, 75, 30])).strain!, 1519.5, 0.1],
]);

describe("what counts", () => {
  test("work outside the plan counts as a session does, on the same day too", () => {
    expect(of([...week([40, 0, 0, 0, 0, 0, 0]), ...week([40, 0, 0, 0, 0, 0, 0], true)]).loads[0]).toBe(480);
  });
  test("a session that nobody rated is unknown and not zero", () => {
    const started = madeUpEvent(
      "a",
      1,
      "session-started",
      {},
      { of: { plan: "p", session: "base/1/a" }, at: noonOf(2) },
    );
    const answers = loadWeeks(foldRecord([started]), dayOf, NEXT_MONDAY, 2);
    expect(answers).toMatchObject([{ known: true }, { known: false, missing: [addDays(PLAN_START, 2)] }]);
  });
});

describe("every session as it was rated", () => {
  const of = { plan: "p", session: "base/1/a" };
  const began = madeUpEvent("a", 1, "session-started", {}, { of, at: noonOf(2) });
  const told = (...events: readonly StaveEvent[]) => ratedSessions(foldRecord([began, ...events]), dayOf);
  const on = addDays(PLAN_START, 2);

  test("with minutes and effort, on the day on which it was begun, whenever it was rated", () => {
    const rated = madeUpEvent("b", 2, "rated", { effort: 7, minutes: 50 }, { of, at: noonOf(4) });
    expect(told(rated)).toEqual([{ day: on, minutes: 50, effort: 7 }]);
  });
  test("effort 0 is an effort; one that was not said is none", () => {
    const rated = (effort: number | "not said") =>
      told(madeUpEvent("b", 2, "rated", { effort, minutes: 50 }, { of, at: noonOf(2) }));
    expect(rated(0)).toEqual([{ day: on, minutes: 50, effort: 0 }]);
    expect(rated("not said")).toEqual([{ day: on, minutes: 50 }]);
  });
  test("not at all: no minutes are made up", () => {
    expect(told()).toEqual([{ day: on, minutes: 0 }]);
  });
  test("work outside the plan after the sessions", () => {
    const sport = { what: "sport", minutes: 90, effort: "not said" } as const;
    expect(told(madeUpEvent("b", 2, "outside", sport, { at: noonOf(0) }))).toEqual([
      { day: on, minutes: 0 },
      { day: PLAN_START, minutes: 90 },
    ]);
  });
});

test("weeks of seven days that end the day before, oldest first", () => {
  const both = [...week([10, 0, 0, 0, 0, 0, 20])];
  const totals = (to: number, weeks: number) =>
    loadWeeks(foldRecord(both), dayOf, addDays(PLAN_START, to), weeks).map((each) => each.known && each.week.total);
  expect(totals(7, 2)).toEqual([0, 180]);
  expect(totals(14, 3)).toEqual([0, 180, 0]);
  expect(totals(6, 1)).toEqual([60]);
  expect(totals(8, 1)).toEqual([120]);
});
