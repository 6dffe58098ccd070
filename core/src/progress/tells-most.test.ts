import { describe, expect, test } from "vitest";
import { madeUpExercise, reps, type SlotTrained, setDone, slotTrained } from "../testing/index.ts";
import { tellsMost } from "./index.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const press = madeUpExercise({ id: "x-press", loadMeaning: "stack", needs: [["leg press"]] });
const of = (did: SlotTrained["did"], more: Partial<SlotTrained> = {}) => {
  const input = slotTrained({
    exercise: press,
    set: reps({ from: 8, to: 10 }, { reserve: { from: 2, to: 2 } }),
    sets: 3,
    load: 40,
    place: { equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins: [36, 40, 43, 46] } } },
    did,
    today: 12,
    ...more,
  });
  return tellsMost(input, input.plan.phases[0]!.weeks[0]!.sessions[0]!);
};
const done = (count: number, reserve: number) => ({ ...setDone(count, reserve), load: kg(40) });

describe("the set that tells most", () => {
  test("one that bears on an open step, with how much it settles and how long it takes", () => {
    const [set] = of([
      [0, done(9, 3)],
      [4, done(9, 3)],
      [8, done(9, 3)],
    ]);
    expect(set).toMatchObject({ slot: "it", exercise: "x-press", bearsOn: ["it"] });
    expect(set!.settles).toBeGreaterThan(0.05);
    expect(set!.seconds).toBeGreaterThanOrEqual(90);
    expect(set!.because.code).toBe("progress/tells-most");
  });

  test("where one session is missing to say anything, it settles that", () => {
    const [set] = of([
      [0, { ...setDone(9), load: kg(40) }],
      [4, done(9, 2)],
    ]);
    expect(set!.settles).toBe(1);
  });

  test.each([
    [
      "nothing is open: the step is far off",
      [
        [0, done(8, 0)],
        [4, done(8, 0)],
        [8, done(8, 0)],
      ],
      {},
    ],
    ["the form is new", [[8, done(9, 3)]], {}],
    [
      "something hurts at it",
      [
        [0, done(9, 3)],
        [4, done(9, 3)],
        [8, done(9, 3)],
      ],
      { hurts: { 2: { where: "elbow", howMuch: 4 } } },
    ],
    [
      "no harder load is here",
      [
        [0, done(9, 3)],
        [4, done(9, 3)],
      ],
      { load: 46 },
    ],
  ] satisfies readonly (readonly [string, SlotTrained["did"], Partial<SlotTrained>])[])(
    "none where %s",
    (_, did, more) => {
      expect(of(did, more)).toEqual([]);
    },
  );
});
