import { expect, test } from "vitest";
import { day } from "../day.ts";
import { madeUpExercise, madeUpPerson, madeUpPlace } from "../testing/index.ts";
import { kg as mass } from "../units.ts";
import { loadsLeft } from "./loads-left.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const ON = day("2027-03-01");
const bell = madeUpExercise({ id: "goblet", loadMeaning: "one implement", hands: "two", needs: [["kettlebell"]] });
const room = madeUpPlace({ equipment: { kettlebell: 1 }, kettlebells: [8, 12, 16, 20].map(kg) });
const left = (cap: Parameters<typeof loadsLeft>[0]["cap"], place = room, wanted?: ReturnType<typeof kg>) =>
  loadsLeft({ exercise: bell, person: madeUpPerson(), place, on: ON, cap }, wanted);

test("every load of the place, or those under the limit, easiest first", () => {
  expect(left({}).loads).toEqual([8, 12, 16, 20].map(kg));
  expect(left({ total: mass(12) }).loads).toEqual([8, 12].map(kg));
  expect(left({ total: mass(5) })).toMatchObject({ loads: [], set: { kind: "none" } });
});

test("a share of a best that nobody knows limits nothing by itself, and is said", () => {
  expect(left({ percent: 70 })).toMatchObject({ shareUnknown: true, loads: [8, 12, 16, 20].map(kg) });
  const lifts = [{ exercise: "goblet", load: kg(20), reps: 1, on: ON }];
  const known = loadsLeft({
    exercise: bell,
    person: madeUpPerson({ lifts }),
    place: room,
    on: ON,
    cap: { percent: 70 },
  });
  expect(known).toMatchObject({ shareUnknown: false, loads: [8, 12].map(kg) });
});

test("a place that lists nothing has what is wanted, under the same limits", () => {
  const bare = madeUpPlace({ equipment: { kettlebell: 1 } });
  expect(left({}, bare).loads).toEqual([]);
  expect(left({}, bare, kg(14)).loads).toEqual([kg(14)]);
  expect(left({ total: mass(12) }, bare, kg(14)).loads).toEqual([]);
});
