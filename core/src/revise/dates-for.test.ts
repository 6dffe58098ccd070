import { describe, expect, test } from "vitest";
import { addDays, day, printDay, WEEKDAYS, weekdayOf } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import type { Person, Place, Programme, Window } from "../model/index.ts";
import {
  madeUpPerson,
  madeUpPhase,
  madeUpPlace,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
} from "../testing/index.ts";
import { type Dated, type DatesInput, datesFor, MOST_IN_ROW, USUAL_GAP_HOURS } from "./dates-for.ts";
import { planFor } from "./plan-for.ts";

const ON = day("2027-03-01");
const kilos = (...values: readonly number[]) => values.map((value) => ({ value, unit: "kg" as const }));
const at = (weekday: Window["day"], more: Partial<Window> = {}): Window => ({
  day: weekday,
  from: 1080,
  to: 1140,
  cost: 0,
  ...more,
});
const room = madeUpPlace({
  equipment: { floor: 1, wall: 1, chair: 1, counter: 1, bench: 1, dumbbell: 20 },
  dumbbells: { loads: kilos(2, 4, 6, 8, 10, 12, 14, 16), pairs: true },
});
/** A second place with dumbbells, and one with a floor and nothing on it. */
const gym = madeUpPlace({ ...room, id: "gym", name: "Gym" });
const hut = madeUpPlace({ id: "hut", name: "Hut", equipment: { floor: 1, wall: 1 } });

const hard = sets(3, reps({ from: 8, to: 10 }, { reserve: { from: 2, to: 2 } }), { restS: 90 });
const squat = (key: string) => madeUpSlot("goblet-squat", "squat", hard, { slot: key, down: 5 });
const programme: Programme = madeUpProgramme([], {
  status: "intermediate",
  phases: [
    madeUpPhase(
      ["a", "b", "c"].map((key) => madeUpSession(key, 40, [squat(`squat-${key}`)])),
      { key: "one", weeks: 4, light: [4] },
    ),
  ],
});

function dated(said: Partial<Person>, more: Partial<DatesInput> = {}): Dated {
  const person = madeUpPerson({
    status: "intermediate",
    mass: { load: { value: 70, unit: "kg" }, on: ON },
    lifts: [{ exercise: "goblet-squat", load: { value: 16, unit: "kg" }, reps: 12, reserve: 1, on: addDays(ON, -7) }],
    windows: [at("mon"), at("wed"), at("fri")],
    ...said,
  });
  const input = { programme, person, place: room, others: [room, gym, hut], catalogue: CATALOGUE, on: ON, ...more };
  const made = { engine: "test", catalogue: "test", state: "test", decisions: "none" };
  return datesFor({ ...input, plan: planFor({ ...input, made, programmeHash: "abc" }), weeks: 4, ...more });
}

const week = (of: Dated, from = 0) =>
  of.placed.placements
    .filter((one) => one.day >= ON + from * 7 && one.day < ON + (from + 1) * 7)
    .map((one) => `${one.session.split("/")[2]} ${weekdayOf(one.day)}`);

test("every session of every week has a day in its order, inside the windows, as many weeks as are asked for", () => {
  const four = dated({});
  expect([0, 1, 2, 3].map((n) => week(four, n))).toEqual(Array(4).fill(["a mon", "b wed", "c fri"]));
  expect(four.placed.proven).toBe(true);
  const two = dated({}, { weeks: 2 });
  expect(two.placed.placements).toHaveLength(6);
  expect(two.sessions, "the sessions of the whole plan are known").toHaveLength(12);
});

test("the rules of the task: hours of the programme or 48, days in a row, and the days that a rota has", () => {
  expect(dated({}).task).toMatchObject({ gapHours: USUAL_GAP_HOURS, maxInRow: MOST_IN_ROW, weekDays: 7, days: 28 });
  expect(dated({}, { programme: { ...programme, weekly: { gap: 72 } } }).task.gapHours).toBe(72);
  const cycle = { length: 8, anchor: ON, days: [4, 5, 6, 7].map((n) => ({ day: n, from: 600, to: 700, cost: 0 })) };
  const rota = dated({ windows: [], cycle });
  expect(rota.task).toMatchObject({ weekDays: 8, days: 32 });
  for (const one of rota.placed.placements) expect((one.day - ON) % 8).toBeGreaterThanOrEqual(4);
});

test("a light week loads no muscle hard, so that its sessions may stand closer", () => {
  const { sessions } = dated({});
  const hardIn = (n: number) => sessions.filter((session) => session.week === n).map((session) => session.hard > 0);
  expect(hardIn(0)).toEqual([true, true, true]);
  expect(hardIn(3)).toEqual([false, false, false]);
});

test("days away have no session, and nothing of that week is in the next", () => {
  const away = [{ from: addDays(ON, 7), to: addDays(ON, 13) }];
  const of = dated({ away });
  expect([0, 1, 2, 3].map((n) => week(of, n).length)).toEqual([3, 0, 3, 3]);
  expect(of.placed.dropped.map(({ reason }) => reason.code)).toEqual(Array(3).fill("calendar/fewer-days"));
});

describe("a window at another place", () => {
  const elsewhere = (place: string) => dated({ windows: [at("mon"), at("wed"), at("fri", { place })] });

  test("with all that the session needs is used", () => {
    expect(week(elsewhere("gym"))).toEqual(["a mon", "b wed", "c fri"]);
    expect(elsewhere("gym").placed.placements[2]).toMatchObject({ place: "gym" });
  });

  test("that lacks a dumbbell is not, and it is said", () => {
    const of = elsewhere("hut");
    expect(week(of)).toEqual(["a mon", "b wed"]);
    expect(of.placed.placements.every(({ place }) => place === undefined)).toBe(true);
    const only = dated({ windows: [at("fri", { place: "hut" })] });
    expect(only.placed.dropped[0]!.reason).toMatchObject({ code: "calendar/lacks-kit", data: { places: ["hut"] } });
  });

  test("neighbour: a session that needs no dumbbell can stand there", () => {
    const body: Programme = {
      ...programme,
      phases: [madeUpPhase([madeUpSession("a", 40, [madeUpSlot("floor-bridge", "bridge", hard, { slot: "s" })])])],
    };
    const of = dated({ windows: [at("fri", { place: "hut" })] }, { programme: body });
    expect(week(of)).toEqual(["a fri"]);
  });
});

test("a fixed date holds, on a day outside its week too, and the others go round it", () => {
  const windows = WEEKDAYS.map((weekday) => at(weekday, { cost: weekday === "sat" ? 4 : 0 }));
  const saturday = addDays(ON, 5);
  const of = dated({ windows, perWeek: 3 }, { fixed: new Map([["one/1/c", saturday]]) });
  expect(week(of)).toContain("c sat");
  expect(of.placed.dropped).toEqual([]);
  const closed = dated({}, { fixed: new Map([["one/1/c", addDays(ON, 6)]]) });
  expect(closed.placed.value).toMatchObject({ fixed: 1, dropped: 1 });
  expect(closed.placed.dropped[0]!.reason).toMatchObject({
    code: "calendar/no-window",
    data: { from: "2027-03-07", to: "2027-03-07" },
  });
  // Friday of the first week, given to the second session: the third has no day left in its week but in its carry.
  const friday = dated({}, { fixed: new Map([["one/1/b", addDays(ON, 4)]]) });
  expect(week(friday)).toEqual(["a mon", "b fri"]);
});

test("hours that are a must are kept before welcome hours", () => {
  const windows = [at("mon"), at("tue"), at("wed", { cost: 4, from: 1020, to: 1100 }), at("thu", { cost: 4 })];
  const two = {
    ...programme,
    phases: [{ ...programme.phases[0]!, sessions: programme.phases[0]!.sessions.slice(0, 2) }],
  };
  const kept = dated({ windows }, { programme: two, keepHours: true });
  expect(kept.task.gapIsMust).toBe(true);
  expect(kept.placed.parts.close).toBe(0);
});

test("the same input gives the same dates, in whatever order its places and windows stand", () => {
  const windows = [at("mon"), at("wed", { place: "gym" }), at("fri", { place: "hut" }), at("sat")];
  const one = dated({ windows });
  const other = dated({ windows: windows.toReversed() }, { others: [hut, gym, room] as readonly Place[] });
  expect(other.placed).toEqual(one.placed);
  expect(one.placed.placements.map((placement) => printDay(placement.day))).toHaveLength(12);
});

test("hours instead of the usual ones for two weeks, and the usual number of sessions still", () => {
  const instead = [
    { from: addDays(ON, 7), to: addDays(ON, 20), windows: WEEKDAYS.map((on) => at(on, { from: 420, to: 480 })) },
  ];
  const months = dated({ instead });
  expect(week(months, 0)).toEqual(["a mon", "b wed", "c fri"]);
  const there = months.placed.placements.filter(({ day: on }) => on >= ON + 7 && on <= ON + 20);
  expect(there.map(({ start }) => start)).toEqual(Array(6).fill(420));
  expect(week(months, 3)).toEqual(["a mon", "b wed", "c fri"]);
  expect(months.notAsUsual.map(({ code }) => code)).toEqual(["calendar/other-hours"]);
  // One week with every day free makes no fourth session out of three.
  expect(months.task.sessions).toHaveLength(12);
});

test("at another place for some days: what it lacks leaves its sessions without a day", () => {
  const instead = [
    { from: ON, to: addDays(ON, 6), windows: [at("mon", { place: "hut" }), at("wed", { place: "hut" }), at("fri")] },
  ];
  const away = dated({ instead });
  expect(week(away, 0)).toHaveLength(1);
  expect(away.placed.dropped.filter(({ reason }) => reason.code === "calendar/fewer-days").length).toBeGreaterThan(0);
});

test("a plan that waits goes on in the week in which it stood, phases and all; one that does not loses those sessions", () => {
  const nine = { from: addDays(ON, 9), to: addDays(ON, 17) };
  const lost = dated({ away: [nine] });
  expect(lost.placed.dropped.length).toBeGreaterThan(2);
  const kept = dated({ away: [{ ...nine, waits: true }] });
  expect(kept.placed.dropped).toEqual([]);
  expect(kept.placed.placements).toHaveLength(12);
  expect(kept.task.days).toBe(37);
  // Monday of the second week was done before; its other two follow, and the third week after them.
  const after = kept.placed.placements.filter(({ day: on }) => on > nine.to).map(({ session }) => session);
  expect(after.slice(0, 3)).toEqual(["one/2/b", "one/2/c", "one/3/a"]);
  expect(kept.placed.placements.filter(({ day: on }) => on >= nine.from && on <= nine.to)).toEqual([]);
});

test("what was missed is answered by its cause, the first and the next, and what stands is said to be after a miss", () => {
  const missed = [
    { on: addDays(ON, 2), because: "ill" as const },
    { on: addDays(ON, 9), because: "tired" as const, back: addDays(ON, 12) },
  ];
  const after = dated({ missed });
  expect(week(after, 0)).toEqual(["a mon", "c fri"]);
  expect(week(after, 1)).toEqual(["a mon"]);
  expect(after.skipped).toEqual(["one/1/b", "one/2/b", "one/2/c"]);
  expect(after.notAsUsual.map(({ code }) => code)).toEqual([
    "calendar/missed-ill",
    "calendar/ease-in",
    "calendar/missed-tired",
    "calendar/not-back",
  ]);
  expect([after.afterMiss, dated({}).afterMiss]).toEqual([true, false]);
  const nothing = dated({ missed: [{ on: addDays(ON, 1), because: "ill" }] });
  expect([nothing.afterMiss, nothing.skipped]).toEqual([false, []]);
});
