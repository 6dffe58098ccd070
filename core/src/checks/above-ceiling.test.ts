import { expect, test } from "vitest";
import { day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import type { Dose, Exercise, Person, Statement } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpPlace,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
} from "../testing/index.ts";
import { aboveCeiling } from "./above-ceiling.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";

const EASY: Dose = sets(2, reps(8, { reserve: { from: 3, to: 3 } }));
const stated = (statement: Statement): Partial<Person> => ({
  cautions: [{ statement, from: day("2027-01-01"), recheck: day("2027-06-01"), who: "Dr Example" }],
});
const doc = (first: string, said: Partial<Person>, dose: Dose = EASY) => {
  const { pattern } = CATALOGUE.exercises.get(first)!;
  return {
    programme: madeUpProgramme([madeUpSession("a", 60, [madeUpSlot(first, pattern, dose)])]),
    catalogue: CATALOGUE,
    person: madeUpPerson(said),
    on: day("2027-03-01"),
  };
};
const AT = [["phases", 0, "sessions", 0, "work", 0, "first"]];

// Rows of the table of cautions: our own, unsigned. Lifting from the floor is to be avoided with thin bones
// (paperzz leaflet and PMC5101068, as read in the reference).
testCheck(aboveCeiling, {
  fine: {
    "a chair to stand up from, thin bones": doc("sit-to-stand-45", stated("bone")),
    "a bar from the floor, nothing stated": doc("barbell-deadlift", {}),
    "a bar from the floor, before it was stated": { ...doc("barbell-deadlift", stated("bone")), on: day("2026-12-31") },
    "nobody named": { ...doc("barbell-deadlift", stated("bone")), person: undefined as never },
    "and no day": { ...doc("barbell-deadlift", stated("bone")), on: undefined as never },
  },
  bad: {
    "a bar from the floor, thin bones": {
      doc: doc("barbell-deadlift", stated("bone")),
      at: AT,
      data: [{ exercise: "barbell-deadlift", tags: expect.arrayContaining(["sp_hold"]) as never }],
      severity: ["note"],
    },
    "the way to the floor, for somebody who cannot": {
      doc: doc("dumbbell-floor-press", { cannot: ["floor"] }),
      at: AT,
      data: [{ tags: ["floor"] }],
    },
    "a lane that waits for written limits": {
      doc: doc("goblet-squat", stated("surgery-leg")),
      at: AT,
      data: [{ lanes: ["squat"] }],
    },
  },
});

test("the remedy takes the nearest easier form that is not set aside and that the place serves", () => {
  const input = doc("kettlebell-deadlift", stated("back"));
  const [found] = aboveCeiling.run(lookAt(input));
  const [cure] = found!.cures!();
  expect(cure?.data["id"]).toBeDefined();
  const after = changed(input.programme, cure!.changes);
  expect(aboveCeiling.run(lookAt({ ...input, programme: after }))).toEqual([]);
  const bare = aboveCeiling.run(lookAt({ ...input, place: madeUpPlace() }))[0]!.cures!();
  for (const { data } of bare) expect(CATALOGUE.exercises.get(String(data["id"]))?.needs).toEqual([]);
});

test("easier forms alone, counted alike, none for the coach alone, the nearest first, two at most", () => {
  const form = (id: string, more: Partial<Exercise> = {}) => madeUpExercise({ id, name: id, ...more });
  const forms = [
    form("asked", { stress: { knee_deep: 3 } }),
    form("low"),
    form("lower"),
    form("lowest"),
    form("up"),
    form("held", { amounts: "hold" }),
    form("one-sided", { eachSide: true }),
    form("coached", { coachOnly: true }),
    form("deep", { stress: { knee_deep: 3 } }),
    form("with-bar", { needs: [["barbell"]] }),
  ];
  const step = (from: string, to: string, branch = "main") => ({ from, to, branch });
  const steps = [
    step("lowest", "lower"),
    step("lower", "low"),
    step("low", "asked"),
    step("asked", "up"),
    ...["held", "one-sided", "coached", "deep", "with-bar"].map((id) => step(id, "asked", id)),
  ];
  const catalogue = madeUpCatalogue(forms, [{ id: "l", name: "L", start: "lowest", steps }]);
  const programme = madeUpProgramme([madeUpSession("a", 60, [madeUpSlot("asked", "squat", sets(2, reps(8)))])]);
  const input = { programme, catalogue, person: madeUpPerson({ cannot: ["knee_deep"] }), on: day("2027-03-01") };
  const ids = (more: object) =>
    aboveCeiling.run(lookAt({ ...input, ...more }))[0]!.cures!().map(({ data }) => data["id"]);
  expect(ids({ place: madeUpPlace() })).toEqual(["low", "lower"]);
});
