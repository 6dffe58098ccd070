import { describe, expect, test } from "vitest";
import { capacityOf, forecast } from "../capacity/index.ts";
import { madeUpCatalogue, madeUpExercise, reps, type SlotTrained, setDone, slotTrained } from "../testing/index.ts";
import { lightSigns } from "./light-signs.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const DAY_MS = 86_400_000;
const press = madeUpExercise({ id: "press", loadMeaning: "stack", needs: [["leg press"]] });
const pull = madeUpExercise({ id: "pull", loadMeaning: "stack", needs: [["leg press"]] });
const WELL = setDone(6, 2);
const FELL = setDone(3, 0);
/** Six sessions as asked and then these, every three days. */
const trained = (
  exercise: typeof press,
  last: readonly ReturnType<typeof setDone>[],
  more: Partial<SlotTrained> = {},
) => {
  const did = [...Array<typeof WELL>(6).fill(WELL), ...last];
  return slotTrained({
    exercise,
    set: reps({ from: 5, to: 6 }, { reserve: { from: 2, to: 2 } }),
    sets: 2,
    load: 100,
    place: { equipment: { "leg press": 1 } },
    did: did.map((each, at) => [3 * at, { ...each, load: kg(100) }] as const),
    today: 3 * did.length,
    ...more,
  });
};
type Input = ReturnType<typeof trained>;
/** Both movements in one record, with efforts of sessions so many days ago. */
const both = (
  one: Input,
  other: Input,
  efforts: readonly (readonly [ago: number, effort: number | "not said"])[] = [],
): Input => {
  const of = (at: number) => ({ plan: "plan-1", session: `rated-${at}` });
  const at = (ago: number) => (one.today - ago) * DAY_MS;
  const base = one.record.sessions[0]!;
  return {
    ...one,
    log: [...one.log, ...other.log],
    catalogue: madeUpCatalogue([press, pull]),
    record: {
      ...one.record,
      sessions: efforts.map(([ago], index) => ({ ...base, session: of(index).session, at: at(ago) })),
      ratings: efforts.map(([ago, effort], index) => ({
        id: `r-${index}`,
        session: of(index).session,
        at: at(ago),
        n: index,
        device: "phone",
        data: { effort, minutes: 60 },
      })),
    },
  };
};
const signs = (last: readonly ReturnType<typeof setDone>[], efforts: Parameters<typeof both>[2] = []) =>
  lightSigns(both(trained(press, last), trained(pull, last), efforts));
const codes = ({ because }: ReturnType<typeof lightSigns>) => because.map(({ code }) => code);

describe("two movements that fell short of their own forecast in two sessions running", () => {
  test("show tiredness, with days, what was done and what was to be expected; what is in no record is said", () => {
    const said = signs([FELL, FELL]);
    expect(said.shows).toBe(true);
    expect(codes(said)).toEqual([
      "progress/fell-short",
      "progress/fell-short",
      "progress/effort-unrated",
      "progress/light-not-recorded",
    ]);
    expect(said.because[0]!.data).toMatchObject({
      exercise: "press",
      kind: "reps",
      sessions: [
        { on: "2027-03-19", done: 3, load: kg(100) },
        { on: "2027-03-22", done: 3, load: kg(100) },
      ],
    });
    const { sessions } = said.because[0]!.data as { sessions: readonly { low: number }[] };
    for (const { low } of sessions) expect(low).toBeGreaterThan(3);
  });

  test("its neighbours: one session, one movement, and as asked", () => {
    expect(signs([FELL])).toEqual({ shows: false, because: [] });
    expect(signs([FELL, WELL])).toEqual({ shows: false, because: [] });
    expect(signs([WELL, WELL])).toEqual({ shows: false, because: [] });
    const one = lightSigns(both(trained(press, [FELL, FELL]), trained(pull, [WELL, WELL])));
    expect([one.shows, codes(one)]).toEqual([false, ["progress/fell-short"]]);
  });

  test("less in reserve than asked counts as short, where the repetitions were done", () => {
    expect(signs([setDone(6, 1), setDone(6, 1)]).shows).toBe(true);
    expect(signs([setDone(2, 2), setDone(2, 2)]).shows).toBe(true);
  });

  test("sessions with a break between them, or long ago, are not running", () => {
    const late = (today: number) => {
      const more = { today };
      return lightSigns(both(trained(press, [FELL, FELL], more), trained(pull, [FELL, FELL], more))).shows;
    };
    expect([late(24), late(34), late(35)]).toEqual([true, true, false]);
  });

  test("light weeks and sessions that ended early are left out", () => {
    const without = (name: "light" | "endedEarly") => {
      const input = both(trained(press, [FELL, FELL]), trained(pull, [FELL, FELL]));
      const marked = input.log.map((each, at) => (at % 8 < 6 ? each : { ...each, [name]: true }));
      return lightSigns({ ...input, log: marked });
    };
    expect(without("light")).toEqual({ shows: false, because: [] });
    expect(without("endedEarly")).toEqual({ shows: false, because: [] });
  });

  test("with too little before them nothing was to be expected", () => {
    const few = (exercise: typeof press) => {
      const did = [WELL, WELL, WELL, FELL, FELL].map((each, at) => [3 * at, { ...each, load: kg(100) }] as const);
      return trained(exercise, [], { did, today: 15 });
    };
    expect(lightSigns(both(few(press), few(pull)))).toEqual({ shows: false, because: [] });
  });

  test("another phase's movements are not looked at", () => {
    const input = both(trained(press, [FELL, FELL]), trained(pull, [FELL, FELL]));
    expect(lightSigns({ ...input, plan: { ...input.plan, firmTo: { phase: "later" } } }).because).toEqual([]);
  });
});

describe("efforts, where three or more of both times were rated", () => {
  const rated = (now: readonly number[], before: readonly number[]) => [
    ...now.map((effort, at) => [at, effort] as const),
    ...before.map((effort, at) => [14 + at, effort] as const),
  ];
  test("up by one is up, with both means; by less it is level and speaks against tiredness", () => {
    const up = signs([FELL, FELL], rated([7, 7, 8], [6, 6, 7]));
    expect(up.shows).toBe(true);
    expect(up.because[2]).toEqual({
      code: "progress/effort-up",
      data: { sessions: 3, before: 3, needed: 3, now: 7.3, was: 6.3 },
    });
    const level = signs([FELL, FELL], rated([7, 7, 7], [6, 6, 7]));
    expect([level.shows, level.because[2]!.code]).toEqual([false, "progress/effort-level"]);
  });

  test("two ratings are too few to say, and one that was not said is none", () => {
    const few = signs([FELL, FELL], rated([9, 9], [5, 5, 5]));
    expect([few.shows, few.because[2]]).toEqual([
      true,
      { code: "progress/effort-unrated", data: { sessions: 2, before: 3, needed: 3 } },
    ]);
    const unsaid = signs([FELL, FELL], [...rated([7, 7], [7, 7, 7]), [5, "not said"]]);
    expect(unsaid.because[2]!.data).toMatchObject({ sessions: 2 });
  });

  test("two weeks are now, the four before them are before; what is older says nothing", () => {
    const at = (ago: number) =>
      signs([FELL, FELL], [...rated([7, 7, 7], [7, 7, 7]), [ago, 1]]).because[2]!.data as {
        sessions: number;
        before: number;
      };
    expect([13, 14, 41, 42].map((ago) => [at(ago).sessions, at(ago).before])).toEqual([
      [4, 3],
      [3, 4],
      [3, 4],
      [3, 3],
    ]);
  });
});

describe("at the edge of what was asked", () => {
  /** Sessions far over what was asked and then two. */
  const far = (last: ReturnType<typeof setDone>, more: Partial<SlotTrained> = {}) => {
    const of = (exercise: typeof press) => {
      const did = [...Array<typeof WELL>(6).fill(setDone(12, 2)), last, last];
      return trained(exercise, [], {
        did: did.map((each, at) => [3 * at, { ...each, load: kg(100) }] as const),
        today: 24,
        ...more,
      });
    };
    return lightSigns(both(of(press), of(pull)));
  };

  test("the lowest number and the reserve that were asked are not short, one less of either is", () => {
    expect(far(setDone(5, 2))).toEqual({ shows: false, because: [] });
    expect(far(setDone(4, 2)).shows).toBe(true);
    expect(far(setDone(5, 1)).shows).toBe(true);
    expect(far(setDone(5))).toEqual({ shows: false, because: [] });
    expect(far(setDone(4)).shows).toBe(true);
  });

  test("only the first set tells, and only where it was asked for", () => {
    const input = both(trained(press, [FELL, FELL]), trained(pull, [FELL, FELL]));
    const changed = (change: (sets: Input["log"][number]["sets"]) => Input["log"][number]["sets"]) => {
      const log = input.log.map((each, at) => (at % 8 < 6 ? each : { ...each, sets: change(each.sets) }));
      return lightSigns({ ...input, log });
    };
    expect(changed((done) => done)).toMatchObject({ shows: true });
    expect(changed((done) => done.slice(1))).toEqual({ shows: false, because: [] });
    expect(changed((done) => done.map(({ asked: _, ...set }) => set))).toEqual({ shows: false, because: [] });
    const most = { amount: { kind: "most" }, eachSide: false } as const;
    expect(changed((done) => done.map((set) => ({ ...set, asked: most })))).toEqual({ shows: false, because: [] });
  });

  test("a break between the two is fourteen days", () => {
    const gap = (days: number) => {
      const of = (exercise: typeof press) => {
        const did = [0, 3, 6, 9, 12, 15].map((on) => [on, { ...WELL, load: kg(100) }] as const);
        const last = [18, 18 + days].map((on) => [on, { ...FELL, load: kg(100) }] as const);
        return trained(exercise, [], { did: [...did, ...last], today: 19 + days });
      };
      return lightSigns(both(of(press), of(pull))).shows;
    };
    expect([gap(13), gap(14)]).toEqual([true, false]);
  });

  test("four sessions before them are enough, three are not", () => {
    const after = (count: number) => {
      const of = (exercise: typeof press) => {
        const did = [...Array<typeof WELL>(count).fill(WELL), FELL, FELL];
        const days = did.map((each, at) => [3 * at, { ...each, load: kg(100) }] as const);
        return trained(exercise, [], { did: days, today: 3 * did.length });
      };
      return lightSigns(both(of(press), of(pull))).shows;
    };
    expect([after(3), after(4)]).toEqual([false, true]);
  });

  test.each([
    ["none left, two asked", setDone(3, 0), { reserve: { from: 2, to: 2 } }, 0, 8],
    ["nothing said of what was left", setDone(3), { reserve: { from: 2, to: 2 } }, 0, 8],
    ["one left, none asked", setDone(3, 1), {}, 1, 5],
  ])("what was to be expected is the lower end of the forecast, to a tenth: %s", (_, last, asked, reserve, zone) => {
    const of = (exercise: typeof press) => trained(exercise, [last, last], { set: reps({ from: 5, to: 6 }, asked) });
    const input = of(press);
    const raw = input.log.slice(6).map(({ at }) => {
      const { person, dayOf } = input;
      const { capacity } = capacityOf(press, input.log.slice(0, 6), { person, on: dayOf(at), dayOf });
      return capacity.kind === "unknown" ? undefined : forecast(capacity, { kg: 100, reserve, reps: zone })?.amount.low;
    });
    const { sessions } = lightSigns(both(input, of(pull))).because[0]!.data as {
      sessions: readonly { low: number }[];
    };
    expect(sessions.map(({ low }) => low)).toEqual(raw.map((low) => Number(low!.toFixed(1))));
  });
});

test("too few rated before are too few to say; means are rounded to the nearest tenth", () => {
  const rated = (now: readonly number[], before: readonly number[]) =>
    signs(
      [FELL, FELL],
      [...now.map((effort, at) => [at, effort] as const), ...before.map((effort, at) => [14 + at, effort] as const)],
    ).because[2]!;
  expect(rated([9, 9, 9], [5, 5])).toEqual({
    code: "progress/effort-unrated",
    data: { sessions: 3, before: 2, needed: 3 },
  });
  expect(rated([8, 8, 7], [6, 6, 5]).data).toMatchObject({ now: 7.7, was: 5.7 });
});
