import { describe, expect, test } from "vitest";
import { addDays } from "../day.ts";
import type { Muscle, SetDose } from "../model/index.ts";
import {
  hold,
  madeUpExercise,
  reps,
  SLOT_START,
  type SlotTrained,
  setDone,
  sets,
  slotTrained,
} from "../testing/index.ts";
import type { DoseState } from "./dose-state.ts";
import { firstExposure, type MuscleCap, muscleCaps, musclesInUse } from "./first-exposure.ts";
import { dosesFor } from "./index.ts";

const row = madeUpExercise({ id: "row", pattern: "horizontal pull", muscles: { lats: 1, biceps: 0.5 } });
const leg = madeUpExercise({ id: "leg", muscles: { "front thigh": 1 } });
const BASE: SlotTrained = {
  exercise: row,
  set: reps(8, { reserve: { from: 1, to: 2 } }),
  sets: 4,
  place: {},
  did: [],
  today: 0,
};
/** Weeks of these sets, the last of them over so many days before the start. */
const weeks = (off: number, muscles: Partial<Record<Muscle, number>>, count = 4) =>
  Array.from({ length: count }, (_, at) => ({ week: addDays(SLOT_START, -off - 7 * (at + 1)), sets: muscles }));
const inputWith = (more: Partial<SlotTrained> = {}) => slotTrained({ ...BASE, ...more });
const capsOf = (more: Partial<SlotTrained> = {}) => {
  const input = inputWith(more);
  return muscleCaps(input, input.plan.phases[0]!.weeks[0]!.sessions[0]!.blocks[0]!.slots[0]!, more.exercise ?? row);
};

// Two sets of a new muscle and then three: ours. Half to two thirds after weeks off: common practice, no source.
describe("what a muscle may do while it is new or back", () => {
  test("new: nothing of it in weeks that are known; two sets at first, three the second time", () => {
    const recent = weeks(0, { "front thigh": 8 });
    expect(capsOf({ person: { recent } })).toEqual([
      { muscle: "lats", kind: "new", days: 28, exposures: 0, usual: 0, asked: 4, most: 2 },
    ]);
    const once = capsOf({ person: { recent }, did: [[0, { ...setDone(8), load: "none" }]], today: 2 });
    expect(once).toMatchObject([{ kind: "new", exposures: 1, asked: 4, most: 3 }]);
  });

  test("back: two thirds of its usual week up to four weeks off, half after more", () => {
    const back = (off: number) =>
      capsOf({ person: { recent: [...weeks(off, { lats: 6 }), ...weeks(0, { "front thigh": 8 }, 2)] } });
    expect(back(21)).toMatchObject([{ muscle: "lats", kind: "back", days: 22, usual: 6, asked: 4, most: 4 }]);
    expect(back(27)).toMatchObject([{ days: 28, most: 4 }]);
    expect(back(28)).toMatchObject([{ days: 29, most: 3 }]);
  });

  test("two weeks make a break; after two sessions nothing is capped any more", () => {
    const off = (days: number) => capsOf({ person: { recent: weeks(days, { lats: 6 }) } }).length;
    expect([off(12), off(13)]).toEqual([0, 1]);
    const twice = [0, 3].map((on) => [on, { ...setDone(8), load: "none" }] as const);
    expect(capsOf({ person: { recent: weeks(0, { "front thigh": 8 }) }, did: twice, today: 4 })).toEqual([]);
  });

  test("what only helps is not capped, and where nothing is known nothing is said", () => {
    expect(capsOf({ person: { recent: weeks(0, { lats: 8 }) } })).toEqual([]);
    expect(capsOf()).toEqual([]);
  });
});

describe("muscles in use", () => {
  test("all that the form drives, each trained twice of late; one alone is not enough", () => {
    const both = madeUpExercise({ id: "both", muscles: { lats: 1, "front thigh": 1, biceps: 0.5 } });
    const of = (recent: ReturnType<typeof weeks>) => musclesInUse(inputWith({ person: { recent } }), both);
    expect(of(weeks(0, { lats: 4, "front thigh": 4 }))).toEqual(["lats", "front thigh"]);
    expect(of(weeks(0, { lats: 4 }))).toEqual([]);
    expect(of(weeks(20, { lats: 4, "front thigh": 4 }))).toEqual([]);
    expect(of([])).toEqual([]);
  });
});

describe("the first two doses", () => {
  const BACK: MuscleCap = { muscle: "lats", kind: "back", days: 22, exposures: 0, usual: 6, asked: 8, most: 4 };
  const NEW: MuscleCap = { muscle: "lats", kind: "new", days: 28, exposures: 0, usual: 0, asked: 4, most: 2 };
  const first = (caps: readonly MuscleCap[], more: Partial<DoseState> = {}, set: SetDose = BASE.set, of = BASE) => {
    const { today, dayOf, exercise, slot, history, person } = dosesFor(slotTrained(of))[0]!.state;
    const asked = { ...slot, dose: sets(4, set) };
    return firstExposure({ today, dayOf, exercise, slot: asked, history, person, caps, ...more } as DoseState);
  };
  const setsOf = (next: ReturnType<typeof first>) =>
    next?.patch?.change === "reps" ? next.patch.dose.sets : undefined;

  test("a new muscle: so many sets as its most allows, three or more in reserve", () => {
    const next = first([NEW]);
    expect(setsOf(next)).toEqual(Array(2).fill({ ...BASE.set, reserve: { from: 3, to: 3 } }));
    expect(next).toMatchObject({ kind: "down", patch: { slot: "it", exercise: "row" }, refused: [], others: [] });
    expect(next!.evidence).toEqual([
      {
        code: "progress/muscle-new",
        data: { muscle: "lats", days: 28, since: "2027-02-01", exposures: 0, usual: 0, most: 2 },
      },
    ]);
  });

  test("a reserve that is wide enough stays, its upper end too; none said becomes three", () => {
    expect(setsOf(first([NEW], {}, reps(8, { reserve: { from: 3, to: 4 } })))![0]!.reserve).toEqual({ from: 3, to: 4 });
    expect(setsOf(first([NEW], {}, reps(8, { reserve: { from: 2, to: 5 } })))![0]!.reserve).toEqual({ from: 3, to: 5 });
    expect(setsOf(first([NEW], {}, reps(8)))![0]!.reserve).toEqual({ from: 3, to: 3 });
    const most: SetDose = { amount: { kind: "most" }, eachSide: false };
    expect(setsOf(first([NEW], {}, most))![0]!.reserve).toEqual({ from: 3, to: 3 });
    expect(setsOf(first([NEW], {}, hold(20)))).toEqual([hold(20), hold(20)]);
  });

  test("a muscle that is back: its share of the week, one more in reserve; what was not said stays unsaid", () => {
    const next = first([BACK]);
    expect(setsOf(next)).toEqual(Array(2).fill({ ...BASE.set, reserve: { from: 2, to: 3 } }));
    expect(next!.evidence[0]).toEqual({
      code: "progress/muscle-back",
      data: { muscle: "lats", days: 22, since: "2027-02-07", exposures: 0, usual: 6, most: 4 },
    });
    expect(setsOf(first([BACK], {}, reps(8)))).toEqual([reps(8), reps(8)]);
    expect(setsOf(first([BACK], {}, hold(20)))).toEqual([hold(20), hold(20)]);
  });

  test("of two muscles the stricter share, whole sets, and never fewer than one", () => {
    expect(setsOf(first([BACK, { ...BACK, muscle: "mid back", most: 2 }]))).toHaveLength(1);
    expect(setsOf(first([{ ...BACK, most: 7 }]))).toHaveLength(3);
    expect(setsOf(first([{ ...BACK, most: 0.5 }]))).toHaveLength(1);
    expect(first([BACK, { ...BACK, muscle: "mid back" }])!.evidence).toHaveLength(2);
  });

  test("where no more is asked than it may, nothing comes", () => {
    expect(first([{ ...BACK, asked: 4, most: 4 }])).toBeUndefined();
    expect(first([])).toBeUndefined();
    const easy = reps(8, { reserve: { from: 3, to: 3 } });
    expect(first([{ ...NEW, most: 4 }], {}, easy)).toBeUndefined();
    expect(setsOf(first([{ ...NEW, most: 4 }]))).toHaveLength(4);
  });

  test("what only lowers begins with one set, the first time alone (hortobagyi1993)", () => {
    const lowering = { ...row, lowering: true };
    const next = first([BACK], { exercise: lowering });
    expect(setsOf(next)).toHaveLength(1);
    expect(next!.evidence.at(-1)).toEqual({ code: "progress/lowering-first", data: { exercise: "row" } });
    const second = first([{ ...BACK, exposures: 1 }], { exercise: lowering });
    expect(setsOf(second)).toHaveLength(2);
    expect(second!.evidence).toHaveLength(1);
  });

  test("who did the form twice without a break has had both", () => {
    const did = [0, 3].map((on) => [on, { ...setDone(8), load: "none" }] as const);
    expect(first([BACK], {}, BASE.set, { ...BASE, did, today: 4 })).toBeUndefined();
    expect(first([BACK], {}, BASE.set, { ...BASE, did: did.slice(0, 1), today: 4 })).toBeDefined();
  });
});

test("a form that drives nothing is never capped", () => {
  expect(
    capsOf({ exercise: { ...leg, muscles: { "front thigh": 0.5 } }, person: { recent: weeks(0, { lats: 8 }) } }),
  ).toEqual([]);
});

test("half a set of a muscle that another form drives is none of the session's own for a new muscle", () => {
  const recent = weeks(0, { "front thigh": 8 });
  const light = reps(8, { reserve: { from: 6, to: 6 } });
  const input = inputWith({ person: { recent }, set: light });
  const slot = input.plan.phases[0]!.weeks[0]!.sessions[0]!.blocks[0]!.slots[0]!;
  expect(muscleCaps(input, slot, row)).toMatchObject([{ kind: "new", asked: 0, most: 2 }]);
  expect(muscleCaps(input, { ...slot, key: "gone" }, row)).toEqual([]);
});

test("one muscle that was never trained before is enough to begin with one set; sets are told to a tenth", () => {
  const { today, dayOf, exercise, slot, history, person } = dosesFor(slotTrained(BASE))[0]!.state;
  const back = { muscle: "lats", kind: "back", days: 22, exposures: 1, usual: 20 / 3, asked: 8, most: 14 / 3 } as const;
  const caps: readonly MuscleCap[] = [back, { ...back, muscle: "mid back", exposures: 0 }];
  const form = { ...exercise, lowering: true };
  const state = { today, dayOf, exercise: form, slot, history, person, caps } as DoseState;
  const next = firstExposure(state)!;
  expect(next.patch).toMatchObject({ change: "reps", dose: { sets: [{}] } });
  expect(next.evidence.map(({ data }) => [data["muscle"], data["since"], data["usual"], data["most"]])).toEqual([
    ["lats", null, 6.7, 4.7],
    ["mid back", "2027-02-07", 6.7, 4.7],
    [undefined, undefined, undefined, undefined],
  ]);
  const plain = firstExposure({ ...state, exercise })!;
  expect(plain.evidence).toHaveLength(2);
});

describe("the session and the week that are asked", () => {
  const recent = weeks(0, { "front thigh": 8 });
  test("are the next that is not light and not recorded, and hold the slot", () => {
    const input = inputWith({ person: { recent } });
    const [phase] = input.plan.phases;
    const slotOf = (count: number, key = "it") => {
      const slot = phase!.weeks[0]!.sessions[0]!.blocks[0]!.slots[0]!;
      return { ...slot, key, dose: sets(count, BASE.set) };
    };
    const week = (number: number, count: number, light: boolean, key?: string) => {
      const [session] = phase!.weeks[0]!.sessions;
      const blocks = [{ kind: "straight" as const, slots: [slotOf(count, key)] }];
      return { week: number, light, sessions: [{ ...session!, blocks }] };
    };
    const all = [week(1, 3, true), week(2, 5, false, "other"), week(3, 6, false), week(4, 7, false)];
    const plan = { ...input.plan, phases: [{ ...phase!, weeks: all }] };
    const asked = (recorded: readonly string[]) => {
      const [done] = inputWith({ did: [[0, setDone(8)]] }).record.sessions;
      const record = { ...input.record, sessions: recorded.map((session) => ({ ...done!, session })) };
      return muscleCaps({ ...input, plan, record }, slotOf(1), row).map((cap) => cap.asked);
    };
    expect(asked([])).toEqual([6]);
    expect(asked(["base/3/a"])).toEqual([7]);
    expect(asked(["base/3/a", "base/4/a"])).toEqual([]);
  });

  test("a muscle that is back counts the sets of its whole week, one that is new those of its session", () => {
    const input = (known: ReturnType<typeof weeks>) => inputWith({ person: { recent: known } });
    const asked = (known: ReturnType<typeof weeks>) => {
      const made = input(known);
      const [phase] = made.plan.phases;
      const weeksOf = phase!.weeks.map((week) => ({
        ...week,
        sessions: [...week.sessions, { ...week.sessions[0]!, key: "b" }],
      }));
      const plan = { ...made.plan, phases: [{ ...phase!, weeks: weeksOf }] };
      const slot = phase!.weeks[0]!.sessions[0]!.blocks[0]!.slots[0]!;
      return muscleCaps({ ...made, plan }, slot, row).map((cap) => [cap.kind, cap.asked]);
    };
    expect(asked(recent)).toEqual([["new", 4]]);
    expect(asked([...weeks(21, { lats: 6 }), ...weeks(0, { "front thigh": 8 }, 2)])).toEqual([["back", 8]]);
  });
});

test("after the first session back the usual weeks are those before the break", () => {
  const recent = [...weeks(16, { lats: 6 }), ...weeks(0, { "front thigh": 8 }, 2)];
  const once = capsOf({ person: { recent }, did: [[0, { ...setDone(8), load: "none" }]], today: 2 });
  expect(once).toMatchObject([{ kind: "back", days: 17, exposures: 1, usual: 6, most: 4 }]);
});

test("what another form of the session asks of other muscles is none of a new muscle's sets", () => {
  const input = inputWith({ person: { recent: weeks(0, { calf: 8 }) }, harder: [leg] });
  const [phase] = input.plan.phases;
  const [slot] = phase!.weeks[0]!.sessions[0]!.blocks[0]!.slots;
  const blocks = [{ kind: "straight" as const, slots: [{ ...slot!, key: "legs", exercise: "leg" }, slot!] }];
  const all = phase!.weeks.map((week) => ({
    ...week,
    sessions: week.sessions.map((session) => ({ ...session, blocks })),
  }));
  const plan = { ...input.plan, phases: [{ ...phase!, weeks: all }] };
  expect(muscleCaps({ ...input, plan }, slot!, row)).toMatchObject([{ muscle: "lats", kind: "new", asked: 4 }]);
});

test("two sessions of a muscle put it in use, one does not", () => {
  const of = (count: number) => musclesInUse(inputWith({ person: { recent: weeks(0, { lats: 4 }, count) } }), row);
  expect([of(1), of(2)]).toEqual([[], ["lats"]]);
});
