import { expect, test } from "vitest";
import { day } from "../day.ts";
import { CATALOGUE, distance } from "../exercises/index.ts";
import type { Statement } from "../model/index.ts";
import {
  madeUpPerson,
  madeUpPlace,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
} from "../testing/index.ts";
import { FROM_FLOOR, loadFromFloor } from "./load-from-floor.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";

const doc = (first: string, statement: Statement | undefined = "bone", from = "2027-01-01") => ({
  programme: madeUpProgramme([madeUpSession("a", 60, [madeUpSlot(first, "hinge", sets(2, reps(8)))])]),
  catalogue: CATALOGUE,
  person: madeUpPerson({
    cautions: [{ statement, from: day(from), recheck: day("2027-06-01"), who: "Dr Example" }],
  }),
  on: day("2027-03-01"),
});
const AT = [["phases", 0, "sessions", 0, "work", 0, "first"]];

// Lifting from or to the floor is to be avoided: giangregorio2014, as read in the reference.
testCheck(loadFromFloor, {
  fine: {
    "from a box": doc("kettlebell-deadlift-raised"),
    "another condition": doc("kettlebell-deadlift", "knee"),
    "before it was stated": doc("kettlebell-deadlift", "bone", "2027-03-02"),
    "an exercise that nobody knows": doc("moonwalk"),
    "nobody named": { ...doc("kettlebell-deadlift"), person: undefined as never },
    "no day": { ...doc("kettlebell-deadlift"), on: undefined as never },
  },
  bad: {
    "a kettlebell from the floor": {
      doc: doc("kettlebell-deadlift"),
      at: AT,
      data: [{ exercise: "kettlebell-deadlift", name: "Kettlebell deadlift from floor" }],
    },
    "from the day on which it was stated": { doc: doc("barbell-deadlift", "bone", "2027-03-01"), at: AT, data: [{}] },
  },
});

test("every form that is named is in the catalogue, and so is every one that is called so", () => {
  for (const id of FROM_FLOOR) expect(CATALOGUE.exercises.has(id), id).toBe(true);
  const called = [...CATALOGUE.exercises.values()].filter(({ name }) => /(from|to the) floor$/.test(name));
  for (const { id } of called) expect(FROM_FLOOR).toContain(id);
});

test("the remedy takes the nearest form that begins raised, and that the place serves", () => {
  const input = doc("kettlebell-deadlift");
  const cures = loadFromFloor.run(lookAt(input))[0]!.cures!();
  expect(cures.map(({ data }) => data["id"])).toContain("kettlebell-deadlift-raised");
  const after = changed(input.programme, cures[0]!.changes);
  expect(loadFromFloor.run(lookAt({ ...input, programme: after }))).toEqual([]);
  const bare = loadFromFloor.run(lookAt({ ...input, place: madeUpPlace() }))[0]!.cures!();
  for (const { data } of bare) expect(CATALOGUE.exercises.get(String(data["id"]))?.needs).toEqual([]);
});

test("thin bones beside another condition; the nearest raised forms first, three at most", () => {
  const base = doc("barbell-deadlift");
  const [bone] = base.person.cautions;
  const both = { ...base, person: madeUpPerson({ cautions: [{ ...bone!, statement: "knee" }, bone!] }) };
  const [found] = loadFromFloor.run(lookAt(both));
  const steps = found!.cures!().map(({ data }) => distance(CATALOGUE, "barbell-deadlift", String(data["id"]))!);
  expect(steps.length).toBeGreaterThan(0);
  expect(steps.length).toBeLessThanOrEqual(3);
  const near = steps.map(Math.abs);
  expect(near).toEqual(near.toSorted((a, b) => a - b));
});
