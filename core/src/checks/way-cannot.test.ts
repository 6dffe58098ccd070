import { expect, test } from "vitest";
import type { Dose, WayUp } from "../model/index.ts";
import {
  hold,
  madeUpCatalogue,
  madeUpExercise,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
} from "../testing/index.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";
import { wayCannot } from "./way-cannot.ts";

const catalogue = madeUpCatalogue(
  [
    madeUpExercise({ id: "push-up", name: "Push-up" }),
    madeUpExercise({ id: "curl", name: "Curl", loadMeaning: "per hand" }),
    madeUpExercise({ id: "pull-up", name: "Assisted pull-up", loadMeaning: "assist" }),
    madeUpExercise({ id: "plank", name: "Plank", amounts: "hold", mode: "hold" }),
  ],
  [{ id: "push", name: "Push", start: "push-up", steps: [{ from: "push-up", to: "hard-push-up", branch: "main" }] }],
);
const doc = (first: string, way: WayUp, dose: Dose = sets(3, reps(8))) => ({
  programme: madeUpProgramme([madeUpSession("a", 60, [madeUpSlot(first, "squat", dose, { way })])]),
  catalogue,
});
const AT = [["phases", 0, "sessions", 0, "work", 0, "way"]];
const contacts: Dose = sets(2, { amount: { kind: "contacts", span: { from: 5, to: 5 } }, eachSide: false });

testCheck(wayCannot, {
  fine: {
    "load of what has one": doc("curl", "load"),
    "help of a machine": doc("pull-up", "load"),
    "a ladder on which it stands": doc("push-up", "ladder"),
    "seconds of a hold": doc("plank", "hold time", sets(2, hold(20))),
    "reserve of repetitions": doc("push-up", "reserve"),
    contacts: doc("push-up", "contacts", contacts),
    "staying is always possible": doc("plank", "stay", sets(2, hold(20))),
    "an exercise that nobody knows": doc("moonwalk", "load"),
  },
  bad: {
    "load of body mass": { doc: doc("push-up", "load"), at: AT, data: [{ name: "Push-up", way: "load" }] },
    "a ladder on which it does not stand": { doc: doc("curl", "ladder"), at: AT, data: [{ way: "ladder" }] },
    "seconds of repetitions": { doc: doc("push-up", "hold time"), at: AT, data: [{ way: "hold time" }] },
    "contacts of repetitions": { doc: doc("push-up", "contacts"), at: AT, data: [{ way: "contacts" }] },
    "reserve of a hold": { doc: doc("plank", "reserve", sets(2, hold(20))), at: AT, data: [{ way: "reserve" }] },
  },
});

test("the remedy takes the usual way of the dose", () => {
  const input = doc("plank", "load", sets(2, hold(20)));
  const [cure] = wayCannot.run(lookAt(input))[0]!.cures!();
  expect(cure).toMatchObject({ id: "usual-way", data: { name: "Plank", way: "hold time" } });
  expect(wayCannot.run(lookAt({ ...input, programme: changed(input.programme, cure!.changes) }))).toEqual([]);
});
