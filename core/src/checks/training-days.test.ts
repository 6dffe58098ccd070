import { expect, test } from "vitest";
import { day } from "../day.ts";
import type { Window } from "../model/index.ts";
import { madeUpPerson } from "../testing/index.ts";
import { sessionsAWeek, trainingDaysOf } from "./training-days.ts";

const at = (weekday: Window["day"]): Window => ({ day: weekday, from: 600, to: 660, cost: 0 });

test("every day without a person, else the days of the windows, Monday first, each once", () => {
  expect(trainingDaysOf(undefined)).toEqual([0, 1, 2, 3, 4, 5, 6]);
  expect(trainingDaysOf(madeUpPerson({ windows: [at("sun"), at("mon"), at("mon")] }))).toEqual([0, 6]);
});

test("sessions a week: the days, fewer when fewer are wanted; on a rota what seven days of it hold", () => {
  expect(sessionsAWeek(undefined)).toBe(7);
  const windows = [at("mon"), at("wed"), at("fri")];
  expect(sessionsAWeek(madeUpPerson({ windows }))).toBe(3);
  expect(sessionsAWeek(madeUpPerson({ windows, perWeek: 2 }))).toBe(2);
  const days = [1, 4, 7].map((each) => ({ day: each, from: 600, to: 660, cost: 0 }));
  expect(sessionsAWeek(madeUpPerson({ cycle: { length: 10, anchor: day("2027-03-01"), days } }))).toBe(2);
});
