import { expect, test } from "vitest";
import { madeUpPhase, madeUpSession, madeUpSlot, reps, sets } from "../../testing/index.ts";
import { judgedWeeks } from "./judged-weeks.ts";

const dose = sets(3, reps(8));
const withChanges = (...weeks: readonly number[]) => [
  madeUpSession("a", 45, [madeUpSlot("squat", "squat", dose, { changes: weeks.map((week) => ({ week, dose })) })]),
];

test("weeks that ask for the same are judged once", () => {
  expect(judgedWeeks(madeUpPhase(withChanges(), { weeks: 4 }))).toEqual([
    { week: 1, weeks: [1, 2, 3, 4], light: false },
  ]);
});

test("a change of dose begins a new group; light weeks stand apart", () => {
  expect(judgedWeeks(madeUpPhase(withChanges(3), { weeks: 5, light: [3] }))).toEqual([
    { week: 1, weeks: [1, 2], light: false },
    { week: 4, weeks: [4, 5], light: false },
  ]);
});

test("doses that hold in light weeks only are still looked at", () => {
  expect(judgedWeeks(madeUpPhase(withChanges(4), { weeks: 4, light: [4] })).at(-1)).toEqual({
    week: 4,
    weeks: [4],
    light: true,
  });
});

test("a change outside the phase changes nothing", () => {
  expect(judgedWeeks(madeUpPhase(withChanges(9), { weeks: 4 }))).toHaveLength(1);
});
