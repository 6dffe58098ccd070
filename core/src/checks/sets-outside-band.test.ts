import { expect, test } from "vitest";
import { type Dose, MUSCLES, type Muscle, type MuscleShares, type Programme, printDose } from "../model/index.ts";
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
import { lookAt } from "./run/look.ts";
import { setsOutsideBand } from "./sets-outside-band.ts";

const shares = (muscles: readonly Muscle[], share: 1 | 0.5): MuscleShares =>
  Object.fromEntries(muscles.map((muscle) => [muscle, share]));

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "all", name: "All of it", muscles: shares(MUSCLES, 1) }),
  madeUpExercise({
    id: "rest",
    name: "All but chest and biceps",
    muscles: shares(
      MUSCLES.filter((muscle) => muscle !== "chest" && muscle !== "biceps"),
      1,
    ),
  }),
  madeUpExercise({ id: "press", name: "Press", pattern: "horizontal push", muscles: { chest: 1 } }),
  madeUpExercise({ id: "pull", name: "Pull", pattern: "vertical pull", muscles: { biceps: 0.5 } }),
  madeUpExercise({ id: "curl", name: "Curl", pattern: "upper isolation", muscles: { biceps: 1 } }),
]);

const dose = (count: number): Dose => sets(count, reps(8));
const slot = (first: string, count: number, changes?: readonly { week: number; dose: Dose }[]) =>
  madeUpSlot(first, "squat", dose(count), changes === undefined ? {} : { changes });
const doc = (
  slots: readonly ReturnType<typeof madeUpSlot>[],
  more: Partial<Programme> = {},
  light: readonly number[] = [],
) => ({
  programme: madeUpProgramme([], { phases: [madeUpPhase([madeUpSession("a", 60, slots)], { light })], ...more }),
  catalogue,
});
const PHASE = ["phases", 0];

testCheck(setsOutsideBand, {
  fine: {
    "four sets, the least of a novice's band": doc([slot("all", 4)]),
    "ten sets, the most": doc([slot("all", 10)]),
    "a light week under the band": doc([slot("all", 6)], {}, [4]),
    "a light week with a dose of its own under the band": doc([slot("all", 6, [{ week: 4, dose: dose(6) }])], {}, [4]),
    "too much for the status, allowed by the programme": doc([slot("rest", 4), slot("press", 12), slot("curl", 4)], {
      weekly: { sets: { chest: { from: 4, to: 12 } } },
    }),
    "nothing for the calf and the forearm": {
      programme: madeUpProgramme([madeUpSession("a", 60, [slot("uncounted", 4)])]),
      catalogue: madeUpCatalogue([
        madeUpExercise({
          id: "uncounted",
          muscles: shares(
            MUSCLES.filter((m) => m !== "calf" && m !== "forearm"),
            1,
          ),
        }),
      ]),
    },
  },
  bad: {
    "under, for a muscle that a slot is for": {
      doc: doc([slot("rest", 4), slot("press", 4), slot("curl", 3)]),
      at: [PHASE],
      data: [{ side: "under", muscle: "biceps", sets: 3, from: 4, to: 10, own: false, week: 1, weeks: [1, 2, 3, 4] }],
      severity: ["warn"],
    },
    "over, in the week that asks for most, with every week named": {
      doc: doc([slot("rest", 4), slot("curl", 4), slot("press", 11, [{ week: 3, dose: dose(13) }])]),
      at: [PHASE],
      data: [{ side: "over", muscle: "chest", sets: 13, week: 3, weeks: [1, 2, 3, 4] }],
    },
    "only the later weeks": {
      doc: doc([slot("rest", 4), slot("curl", 4), slot("press", 4, [{ week: 3, dose: dose(11) }])], {}, [4]),
      at: [PHASE],
      data: [{ muscle: "chest", sets: 11, week: 3, weeks: [3] }],
    },
    "a great mover that nothing trains": {
      doc: doc([slot("rest", 4), slot("curl", 4)]),
      at: [PHASE],
      data: [{ side: "under", muscle: "chest", sets: 0 }],
    },
    "a muscle that only ever helps is a note": {
      doc: doc([slot("rest", 4), slot("press", 4), slot("pull", 3)]),
      at: [PHASE],
      data: [{ side: "helping only", from: 4, muscles: [{ muscle: "biceps", sets: 1.5 }] }],
      severity: ["note"],
    },
    "a muscle that only ever helps, with a band of its own": {
      doc: doc([slot("rest", 4), slot("press", 4), slot("pull", 3)], {
        weekly: { sets: { biceps: { from: 2, to: 6 } } },
      }),
      at: [PHASE],
      data: [{ side: "under", muscle: "biceps", own: true, from: 2 }],
      severity: ["warn"],
    },
    "advanced people ask for more": {
      doc: doc([slot("rest", 10), slot("press", 9), slot("curl", 10)], { status: "advanced" }),
      at: [PHASE],
      data: [{ muscle: "chest", sets: 9, from: 10, to: 20, status: "advanced" }],
    },
    "with an exercise that nobody knows, too little cannot be told but too much can": {
      doc: doc([slot("rest", 4), slot("curl", 11), slot("moonwalk", 3)]),
      at: [PHASE, PHASE],
      data: [
        { side: "over", muscle: "biceps" },
        { side: "cannot judge", unknown: ["moonwalk"] },
      ],
      severity: ["warn", "note"],
    },
  },
});

function firstCure(input: ReturnType<typeof doc>): readonly (readonly [string, string])[] {
  const [cure] = setsOutsideBand.run(lookAt(input))[0]?.cures?.() ?? [];
  return (cure?.changes ?? []).map((change) => [
    change.at.slice(4).join("."),
    change.op === "set" ? printDose(change.value as Dose) : change.op,
  ]);
}

test("the remedy adds sets to the slot that is for the muscle, in later weeks too", () => {
  const input = doc([slot("rest", 4), slot("press", 4), slot("curl", 2, [{ week: 3, dose: dose(3) }])]);
  expect(firstCure(input)).toEqual([
    ["work.2.dose", "4 × 8"],
    ["work.2.changes.0.dose", "5 × 8"],
  ]);
});

test("sets are spread over the slots that are for the muscle", () => {
  const two = [slot("curl", 1), { ...slot("curl", 1), slot: "curl-2" }];
  expect(firstCure(doc([slot("rest", 4), slot("press", 4), ...two]))).toEqual([
    ["work.2.dose", "2 × 8"],
    ["work.3.dose", "2 × 8"],
  ]);
});

test("too many are taken where most are", () => {
  const two = [slot("press", 4), { ...slot("press", 8), slot: "press-2" }];
  expect(firstCure(doc([slot("rest", 4), slot("curl", 4), ...two]))).toEqual([["work.3.dose", "6 × 8"]]);
});

test("a mover that no slot trains gets a slot", () => {
  const [cure] = setsOutsideBand.run(lookAt(doc([slot("rest", 4), slot("curl", 4)])))[0]?.cures?.() ?? [];
  expect(cure?.changes).toMatchObject([{ op: "insert", value: { first: "all" } }]);
});

test("a slot is for its muscle when one of its sets counts, though others are practice", () => {
  const mixed: Dose = { sets: [reps(8, { reserve: { from: 6, to: 6 } }), reps(8)] };
  const input = doc([slot("rest", 4), slot("press", 4), madeUpSlot("curl", "upper isolation", mixed)]);
  expect(setsOutsideBand.run(lookAt(input))).toMatchObject([{ data: { side: "under", muscle: "biceps", sets: 1 } }]);
});

test("the furthest week is told first: most of what is too much, least of what is too little", () => {
  const over = doc([slot("rest", 4), slot("curl", 4), slot("press", 12, [{ week: 2, dose: dose(15) }])]);
  expect(setsOutsideBand.run(lookAt(over))[0]!.data).toMatchObject({ sets: 15, week: 2, weeks: [1, 2, 3, 4] });
  const under = doc([slot("rest", 4), slot("curl", 4), slot("press", 3, [{ week: 3, dose: dose(1) }])]);
  expect(setsOutsideBand.run(lookAt(under))[0]!.data).toMatchObject({ sets: 1, week: 3, weeks: [1, 2, 3, 4] });
});

test("the end of a band is in it", () => {
  const of = (press: number) =>
    setsOutsideBand
      .run(lookAt(doc([slot("rest", 4), slot("curl", 4), slot("press", press)])))
      .map(({ data }) => data["side"]);
  expect([of(3), of(4), of(10), of(11)]).toEqual([["under"], [], [], ["over"]]);
});

test("an unknown exercise is named once, however often it is asked", () => {
  const found = setsOutsideBand.run(
    lookAt(doc([slot("all", 4), slot("moonwalk", 1), { ...slot("moonwalk", 2), slot: "m" }])),
  );
  expect(found.map(({ data }) => [data["side"], data["unknown"]])).toEqual([["cannot judge", ["moonwalk"]]]);
});

test("a light week may be over its band", () => {
  const input = doc([slot("rest", 4), slot("curl", 4), slot("press", 24)], {}, [4]);
  expect(setsOutsideBand.run(lookAt(input))[0]!.data).toMatchObject({ muscle: "chest", sets: 24 });
  const only = doc([slot("rest", 20), slot("curl", 20), slot("press", 24)], {}, [1, 2, 3, 4]);
  expect(
    setsOutsideBand.run(lookAt(only)).some(({ data }) => data["muscle"] === "chest" && data["side"] === "over"),
  ).toBe(true);
});
