import { describe, expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import { published } from "../testing/index.ts";
import { type RatedSession, type WeekLoad, weekLoad } from "./session-load.ts";

const MONDAY = day("2027-03-01");
/** Sessions of 1 minute whose effort cannot hold the printed loads: 10 minutes a unit. */
const week = (loads: readonly number[]): WeekLoad => {
  const answer = weekLoad(
    loads.flatMap((load, at) => (load === 0 ? [] : [{ day: addDays(MONDAY, at), minutes: load / 5, effort: 5 }])),
    MONDAY,
    loads.length,
  );
  if (!answer.known) throw new Error("every session was rated");
  return answer.week;
};
const FOSTER = [240, 0, 360, 120, 0, 450, 180];

published("foster1998", "monotony and strain of 240, 0, 360, 120, 0, 450, 180, n − 1", [
  ["worked", "definition", () => week(FOSTER).monotony!, 1.126, 0.001],
  ["worked", "definition", () => week(FOSTER).strain!, 1519.5, 0.1],
]);

describe("mo-01: three hours at 7 of 10 and 45 minutes at 4 (handbook)", () => {
  const sessions: readonly RatedSession[] = [
    ...[0, 2, 4].map((at) => ({ day: addDays(MONDAY, at), minutes: 60, effort: 7 })),
    { day: addDays(MONDAY, 5), minutes: 45, effort: 4 },
  ];
  test("seven days with their zeros, sample SD", () => {
    const answer = weekLoad(sessions, MONDAY);
    if (!answer.known) throw new Error("every session was rated");
    expect(answer.week.loads).toEqual([420, 0, 420, 0, 420, 180, 0]);
    expect(answer.week.total).toBe(1440);
    expect(answer.week.monotony).toBeCloseTo(0.9782, 4);
    expect(answer.week.strain).toBeCloseTo(1408.6, 1);
    // With n in place of n − 1, as the docstring says: √(7 ÷ 6) times.
    expect(answer.week.monotony! * Math.sqrt(7 / 6)).toBeCloseTo(1.0565, 4);
  });
  test("a rating that is missing is unknown and not 0", () => {
    const { effort: _, ...unrated } = sessions[3]!;
    expect(weekLoad([...sessions.slice(0, 3), unrated], MONDAY)).toEqual({
      known: false,
      missing: [addDays(MONDAY, 5)],
    });
  });
  test("two sessions of a day are added before anything else; other weeks stay out", () => {
    const twice = [
      ...sessions,
      { day: MONDAY, minutes: 20, effort: 3 },
      { day: addDays(MONDAY, 7), minutes: 90, effort: 9 },
    ];
    const answer = weekLoad(twice, MONDAY);
    expect(answer.known && answer.week.loads[0]).toBe(480);
    expect(answer.known && answer.week.total).toBe(1500);
  });
});

test("days that are all alike have no monotony, and a week of rest has none either", () => {
  expect(week([300, 300, 300, 300, 300, 300, 300]).monotony).toBeUndefined();
  expect(weekLoad([], MONDAY)).toMatchObject({ known: true, week: { total: 0, sd: 0 } });
});

test.each([
  [{ day: MONDAY, minutes: 60, effort: 11 }, 7],
  [{ day: MONDAY, minutes: 60, effort: Number.NaN }, 7],
  [{ day: MONDAY, minutes: -1, effort: 5 }, 7],
  [{ day: MONDAY, minutes: 1441, effort: 5 }, 7],
  [{ day: MONDAY, minutes: 60, effort: 5 }, 1],
  [{ day: MONDAY, minutes: 60, effort: 5 }, 32],
] as const)("%j over %d days is refused", (session, days) => {
  expect(() => weekLoad([session], MONDAY, days)).toThrow(RangeError);
});

test("the ends of what can be rated are ratings: effort 0 and 10, no minutes, a whole day", () => {
  const load = (minutes: number, effort: number) => {
    const answer = weekLoad([{ day: MONDAY, minutes, effort }], MONDAY);
    return answer.known && answer.week.loads[0];
  };
  expect([load(60, 0), load(0, 5), load(60, 10), load(1440, 1), load(60, 0.5)]).toEqual([0, 0, 600, 1440, 30]);
  expect(() => load(60, -0.5)).toThrow("effort must be from 0 to 10");
  expect(() => load(1441, 5)).toThrow("0 to 1,440 minutes");
});

test("2 to 31 whole days are compared", () => {
  for (const days of [2, 31]) expect(weekLoad([], MONDAY, days).known).toBe(true);
  for (const days of [1, 32, 7.5, Number.NaN]) expect(() => weekLoad([], MONDAY, days)).toThrow(RangeError);
});

test("the last day counts, the day before the first and the day after the last do not", () => {
  const on = (at: number) => {
    const answer = weekLoad([{ day: addDays(MONDAY, at), minutes: 10, effort: 5 }], MONDAY);
    return answer.known && answer.week.total;
  };
  expect([-1, 0, 6, 7].map(on)).toEqual([0, 50, 50, 0]);
});

test("each day without a rating is named once, in order", () => {
  const unrated = [3, 1, 3].map((at) => ({ day: addDays(MONDAY, at), minutes: 10 }));
  expect(weekLoad([...unrated, { day: addDays(MONDAY, 9), minutes: 10 }], MONDAY)).toEqual({
    known: false,
    missing: [addDays(MONDAY, 1), addDays(MONDAY, 3)],
  });
});
