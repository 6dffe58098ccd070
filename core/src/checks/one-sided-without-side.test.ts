import { expect, test } from "vitest";
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
import { oneSidedWithoutSide } from "./one-sided-without-side.ts";
import { lookAt } from "./run/look.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "split-squat", name: "Split squat", eachSide: true, limb: "split stance" }),
  madeUpExercise({ id: "squat", name: "Squat" }),
  madeUpExercise({ id: "dead-bug", name: "Dead bug", limb: "alternating" }),
]);
const both = sets(3, reps(8));
const each = sets(3, reps(8, { eachSide: true }));
const doc = (...slots: readonly ReturnType<typeof madeUpSlot>[]) => ({
  programme: madeUpProgramme([madeUpSession("a", 45, slots)]),
  catalogue,
});
const AT = ["phases", 0, "sessions", 0, "work", 0];

testCheck(oneSidedWithoutSide, {
  fine: {
    "one side said, two sides not": doc(
      madeUpSlot("split-squat", "single leg", each),
      madeUpSlot("squat", "squat", both),
    ),
    "turn about may be counted either way": doc(
      madeUpSlot("dead-bug", "anti-extension", each),
      madeUpSlot("dead-bug", "anti-extension", both, { slot: "b" }),
    ),
    "an exercise that nobody knows is left to another check": doc(madeUpSlot("moonwalk", "squat", each)),
  },
  bad: {
    "one-sided, no side": {
      doc: doc(madeUpSlot("split-squat", "single leg", both)),
      at: [[...AT, "dose"]],
      data: [{ slot: "split-squat", name: "Split squat", wanted: true }],
    },
    "one set of several without a side": {
      doc: doc(madeUpSlot("split-squat", "single leg", { sets: [...each.sets, reps(8)] })),
      at: [[...AT, "dose"]],
      data: [{ wanted: true }],
    },
    "two-sided, each side": {
      doc: doc(madeUpSlot("squat", "squat", each)),
      at: [[...AT, "dose"]],
      data: [{ name: "Squat", wanted: false }],
    },
    "a later week's dose": {
      doc: doc(madeUpSlot("split-squat", "single leg", each, { changes: [{ week: 3, dose: both }] })),
      at: [[...AT, "changes", 0, "dose"]],
      data: [{ fromWeek: 3, wanted: true }],
    },
    "in the warm-up": {
      doc: {
        programme: madeUpProgramme([
          madeUpSession("a", 45, [], { warmup: [{ do: "split-squat", dose: sets(1, timeOf(60)) }] }),
        ]),
        catalogue,
      },
      at: [["phases", 0, "sessions", 0, "warmup", 0, "dose"]],
      data: [{ item: "warmup 1", wanted: true }],
    },
  },
});

test("the remedy says each side in every set, and nothing else", () => {
  const [found] = oneSidedWithoutSide.run(lookAt(doc(madeUpSlot("split-squat", "single leg", both))));
  expect(found?.cures?.().map((cure) => cure.changes)).toEqual([[{ op: "set", at: [...AT, "dose"], value: each }]]);
});
