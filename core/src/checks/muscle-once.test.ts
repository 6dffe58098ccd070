import { expect, test } from "vitest";
import { type Block, slotsOf } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPhase,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
} from "../testing/index.ts";
import { muscleOnce } from "./muscle-once.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "bench", name: "Bench", pattern: "horizontal push", muscles: { chest: 1, triceps: 0.5 } }),
  madeUpExercise({ id: "row", name: "Row", pattern: "horizontal pull", muscles: { lats: 1, biceps: 0.5 } }),
  madeUpExercise({ id: "curl", name: "Curl", pattern: "upper isolation", muscles: { biceps: 1 } }),
  madeUpExercise({ id: "calf", name: "Calf raise", pattern: "lower isolation", muscles: { calf: 1 } }),
]);
const slot = (first: string, count: number, key = first) =>
  madeUpSlot(first, "horizontal push", sets(count, reps(10)), { slot: key });
const week = (...sessions: readonly (readonly Block[])[]) => ({
  programme: madeUpProgramme(sessions.map((work, index) => madeUpSession("abcd"[index]!, 60, work))),
  catalogue,
});

testCheck(muscleOnce, {
  fine: {
    twice: week([slot("bench", 3)], [slot("bench", 1, "bench-b")]),
    "once for it, and another session helps with a whole set": week(
      [slot("curl", 3), slot("row", 1)],
      [slot("row", 2, "row-b")],
    ),
    "small muscles": week([slot("calf", 4)], []),
    "a muscle that is only helped": week([slot("bench", 4, "bench-a")], [slot("bench", 4, "bench-b")]),
    "an exercise that nobody knows: cannot be told": week([slot("bench", 4)], [slot("moonwalk", 4)]),
  },
  bad: {
    "one session for the chest, another for the lats": {
      doc: week([slot("bench", 4)], [slot("row", 4)]),
      at: [["phases", 0]],
      data: [
        {
          muscles: [
            { muscle: "chest", session: "Session a", sets: 4 },
            { muscle: "lats", session: "Session b", sets: 4 },
          ],
        },
      ],
    },
    "half a set elsewhere is not training it": {
      doc: week([slot("curl", 3)], [slot("row", 1)]),
      at: [["phases", 0]],
      data: [{ muscles: [{ muscle: "lats" }, { muscle: "biceps" }] }],
    },
    "a week of one session": { doc: week([slot("bench", 3)]), at: [["phases", 0]], data: [{}] },
  },
});

test("weeks that are light are not judged", () => {
  const { programme } = week([slot("bench", 4)], []);
  const light = madeUpPhase(programme.phases[0]!.sessions, { weeks: 1, light: [1] });
  expect(muscleOnce.run(lookAt({ programme: { ...programme, phases: [light] }, catalogue }))).toEqual([]);
});

test("the remedy does half of the sets in the other session, under a key of its own, and the week's sets stay", () => {
  const { programme } = week([slot("bench", 5), slot("row", 3, "row-a")], [slot("row", 3, "row-b")]);
  const [cure] = muscleOnce.run(lookAt({ programme, catalogue }))[0]!.cures!();
  const after = changed(programme, cure!.changes);
  const slots = after.phases[0]!.sessions.map(({ work }) =>
    work.flatMap(slotsOf).map(({ slot: key, dose }) => [key, dose.sets.length]),
  );
  expect(slots).toEqual([
    [
      ["bench", 3],
      ["row-a", 3],
    ],
    [
      ["row-b", 3],
      ["bench-2", 2],
    ],
  ]);
  expect(muscleOnce.run(lookAt({ programme: after, catalogue }))).toEqual([]);
});

test("nothing is offered for a slot in a pair, one with changes, one set, or a single session", () => {
  const one = (...sessions: readonly (readonly Block[])[]) => muscleOnce.run(lookAt(week(...sessions)))[0]!.cures!();
  expect(one([slot("bench", 3)])).toEqual([]);
  expect(one([slot("bench", 1)], [])).toEqual([]);
  expect(one([{ pair: [slot("bench", 3), slot("calf", 3)] }], [])).toEqual([]);
  expect(one([{ ...slot("bench", 3), changes: [{ week: 2, dose: sets(4, reps(8)) }] }], [])).toEqual([]);
});

test("the remedy names what is split, takes the slot with most sets, and halves an odd number upwards", () => {
  const { programme } = week([slot("bench", 3), slot("bench", 5, "bench-more")], []);
  const [cure] = muscleOnce.run(lookAt({ programme, catalogue }))[0]!.cures!();
  expect(cure!.data).toEqual({ names: ["Bench"] });
  const counts = changed(programme, cure!.changes).phases[0]!.sessions.map(({ work }) =>
    work.flatMap(slotsOf).map(({ slot: key, dose }) => [key, dose.sets.length]),
  );
  expect(counts).toEqual([
    [
      ["bench", 3],
      ["bench-more", 3],
    ],
    [["bench-more-2", 2]],
  ]);
});

test("two sets can be split; every other session is tried", () => {
  const { programme } = week([slot("bench", 2)], [], []);
  const cures = muscleOnce.run(lookAt({ programme, catalogue }))[0]!.cures!();
  expect(cures.map(({ changes }) => changes.find(({ op }) => op === "insert")!.at[3])).toEqual([1, 2]);
});

test("one slot that is for two muscles is split once", () => {
  const both = madeUpCatalogue([
    madeUpExercise({ id: "dip", name: "Dip", pattern: "horizontal push", muscles: { chest: 1, triceps: 1 } }),
  ]);
  const { programme } = week([slot("dip", 4)], []);
  const [found] = muscleOnce.run(lookAt({ programme, catalogue: both }));
  expect(found!.data["muscles"]).toMatchObject([{ muscle: "chest" }, { muscle: "triceps" }]);
  expect(found!.cures!()[0]!.changes).toHaveLength(2);
});
