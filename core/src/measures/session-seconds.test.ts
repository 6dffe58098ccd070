import { describe, expect, test } from "vitest";
import type { Dose, Exercise } from "../model/index.ts";
import { hold, madeUpExercise, published, reps, sets, timeOf } from "../testing/index.ts";
import type { AskedBlock } from "./asked-session.ts";
import { lowerSeconds, sessionSeconds, upperSeconds } from "./session-seconds.ts";

function straight(exercise: string, dose: Dose): AskedBlock {
  return { kind: "straight", slots: [{ exercise, dose }] };
}

function lengthOf(exercises: readonly Exercise[], warmUpS: number, blocks: readonly AskedBlock[]) {
  const known = new Map([madeUpExercise({ id: "warm" }), ...exercises].map((each) => [each.id, each]));
  const warmup = warmUpS > 0 ? [{ exercise: "warm", dose: sets(1, timeOf(warmUpS)) }] : [];
  return sessionSeconds({ warmup, blocks, conditioning: [] }, (id) => known.get(id));
}

/** So many exercises of three sets of ten at 4 s, all alike. */
function alike(count: number, rest: number, change: number, warmUpS: number) {
  const one = madeUpExercise({ id: "one", secondsPerRep: 4, moveS: change });
  const dose = sets(3, reps(10), { restS: rest });
  return lengthOf(
    [one],
    warmUpS,
    Array.from({ length: count }, () => straight("one", dose)),
  );
}

published("lowerBodySplit2022", "minutes of six exercises × 3 sets, rest and change 120 s", [
  ["printed", "46 min", () => alike(6, 120, 120, 0).typical / 60, 46, 0.05],
]);

test("our own sum by hand: eight exercises, rest and change 90 s, ten minutes of warm-up are 60.5 min", () => {
  expect(alike(8, 90, 90, 600).typical).toBe(3630);
});

test("our own sum by hand: three exercises, one of them per side, one held, are 24.7 min", () => {
  const a = madeUpExercise({ id: "a", secondsPerRep: 4, setupS: 120 });
  const b = madeUpExercise({ id: "b", secondsPerRep: 3.5, setupS: 30, moveS: 60 });
  const c = madeUpExercise({ id: "c", setupS: 20, moveS: 60 });
  const length = lengthOf([a, b, c], 300, [
    straight("a", sets(3, reps(8), { restS: 120 })),
    straight("b", sets(3, reps(10, { eachSide: true }), { restS: 90 })),
    straight("c", sets(2, hold(30, { eachSide: true }), { restS: 45 })),
  ]);
  expect(length.typical).toBe(1481);
  expect(length.parts).toEqual({
    warmUp: 300,
    setUp: 170,
    work: 426,
    rest: 465,
    changes: 120,
    conditioning: 0,
  });
  expect([length.low, length.high]).toEqual([1332, 1855]);
});

describe("a 45-minute plan of six exercises × 4 sets of 40 s, rest 120 s, 2 min to change and set up", () => {
  const one = madeUpExercise({ id: "one", secondsPerRep: 4, setupS: 120 });
  const block = (count: number, rest: number) => straight("one", sets(count, reps(10), { restS: rest }));
  const six = (count: number, rest: number) => Array.from({ length: 6 }, () => block(count, rest));

  test("takes 72 minutes: 8 + 16 + 36 + 12", () => {
    const length = lengthOf([one], 480, six(4, 120));
    expect(length.typical).toBe(72 * 60);
    expect(length.parts).toEqual({ warmUp: 480, setUp: 720, work: 960, rest: 2160, changes: 0, conditioning: 0 });
  });
  test("3 sets and 90 s rest take 50", () => {
    expect(lengthOf([one], 480, six(3, 90)).typical).toBe(50 * 60);
  });
  test("and in pairs under 45", () => {
    const slots = [
      { exercise: "one", dose: sets(3, reps(10)) },
      { exercise: "one", dose: sets(3, reps(10)) },
    ];
    const pairs: AskedBlock[] = Array.from({ length: 3 }, () => ({ kind: "pair", restS: 90, slots }));
    expect(lengthOf([one], 480, pairs).typical).toBe(41 * 60);
  });
});

test("the range is a tenth less to a quarter more, the upper end in steps of 5 s", () => {
  expect(lowerSeconds(1481)).toBe(1332);
  expect([1480, 1481, 1484, 1485, 0].map(upperSeconds)).toEqual([1850, 1855, 1855, 1860, 0]);
});

test("lighter sets stand on the slot's station; conditioning is walked to and set up", () => {
  const squat = madeUpExercise({ id: "squat", secondsPerRep: 4, setupS: 120, changeS: 20, moveS: 60 });
  const cycle = madeUpExercise({ id: "cycle", setupS: 30, moveS: 40 });
  const known = new Map([squat, cycle].map((each) => [each.id, each]));
  const length = sessionSeconds(
    {
      warmup: [
        { exercise: "cycle", dose: sets(1, timeOf(300)) },
        { exercise: "squat", dose: sets(2, reps(5), { restS: 45 }), for: "s" },
      ],
      blocks: [straight("squat", sets(1, reps(5)))],
      conditioning: [{ exercise: "cycle", dose: sets(1, timeOf(600)) }],
    },
    (id) => known.get(id),
  );
  expect(length.parts).toEqual({
    warmUp: 330 + 2 * 20 + 45 + 2 * 20,
    setUp: 120,
    work: 20,
    rest: 0,
    changes: 40,
    conditioning: 630,
  });
});

test("what is not known is left out and named; what is not said is taken and named", () => {
  const one = madeUpExercise({ id: "one", secondsPerRep: 4, moveS: 30 });
  const open = { amount: { kind: "most" }, eachSide: false } as const;
  const length = lengthOf([one], 0, [
    straight("moonwalk", sets(3, reps(10))),
    straight("one", sets(2, reps(10))),
    straight("one", sets(1, open)),
  ]);
  expect(length.unknown).toEqual(["moonwalk"]);
  expect(length.assumed).toEqual([
    { exercise: "one", what: "rest" },
    { exercise: "one", what: "reps" },
  ]);
  expect(length.typical).toBe(2 * 40 + 90 + 48 + 30);
});

test("conditioning in bouts: their rests count, and none is taken where none is said", () => {
  const row = madeUpExercise({ id: "row", setupS: 30, moveS: 40, changeS: 5 });
  const length = (dose: Dose) =>
    sessionSeconds({ warmup: [], blocks: [], conditioning: [{ exercise: "row", dose }] }, () => row);
  expect(length(sets(4, timeOf(60), { restS: 20 })).parts).toEqual({
    warmUp: 0,
    setUp: 0,
    work: 0,
    rest: 0,
    changes: 0,
    // 30 s of set-up, 4 minutes, 3 changes of 5 s and 3 rests of 20 s.
    conditioning: 30 + 240 + 15 + 60,
  });
  expect(length(sets(4, timeOf(60))).parts.conditioning).toBe(30 + 240 + 15);
  expect(length(sets(4, timeOf(60))).assumed).toEqual([]);
});

test("the first station of all is reached at no cost, every later one is walked to", () => {
  const row = madeUpExercise({ id: "row", moveS: 40 });
  const asks = { exercise: "row", dose: sets(1, timeOf(60)) };
  const changes = (blocks: readonly AskedBlock[], conditioning: number) =>
    sessionSeconds({ warmup: [], blocks, conditioning: Array(conditioning).fill(asks) }, () => row).parts.changes;
  expect(changes([], 1)).toBe(0);
  expect(changes([], 3)).toBe(80);
  expect(changes([straight("row", sets(1, timeOf(60)))], 1)).toBe(40);
  expect(changes([straight("row", sets(1, timeOf(60))), straight("row", sets(1, timeOf(60)))], 0)).toBe(40);
});

test("the second item of a warm-up is walked to; its rests are none unless said", () => {
  const row = madeUpExercise({ id: "row", setupS: 10, moveS: 40 });
  const asks = (dose: Dose) => ({ exercise: "row", dose });
  const warm = (...items: readonly ReturnType<typeof asks>[]) =>
    sessionSeconds({ warmup: items, blocks: [], conditioning: [] }, () => row).parts.warmUp;
  expect(warm(asks(sets(1, timeOf(60))))).toBe(70);
  expect(warm(asks(sets(1, timeOf(60))), asks(sets(1, timeOf(60))))).toBe(70 + 110);
  expect(warm(asks(sets(2, timeOf(60))))).toBe(130);
  expect(warm(asks(sets(2, timeOf(60), { restS: 15 })))).toBe(145);
});

test("what had to be taken is named at the movement that left it open", () => {
  const one = madeUpExercise({ id: "one", secondsPerRep: 4 });
  const other = { ...one, id: "other" };
  const open = { amount: { kind: "most" }, eachSide: false } as const;
  const known = new Map([one, other].map((each) => [each.id, each]));
  const round: AskedBlock = {
    kind: "round",
    restS: 60,
    slots: [
      { exercise: "one", dose: sets(2, reps(10)) },
      { exercise: "other", dose: { sets: [reps(8), open] } },
    ],
  };
  const { assumed } = sessionSeconds({ warmup: [], blocks: [round], conditioning: [] }, (id) => known.get(id));
  expect(assumed).toEqual([{ exercise: "other", what: "reps" }]);
});
