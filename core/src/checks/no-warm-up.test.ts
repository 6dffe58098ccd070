import { expect, test } from "vitest";
import { CATALOGUE } from "../exercises/index.ts";
import type { Exercise, WarmUp } from "../model/index.ts";
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
  timeOf,
} from "../testing/index.ts";
import { noWarmUp } from "./no-warm-up.ts";
import { lookAt } from "./run/look.ts";

const squat = madeUpSlot("body-squat", "squat", sets(3, reps(8)));
const doc = (warmup?: readonly WarmUp[], work = [squat]) => ({
  programme: madeUpProgramme([madeUpSession("a", 45, work, warmup === undefined ? {} : { warmup })]),
  catalogue: CATALOGUE,
});
const AT = ["phases", 0, "sessions", 0];

testCheck(noWarmUp, {
  fine: {
    "something easy": doc([{ do: "walk-easy", dose: sets(1, timeOf(300)) }]),
    "lighter sets before a slot": doc([{ ramp: "body-squat", sets: 1 }]),
    "a session of conditioning only": doc(undefined, []),
  },
  bad: {
    none: { doc: doc(), at: [AT], data: [{ phase: "one", session: "a", title: "Session a" }] },
    "an empty list": { doc: doc([]), at: [AT], data: [{ session: "a" }] },
  },
});

test("the remedy is five minutes of what needs and stresses least", () => {
  const [cure] = noWarmUp.run(lookAt(doc()))[0]!.cures!();
  expect(cure!.data).toMatchObject({ seconds: 300 });
  const exercise = CATALOGUE.exercises.get(String(cure!.data["exercise"]))!;
  expect([exercise.pattern, exercise.needs]).toEqual(["locomotion", []]);
  expect(cure!.changes).toEqual([
    { op: "set", at: [...AT, "warmup"], value: [{ do: exercise.id, dose: sets(1, timeOf(300)) }] },
  ]);
});

test("in a place with nothing it is still something that can be done there", () => {
  const found = noWarmUp.run(lookAt({ ...doc(), place: madeUpPlace() }));
  expect(found[0]!.cures!()).toHaveLength(1);
});

test("first what needs fewest things, then what stresses least, never seated and never for the coach alone", () => {
  const easy = (id: string, more: Partial<Exercise>) =>
    madeUpExercise({ id, pattern: "locomotion", amounts: "time", ...more });
  const chosenOf = (...exercises: readonly Exercise[]) => {
    const input = { ...doc(), catalogue: madeUpCatalogue(exercises) };
    return noWarmUp.run(lookAt(input))[0]!.cures!().map(({ data }) => data["exercise"]);
  };
  const walk = easy("walk", { stress: { floor: 1 } });
  const march = easy("march", { stress: { floor: 1, impact: 1 } });
  const cycle = easy("cycle", { needs: [["cycle"]] });
  expect(chosenOf(cycle, march, walk)).toEqual(["walk"]);
  expect(chosenOf(cycle, march)).toEqual(["march"]);
  expect(chosenOf(easy("b", {}), easy("a", {}), easy("c", {}))).toEqual(["a"]);
  expect(chosenOf(easy("arms", { seated: true }), easy("swim", { coachOnly: true }))).toEqual([]);
  expect(chosenOf(easy("laps", { amounts: "metres" }), easy("hang", { pattern: "mobility" }))).toEqual([]);
});
