import { describe, expect, test } from "vitest";
import { addDays } from "../day.ts";
import { madeUpExercise, reps, SLOT_START, type SlotTrained, setDone, slotTrained } from "../testing/index.ts";
import { dosesFor } from "./index.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const press = madeUpExercise({
  id: "press",
  loadMeaning: "stack",
  needs: [["leg press"]],
  muscles: { "front thigh": 1 },
  stress: { knee_deep: 2 },
});
const pins = [40, 50, 60, 70];
const stateOf = (more: Partial<SlotTrained> = {}) =>
  dosesFor(
    slotTrained({
      exercise: press,
      set: reps(8),
      sets: 3,
      load: 50,
      place: { equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins } } },
      did: [
        [0, { ...setDone(8, 2), load: kg(50) }],
        [3, { ...setDone(8, 2), load: kg(50) }],
        [6, { ...setDone(8, 2), load: kg(50) }],
      ],
      today: 9,
      ...more,
    }),
  )[0]!.state;
const values = (state: ReturnType<typeof stateOf>) => state.loads.map(({ value }) => value);

describe("loads", () => {
  test("those that are here, easiest first", () => {
    expect(values(stateOf())).toEqual([40, 50, 60, 70]);
    expect(stateOf().shareAtMost).toBeUndefined();
  });

  test("a limit on the load leaves what lies under it", () => {
    const from = addDays(SLOT_START, 0);
    const limit = {
      kind: "load",
      atMost: kg(60),
      movement: "press",
      side: "both",
      from,
      to: addDays(from, 60),
      who: "Dr Example",
    } as const;
    const bar = {
      exercise: { ...press, loadMeaning: "total", needs: [["barbell"], ["plates"]] },
      place: {
        equipment: { barbell: 1, plates: 1 },
        bars: [kg(20)],
        plates: [{ load: kg(10), pairs: 3 }],
      },
    } as const;
    expect(values(stateOf(bar))).toEqual([20, 40, 60, 80]);
    expect(values(stateOf({ ...bar, person: { limits: [limit] } }))).toEqual([20, 40, 60]);
    // A limit that ended asks for a review, and holds until there is one.
    expect(values(stateOf({ ...bar, person: { limits: [{ ...limit, to: addDays(from, 8) }] } }))).toHaveLength(3);
    const lifted = { on: addDays(from, 5), who: "Dr Example" };
    expect(values(stateOf({ ...bar, person: { limits: [{ ...limit, lifted }] } }))).toHaveLength(4);
  });

  test("where the form may not be done there are none", () => {
    const state = stateOf({ person: { cannot: ["knee_deep"] }, exercise: { ...press, stress: { knee_deep: 3 } } });
    expect([state.admitted, values(state)]).toEqual([false, []]);
    expect(stateOf().admitted).toBe(true);
  });
});

describe("what is known of the person", () => {
  test("the capacity is that of the last session, however long ago that was", () => {
    const capacity = (today: number) => stateOf({ today }).capacity;
    expect(capacity(9).kind).not.toBe("unknown");
    expect(capacity(9)).toEqual(capacity(60));
  });

  test("illness by its days", () => {
    expect(stateOf({ sick: [1, 4] }).sickOn).toEqual([addDays(SLOT_START, 1), addDays(SLOT_START, 4)]);
    expect(stateOf().sickOn).toEqual([]);
  });
});

describe("other forms", () => {
  const form = (id: string, stress = {}) => madeUpExercise({ id, stress });
  const ids = (state: ReturnType<typeof stateOf>) => state.harder.map(({ exercise }) => exercise);

  test("harder ones that the person may do here", () => {
    expect(ids(stateOf({ harder: [form("one"), form("two")] }))).toEqual(["one", "two"]);
    const cannot = { cannot: ["wr_ext"] } as const;
    expect(ids(stateOf({ harder: [form("one", { wr_ext: 3 }), form("two")], person: cannot }))).toEqual(["two"]);
    expect(ids(stateOf({ harder: [{ ...form("one"), coachOnly: true }] }))).toEqual([]);
    expect(ids(stateOf({ harder: [{ ...form("one"), needs: [["cable"]] }] }))).toEqual([]);
  });

  test("easier ones that the slot offers; what is no easier is none", () => {
    expect(stateOf({ offer: [form("low")] }).easier).toEqual(["low"]);
    const input = slotTrained({
      exercise: press,
      set: reps(8),
      sets: 2,
      load: 50,
      place: { equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins } } },
      did: [[0, setDone(8)]],
      today: 1,
      harder: [form("high")],
    });
    const [phase] = input.plan.phases;
    const weeks = phase!.weeks.map((week) => ({
      ...week,
      sessions: week.sessions.map((session) => ({
        ...session,
        blocks: session.blocks.map((block) => ({
          ...block,
          slots: block.slots.map((slot) => ({ ...slot, offer: ["high", "press", "gone"] })),
        })),
      })),
    }));
    const offered = { ...input, plan: { ...input.plan, phases: [{ ...phase!, weeks }] } };
    expect(dosesFor(offered)[0]!.state.easier).toEqual([]);
  });
});

describe("one more set", () => {
  test("is held against the week in which the slot is asked next", () => {
    expect(stateOf().oneMoreSet).toMatchObject({
      ok: true,
      because: { data: { muscle: "front thigh", from: 3, to: 4, most: 4 } },
    });
  });

  test("of a form that is for no muscle nothing is known", () => {
    expect(stateOf({ exercise: { ...press, muscles: { "front thigh": 0.5 } } }).oneMoreSet).toBeUndefined();
  });
});

test("the dose of the programme stands beside the one that is asked, with what was recorded of the slot", () => {
  const state = stateOf();
  expect(state.home).toEqual(state.slot.dose);
  expect(state.history.map(({ session }) => session)).toEqual(["base/1/a", "base/2/a", "base/3/a"]);
  expect(state.today).toBe(addDays(SLOT_START, 9));
});

describe("forms and weeks, at their edges", () => {
  const form = (id: string, more = {}) => madeUpExercise({ id, ...more });
  const inputOf = (more: Partial<SlotTrained> = {}) =>
    slotTrained({
      exercise: press,
      set: reps(8),
      sets: 3,
      load: 50,
      place: { equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins } } },
      did: [[0, { ...setDone(8, 2), load: kg(50) }]],
      today: 1,
      ...more,
    });

  test("no harder form once the slot stands as far up as the programme lets it", () => {
    const input = inputOf({ harder: [form("one")] });
    const upTo = (up: number) => {
      const phases = input.programme.phases.map((phase) => ({
        ...phase,
        sessions: phase.sessions.map((session) => ({
          ...session,
          work: session.work.map((block) => ({ ...block, up })),
        })),
      }));
      return dosesFor({ ...input, programme: { ...input.programme, phases } })[0]!.state.harder.length;
    };
    expect([0, 1, 2].map(upTo)).toEqual([0, 1, 1]);
  });

  test("the capacity before is that without the last session", () => {
    const state = stateOf();
    const one = stateOf({
      did: [
        [0, { ...setDone(8, 2), load: kg(50) }],
        [3, { ...setDone(8, 2), load: kg(50) }],
      ],
    });
    expect(state.capacityBefore).toEqual(one.capacity);
    expect(state.capacityBefore).not.toEqual(state.capacity);
  });

  test("each week that is recorded whole is passed over; one more set is held against the next", () => {
    const input = inputOf();
    const [phase] = input.plan.phases;
    const weeks = phase!.weeks.map((week, at) => ({
      ...week,
      sessions: week.sessions.map((session) => ({
        ...session,
        blocks: session.blocks.map((block) => ({
          ...block,
          slots: block.slots.map((slot) => ({
            ...slot,
            dose: { sets: Array.from({ length: at === 0 ? 3 : 6 }, () => reps(8)) },
          })),
        })),
      })),
    }));
    const plan = { ...input.plan, phases: [{ ...phase!, weeks }] };
    // Week 1 is recorded: in week 2 the least is 3, so that 7 are too many.
    expect(dosesFor({ ...input, plan })[0]!.state.oneMoreSet).toMatchObject({
      ok: false,
      because: { data: { from: 3, to: 7, most: 4 } },
    });
  });
});
