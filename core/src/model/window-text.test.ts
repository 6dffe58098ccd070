import { expect, test } from "vitest";
import type { Slipped } from "./slip.ts";
import { readHours, readOpenHours, readRotaHours } from "./window-text.ts";

function told(read: Slipped<unknown>): string {
  if (read.ok) return JSON.stringify(read.value);
  const { code, offset, found, allowed, maybe } = read.slip;
  return `${code} ${offset} ${[found, allowed, maybe ?? ""].join("|")}`;
}

test("days, hours, gladness and place", () => {
  expect(readHours("mon 17:00–18:30")).toEqual({ ok: true, value: { days: ["mon"], from: 1020, to: 1110, cost: 0 } });
  expect(readHours("tue, thu 7:00 - 8:30 if needed")).toMatchObject({
    value: { days: ["tue", "thu"], from: 420, to: 510, cost: 4 },
  });
  expect(readHours("mon–wed sat 00:00 to 24:00, fine, at home")).toMatchObject({
    value: { days: ["mon", "tue", "wed", "sat"], from: 0, to: 1440, cost: 2, place: "home", placeOffset: 37 },
  });
  expect(readHours("fri–mon 09:00–10:00 gladly")).toMatchObject({ value: { days: ["fri", "sat", "sun", "mon"] } });
  expect(readHours("daily 09:00–10:00")).toMatchObject({ value: { days: { length: 7 } } });
  expect(readHours("mon mon 09:00–10:00")).toMatchObject({ value: { days: ["mon"] } });
});

test("any so many of some days", () => {
  const three = readHours("any 3 of 7 days 16:00–20:00");
  expect(three).toMatchObject({ value: { any: 3, days: { length: 7 } } });
  expect(readHours("any 2 of mon wed fri 16:00–20:00")).toMatchObject({
    value: { any: 2, days: ["mon", "wed", "fri"] },
  });
});

test("days of a rota are numbers from 1", () => {
  expect(readRotaHours("5–8 10:00–14:00", 8)).toMatchObject({ value: { days: [5, 6, 7, 8], from: 600, to: 840 } });
  expect(readRotaHours("1, 3 06:30–08:00 fine", 4)).toMatchObject({ value: { days: [1, 3], cost: 2 } });
  expect(readRotaHours("2 06:30–08:00 fine at home", 4)).toMatchObject({
    value: { days: [2], cost: 2, place: "home" },
  });
  expect(told(readRotaHours("any 1 of 2 06:30–08:00", 4))).toBe("window/day 0 any|1–4|");
  expect(told(readRotaHours("9 10:00–14:00", 8))).toBe("window/day 0 9|1–8|");
});

test("the hours of a place are days and times alone", () => {
  expect(readOpenHours("mon–sat 06:30–21:00")).toMatchObject({ value: { days: { length: 6 }, from: 390, to: 1260 } });
  expect(told(readOpenHours("mon 06:30–21:00 fine"))).toBe("window/word 16 fine||");
  expect(told(readOpenHours("mon 06:30–21:00 at home"))).toBe("window/word 16 at home||");
  expect(told(readOpenHours("any 1 of mon 06:30–21:00"))).toBe(`window/day 0 any|${WEEK}|`);
});

const WEEK = "mon, tue, wed, thu, fri, sat, sun, mon–fri, daily";
for (const [text, problem] of [
  ["mon", "window/no-time 0 mon|mon 17:00–18:30|"],
  ["", "window/no-time 0 |mon 17:00–18:30|"],
  ["17:00–18:30", `window/no-day 0 |${WEEK}|`],
  ["mon 17–18", "window/time 4 17–18|00:00–24:00|17:00–18:00"],
  ["mon 17:60–18:30", "window/time 4 17:60|00:00–24:00|"],
  ["mon 17:00–24:30", "window/time 10 24:30|00:00–24:00|"],
  ["mon 18:30–17:00", "window/reversed 4 18:30–17:00|18:30–24:00|17:00–18:30"],
  ["mon 17:00–17:00", "window/reversed 4 17:00–17:00|17:00–24:00|"],
  ["mon tus 17:00–18:30", `window/day 4 tus|${WEEK}|tue`],
  ["Monday 17:00–18:30", `window/day 0 Monday|${WEEK}|mon`],
  ["mon–fir 17:00–18:30", `window/day 4 fir|${WEEK}|fri`],
  ["any 4 of mon wed 17:00–18:30", "window/any 4 4|1–2|"],
  ["any 0 of 7 days 17:00–18:30", "window/any 4 0|1–7|"],
  ["mon 17:00–18:30 gladdly", "window/word 16 gladdly|gladly, fine, if needed, at …|gladly"],
  ["mon 17:00–18:30 fine home", "window/word 21 home|gladly, fine, if needed, at …|"],
  ["mon 17:00–18:30 finely", "window/word 16 finely|gladly, fine, if needed, at …|fine"],
] as const) {
  test(`${JSON.stringify(text)} is refused: ${problem}`, () => expect(told(readHours(text))).toBe(problem));
}
