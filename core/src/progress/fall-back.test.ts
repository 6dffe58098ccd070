import { describe, expect, test } from "vitest";
import type { SetDone, SetDose } from "../model/index.ts";
import { hold, madeUpExercise, reps, type SlotTrained, setDone, slotTrained } from "../testing/index.ts";
import { easier, fallBack, fallBackLimit } from "./fall-back.ts";
import { dosesFor } from "./index.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const press = madeUpExercise({ id: "press", loadMeaning: "stack", needs: [["leg press"]] });
const stateWith = (did: readonly Partial<SetDone>[], more: Partial<SlotTrained> = {}, every = 3) => {
  const input = slotTrained({
    exercise: press,
    set: reps({ from: 8, to: 10 }),
    sets: 3,
    load: 50,
    place: {
      equipment: { "leg press": 1 },
      stacks: { "leg press": { unit: "kg", pins: [40, 45, 47, 50, 53] } },
    },
    did: did.map((each, at) => [every * at, { load: kg(50), ...each }]),
    today: every * did.length,
    ...more,
  });
  return dosesFor(input)[0]!.state;
};
const back = (...args: Parameters<typeof stateWith>) => fallBack(stateWith(...args));

// The floor asked minus 2 or 30 % of it, whichever is less: our own rule, as the reference has it.
test("the limit: two under the floor up to six, 30 % from seven on; seconds and metres 30 %; contacts as repetitions", () => {
  expect([3, 4, 6, 7, 10, 15, 20].map((floor) => fallBackLimit(floor, "reps"))).toEqual([1, 2, 4, 4, 7, 10, 14]);
  expect(fallBackLimit(5, "contacts")).toBe(3);
  expect([fallBackLimit(2, "hold"), fallBackLimit(60, "time"), fallBackLimit(0, "hold")]).toEqual([1, 42, 0]);
});

describe("one step back", () => {
  test("once at the limit: the next easier load, with what was asked, done and lifted, and the day", () => {
    expect(back([setDone(9), setDone(5)])).toEqual({
      kind: "down",
      patch: { slot: "it", change: "load", load: kg(47), exercise: "press" },
      evidence: [
        {
          code: "progress/under-floor",
          data: {
            exercise: "press",
            floor: 8,
            limit: 5,
            done: 5,
            kind: "reps",
            load: kg(50),
            sessions: 1,
            on: "2027-03-04",
          },
        },
      ],
      refused: [],
      others: [],
      since: stateWith([setDone(9), setDone(5)]).history[1]!.n,
    });
  });

  test("one over the limit is a bad day; twice under the floor is none", () => {
    expect(back([setDone(9), setDone(6)])).toBeUndefined();
    const twice = back([setDone(7), setDone(6)]);
    expect(twice?.evidence[0]?.data).toMatchObject({ done: 6, limit: 5, sessions: 2 });
    expect(twice?.since).toBe(1);
  });

  test("the first set counts: what comes after it is tired", () => {
    const state = stateWith([setDone(9), setDone(9)]);
    const [, last] = state.history;
    const tired = { ...last!, sets: last!.sets.map((set, at) => (at === 0 ? set : { ...set, reps: { both: 3 } })) };
    expect(fallBack({ ...state, history: [state.history[0]!, tired] })).toBeUndefined();
    const first = { ...last!, sets: last!.sets.map((set, at) => (at === 0 ? { ...set, reps: { both: 3 } } : set)) };
    expect(fallBack({ ...state, history: [state.history[0]!, first] })?.kind).toBe("down");
  });

  test("a session that ended early says nothing, neither as the last nor as the one before", () => {
    const state = stateWith([setDone(7), setDone(7)]);
    const [one, two] = state.history;
    const early = (session: typeof one) => ({ ...session!, endedEarly: true });
    expect(fallBack({ ...state, history: [one!, early(two)] })).toBeUndefined();
    expect(fallBack({ ...state, history: [early(one), two!] })).toBeUndefined();
    expect(fallBack({ ...state, history: [one!, two!] })?.kind).toBe("down");
  });

  test("two sessions with a break between them are not running", () => {
    expect(back([setDone(7), setDone(7)], { today: 15 }, 14)).toBeUndefined();
    expect(back([setDone(7), setDone(5)], { today: 15 }, 14)?.evidence[0]?.data["sessions"]).toBe(1);
  });

  test("nothing that was not counted, and not where as many as possible were asked", () => {
    expect(back([setDone(9), {}])).toBeUndefined();
    const most: SetDose = { amount: { kind: "most", least: 8 }, eachSide: false };
    expect(back([setDone(5), setDone(5)], { set: most })).toBeUndefined();
  });

  test("of a hold 30 % less, and then the form gets easier", () => {
    const plank = madeUpExercise({ id: "plank", amounts: "hold", mode: "hold", hold: { from: 10, to: 60, step: 5 } });
    const held = (holdS: number) =>
      back([{ reps: "as asked", holdS, load: "none" }], {
        exercise: plank,
        set: hold(30),
        place: {},
        offer: [{ ...plank, id: "knee-plank" }],
      });
    expect(held(21)?.patch).toEqual({ slot: "it", change: "exercise", exercise: "knee-plank" });
    expect(held(21)?.evidence[0]?.data).toMatchObject({ kind: "hold", floor: 30, limit: 21 });
    expect(held(22)).toBeUndefined();
  });
});

describe("easier", () => {
  const of = (more: Partial<SlotTrained> = {}) => stateWith([setDone(5)], more);
  test("the heaviest of the lighter loads; with help, the least of the greater helps", () => {
    expect(easier(of(), kg(50))).toMatchObject({ load: kg(47) });
    const help = { ...press, loadMeaning: "assist" } as const;
    expect(easier(of({ exercise: help }), kg(50))).toMatchObject({ change: "load", load: kg(53) });
  });
  test("what is asked next already, and is easier, needs no step", () => {
    expect(easier(of({ load: 47 }), kg(50))).toBeUndefined();
    expect(easier(of({ load: 50 }), kg(50))).toBeDefined();
    const help = { ...press, loadMeaning: "assist" } as const;
    expect(easier(of({ exercise: help, load: 53 }), kg(50))).toBeUndefined();
    expect(easier(of({ exercise: help, load: 45 }), kg(50))).toBeDefined();
  });
  test("at the lightest load, the nearest easier form; where none is offered, nothing", () => {
    const form = madeUpExercise({ id: "easier-press", loadMeaning: "stack", needs: [["leg press"]] });
    expect(easier(of({ load: 40, offer: [form] }), kg(40))).toEqual({
      slot: "it",
      change: "exercise",
      exercise: "easier-press",
    });
    expect(easier(of({ load: 40 }), kg(40))).toBeUndefined();
  });
  test("without a word on what was lifted, from what is asked", () => {
    expect(easier(of())).toMatchObject({ load: kg(47) });
  });
});

describe("against what the record says", () => {
  const good = Array.from({ length: 6 }, () => setDone(10, 3));

  test("one bad day is not believed where six good ones say otherwise; nobody knowing, it is", () => {
    const state = { ...stateWith([...good, setDone(5)]) };
    expect(fallBack(state)).toBeUndefined();
    const capacity = { kind: "unknown", missing: { code: "capacity/few-sessions", data: {} } } as const;
    expect(fallBack({ ...state, capacity })?.kind).toBe("down");
  });

  test("a record that says the same takes it back; so does one too short to speak", () => {
    const poor = Array.from({ length: 6 }, () => setDone(4, 0));
    expect(back(poor)?.evidence[0]?.data).toMatchObject({ done: 4, sessions: 1 });
    expect(back([...good.slice(0, 2), setDone(5)])?.kind).toBe("down");
  });

  test("what is asked in reserve counts besides", () => {
    const near = Array.from({ length: 6 }, () => setDone(8, 0));
    const asked = (reserve: number) => reps({ from: 8, to: 10 }, { reserve: { from: reserve, to: reserve } });
    expect(back([...near, setDone(5, 0)], { set: asked(0) })).toBeUndefined();
    expect(back([...near, setDone(5, 0)], { set: asked(4) })?.kind).toBe("down");
  });
});

test("the limit is never under nothing, whatever is asked", () => {
  expect([0, 1, 2].map((floor) => fallBackLimit(floor, "reps"))).toEqual([0, 0, 0]);
  expect([fallBackLimit(10, "metres"), fallBackLimit(10, "contacts"), fallBackLimit(1, "time")]).toEqual([7, 7, 0]);
});

describe("the two sessions of a fall", () => {
  const state = { ...stateWith([setDone(7), setDone(7)]) };
  const [one, two] = state.history;
  type Session = NonNullable<typeof one>;
  const first = (session: Session, change: Partial<Session["sets"][number]>) => ({
    ...session,
    sets: session.sets.map((set, at) => (at === 0 ? { ...set, ...change } : set)),
  });
  const kind = (...history: readonly Session[]) => fallBack({ ...state, history })?.kind;

  test("must both be under the floor, which itself is not under it", () => {
    expect(kind(one!, two!)).toBe("down");
    expect(kind(first(one!, { reps: { both: 8 } }), two!)).toBeUndefined();
    expect(kind(one!, first(two!, { reps: { both: 8 } }))).toBeUndefined();
  });

  test("the first set of each counts, and is missing where it was left out or not counted", () => {
    const { reps: _, ...uncounted } = one!.sets[0]!;
    expect(kind({ ...one!, sets: [uncounted, ...one!.sets.slice(1)] }, two!)).toBeUndefined();
    expect(kind({ ...one!, sets: one!.sets.slice(1) }, two!)).toBeUndefined();
    expect(kind(one!, { ...two!, sets: two!.sets.slice(1) })).toBeUndefined();
    expect(kind({ ...one!, sets: one!.sets.toReversed() }, { ...two!, sets: two!.sets.toReversed() })).toBe("down");
  });

  test("where nothing is easier, nothing goes back", () => {
    expect(fallBack({ ...state, loads: [kg(50), kg(53)] })).toBeUndefined();
  });
});

test("without a load asked, a form and not a load is easier", () => {
  const form = madeUpExercise({ id: "easier-press", loadMeaning: "stack", needs: [["leg press"]] });
  const state = { ...stateWith([setDone(5)], { offer: [form] }) };
  const { load: _, ...slot } = state.slot;
  expect(easier({ ...state, slot }, kg(50))).toMatchObject({ change: "exercise", exercise: "easier-press" });
  expect(easier({ ...state, slot })).toMatchObject({ change: "exercise" });
});
