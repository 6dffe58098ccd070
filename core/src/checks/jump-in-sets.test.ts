import { expect, test } from "vitest";
import type { Phase } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPhase,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  published,
  reps,
  sets,
  testCheck,
} from "../testing/index.ts";
import { jumpInSets } from "./jump-in-sets.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "squat", name: "Squat", muscles: { "front thigh": 1, buttocks: 0.5 } }),
]);
/** A phase of one session a week, its sets by week: [first week, sets]. */
const phase = (
  key: string,
  weeks: number,
  counts: readonly (readonly [number, number])[],
  more: Partial<Phase> = {},
) => {
  const [[, first] = [1, 1], ...later] = counts;
  const changes = later.map(([week, count]) => ({ week, dose: sets(count, reps(8)) }));
  const slot = madeUpSlot("squat", "squat", sets(first, reps(8)), {
    slot: `squat-${key}`,
    ...(later.length > 0 ? { changes } : {}),
  });
  return madeUpPhase([madeUpSession("a", 60, [slot])], { key, title: key, weeks, ...more });
};
const doc = (...phases: readonly Phase[]) => ({ programme: madeUpProgramme([], { phases }), catalogue });

published("iusca2021", "sets after a rise of 20 %", [["worked", "10 sets", () => 10 * 1.2, 12, 1e-9]]);

testCheck(jumpInSets, {
  fine: {
    "20 % more": doc(phase("one", 4, [[1, 15]]), phase("two", 4, [[1, 18]])),
    "far over 20 %, but only two sets more": doc(phase("one", 4, [[1, 2]]), phase("two", 4, [[1, 4]])),
    "week 2 against one week: too little known": doc(
      phase("one", 4, [
        [1, 4],
        [2, 9],
      ]),
    ),
    "a light week before is left out": doc(phase("one", 4, [[1, 10]], { light: [4] }), phase("two", 4, [[1, 12]])),
    "back after less": doc(
      phase("one", 6, [
        [1, 10],
        [5, 4],
        [6, 10],
      ]),
    ),
  },
  bad: {
    "over 20 % and three sets more, from one phase to the next": {
      doc: doc(phase("one", 4, [[1, 10]]), phase("two", 4, [[1, 13]])),
      at: [["phases", 1]],
      data: [{ phase: "two", fromWeek: 1, known: 4, muscles: [{ muscle: "front thigh", sets: 13, mean: 10 }] }],
    },
    "within a phase": {
      doc: doc(
        phase("one", 6, [
          [1, 8],
          [4, 12],
        ]),
      ),
      at: [["phases", 0]],
      data: [{ fromWeek: 4, known: 3, muscles: [{ muscle: "front thigh", sets: 12, mean: 8 }] }],
    },
    "two weeks before are enough to tell": {
      doc: doc(phase("one", 2, [[1, 8]]), phase("two", 2, [[1, 12]])),
      at: [["phases", 1]],
      data: [{ known: 2 }],
    },
  },
});

test("the mean is that of the last four full weeks", () => {
  const counts = [
    [1, 5],
    [2, 8],
    [6, 15],
  ] as const;
  const found = jumpInSets.run(lookAt(doc(phase("one", 7, counts))));
  expect(found.map(({ data }) => [data["fromWeek"], data["muscles"]])).toEqual([
    [
      6,
      [
        { muscle: "buttocks", sets: 7.5, mean: 4 },
        { muscle: "front thigh", sets: 15, mean: 8 },
      ],
    ],
  ]);
});

test("the remedy takes sets away, and nothing is found any more", () => {
  const input = doc(phase("one", 4, [[1, 10]]), phase("two", 4, [[1, 13]]));
  const cures = jumpInSets.run(lookAt(input))[0]!.cures!();
  expect(cures.map(({ data }) => data["slots"])).toEqual([
    [{ slot: "squat-two", name: "Squat", from: 13, to: 12 }],
    [{ slot: "squat-two", name: "Squat", from: 13, to: 11 }],
    [{ slot: "squat-two", name: "Squat", from: 13, to: 10 }],
  ]);
  expect(jumpInSets.run(lookAt({ ...input, programme: changed(input.programme, cures[0]!.changes) }))).toEqual([]);
});

test("single sets are not taken away: a jump made of many slots of one set has no such remedy", () => {
  const of = (count: number) =>
    Array.from({ length: count }, (_, at) => madeUpSlot("squat", "squat", sets(1, reps(8)), { slot: `s-${at}` }));
  const phases = [4, 8].map((count, at) =>
    madeUpPhase([madeUpSession("a", 60, of(count))], { key: `p${at}`, title: `P${at}` }),
  );
  const [found] = jumpInSets.run(lookAt(doc(...phases)));
  expect(found?.data["muscles"]).toMatchObject([{ muscle: "front thigh", sets: 8, mean: 4 }]);
  expect(found?.cures?.()).toEqual([]);
});

test("of two muscles that jump, the slots of both lose sets, and no other slot", () => {
  const all = madeUpCatalogue([
    madeUpExercise({ id: "squat", name: "Squat", muscles: { "front thigh": 1 } }),
    madeUpExercise({ id: "row", name: "Row", muscles: { lats: 1 } }),
    madeUpExercise({ id: "curl", name: "Curl", muscles: { biceps: 1 } }),
  ]);
  const of = (key: string, squat: number, row: number) =>
    madeUpPhase(
      [
        madeUpSession("a", 60, [
          madeUpSlot("squat", "squat", sets(squat, reps(8)), { slot: `squat-${key}` }),
          madeUpSlot("row", "squat", sets(row, reps(8)), { slot: `row-${key}` }),
          madeUpSlot("curl", "squat", sets(4, reps(8)), { slot: `curl-${key}` }),
        ]),
      ],
      { key, title: key },
    );
  const input = { programme: madeUpProgramme([], { phases: [of("one", 4, 4), of("two", 8, 9)] }), catalogue: all };
  const [found] = jumpInSets.run(lookAt(input));
  expect(found!.data["muscles"]).toMatchObject([{ muscle: "lats" }, { muscle: "front thigh" }]);
  expect(found!.cures!()[0]!.data["slots"]).toMatchObject([{ slot: "squat-two" }, { slot: "row-two" }]);
});
