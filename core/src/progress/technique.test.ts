import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { SetDone } from "../model/index.ts";
import { madeUpExercise, reps, type SlotTrained, setDone, slotTrained } from "../testing/index.ts";
import { dosesFor } from "./index.ts";
import { techniqueAgainst, toCleanLoad } from "./technique.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const squat = madeUpExercise({ id: "squat", loadMeaning: "stack", needs: [["leg press"]] });
type Seen = "kept" | "lost" | undefined;

const stateWith = (did: readonly (readonly [load: number, seen: Seen])[], more: Partial<SlotTrained> = {}) => {
  const input = slotTrained({
    exercise: squat,
    set: reps(8),
    sets: 2,
    load: did.at(-1)?.[0] ?? 20,
    place: { equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins: [10, 20, 30, 40, 50] } } },
    did: did.map(([load, seen], at) => {
      const said: Partial<SetDone> = { ...setDone(8), load: kg(load) };
      return [3 * at, seen === undefined ? said : { ...said, technique: seen }];
    }),
    today: 3 * did.length,
    ...more,
  });
  return dosesFor(input)[0]!.state;
};
const against = (...args: Parameters<typeof stateWith>) => techniqueAgainst(stateWith(...args));
/** On the first day of these tests, and so many days before the eighteenth birthday. */
const born = (iso: string) => ({ person: { born: day(iso) } });

describe("what speaks against a heavier load", () => {
  test("a technique lost in one of the last two sessions, with the day", () => {
    const lost = against([
      [20, "lost"],
      [20, "kept"],
    ]);
    expect(lost).toEqual({
      code: "progress/technique-lost",
      data: { exercise: "squat", sessions: [{ on: "2027-03-01" }], clean: 2 },
    });
    expect(
      against([
        [20, "kept"],
        [20, "lost"],
      ])?.data["sessions"],
    ).toEqual([{ on: "2027-03-04" }]);
  });

  test("its neighbours: lost before those two, kept, and of somebody grown up not looked at", () => {
    expect(
      against([
        [20, "lost"],
        [20, "kept"],
        [20, "kept"],
      ]),
    ).toBeUndefined();
    expect(
      against([
        [20, undefined],
        [20, undefined],
      ]),
    ).toBeUndefined();
  });

  // Loads of young people rise with technique, not with numbers alone: lloyd2014.
  test("under 18 it must have been seen to be kept, in both of the last two", () => {
    const young = born("2010-01-01");
    const kept = [20, "kept"] as const;
    expect(against([kept, [20, undefined]], young)).toMatchObject({
      code: "progress/technique-unseen",
      data: { exercise: "squat", under: 18, clean: 2 },
    });
    expect(against([[20, undefined], kept], young)?.code).toBe("progress/technique-unseen");
    expect(against([kept], young)?.code).toBe("progress/technique-unseen");
    expect(against([kept, kept], young)).toBeUndefined();
  });

  test("on the eighteenth birthday that ends", () => {
    const unseen = [
      [20, undefined],
      [20, undefined],
    ] as const;
    expect(against(unseen, born("2009-03-07"))).toBeUndefined();
    expect(against(unseen, born("2009-03-08"))?.code).toBe("progress/technique-unseen");
  });

  test("one set that was lost is lost, though another was kept", () => {
    const input = slotTrained({
      exercise: squat,
      set: reps(8),
      sets: 2,
      load: 20,
      place: {},
      did: [[0, { ...setDone(8), load: kg(20), technique: "kept" }]],
      today: 1,
      ...born("2010-01-01"),
    });
    const { state } = dosesFor(input)[0]!;
    const [session] = state.history;
    const mixed = {
      ...session!,
      sets: session!.sets.map((set, at) => (at === 0 ? set : { ...set, technique: "lost" as const })),
    };
    expect(techniqueAgainst({ ...state, history: [mixed, mixed] })?.code).toBe("progress/technique-lost");
    const partly = {
      ...session!,
      sets: session!.sets.map(({ technique, ...set }, at) => (at === 0 ? { ...set, technique: technique! } : set)),
    };
    expect(techniqueAgainst({ ...state, history: [partly, partly] })).toBeUndefined();
  });
});

describe("back to the last clean load", () => {
  const back = (...args: Parameters<typeof stateWith>) => toCleanLoad(stateWith(...args));
  const did = [
    [20, "kept"],
    [30, undefined],
    [40, "lost"],
    [40, "lost"],
  ] as const;

  test("lost in the last two sessions: the load of the session before, with its day", () => {
    expect(back(did)).toMatchObject({
      kind: "down",
      patch: { slot: "it", change: "load", load: kg(30), exercise: "squat" },
      evidence: [
        { code: "progress/technique-lost", data: { sessions: [{ on: "2027-03-07" }, { on: "2027-03-10" }], clean: 2 } },
        { code: "progress/last-clean", data: { load: kg(30), on: "2027-03-04" } },
      ],
      since: stateWith(did).history[2]!.n,
    });
  });

  test("its neighbours: lost once, never clean, clean only with as much, one session alone", () => {
    expect(back(did.slice(0, 3))).toBeUndefined();
    expect(back(did.slice(2))).toBeUndefined();
    expect(
      back([
        [40, "kept"],
        [40, "lost"],
        [40, "lost"],
      ]),
    ).toBeUndefined();
    expect(
      back([
        [50, "kept"],
        [40, "lost"],
        [40, "lost"],
      ]),
    ).toBeUndefined();
    expect(back([[40, "lost"]])).toBeUndefined();
  });

  test("with help, easier is more help", () => {
    const help = { ...squat, loadMeaning: "assist" } as const;
    const lost = [
      [30, "kept"],
      [20, "lost"],
      [20, "lost"],
    ] as const;
    expect(back(lost, { exercise: help })?.patch).toMatchObject({ load: kg(30) });
    expect(
      back(
        [
          [10, "kept"],
          [20, "lost"],
          [20, "lost"],
        ],
        { exercise: help },
      ),
    ).toBeUndefined();
  });

  test("where the plan asks for an easier load already, nothing goes back", () => {
    expect(back(did, { load: 30 })).toBeUndefined();
    expect(back(did, { load: 40 })).toBeDefined();
  });
});

test("where the plan asks for no load, what was lifted last is what goes back", () => {
  const state = stateWith([
    [20, "kept"],
    [40, "lost"],
    [40, "lost"],
  ]);
  const { today, dayOf, person, exercise, history } = state;
  const { load: _, ...slot } = state.slot;
  const bare = { today, dayOf, person, exercise, history, slot } as typeof state;
  expect(toCleanLoad(bare)?.patch).toMatchObject({ load: kg(20) });
});

test("the last clean load is that of the last session in which it was clean, and must be easier than what is asked", () => {
  const back = (...did: readonly (readonly [number, Seen])[]) => toCleanLoad(stateWith(did))?.patch;
  expect(back([20, "kept"], [30, "kept"], [40, "lost"], [40, "lost"])).toMatchObject({ load: kg(30) });
  expect(back([30, "kept"], [20, undefined], [40, "lost"], [40, "lost"])).toMatchObject({ load: kg(20) });
});

describe("the whole of the way back", () => {
  const lost = [
    [20, "kept"],
    [40, "lost"],
    [40, "lost"],
  ] as const;
  const state = { ...stateWith(lost) };
  const [clean, ...two] = state.history;
  type Session = NonNullable<typeof clean>;
  const withSets = (
    session: Session,
    change: (set: Session["sets"][number], at: number) => Session["sets"][number],
  ) => ({
    ...session,
    sets: session.sets.map(change),
  });
  const bare = ({ lifted: _, ...set }: Session["sets"][number]) => set;

  test("names the form and the sessions that it needs, refuses nothing and puts nothing beside", () => {
    const next = toCleanLoad(state)!;
    expect(next.evidence[0]).toEqual({
      code: "progress/technique-lost",
      data: { exercise: "squat", sessions: [{ on: "2027-03-04" }, { on: "2027-03-07" }], clean: 2 },
    });
    expect(next).toMatchObject({ refused: [], others: [], since: two[0]!.n });
  });

  test("a clean session that names no load is passed over; a set of it that names one counts", () => {
    const unsaid = withSets(clean!, bare);
    expect(toCleanLoad({ ...state, history: [clean!, unsaid, ...two] })?.patch).toMatchObject({ load: kg(20) });
    expect(toCleanLoad({ ...state, history: [unsaid, ...two] })).toBeUndefined();
    const second = withSets(clean!, (set, at) => (at === 0 ? bare(set) : set));
    expect(toCleanLoad({ ...state, history: [second, ...two] })?.patch).toMatchObject({ load: kg(20) });
  });

  test("a session in which one set was lost is not clean", () => {
    const partly = withSets(clean!, (set, at) => (at === 1 ? { ...set, technique: "lost" as const } : set));
    expect(toCleanLoad({ ...state, history: [partly, ...two] })).toBeUndefined();
  });

  test("without a load asked or lifted there is nothing to go back from; a set that names one is enough", () => {
    const { load: _, ...slot } = state.slot;
    const unsaid = two.map((session) => withSets(session, bare));
    expect(toCleanLoad({ ...state, slot, history: [clean!, ...unsaid] })).toBeUndefined();
    const second = two.map((session) => withSets(session, (set, at) => (at === 0 ? bare(set) : set)));
    expect(toCleanLoad({ ...state, slot, history: [clean!, ...second] })?.patch).toMatchObject({ load: kg(20) });
  });

  test("with help, as much help is not easier", () => {
    const exercise = { ...squat, loadMeaning: "assist" } as const;
    expect(toCleanLoad({ ...state, exercise, slot: { ...state.slot, load: kg(20) } })).toBeUndefined();
    expect(toCleanLoad({ ...state, exercise, slot: { ...state.slot, load: kg(19) } })).toBeDefined();
  });
});

test("where the plan asks for no load, the later of the two sessions says from what it goes back", () => {
  const back = (...loads: readonly [number, number]) => {
    const state = { ...stateWith([[20, "kept"], ...loads.map((load) => [load, "lost"] as const)]) };
    const { load: _, ...slot } = state.slot;
    return toCleanLoad({ ...state, slot })?.patch;
  };
  expect(back(10, 40)).toMatchObject({ load: kg(20) });
  expect(back(40, 10)).toBeUndefined();
});
