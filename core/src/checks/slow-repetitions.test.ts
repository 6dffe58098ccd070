import { expect, test } from "vitest";
import type { Goal, Tempo } from "../model/index.ts";
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
import { slowRepetitions } from "./slow-repetitions.ts";

const doc = (tempo: Tempo | undefined, goal: Goal = "size") => ({
  programme: madeUpProgramme(
    [madeUpSession("a", 60, [madeUpSlot("curl", "squat", sets(3, reps(8), tempo === undefined ? {} : { tempo }))])],
    { goal },
  ),
  catalogue: madeUpCatalogue([madeUpExercise({ id: "curl", name: "Curl" })]),
});
const AT = [["phases", 0, "sessions", 0, "work", 0, "dose"]];

// Half a second to eight: as good; over ten: worse. schoenfeld2015tempo.
testCheck(slowRepetitions, {
  fine: {
    "eight seconds": doc([4, 0, 4, 0]),
    "ten seconds": doc([5, 0, 5, 0]),
    "no tempo": doc(undefined),
    "slowly, for another goal": doc([6, 0, 6, 0], "general"),
  },
  bad: {
    "eleven seconds": { doc: doc([5, 1, 5, 0]), at: AT, data: [{ name: "Curl", seconds: 11, most: 10 }] },
  },
});

test("the remedy takes seconds from the longest parts until eight are left", () => {
  const input = doc([10, 1, 5, 0]);
  const [cure] = slowRepetitions.run(lookAt(input))[0]!.cures!();
  const after = changed(input.programme, cure!.changes);
  expect(after.phases[0]!.sessions[0]!.work[0]).toMatchObject({ dose: { tempo: [3, 1, 4, 0] } });
  expect(slowRepetitions.run(lookAt({ ...input, programme: after }))).toEqual([]);
});
