import { describe, expect, test } from "vitest";
import { settledBy } from "../capacity/index.ts";
import { logOf } from "../measures/index.ts";
import type { Block } from "../model/index.ts";
import { madeUpExercise, reps, type SlotTrained, setDone, slotTrained } from "../testing/index.ts";
import { dosesFor, tellsMost } from "./index.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const press = madeUpExercise({ id: "x-press", loadMeaning: "stack", needs: [["leg press"]] });
const inputOf = (did: SlotTrained["did"], more: Partial<SlotTrained> = {}) =>
  slotTrained({
    exercise: press,
    set: reps({ from: 8, to: 10 }, { reserve: { from: 2, to: 2 } }),
    sets: 3,
    load: 40,
    place: { equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins: [36, 40, 43, 46] } } },
    did,
    today: 12,
    ...more,
  });
const of = (...args: Parameters<typeof inputOf>) => {
  const input = inputOf(...args);
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

  test("of two that tell as much, the first by its key comes first, wherever it stands in the session", () => {
    const input = twoSlots({}, undefined, { key: "a" });
    expect(tellsMost(input, sessionOf(input)).map(({ slot }) => slot)).toEqual(["a", "it"]);
  });

  test("a slot of the same form that has no next load is nothing that it bears on", () => {
    const input = twoSlots({}, undefined, { load: 46 });
    for (const { bearsOn } of tellsMost(input, sessionOf(input))) expect(bearsOn).toEqual(["it"]);
    expect(tellsMost(input, sessionOf(input))).not.toEqual([]);
  });

  test("what is shown lies within half a hundredth of what a sure set settles on average", () => {
    const shown = [0, 1, 2, 3].flatMap((less) => {
      const did = OPEN.map(([on], at) => [on, done(at < less ? 8 : 9, 3)] as const);
      const [set] = of(did);
      const { capacity } = dosesFor(inputOf(did))[0]!.state;
      if (set === undefined || capacity.kind === "unknown") return [];
      // The next load is 43 kg, for 8 repetitions with 2 left.
      return [Math.abs(set.settles - settledBy(capacity, { kg: 43, reps: 8, reserve: 2 }))];
    });
    expect(shown.length).toBeGreaterThan(1);
    for (const off of shown) expect(off).toBeLessThanOrEqual(0.005 + 1e-9);
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
  function twoSlots(
    rest: { readonly restS?: number },
    secondRestS?: number,
    { key = "two", load = 40 }: { readonly key?: string; readonly load?: number } = {},
  ) {
    const input = inputOf(OPEN);
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
              return { ...block, slots: [it, { ...it, key, load: kg(load), dose: { ...it.dose, ...own } }] };
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
            "slot" in block ? [block, { ...block, slot: key }] : [block],
          ),
        })),
      })),
    };
    const record = {
      ...input.record,
      sessions: input.record.sessions.map((session) => ({
        ...session,
        slots: session.slots.flatMap((slot) => [slot, { ...slot, slot: key }]),
      })),
    };
    return { ...input, plan, programme, record, log: logOf(plan, record, () => undefined) };
  }
  function sessionOf({ plan }: ReturnType<typeof twoSlots>) {
    return plan.phases[0]!.weeks[0]!.sessions[0]!;
  }
});

describe("what is open", () => {
  const unsaid = (count: number) => ({ ...setDone(count), load: kg(40) });
  const ONE_MISSING = [
    [0, unsaid(9)],
    [4, done(9, 2)],
  ] as const;

  test("one session that is missing settles it; where no reserve was ever said, one more says nothing yet", () => {
    expect(of(ONE_MISSING)[0]!.settles).toBe(1);
    expect(of([0, 4].map((on) => [on, unsaid(9)] as const))).toEqual([]);
  });

  test("not where the load goes up or down already, nor where no harder one is here", () => {
    expect(
      of([
        [0, unsaid(12)],
        [4, done(12, 2)],
      ]),
    ).toEqual([]);
    expect(
      of([
        [0, unsaid(9)],
        [4, done(5, 2)],
      ]),
    ).toEqual([]);
    expect(
      of(
        [
          [0, { ...unsaid(9), load: kg(46) }],
          [4, { ...done(9, 2), load: kg(46) }],
        ],
        { load: 46 },
      ),
    ).toEqual([]);
  });

  test("where no reserve is asked, none is held against what is needed", () => {
    const set = reps({ from: 8, to: 10 });
    const tells = [6, 7, 8, 9].flatMap((count) => {
      const did = [0, 4, 8].map((on) => [on, done(count, 2)] as const);
      const { capacity } = dosesFor(inputOf(did, { set }))[0]!.state;
      if (capacity.kind === "unknown") return [];
      const expected = settledBy(capacity, { kg: 43, reps: 8, reserve: 0 });
      const [told] = of(did, { set });
      return expected < 0.06 ? [] : [[told?.settles ?? 0, Math.round(expected * 100) / 100] as const];
    });
    expect(tells.length).toBeGreaterThan(0);
    for (const [shown, expected] of tells) expect(shown).toBe(expected);
  });
});
