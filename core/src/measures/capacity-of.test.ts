import { describe, expect, test } from "vitest";
import type { PlanSlot, SetDose } from "../model/index.ts";
import { madeUpExercise, published, reps, sets } from "../testing/index.ts";
import { capacityOf, type DoneSet, type SlotSession } from "./index.ts";

const BENCH = madeUpExercise({ id: "barbell-bench-press", loadMeaning: "total" });
const DAY = 86_400_000;
const kg = (value: number) => ({ value, unit: "kg" }) as const;
const SLOT: PlanSlot = { key: "bench", exercise: BENCH.id, dose: sets(1, reps(5)), why: [], offer: [] };

function session(day: number, ...done: readonly Partial<DoneSet>[]): SlotSession {
  return {
    session: `base/${day}/a`,
    phase: "base",
    week: 1,
    light: false,
    at: day * DAY,
    n: day,
    asked: SLOT,
    sets: done.map((each, set) => ({ set, exercise: BENCH.id, asked: reps(5), ...each })),
    leftOut: [],
  };
}
const lifted = (load: number, count: number, reserve?: number): Partial<DoneSet> => ({
  lifted: kg(load),
  reps: { both: count },
  ...(reserve === undefined ? {} : { reserve }),
});
const capacity = (...history: readonly SlotSession[]) => capacityOf(BENCH, history, 10 * DAY);
const known = (...history: readonly SlotSession[]) => {
  const found = capacity(...history);
  if (found.kind === "unknown") throw new Error(found.missing.code);
  return found;
};
const missing = (...history: readonly SlotSession[]) => {
  const found = capacity(...history);
  return found.kind === "unknown" ? found.missing.code : found;
};

const value =
  (...history: readonly SlotSession[]) =>
  () =>
    known(...history).value.value;

published("brzycki1993", "capacity from 100 kg × 10, where it is the middle of seven equations", [
  ["worked", "formula", value(session(1, lifted(100, 10, 0))), 133.33, 0.005],
  ["worked", "formula, 2 of the 10 in reserve", value(session(1, lifted(100, 8, 2))), 133.33, 0.005],
]);
published("wathen1994", "the middle of seven equations, over two sessions: 100 kg × 3 and × 5", [
  [
    "worked",
    "formula",
    value(session(1, lifted(100, 3, 0)), session(2, lifted(100, 5, 0))),
    (108.98 + 116.58) / 2,
    0.01,
  ],
]);

/** Area under Student's density from −t to t, by Simpson's rule: apart from any table. */
function within(t: number, freedom: number): number {
  const height = (x: number) => (1 + (x * x) / freedom) ** (-(freedom + 1) / 2);
  const area = (to: number) => {
    const steps = 200_000;
    const width = to / steps;
    let sum = height(0) + height(to);
    for (let at = 1; at < steps; at++) sum += height(at * width) * (at % 2 === 1 ? 4 : 2);
    return (sum * width) / 3;
  };
  return area(t) / area(2000);
}

describe("the interval", () => {
  test("of one session is that of the usual spread, 4.2 %, with 80 % of Student's t", () => {
    const { value: mid, low, high } = known(session(1, lifted(100, 1, 0)));
    const t = (high.value - mid.value) / (0.042 * mid.value);
    expect(within(t, 4)).toBeCloseTo(0.8, 3);
    expect(mid.value - low.value).toBeCloseTo(high.value - mid.value, 2);
  });

  test("of equal sessions narrows with each, and is that of Student's t with one degree more for each", () => {
    const reach = [1, 2, 3, 4, 5].map((count) => {
      const {
        value: mid,
        high,
        sessions,
      } = known(...Array.from({ length: count }, (_, at) => session(at, lifted(100, 1, 0))));
      expect(sessions).toBe(count);
      const spread = 0.042 * mid.value * Math.sqrt(4 / (4 + count - 1));
      expect(within(((high.value - mid.value) * Math.sqrt(count)) / spread, 3 + count)).toBeCloseTo(0.8, 3);
      return high.value - mid.value;
    });
    expect(reach.toSorted((a, b) => b - a)).toEqual(reach);
  });

  test("is wider for sessions that differ more", () => {
    const width = (a: number, b: number) => {
      const { low, high } = known(session(1, lifted(a, 5, 0)), session(2, lifted(b, 5, 0)));
      return high.value - low.value;
    };
    expect(width(90, 110)).toBeGreaterThan(width(100, 100));
  });
});

describe("what counts", () => {
  test("the best set of a session, on its weaker side", () => {
    expect(known(session(1, lifted(100, 5, 0), lifted(100, 3, 0)))).toEqual(known(session(1, lifted(100, 5, 0))));
    const sides = { ...lifted(100, 5, 0), reps: { left: 5, right: 3 } };
    expect(known(session(1, sides))).toEqual(known(session(1, lifted(100, 3, 0))));
  });

  test("as many as possible, when asked for, leaves none in reserve", () => {
    const most: SetDose = { amount: { kind: "most" }, eachSide: false };
    expect(known(session(1, { ...lifted(100, 5), asked: most }))).toEqual(known(session(1, lifted(100, 5, 0))));
  });

  test("the latest five sessions of the last six weeks", () => {
    const six = [50, 100, 100, 100, 100, 100].map((load, at) => session(at, lifted(load, 1, 0)));
    expect(known(...six)).toMatchObject({ value: kg(100), sessions: 5 });
    const old = session(10 - 43, lifted(50, 1, 0));
    expect(known(old, session(9, lifted(100, 1, 0)))).toMatchObject({ value: kg(100), sessions: 1 });
    expect(missing(old)).toBe("capacity/not-recorded");
  });

  test("pounds stay pounds", () => {
    const pounds = { ...lifted(1, 1, 0), lifted: { value: 225, unit: "lb" } } as const;
    expect(known(session(1, pounds)).value).toEqual({ value: 225, unit: "lb" });
  });
});

describe("unknown, and what is missing", () => {
  test.each([
    ["capacity/not-recorded", []],
    ["capacity/load-unknown", [{ reps: { both: 5 }, reserve: 0 }]],
    ["capacity/reps-unsaid", [{ lifted: kg(100), reserve: 2 }]],
    ["capacity/reps-unsaid", [{ ...lifted(100, 5, 0), reps: { left: 5 } }]],
    ["capacity/reserve-unsaid", [lifted(100, 5)]],
    ["capacity/over-ten", [lifted(100, 11, 0)]],
    ["capacity/over-ten", [lifted(100, 8, 3)]],
  ] satisfies readonly [string, readonly Partial<DoneSet>[]][])("%s", (code, done) => {
    expect(missing(session(1, ...done))).toBe(code);
  });

  test("four weeks of bare done say nothing", () => {
    const bare = Array.from({ length: 12 }, (_, at) => session(at, { lifted: kg(100) }, { lifted: kg(100) }));
    expect(missing(...bare)).toBe("capacity/reps-unsaid");
  });

  test.each(["assist", "band", "body only", "added to body", "height", "none"] as const)(
    "no mass on one scale: %s",
    (loadMeaning) => {
      const found = capacityOf({ ...BENCH, loadMeaning }, [session(1, lifted(10, 5, 0))], 10 * DAY);
      expect(found).toEqual({ kind: "unknown", missing: { code: "capacity/no-scale", data: {} } });
    },
  );
});

describe("open case pr-03", () => {
  const before = known(...[4, 4, 5, 4].map((count, at) => session(at, lifted(110, count, 0))));
  const overlaps = (now: ReturnType<typeof known>) =>
    now.low.value <= before.high.value && before.low.value <= now.high.value;

  test("110 kg × 4, 4, 5, 4 and then 95 kg × 10: the intervals overlap, so neither a stall nor a gain is told", () => {
    expect(overlaps(known(session(5, lifted(95, 10, 0))))).toBe(true);
  });

  test("its neighbour: 95 kg × 4 in week 5 lies apart from the weeks before", () => {
    expect(overlaps(known(session(5, lifted(95, 4, 0))))).toBe(false);
  });
});
