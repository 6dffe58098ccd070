import { describe, expect, test } from "vitest";
import { logOf } from "../measures/index.ts";
import type { Block } from "../model/index.ts";
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

describe("what it takes and what it settles", () => {
  const OPEN = [
    [0, done(9, 3)],
    [4, done(9, 3)],
    [8, done(9, 3)],
  ] as const;
  /** Of a tempo of 4 s: 9 repetitions, the middle of 8 to 10, are 36 s. */
  const slow = { ...press, secondsPerRep: 4 };

  test("the set, and 90 s of rest where none is said (ours, as in the minutes of a session)", () => {
    expect(of(OPEN, { exercise: slow })[0]!.seconds).toBe(36 + 90);
    const input = twoSlots({ restS: 60 });
    expect(tellsMost(input, sessionOf(input)).map(({ seconds }) => seconds)).toEqual([60, 60]);
  });

  test("the reason says the same as the figures, to two decimals", () => {
    const [set] = of(OPEN, { exercise: slow });
    const { seconds, settles } = set!;
    expect(set!.because.data).toEqual({ exercise: "x-press", seconds, settles, slots: ["it"] });
    expect(Math.round(settles * 100)).toBeCloseTo(settles * 100, 9);
    expect(settles).toBeLessThanOrEqual(1);
  });

  test("a form that stands in two slots bears on both, and both sets tell as much, in order of their keys", () => {
    const input = twoSlots({});
    const told = tellsMost(input, sessionOf(input));
    expect(told.map(({ slot }) => slot)).toEqual(["it", "two"]);
    for (const each of told) {
      expect(each.bearsOn).toEqual(["it", "two"]);
      expect(each.because.data["slots"]).toEqual(["it", "two"]);
    }
    const alone = of(OPEN)[0]!.settles;
    expect(told[0]!.settles).toBeCloseTo(2 * alone, 1);
  });

  test("the shorter of two that settle as much comes first", () => {
    const input = twoSlots({}, 30);
    expect(tellsMost(input, sessionOf(input)).map(({ slot, seconds }) => [slot, seconds])).toEqual([
      ["two", 30],
      ["it", 90],
    ]);
  });

  test("a session without the slot has none of it", () => {
    const input = twoSlots({});
    expect(tellsMost(input, { ...sessionOf(input), blocks: [] })).toEqual([]);
  });

  test("two sessions are enough to be asked, one is not", () => {
    expect(of(OPEN.slice(0, 2))).toHaveLength(1);
    expect(of(OPEN.slice(0, 1))).toEqual([]);
  });

  /** The same form in a second slot of the session, which was trained in the same sessions. */
  function twoSlots(rest: { readonly restS?: number }, secondRestS?: number) {
    const input = slotTrained({
      exercise: press,
      set: reps({ from: 8, to: 10 }, { reserve: { from: 2, to: 2 } }),
      sets: 3,
      load: 40,
      place: { equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins: [36, 40, 43, 46] } } },
      did: OPEN,
      today: 12,
    });
    const plan = {
      ...input.plan,
      phases: input.plan.phases.map((phase) => ({
        ...phase,
        weeks: phase.weeks.map((week) => ({
          ...week,
          sessions: week.sessions.map((session) => ({
            ...session,
            blocks: session.blocks.map((block) => {
              const [slot] = block.slots;
              const it = { ...slot!, dose: { ...slot!.dose, ...rest } };
              const own = secondRestS === undefined ? {} : { restS: secondRestS };
              return { ...block, slots: [it, { ...it, key: "two", dose: { ...it.dose, ...own } }] };
            }),
          })),
        })),
      })),
    };
    const programme = {
      ...input.programme,
      phases: input.programme.phases.map((phase) => ({
        ...phase,
        sessions: phase.sessions.map((session) => ({
          ...session,
          work: session.work.flatMap((block): Block[] =>
            "slot" in block ? [block, { ...block, slot: "two" }] : [block],
          ),
        })),
      })),
    };
    const record = {
      ...input.record,
      sessions: input.record.sessions.map((session) => ({
        ...session,
        slots: session.slots.flatMap((slot) => [slot, { ...slot, slot: "two" }]),
      })),
    };
    return { ...input, plan, programme, record, log: logOf(plan, record, () => undefined) };
  }
  function sessionOf({ plan }: ReturnType<typeof twoSlots>) {
    return plan.phases[0]!.weeks[0]!.sessions[0]!;
  }
});
