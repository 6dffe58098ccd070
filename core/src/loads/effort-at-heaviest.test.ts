import { expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import type { Exercise, Lift, Person, Place } from "../model/index.ts";
import { madeUpCatalogue, madeUpExercise, madeUpPerson, madeUpPlace } from "../testing/index.ts";
import type { Load } from "../units.ts";
import { effortAtHeaviest } from "./effort-at-heaviest.ts";

const on = day("2027-03-01");
const kgOf = (value: number): Load => ({ value, unit: "kg" });
const barSquat = madeUpExercise({
  id: "bar-squat",
  loadMeaning: "total",
  needs: [["barbell"]],
  bodyShare: { share: 0.88, source: "deLeva1996" },
});
const goblet = madeUpExercise({
  id: "goblet",
  loadMeaning: "one implement",
  needs: [["dumbbell"]],
  bodyShare: { share: 0.88, source: "deLeva1996" },
});
const rearFootRaised = madeUpExercise({
  id: "rear-foot-raised",
  pattern: "single leg",
  limb: "split stance",
  loadMeaning: "per hand",
  needs: [["dumbbell"]],
  bodyShare: { share: 0.844, source: "helme2020" },
});
const catalogue = madeUpCatalogue([barSquat, goblet, rearFootRaised]);
const home = madeUpPlace({ dumbbells: { loads: [kgOf(10)], pairs: true } });
const lift = (exercise: string, load: number | undefined, reps: number, more: Partial<Lift> = {}): Lift => ({
  exercise,
  ...(load === undefined ? {} : { load: kgOf(load) }),
  reps,
  on,
  ...more,
});
const someone = (lifts: readonly Lift[], said: Partial<Person> = {}) =>
  madeUpPerson({ mass: { load: kgOf(78), on }, lifts, ...said });
const effort = (exercise: Exercise, person: Person, place: Place = home) =>
  effortAtHeaviest({ exercise, person, place, catalogue, on });

test("by the person's own record at that or a heavier load", () => {
  expect(effort(goblet, someone([lift("goblet", 10, 30)]))).toMatchObject({
    heaviest: kgOf(10),
    least: 30,
    by: "record",
  });
  expect(effort(goblet, someone([lift("goblet", 12, 20, { reserve: 3 })]))).toMatchObject({ least: 23, by: "record" });
  expect(effort(goblet, someone([lift("goblet", 8, 30)]))).toBeUndefined();
  expect(effort(goblet, someone([lift("goblet", 10, 30, { on: addDays(on, -100) })]))).toBeUndefined();
});

test("by the person's own maximum: 10 kg is half of 20 kg and surely done 15 times", () => {
  expect(effort(goblet, someone([lift("goblet", 20, 1)]))).toMatchObject({ least: 15, by: "maximum", percent: 50 });
  expect(effort(goblet, someone([lift("goblet", 12, 1)]))).toMatchObject({ least: 6, by: "maximum", percent: 84 });
});

test("by a squat carried over to each leg: two legs are light work, one leg is hard", () => {
  const strong = someone([lift("bar-squat", 120, 5)]);
  // Per leg (0.88 × 78 + 120) / 2 = 94.32 kg for 5, so at least 106.11 kg for 1; goblet 39.32 kg, lead foot 82.71 kg.
  expect(effort(goblet, strong)).toMatchObject({ by: "squat", percent: 38, least: 22 });
  expect(effort(rearFootRaised, strong)).toMatchObject({ by: "squat", percent: 78, least: 8 });
});

test("of an old squat 70 % counts: enough to call two legs light, and one leg no longer", () => {
  const once = someone([lift("bar-squat", 120, 5, { on: addDays(on, -730) })]);
  expect(effort(goblet, once)).toMatchObject({ percent: 53, least: 22 });
  expect(effort(rearFootRaised, once)).toMatchObject({ percent: 112, least: 0 });
});

test("their own record of this exercise stands before a squat", () => {
  const both = someone([lift("bar-squat", 120, 5), lift("goblet", 10, 8)]);
  expect(effort(goblet, both)).toMatchObject({ lift: { exercise: "goblet" }, least: 8 });
});

test("without the squat, the body mass, the share or the catalogue it cannot be judged", () => {
  const squats = [lift("bar-squat", 120, 5)];
  const { mass: _, ...unweighed } = someone(squats);
  const { bodyShare: __, ...unshared } = goblet;
  expect(effort(goblet, someone([]))).toBeUndefined();
  expect(effort(goblet, unweighed)).toBeUndefined();
  expect(effort(unshared, someone(squats))).toBeUndefined();
  expect(effortAtHeaviest({ exercise: goblet, person: someone(squats), place: home, on })).toBeUndefined();
  expect(effort(goblet, someone(squats), madeUpPlace())).toBeUndefined();
  expect(effort({ ...goblet, amounts: "hold" }, someone([lift("goblet", 10, 30)]))).toBeUndefined();
});

test("the body alone counts as a load of nothing", () => {
  const bodySquat: Exercise = { ...goblet, id: "body-squat", loadMeaning: "body only" };
  const judged = effort(bodySquat, someone([lift("body-squat", undefined, 40)]));
  expect(judged).toMatchObject({ least: 40, by: "record" });
  expect(judged).not.toHaveProperty("heaviest");
  expect(effort(bodySquat, someone([lift("bar-squat", 120, 5)]))).toMatchObject({
    by: "squat",
    percent: 33,
    least: 22,
  });
});

test("pins of one machine say nothing of another, and the least help is the hardest", () => {
  const pull = madeUpExercise({
    id: "pull",
    pattern: "vertical pull",
    loadMeaning: "assist",
    needs: [["assisted pull-up machine"]],
  });
  const stacks = { "assisted pull-up machine": { unit: "kg", pins: [8, 50] } } as const;
  const done = someone([lift("pull", 8, 20), lift("pull", 50, 40)]);
  expect(effort(pull, done, madeUpPlace({ stacks }))).toMatchObject({ heaviest: kgOf(8), least: 20 });
  expect(effort(pull, done, madeUpPlace({ stacks, id: "elsewhere" }))).toBeUndefined();
});
