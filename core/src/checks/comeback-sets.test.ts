import { describe, expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import type { Muscle } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
} from "../testing/index.ts";
import { comebackSets } from "./comeback-sets.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";

const ON = day("2027-03-01");
const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "bench", name: "Bench", muscles: { chest: 1, triceps: 0.5 } }),
  madeUpExercise({ id: "row", name: "Row", muscles: { lats: 1 } }),
]);
/** Four weeks of these sets, the last of them over so many days before the first day. */
const used = (daysOff: number, muscles: Partial<Record<Muscle, number>>) =>
  [1, 2, 3, 4].map((back) => ({ week: addDays(ON, -daysOff - 7 * back), sets: muscles }));
const doc = (bench: number, row: number, recent: ReturnType<typeof used> = []) => ({
  programme: madeUpProgramme([
    madeUpSession("a", 90, [
      madeUpSlot("bench", "horizontal push", sets(bench, reps(8)), { changes: [{ week: 3, dose: sets(20, reps(8)) }] }),
      madeUpSlot("row", "horizontal pull", sets(row, reps(8))),
    ]),
  ]),
  catalogue,
  person: madeUpPerson({ recent }),
  on: ON,
});
const AT = [["phases", 0]];

// After 2–3 weeks off half to two thirds of the sets: common practice, no source. 20 % in a month: iusca2021.
testCheck(comebackSets, {
  fine: {
    "two thirds after two weeks": doc(8, 8, used(14, { chest: 12, triceps: 6, lats: 12 })),
    "one set over two thirds is nothing to speak of": doc(9, 8, used(14, { chest: 12, triceps: 6, lats: 12 })),
    "half after five weeks": doc(6, 6, used(35, { chest: 12, triceps: 6, lats: 12 })),
    "a fifth more without a break": doc(12, 12, used(0, { chest: 10, triceps: 5, lats: 10 })),
    "all the usual sets after thirteen days": doc(12, 12, used(13, { chest: 12, triceps: 6, lats: 12 })),
    "what was never trained": doc(8, 8, used(14, { lats: 12 })),
    "nothing known of late": doc(20, 20),
    "nobody named": { ...doc(20, 20, used(14, { chest: 4 })), person: undefined as never },
    "no day": { ...doc(20, 20, used(14, { chest: 4 })), on: undefined as never },
  },
  bad: {
    "all the usual sets after two weeks": {
      doc: doc(12, 8, used(14, { chest: 12, triceps: 6, lats: 12 })),
      at: AT,
      data: [
        {
          side: "comeback",
          percent: 67,
          daysOff: 14,
          known: 4,
          muscles: [
            { muscle: "chest", sets: 12, usual: 12 },
            { muscle: "triceps", sets: 6, usual: 6 },
          ],
        },
      ],
    },
    "two thirds after five weeks": {
      doc: doc(8, 6, used(35, { chest: 12, lats: 12 })),
      at: AT,
      data: [{ side: "comeback", percent: 50, muscles: [{ muscle: "chest", sets: 8 }] }],
    },
    "twice the usual without a break, however trained": {
      doc: doc(8, 4, used(0, { chest: 4, lats: 4 })),
      at: AT,
      data: [{ side: "more than usual", percent: 120, muscles: [{ muscle: "chest", sets: 8, usual: 4 }] }],
    },
  },
});

test("a muscle that none of the weeks trained begins with two sets in somebody who trains; a novice is judged elsewhere", () => {
  const found = (bench: number, status: "novice" | "intermediate", weeks = 4) => {
    const input = doc(bench, 12, used(0, { lats: 12 }).slice(0, weeks));
    const person = madeUpPerson({ status, recent: input.person.recent! });
    return comebackSets.run(lookAt({ ...input, person })).map(({ data }) => data);
  };
  expect(found(3, "intermediate")).toMatchObject([
    { side: "new", most: 2, known: 4, muscles: [{ muscle: "chest", sets: 3 }] },
  ]);
  expect(found(2, "intermediate")).toEqual([]);
  expect(found(3, "novice")).toEqual([]);
  expect(found(3, "intermediate", 1)).toEqual([]);
});

test("the remedy takes sets from the first week alone", () => {
  const input = doc(12, 8, used(14, { chest: 12, triceps: 6, lats: 12 }));
  const cures = comebackSets.run(lookAt(input))[0]!.cures!();
  expect(cures.map(({ data }) => data["slots"])).toEqual([
    [{ slot: "bench", name: "Bench", from: 12, to: 11 }],
    [{ slot: "bench", name: "Bench", from: 12, to: 10 }],
    [{ slot: "bench", name: "Bench", from: 12, to: 9 }],
  ]);
  const after = changed(input.programme, cures[2]!.changes);
  expect(comebackSets.run(lookAt({ ...input, programme: after }))).toEqual([]);
  expect(after.phases[0]!.sessions[0]!.work[0]).toMatchObject({ changes: [{ week: 3, dose: sets(20, reps(8)) }] });
});

describe("how much over is told", () => {
  const found = (bench: number, daysOff: number, usual: number) =>
    comebackSets
      .run(lookAt(doc(bench, 1, used(daysOff, { chest: usual, lats: 40 }))))
      .map(({ data }) => data["percent"]);
  test("two sets over two thirds or a half after time off", () => {
    expect([found(9, 14, 12), found(10, 14, 12)]).toEqual([[], [67]]);
    expect([found(7, 35, 12), found(8, 35, 12)]).toEqual([[], [50]]);
  });
  test("28 days off are two thirds, 29 a half", () => {
    expect([found(8, 28, 12), found(8, 29, 12)]).toEqual([[], [50]]);
  });
  test("three sets over a fifth more without time off", () => {
    expect([found(14, 0, 10), found(15, 0, 10)]).toEqual([[], [120]]);
  });
  test("the usual sets are told with one decimal, over the weeks that are known", () => {
    const recent = [7, 8, 7].map((chest, at) => ({ week: addDays(ON, -14 - 7 * (at + 1)), sets: { chest } }));
    const [one] = comebackSets.run(lookAt(doc(12, 1, recent)));
    expect(one!.data).toMatchObject({ known: 3, muscles: [{ muscle: "chest", sets: 12, usual: 7.3 }] });
  });
});

test("sets are taken from pairs together, and from what helps the muscle too; a single set stays", () => {
  const base = doc(12, 8, used(14, { chest: 12, triceps: 6, lats: 12 }));
  const bench = madeUpSlot("bench", "horizontal push", sets(6, reps(8)), { slot: "b" });
  const row = madeUpSlot("row", "horizontal pull", sets(6, reps(8)), { slot: "r" });
  const single = madeUpSlot("bench", "horizontal push", sets(1, reps(8)), { slot: "one" });
  const five = madeUpSlot("bench", "horizontal push", sets(5, reps(8)), { slot: "five" });
  const programme = madeUpProgramme([madeUpSession("a", 90, [{ pair: [bench, row] }, single, five])]);
  const [cure] = comebackSets.run(lookAt({ ...base, programme }))[0]!.cures!();
  expect(cure!.data["slots"]).toEqual([
    { slot: "b", name: "Bench", from: 6, to: 5 },
    { slot: "r", name: "Row", from: 6, to: 5 },
    { slot: "five", name: "Bench", from: 5, to: 4 },
  ]);
});
