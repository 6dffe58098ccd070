import { expect, test } from "vitest";
import type { Goal, WarmUp } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
  timeOf,
} from "../testing/index.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";
import { warmUpTooLong } from "./warm-up-too-long.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "cycle", name: "Cycle", pattern: "locomotion", mode: "cyclic", amounts: "time" }),
  madeUpExercise({ id: "walk", name: "Walk", pattern: "locomotion", mode: "cyclic", amounts: "time" }),
  madeUpExercise({ id: "stretch", pattern: "mobility", amounts: "time" }),
]);
const easy = (what: string, minutes: number): WarmUp => ({ do: what, dose: sets(1, timeOf(60 * minutes)) });
const squat = madeUpSlot("squat", "squat", sets(3, reps(8)));
const doc = (warmup: readonly WarmUp[], goal: Goal = "size", work = [squat]) => ({
  programme: madeUpProgramme([madeUpSession("a", 90, work, { warmup })], { goal }),
  catalogue,
});
const AT = [["phases", 0, "sessions", 0]];

testCheck(warmUpTooLong, {
  fine: {
    "ten minutes": doc([easy("cycle", 10)]),
    "fifteen in two": doc([easy("cycle", 10), easy("walk", 5)]),
    "range and readiness do not count": doc([easy("cycle", 10), easy("stretch", 10)]),
    "lighter sets do not count": doc([easy("cycle", 10), { ramp: "squat", sets: 4 }]),
    "when endurance is the goal": doc([easy("cycle", 30)], "endurance"),
    "a session without work": doc([easy("cycle", 30)], "size", []),
  },
  bad: {
    "twenty minutes": { doc: doc([easy("cycle", 20)]), at: AT, data: [{ session: "a", minutes: 20, most: 15 }] },
    "in whole minutes, half ones up": { doc: doc([easy("cycle", 15.5)]), at: AT, data: [{ minutes: 16, most: 15 }] },
    "sixteen in two": { doc: doc([easy("cycle", 10), easy("walk", 6)]), at: AT, data: [{ minutes: 16 }] },
  },
});

test("the remedy makes the longest ten minutes, and offers nothing where none is longer", () => {
  const input = doc([easy("walk", 4), easy("cycle", 20)]);
  const [cure] = warmUpTooLong.run(lookAt(input))[0]!.cures!();
  expect(cure).toMatchObject({ data: { name: "Cycle", seconds: 600 } });
  expect(warmUpTooLong.run(lookAt({ ...input, programme: changed(input.programme, cure!.changes) }))).toEqual([]);
  expect(warmUpTooLong.run(lookAt(doc([easy("walk", 9), easy("cycle", 9)])))[0]!.cures!()).toEqual([]);
});
