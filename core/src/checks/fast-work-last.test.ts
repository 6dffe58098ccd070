import { expect, test } from "vitest";
import type { Block, Pattern } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
} from "../testing/index.ts";
import { fastWorkLast } from "./fast-work-last.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";

const FORMS: readonly (readonly [string, Pattern])[] = [
  ["jump", "jump"],
  ["slam", "throw"],
  ["snatch", "power lift"],
  ["squat", "squat"],
  ["row", "horizontal pull"],
  ["plank", "anti-extension"],
];
const catalogue = madeUpCatalogue([
  ...FORMS.map(([id, pattern]) => {
    const fast = pattern === "jump" || pattern === "throw" || pattern === "power lift";
    return madeUpExercise({ id, name: id, pattern, mode: fast ? "ballistic" : "dynamic" });
  }),
  madeUpExercise({ id: "wall-sit", pattern: "squat", mode: "hold" }),
]);
const slot = (first: string) => madeUpSlot(first, "squat", sets(3, reps(5)));
const session = (work: readonly Block[]) => ({ programme: madeUpProgramme([madeUpSession("a", 60, work)]), catalogue });
const doc = (...firsts: readonly string[]) => session(firsts.map(slot));
const at = (index: number) => [["phases", 0, "sessions", 0, "work", index]];

testCheck(fastWorkLast, {
  fine: {
    "jumps first": doc("jump", "squat"),
    "jumps after rows": doc("row", "jump"),
    "throws after squats": doc("squat", "slam"),
    "a hold before tires less": doc("wall-sit", "jump"),
    "trunk work before": doc("plank", "snatch"),
  },
  bad: {
    "jumps after squats": { doc: doc("squat", "jump"), at: at(1), data: [{ name: "jump", after: "squat" }] },
    "throws after rows": { doc: doc("plank", "row", "slam"), at: at(2), data: [{ name: "slam", after: "row" }] },
    "a fast lift after either": { doc: doc("row", "squat", "snatch"), at: at(2), data: [{ after: "row" }] },
    "in a pair": {
      doc: session([slot("squat"), { pair: [slot("jump"), slot("plank")] }]),
      at: [["phases", 0, "sessions", 0, "work", 1, "pair", 0]],
      data: [{ slot: "jump" }],
    },
  },
});

test("the remedy moves it before the slow work; a pair is left to the coach", () => {
  const input = doc("plank", "squat", "row", "jump");
  const [cure] = fastWorkLast.run(lookAt(input))[0]!.cures!();
  const after = changed(input.programme, cure!.changes);
  const order = after.phases[0]!.sessions[0]!.work.map((block) => "slot" in block && block.first);
  expect(order).toEqual(["plank", "jump", "squat", "row"]);
  const pair = session([slot("squat"), { pair: [slot("jump"), slot("plank")] }]);
  expect(fastWorkLast.run(lookAt(pair))[0]!.cures!()).toEqual([]);
});

test("of two slow ones before it, it is moved before the first; what stands behind it stays", () => {
  const keys = session([slot("squat"), { ...slot("squat"), slot: "again" }, slot("jump"), slot("plank")]);
  const [cure] = fastWorkLast.run(lookAt(keys))[0]!.cures!();
  const order = changed(keys.programme, cure!.changes).phases[0]!.sessions[0]!.work;
  expect(order.map((block) => "slot" in block && block.slot)).toEqual(["jump", "squat", "again", "plank"]);
});
