import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { madeUpPerson } from "../testing/index.ts";
import { type Capacity, type CarriedFrom, carriedFrom, type KnownCapacity, type ZoneState } from "./index.ts";

const ON = day("2027-03-01");
const person = madeUpPerson({ mass: { load: { value: 80, unit: "kg" }, on: ON }, units: "kg" });
/** Can be lifted once, in what the capacity of a form counts, with so wide an 80 % interval. */
const known = (kg: number, times = 1.05): Capacity => {
  const state: ZoneState = {
    level: Math.log((kg * 31) / 30),
    trend: 0,
    levelVar: (Math.log(times) / 1.281552) ** 2,
    trendVar: 0,
    shared: 0,
    doubt: 0,
    on: ON,
    last: ON,
    sessions: 6,
    missed: 1,
  };
  return { kind: "known", on: ON, best: "low", zones: { low: state } } satisfies KnownCapacity;
};
const carried = (to: string, ...from: readonly (readonly [id: string, capacity: Capacity])[]) =>
  carriedFrom(
    CATALOGUE.exercises.get(to)!,
    from.map(([id, capacity]) => ({ exercise: CATALOGUE.exercises.get(id)!, capacity })),
    { person, catalogue: CATALOGUE },
  );
const middle = ({ low, high }: CarriedFrom) => Math.sqrt(low.value * high.value);
const width = ({ low, high }: CarriedFrom) => high.value / low.value;

// No source gives a ratio between tools, arms or rungs: the middle is what each limb moves, and the widths are ours.
describe("what each limb moves is carried, wider", () => {
  test("from a bar to a dumbbell in each hand, and back", () => {
    const hands = carried("dumbbell-bench-press", ["barbell-bench-press", known(100)])!;
    expect(hands).toMatchObject({ from: "barbell-bench-press", by: "tool", sessions: 6 });
    expect(middle(hands)).toBeCloseTo(50, 1);
    expect(middle(carried("barbell-bench-press", ["dumbbell-bench-press", known(40)])!)).toBeCloseTo(80, 1);
  });

  test("from two arms to one: half of it", () => {
    const one = carried("one-arm-row", ["bent-over-row", known(80)])!;
    expect(one.by).toBe("arms");
    expect(middle(one)).toBeCloseTo(40, 1);
  });

  test("wider than the figure it comes from, most between rungs", () => {
    const tool = carried("dumbbell-bench-press", ["barbell-bench-press", known(100)])!;
    const arms = carried("one-arm-row", ["bent-over-row", known(100)])!;
    const rung = carried("barbell-deadlift", ["hex-bar-deadlift", known(100)])!;
    expect(rung.by).toBe("rung");
    expect(1.05 ** 2).toBeLessThan(width(tool));
    expect(width(tool)).toBeLessThan(width(arms));
    expect(width(arms)).toBeLessThan(width(rung));
    const doubtful = carried("dumbbell-bench-press", ["barbell-bench-press", known(100, 1.2)])!;
    expect(width(doubtful)).toBeGreaterThan(width(tool));
  });

  test("with the body: what is moved in all", () => {
    const form = CATALOGUE.exercises.get("pull-up-loaded")!;
    const own = form.bodyShare!.share * 80;
    const added = carried("pull-up-loaded", ["assisted-pull-up", known(own + 40)])!;
    expect(added.by).toBe("tool");
    expect(Math.sqrt((added.low.value + own) * (added.high.value + own))).toBeCloseTo(own + 40, 0);
  });

  test("the closest likeness is taken, whatever the order", () => {
    const both = [
      ["hex-bar-deadlift", known(100)],
      ["barbell-deadlift-pause", known(80)],
    ] as const;
    for (const from of [both, both.toReversed()])
      expect(carried("barbell-deadlift", ...from)).toMatchObject({ from: "barbell-deadlift-pause", by: "tool" });
  });
});

describe("nothing is carried", () => {
  const none = (to: string, from: string, capacity = known(100)) => carried(to, [from, capacity]);
  test("from a machine's stack or to it, between one leg and two, into what hands hold in front of the body", () => {
    expect(none("chest-press-machine", "barbell-bench-press")).toBeUndefined();
    expect(none("bent-over-row", "cable-row-seated")).toBeUndefined();
    expect(none("split-squat-dumbbell", "back-squat")).toBeUndefined();
    expect(none("goblet-squat", "back-squat")).toBeUndefined();
  });
  test("from another lift for the same muscles, from the form itself, from what is itself unknown or over ten", () => {
    expect(none("back-squat", "barbell-deadlift")).toBeUndefined();
    expect(none("lateral-raise", "upright-row")).toBeUndefined();
    expect(none("back-squat", "back-squat")).toBeUndefined();
    const unknown: Capacity = { kind: "unknown", missing: { code: "capacity/reps-unsaid", data: {} } };
    expect(none("dumbbell-bench-press", "barbell-bench-press", unknown)).toBeUndefined();
    const high = known(100) as KnownCapacity;
    const over: Capacity = { ...high, best: "high", zones: { high: high.zones.low! } };
    expect(none("dumbbell-bench-press", "barbell-bench-press", over)).toBeUndefined();
  });
});
