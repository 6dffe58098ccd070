import { expect, test } from "vitest";
import type { Block } from "../model/index.ts";
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
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";
import { singleBeforeMulti } from "./single-before-multi.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "press-down", name: "Press-down", pattern: "upper isolation", muscles: { triceps: 1 } }),
  madeUpExercise({ id: "dip", name: "Dip", pattern: "vertical push", muscles: { triceps: 1, chest: 1 } }),
  madeUpExercise({ id: "bench", name: "Bench", pattern: "horizontal push", muscles: { chest: 1, triceps: 0.5 } }),
  madeUpExercise({ id: "kick-back", name: "Kick-back", pattern: "upper isolation", muscles: { triceps: 1 } }),
]);
const dose = sets(3, reps(10));
const slot = (id: string) => madeUpSlot(id, "horizontal push", dose);
const doc = (...work: readonly Block[]) => ({ programme: madeUpProgramme([madeUpSession("a", 45, work)]), catalogue });
const AT = (index: number) => ["phases", 0, "sessions", 0, "work", index];

testCheck(singleBeforeMulti, {
  fine: {
    "several joints first": doc(slot("dip"), slot("press-down")),
    "the other only helps": doc(slot("press-down"), slot("bench")),
    "two of one joint": doc(slot("press-down"), slot("kick-back")),
    "in turn in one pair": doc({ pair: [slot("press-down"), slot("dip")] }),
    "nobody knows the other": doc(slot("press-down"), slot("moonwalk")),
  },
  bad: {
    "a press-down before a dip": {
      doc: doc(slot("press-down"), slot("bench"), slot("dip")),
      at: [AT(0)],
      data: [{ slot: "press-down", muscles: ["triceps"], before: "Dip" }],
      severity: ["note"],
    },
    "in a pair before it": {
      doc: doc({ pair: [slot("bench"), slot("press-down")] }, slot("dip")),
      at: [[...AT(0), "pair", 1]],
      data: [{ name: "Press-down", before: "Dip" }],
    },
  },
});

test("the remedy does it after the last of them, and only a straight slot is moved", () => {
  const { programme } = doc(slot("press-down"), slot("bench"), slot("dip"));
  const [cure] = singleBeforeMulti.run(lookAt({ programme, catalogue }))[0]!.cures!();
  const work = changed(programme, cure!.changes).phases[0]!.sessions[0]!.work;
  expect(work.map((block) => ("slot" in block ? block.slot : "pair"))).toEqual(["bench", "dip", "press-down"]);
  const paired = doc({ pair: [slot("bench"), slot("press-down")] }, slot("dip"));
  expect(singleBeforeMulti.run(lookAt(paired))[0]!.cures!()).toEqual([]);
});

test("what stands behind the last of them stays behind", () => {
  const { programme } = doc(slot("press-down"), slot("dip"), slot("kick-back"));
  const [cure] = singleBeforeMulti.run(lookAt({ programme, catalogue }))[0]!.cures!();
  const work = changed(programme, cure!.changes).phases[0]!.sessions[0]!.work;
  expect(work.map((block) => ("slot" in block ? block.slot : "pair"))).toEqual(["dip", "press-down", "kick-back"]);
});
