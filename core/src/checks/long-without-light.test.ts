import { expect, test } from "vitest";
import {
  madeUpCatalogue,
  madeUpPhase,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  published,
  reps,
  sets,
  testCheck,
  timeOf,
} from "../testing/index.ts";
import { longWithoutLight } from "./long-without-light.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";

const lift = madeUpSession("a", 60, [madeUpSlot("squat", "squat", sets(3, reps(8)))]);
const run = madeUpSession("r", 60, [], { conditioning: [{ do: "run", dose: sets(1, timeOf(1800)), effort: "easy" }] });
const doc = (phases: readonly (readonly [weeks: number, light?: readonly number[]])[], session = lift) => ({
  programme: madeUpProgramme([], {
    phases: phases.map(([weeks, light], index) =>
      madeUpPhase([session], { key: `p${index}`, weeks, ...(light === undefined ? {} : { light }) }),
    ),
  }),
  catalogue: madeUpCatalogue([]),
});

published("rogerson2024", "weeks between light ones, mean and one deviation over", [
  ["worked", "5.6 + 2.3", () => 5.6 + 2.3, 7.9, 1e-9],
]);

testCheck(longWithoutLight, {
  fine: {
    "eight weeks": doc([[8]]),
    "nine with a light one": doc([[9, [5]]]),
    "sixteen in four phases, each with one": doc([
      [4, [4]],
      [4, [4]],
      [4, [4]],
      [4, [4]],
    ]),
    "twelve weeks of running alone": doc([[12]], run),
  },
  bad: {
    "nine weeks": { doc: doc([[9]]), at: [["phases", 0]], data: [{ phase: "p0", fromWeek: 1, weeks: 9, most: 8 }] },
    "over two phases, from the second week": {
      doc: doc([[6, [1]], [4]]),
      at: [["phases", 0]],
      data: [{ phase: "p0", fromWeek: 2, weeks: 9 }],
    },
  },
});

test("the remedy makes every sixth week light, in the phase in which it lies, and keeps those that were", () => {
  const input = doc([[7, [1]], [16]]);
  const [cure] = longWithoutLight.run(lookAt(input))[0]!.cures!();
  const after = changed(input.programme, cure!.changes);
  expect(after.phases.map(({ light }) => light)).toEqual([
    [1, 7],
    [6, 12],
  ]);
  expect(longWithoutLight.run(lookAt({ ...input, programme: after }))).toEqual([]);
});

test("the last week of a run is not made light: nothing follows it", () => {
  const [cure] = longWithoutLight.run(lookAt(doc([[12]])))[0]!.cures!();
  expect(cure!.data["weeks"]).toEqual([{ title: "One", week: 6 }]);
});

test("a phase that gets no light week is left as it is", () => {
  const input = doc([[3], [8]]);
  const [cure] = longWithoutLight.run(lookAt(input))[0]!.cures!();
  expect(cure!.changes.map(({ at }) => at)).toEqual([["phases", 1, "light"]]);
  expect(cure!.data["weeks"]).toEqual([{ title: "One", week: 3 }]);
});
