import { expect, test } from "vitest";
import { CATALOGUE } from "../exercises/index.ts";
import type { Exercise, Place } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPlace,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
} from "../testing/index.ts";
import { notServedHere } from "./not-served-here.ts";
import { lookAt } from "./run/look.ts";

const doc = (first: string, place?: Place) => ({
  programme: madeUpProgramme([madeUpSession("a", 45, [madeUpSlot(first, "squat", sets(3, reps(8)))])]),
  catalogue: CATALOGUE,
  ...(place === undefined ? {} : { place }),
});
const AT = ["phases", 0, "sessions", 0, "work", 0, "first"];
const bells = madeUpPlace({ name: "Shed", equipment: { dumbbell: 2 } });

testCheck(notServedHere, {
  fine: {
    "no place is named": doc("back-squat"),
    "any one of a group is enough": doc("goblet-squat", bells),
    "it needs nothing": doc("body-squat", madeUpPlace()),
    "nobody knows it": doc("moonwalk", madeUpPlace()),
  },
  bad: {
    "no bar": {
      doc: doc("back-squat", bells),
      at: [AT],
      data: [{ exercise: "back-squat", place: "Shed", groups: [["barbell"], ["plates"], ["rack"]] }],
    },
    "none left of what there was": {
      doc: doc("goblet-squat", madeUpPlace({ equipment: { dumbbell: 0 } })),
      at: [AT],
      data: [{ exercise: "goblet-squat" }],
    },
  },
});

test("where no ladder leads to one, the remedies are forms of the same pattern that drive the same muscles, most alike first", () => {
  const ids = (place: Place, first: string) =>
    notServedHere.run(lookAt(doc(first, place)))[0]!.cures!().map(({ data }) => data["id"]);
  const machines = madeUpPlace({ equipment: { "chest press machine": 1, "shoulder press machine": 1 } });
  const [press] = ids(machines, "dumbbell-bench-press");
  expect(press).toBe("chest-press-machine");
  for (const first of ["dumbbell-bench-press", "dumbbell-curl", "cable-fly"]) {
    for (const id of ids(machines, first)) {
      const [form, other] = [first, String(id)].map((each) => CATALOGUE.exercises.get(each)!);
      expect(other!.pattern).toBe(form!.pattern);
      expect(other!.coachOnly ?? false).toBe(false);
      expect(other!.loadMeaning).not.toBe("body only");
      const direct = (muscles: object) =>
        Object.entries(muscles).flatMap(([muscle, share]) => (share === 1 ? [muscle] : []));
      expect(direct(other!.muscles).sort()).toEqual(direct(form!.muscles).sort());
    }
  }
});

test("the remedies are the nearest forms of the ladder that the place serves", () => {
  const ids = (place: Place) =>
    notServedHere.run(lookAt(doc("back-squat", place)))[0]!.cures!().map(({ data }) => data["id"]);
  expect(ids(madeUpPlace({ equipment: { dumbbell: 4 } }))).toEqual(["double-dumbbell-front-squat", "goblet-squat"]);
  expect(ids(madeUpPlace())[0]).toBe("body-squat");
});

test("two forms at most, none that needs a coach's eye, and of two as near the easier", () => {
  const form = (id: string, more: Partial<Exercise> = {}) => madeUpExercise({ id, name: id, ...more });
  const forms = [
    form("asked", { needs: [["rack"]] }),
    form("up"),
    form("down"),
    form("far-down"),
    form("coached", { coachOnly: true }),
    form("no-bar", { needs: [["barbell"]] }),
  ];
  const steps = [
    { from: "far-down", to: "down", branch: "main" },
    { from: "down", to: "asked", branch: "main" },
    { from: "asked", to: "up", branch: "main" },
    { from: "coached", to: "asked", branch: "coach" },
    { from: "no-bar", to: "asked", branch: "bar" },
  ];
  const catalogue = madeUpCatalogue(forms, [{ id: "l", name: "L", start: "far-down", steps }]);
  const input = { ...doc("asked", madeUpPlace()), catalogue };
  expect(notServedHere.run(lookAt(input))[0]!.cures!().map(({ data }) => data["id"])).toEqual(["down", "up"]);
});

test("where no ladder leads to one: loaded forms of the pattern that drive the same, most alike first, then by name", () => {
  const form = (id: string, biceps: number, more: Partial<Exercise> = {}) =>
    madeUpExercise({
      id,
      name: id,
      pattern: "horizontal pull",
      loadMeaning: "stack",
      muscles: { lats: 1, ...(biceps > 0 ? { biceps: biceps as 0.5 } : {}) },
      ...more,
    });
  const forms = [
    form("asked", 0.5, { needs: [["rack"]] }),
    form("unlike", 0),
    form("b-like", 0.5),
    form("a-like", 0.5),
    form("body", 0.5, { loadMeaning: "body only" }),
    form("held", 0.5, { amounts: "hold" }),
    form("coached", 0.5, { coachOnly: true }),
    form("vertical", 0.5, { pattern: "vertical pull" }),
    form("no-cable", 0.5, { needs: [["cable"]] }),
    form("other-drive", 0.5, { muscles: { lats: 1, biceps: 1 } }),
  ];
  const of = (left: readonly string[]) => {
    const catalogue = madeUpCatalogue(forms.filter(({ id }) => left.includes(id)));
    const input = { ...doc("asked", madeUpPlace()), catalogue };
    return notServedHere.run(lookAt(input))[0]!.cures!().map(({ data }) => data["id"]);
  };
  const all = forms.map(({ id }) => id);
  expect(of(all)).toEqual(["a-like", "b-like"]);
  expect(of(all.filter((id) => !id.startsWith("a-") && !id.startsWith("b-")))).toEqual(["unlike"]);
});
