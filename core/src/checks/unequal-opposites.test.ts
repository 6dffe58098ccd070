import type { Pattern } from "../model/index.ts";
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
import { unequalOpposites } from "./unequal-opposites.ts";

const PATTERNS: readonly (readonly [string, Pattern])[] = [
  ["press", "vertical push"],
  ["row", "horizontal pull"],
  ["squat", "squat"],
  ["bridge", "bridge"],
];
const catalogue = madeUpCatalogue(PATTERNS.map(([id, pattern]) => madeUpExercise({ id, pattern })));
const doc = (...work: readonly (readonly [first: string, count: number])[]) => ({
  programme: madeUpProgramme([
    madeUpSession(
      "a",
      60,
      work.map(([first, count]) => madeUpSlot(first, "squat", sets(count, reps(8)))),
    ),
  ]),
  catalogue,
});
const AT = [["phases", 0]];

testCheck(unequalOpposites, {
  fine: {
    "just twice": doc(["press", 6], ["row", 3]),
    equal: doc(["squat", 3], ["bridge", 3]),
    "one is missing, which is said elsewhere": doc(["press", 9]),
    "with an exercise that nobody knows": doc(["press", 9], ["row", 2], ["moonwalk", 3]),
  },
  bad: {
    "over twice, pushing": {
      doc: doc(["press", 7], ["row", 3]),
      at: AT,
      data: [{ side: "push and pull", one: 7, other: 3 }],
    },
    "over twice, pulling": {
      doc: doc(["press", 2], ["row", 5]),
      at: AT,
      data: [{ side: "push and pull", one: 2, other: 5 }],
    },
    "over twice, knees": {
      doc: doc(["squat", 5], ["bridge", 2]),
      at: AT,
      data: [{ side: "knee and hip", one: 5, other: 2 }],
    },
  },
});
