import type { Pattern } from "../model/index.ts";
import {
  hold,
  madeUpCatalogue,
  madeUpExercise,
  madeUpPhase,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  sets,
  testCheck,
} from "../testing/index.ts";
import { trunkDirections } from "./trunk-directions.ts";

const TRUNK: readonly Pattern[] = ["anti-extension", "anti-lateral flexion", "anti-rotation", "rotation"];
const catalogue = madeUpCatalogue([
  ...TRUNK.map((pattern) => madeUpExercise({ id: pattern.replace(" ", "-"), pattern, amounts: "hold" })),
  madeUpExercise({ id: "one-side-carry", pattern: "carry", alsoCounts: "anti-lateral flexion" }),
]);
const doc = (firsts: readonly string[], light: readonly number[] = []) => {
  const work = firsts.map((first) => madeUpSlot(first, "anti-extension", sets(2, hold(20))));
  return {
    programme: madeUpProgramme([], { phases: [madeUpPhase([madeUpSession("a", 60, work)], { light })] }),
    catalogue,
  };
};

testCheck(trunkDirections, {
  fine: {
    "two directions": doc(["anti-extension", "anti-rotation"]),
    "the other one by a carry that also counts": doc(["anti-extension", "one-side-carry"]),
    "no trunk work at all is said elsewhere": doc([]),
    "only light weeks": doc(["anti-extension"], [1, 2, 3, 4]),
  },
  bad: {
    "one direction": {
      doc: doc(["anti-extension"]),
      at: [["phases", 0]],
      data: [
        {
          phase: "one",
          directions: 1,
          trained: ["anti-extension"],
          missing: ["anti-rotation", "anti-lateral flexion", "rotation"],
        },
      ],
    },
  },
});
