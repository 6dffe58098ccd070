import { expect, test } from "vitest";
import { madeUpSlot, reps, sets } from "../../testing/index.ts";
import { doseWith, setsChanged, setsOf } from "./block-sets.ts";

test("more sets are like the last, fewer go from the end, one always stays", () => {
  const dose = { sets: [reps(5), reps(8)], restS: 60 };
  expect(doseWith(dose, 2)).toEqual({ sets: [reps(5), reps(8), reps(8), reps(8)], restS: 60 });
  expect(doseWith(dose, -1)).toEqual({ sets: [reps(5)], restS: 60 });
  expect(doseWith(dose, -9).sets).toEqual([reps(5)]);
});

test("all slots of a pair change together, in later weeks too", () => {
  const a = madeUpSlot("a", "squat", sets(2, reps(8)), { changes: [{ week: 3, dose: sets(3, reps(6)) }] });
  const b = madeUpSlot("b", "squat", sets(2, reps(10)));
  expect(setsOf({ pair: [a, b] })).toBe(2);
  expect(setsChanged({ pair: [a, b] }, ["w", 0], 1)).toEqual([
    { op: "set", at: ["w", 0, "pair", 0, "dose"], value: sets(3, reps(8)) },
    { op: "set", at: ["w", 0, "pair", 0, "changes", 0, "dose"], value: sets(4, reps(6)) },
    { op: "set", at: ["w", 0, "pair", 1, "dose"], value: sets(3, reps(10)) },
  ]);
});
