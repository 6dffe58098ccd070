import { describe, expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { madeUpPerson } from "../testing/index.ts";
import { type Capacity, type CarriedFrom, capacity, carriedFrom, type KnownCapacity, onceOf } from "./index.ts";

const ON = day("2027-03-01");
const person = madeUpPerson({ mass: { load: { value: 80, unit: "kg" }, on: ON }, units: "kg" });
/** Followed over six sessions of five repetitions, none left, with loads of which so much can be lifted once. */
const known = (once: number, sessions = 6): Capacity =>
  capacity(
    Array.from({ length: sessions }, (_, at) => ({
      day: addDays(ON, -4 * (sessions - at)),
      set: 0,
      kg: (once * 31) / (30 + 5.5),
      reps: 5,
      reserve: 0,
      asked: { from: 5, to: 5, reserve: 0 },
    })),
    ON,
  );
const carried = (to: string, ...from: readonly (readonly [id: string, capacity: Capacity])[]) =>
  carriedFrom(
    CATALOGUE.exercises.get(to)!,
    from.map(([id, capacity]) => ({ exercise: CATALOGUE.exercises.get(id)!, capacity })),
    { person, catalogue: CATALOGUE },
  );
const middle = ({ low, high }: CarriedFrom) => Math.sqrt(low.value * high.value);
const onceIn = (of: Capacity) => {
  const once = of.kind === "known" ? onceOf(of) : undefined;
  if (once === undefined || "missing" in once) throw new Error("nothing is known");
  return once.kg;
};
const width = ({ low, high }: CarriedFrom) => high.value / low.value;

// No source gives a ratio between tools, arms or rungs: the middle is what each limb moves, and the widths are ours.
describe("what each limb moves is carried, wider", () => {
  test("from a bar to a dumbbell in each hand, and back", () => {
    const hands = carried("dumbbell-bench-press", ["barbell-bench-press", known(100)])!;
    expect(hands).toMatchObject({ from: "barbell-bench-press", by: "tool", sessions: 6 });
    expect(middle(hands)).toBeCloseTo(onceIn(known(100)) / 2, 1);
    expect(middle(carried("barbell-bench-press", ["dumbbell-bench-press", known(40)])!)).toBeCloseTo(
      2 * onceIn(known(40)),
      1,
    );
  });

  test("from two arms to one: half of it", () => {
    const one = carried("one-arm-row", ["bent-over-row", known(80)])!;
    expect(one.by).toBe("arms");
    expect(middle(one)).toBeCloseTo(onceIn(known(80)) / 2, 1);
  });

  test("wider than the figure it comes from, most between rungs", () => {
    const tool = carried("dumbbell-bench-press", ["barbell-bench-press", known(100)])!;
    const arms = carried("one-arm-row", ["bent-over-row", known(100)])!;
    const rung = carried("barbell-deadlift", ["hex-bar-deadlift", known(100)])!;
    expect(rung.by).toBe("rung");
    const own = onceOf(known(100) as KnownCapacity) as { readonly low: number; readonly high: number };
    expect(own.high / own.low).toBeLessThan(width(tool));
    expect(width(tool)).toBeLessThan(width(arms));
    expect(width(arms)).toBeLessThan(width(rung));
    const doubtful = carried("dumbbell-bench-press", ["barbell-bench-press", known(100, 2)])!;
    expect(width(doubtful)).toBeGreaterThan(width(tool));
  });

  test("with the body: what is moved in all", () => {
    const form = CATALOGUE.exercises.get("pull-up-loaded")!;
    const own = form.bodyShare!.share * 80;
    const added = carried("pull-up-loaded", ["assisted-pull-up", known(own + 40)])!;
    expect(added.by).toBe("tool");
    expect(Math.sqrt((added.low.value + own) * (added.high.value + own))).toBeCloseTo(onceIn(known(own + 40)), 0);
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
