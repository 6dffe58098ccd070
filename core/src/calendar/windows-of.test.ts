import { expect, test } from "vitest";
import { addDays, day, WEEKDAYS, weekdayOf } from "../day.ts";
import type { OpenHours } from "../model/index.ts";
import { madeUpPerson, madeUpPlace } from "../testing/index.ts";
import { weekDaysOf, windowsOf } from "./windows-of.ts";

const monday = day("2027-03-01");
const evenings = WEEKDAYS.map((weekday) => ({ day: weekday, from: 1080, to: 1140, cost: 1 }));

function open(from: number, to: number, days: readonly string[] = WEEKDAYS): OpenHours[] {
  return WEEKDAYS.filter((weekday) => days.includes(weekday)).map((weekday) => ({ day: weekday, from, to }));
}

test("weekly windows fall on their weekdays, whatever day the task begins on", () => {
  const person = madeUpPerson({ windows: [{ day: "tue", from: 420, to: 480, cost: 2 }] });
  for (let first = 0; first < 7; first++) {
    const found = windowsOf(person, madeUpPlace(), addDays(monday, first), 14);
    const days = found.flatMap((list, index) => (list.length > 0 ? [addDays(monday, first + index)] : []));
    expect(days.map(weekdayOf)).toEqual(["tue", "tue"]);
  }
  expect(weekDaysOf(person)).toBe(7);
});

test("a day away, first and last included, has no window; the day before and after have", () => {
  const person = madeUpPerson({ windows: evenings, away: [{ from: addDays(monday, 2), to: addDays(monday, 4) }] });
  const counts = windowsOf(person, madeUpPlace(), monday, 7).map((list) => list.length);
  expect(counts).toEqual([1, 1, 0, 0, 0, 1, 1]);
});

test("hours of other days hold instead of the usual ones and of a rota, first and last day included; days away still beat them", () => {
  const mornings = [{ day: "wed" as const, from: 420, to: 480, cost: 2, place: "hotel" }];
  const said = { instead: [{ from: addDays(monday, 1), to: addDays(monday, 3), windows: mornings }] };
  const usual = windowsOf(madeUpPerson({ ...said, windows: evenings }), madeUpPlace(), monday, 7);
  expect(usual.map((list) => list.map(({ from }) => from))).toEqual([[1080], [], [420], [], [1080], [1080], [1080]]);
  expect(usual[2]).toEqual([{ from: 420, to: 480, cost: 2, place: "hotel" }]);
  const cycle = { length: 2, anchor: monday, days: [{ day: 0, from: 600, to: 660, cost: 0 }] };
  const rota = windowsOf(madeUpPerson({ ...said, cycle }), madeUpPlace(), monday, 5);
  expect(rota.map((list) => list.map(({ from }) => from))).toEqual([[600], [], [420], [], [600]]);
  const away = [{ from: addDays(monday, 2), to: addDays(monday, 2) }];
  expect(windowsOf(madeUpPerson({ ...said, windows: evenings, away }), madeUpPlace(), monday, 4)[2]).toEqual([]);
});

test("hours when the place is shut are cut off: closed at midday, closed on Sunday, touching hours are one", () => {
  const person = madeUpPerson({ windows: WEEKDAYS.map((weekday) => ({ day: weekday, from: 600, to: 900, cost: 0 })) });
  const lunch = madeUpPlace({ open: [...open(390, 720, ["mon", "tue"]), ...open(780, 1260, ["mon"])] });
  const [mon, tue, wed] = windowsOf(person, lunch, monday, 3);
  expect(mon).toEqual([
    { from: 600, to: 720, cost: 0 },
    { from: 780, to: 900, cost: 0 },
  ]);
  expect(tue).toEqual([{ from: 600, to: 720, cost: 0 }]);
  expect(wed).toEqual([]);
  expect(windowsOf(person, madeUpPlace({ open: open(900, 1260) }), monday, 1)).toEqual([[]]);
  const touching = madeUpPlace({ open: [...open(780, 1260), ...open(390, 780)] });
  expect(windowsOf(person, touching, monday, 1)).toEqual([[{ from: 600, to: 900, cost: 0 }]]);
});

test("a place that never said its hours cuts nothing, one that says none is never open", () => {
  const person = madeUpPerson({ windows: evenings });
  expect(windowsOf(person, madeUpPlace(), monday, 7).flat()).toHaveLength(7);
  expect(windowsOf(person, madeUpPlace({ open: [] }), monday, 7).flat()).toEqual([]);
});

test("a window elsewhere keeps its place, and only that place's hours cut it", () => {
  const person = madeUpPerson({ windows: [{ day: "mon", from: 600, to: 900, cost: 0, place: "pool" }] });
  const shut = madeUpPlace({ open: [] });
  const pool = madeUpPlace({ id: "pool", open: open(660, 1200) });
  expect(windowsOf(person, shut, monday, 1, [pool])).toEqual([[{ from: 660, to: 900, cost: 0, place: "pool" }]]);
  expect(windowsOf(person, shut, monday, 1)).toEqual([[{ from: 600, to: 900, cost: 0, place: "pool" }]]);
});

test("a rota says where too, and only that place's hours cut it", () => {
  const days = [{ day: 0, from: 600, to: 900, cost: 0, place: "pool" }];
  const person = madeUpPerson({ cycle: { length: 3, anchor: monday, days } });
  const pool = madeUpPlace({ id: "pool", open: open(660, 1200) });
  expect(windowsOf(person, madeUpPlace({ open: [] }), monday, 3, [pool])).toEqual([
    [{ from: 660, to: 900, cost: 0, place: "pool" }],
    [],
    [],
  ]);
});

test("a rota of eight days goes its own way through the weeks, also before its anchor and over a leap day", () => {
  const days = [0, 1, 2, 3].map((at) => ({ day: at, from: 600, to: 660, cost: at }));
  const person = madeUpPerson({ windows: evenings, cycle: { length: 8, anchor: day("2028-02-26"), days } });
  const found = windowsOf(person, madeUpPlace(), day("2028-02-18"), 24);
  expect(found.map((list) => list[0]?.cost ?? "-").join("")).toBe("0123----".repeat(3));
  expect(weekDaysOf(person)).toBe(8);
});

test("a holiday of the place has its own hours or none, whatever is usual, and cuts nothing elsewhere", () => {
  const person = madeUpPerson({ windows: evenings });
  const holidays = [
    { from: "2027-03-02", to: "2027-03-02", open: [{ day: "tue" as const, from: 480, to: 1110 }] },
    { from: "2027-03-03", to: "2027-03-04", open: [] },
  ];
  const lists = (place: Parameters<typeof madeUpPlace>[0]) =>
    windowsOf(person, madeUpPlace(place), monday, 5).map((list) => list.map(({ from, to }) => [from, to]));
  expect(lists({ holidays })).toEqual([[[1080, 1140]], [[1080, 1110]], [], [], [[1080, 1140]]]);
  expect(lists({ holidays, open: open(0, 1440) })).toEqual([[[1080, 1140]], [[1080, 1110]], [], [], [[1080, 1140]]]);
});
