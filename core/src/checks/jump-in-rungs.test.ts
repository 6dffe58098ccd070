import { expect, test } from "vitest";
import { CATALOGUE } from "../exercises/index.ts";
import { madeUpPhase, madeUpProgramme, madeUpSession, madeUpSlot, reps, sets, testCheck } from "../testing/index.ts";
import { jumpInRungs } from "./jump-in-rungs.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";

const phase = (key: string, ...firsts: readonly string[]) =>
  madeUpPhase(
    [
      madeUpSession(
        "a",
        60,
        firsts.map((first, index) => madeUpSlot(first, "squat", sets(3, reps(8)), { slot: `${key}-${index}` })),
      ),
    ],
    { key, title: key },
  );
const doc = (...phases: readonly (readonly string[])[]) => ({
  programme: madeUpProgramme([], { phases: phases.map((firsts, index) => phase(`p${index}`, ...firsts)) }),
  catalogue: CATALOGUE,
});
const AT = ["phases", 1, "sessions", 0, "work", 0, "first"];

testCheck(jumpInRungs, {
  fine: {
    "two steps": doc(["body-squat"], ["double-dumbbell-front-squat"]),
    "the same form, and down": doc(["body-squat", "goblet-squat"], ["goblet-squat", "sit-to-stand-high"]),
    "another slot of the phase before is near": doc(["sit-to-stand-high", "goblet-squat"], ["back-squat"]),
    "nothing on the same way before": doc(["wall-push-up"], ["back-squat"]),
    "one phase": doc(["back-squat"]),
    "nobody knows it": doc(["body-squat"], ["moonwalk"]),
  },
  bad: {
    "three steps": {
      doc: doc(["body-squat"], ["back-squat"]),
      at: [AT],
      data: [{ exercise: "back-squat", before: "Body squat to parallel", steps: 3 }],
    },
    "of several forms before, the nearest counts, whichever stands first": {
      doc: doc(
        ["sit-to-stand-high", "body-squat"],
        ["back-squat"],
        ["body-squat", "sit-to-stand-high"],
        ["back-squat"],
      ),
      at: [AT, ["phases", 3, "sessions", 0, "work", 0, "first"]],
      data: [
        { before: "Body squat to parallel", steps: 3 },
        { before: "Body squat to parallel", steps: 3 },
      ],
    },
    "the phase before counts, not the one before that": {
      doc: doc(["goblet-squat"], ["sit-to-stand-high"], ["goblet-squat"]),
      at: [["phases", 2, "sessions", 0, "work", 0, "first"]],
      data: [{ steps: 4 }],
    },
  },
});

test("the remedy takes the form two steps up, on the way to the one asked for", () => {
  const input = doc(["body-squat"], ["back-squat"]);
  const [cure, ...more] = jumpInRungs.run(lookAt(input))[0]!.cures!();
  expect([cure!.data["id"], more]).toEqual(["double-dumbbell-front-squat", []]);
  expect(jumpInRungs.run(lookAt({ ...input, programme: changed(input.programme, cure!.changes) }))).toEqual([]);
});
