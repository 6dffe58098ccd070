import { expect, test } from "vitest";
import type { Block, Dose, Goal, SetDose } from "../model/index.ts";
import { loadBandsFor } from "../tables/index.ts";
import {
  hold,
  madeUpCatalogue,
  madeUpExercise,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  published,
  reps,
  sets,
  testCheck,
} from "../testing/index.ts";
import { restTooShort } from "./rest-too-short.ts";
import { lookAt } from "./run/look.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "squat", name: "Squat" }),
  madeUpExercise({ id: "curl", name: "Curl", pattern: "upper isolation" }),
]);
const doc = (goal: Goal, dose: Dose, first = "squat", block?: Block) => ({
  programme: madeUpProgramme([madeUpSession("a", 45, [block ?? madeUpSlot(first, "squat", dose)])], { goal }),
  catalogue,
});
const rest = (restS: number | undefined, set: SetDose = reps(10), count = 3) =>
  restS === undefined ? sets(count, set) : sets(count, set, { restS });
const AT = ["phases", 0, "sessions", 0, "work", 0, "dose"];

published("acsm2009", "least rest, s, between heavy sets for strength", [
  ["printed", "evidence table, strength", () => loadBandsFor("strength", "novice").at(-1)!.restS!.from, 120, 0],
]);

testCheck(restTooShort, {
  fine: {
    "60 s for size": doc("size", rest(60)),
    "two minutes between heavy sets": doc("strength", rest(120, reps(5, { percent: 85 }))),
    "one minute for one joint": doc("strength", rest(60, reps(6)), "curl"),
    "one minute for lighter sets": doc("strength", rest(60, reps(10))),
    "79 % is not heavy": doc("strength", rest(60, reps(5, { percent: 79 }))),
    "not said": doc("size", rest(undefined)),
    "general and endurance": doc("general", rest(20)),
    "one set": doc("size", rest(20, reps(10), 1)),
    "practice with 5 in reserve": doc("size", rest(20, reps(10, { reserve: { from: 5, to: 5 } }))),
    "practice with 5 to 6 in reserve": doc("size", rest(20, reps(10, { reserve: { from: 5, to: 6 } }))),
    "a hold": doc("size", rest(20, hold(30))),
    "a hold without any rest": doc("size", rest(0, hold(30))),
    "more than six repetitions, no share said": doc("strength", rest(60, reps(7))),
    "each side rests while the other works": doc("size", rest(30, reps(10, { eachSide: true }))),
    "a pair rests in turn": doc("size", rest(20), "squat", {
      pair: [madeUpSlot("squat", "squat", rest(20)), madeUpSlot("curl", "upper isolation", rest(20))],
      restS: 20,
    }),
  },
  bad: {
    "4 in reserve is work": {
      doc: doc("size", rest(20, reps(10, { reserve: { from: 4, to: 4 } }))),
      at: [AT],
      data: [{ least: 60 }],
    },
    "the hardest of the sets counts": {
      doc: doc("strength", { sets: [reps(10), reps(3), reps(10)], restS: 90 }),
      at: [AT],
      data: [{ least: 120 }],
    },
    "two sets have one rest between them": { doc: doc("size", rest(20, reps(10), 2)), at: [AT], data: [{ restS: 20 }] },
    "as many as possible": {
      doc: doc("size", rest(20, { amount: { kind: "most" }, eachSide: false })),
      at: [AT],
      data: [{ least: 60 }],
    },
    "59 s for size": { doc: doc("size", rest(59)), at: [AT], data: [{ restS: 59, least: 60, goal: "size" }] },
    "under two minutes between heavy sets": {
      doc: doc("strength", rest(119, reps(5, { percent: 80 }))),
      at: [AT],
      data: [{ restS: 119, least: 120 }],
    },
    "heavy by repetitions where no share is said": {
      doc: doc("strength", rest(90, reps(6))),
      at: [AT],
      data: [{ least: 120 }],
    },
    "under one minute for one joint": {
      doc: doc("strength", rest(45, reps(12)), "curl"),
      at: [AT],
      data: [{ least: 60 }],
    },
  },
});

test("the remedy writes the least rest and leaves the sets", () => {
  const [cure] = restTooShort.run(lookAt(doc("size", rest(30))))[0]!.cures!();
  expect(cure!.data).toEqual({ from: "3 × 10, rest 30 s", to: "3 × 10, rest 60 s" });
});
