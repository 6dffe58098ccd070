import { describe, expect, test } from "vitest";
import type { SetDose } from "../model/index.ts";
import { madeUpExercise, type SlotTrained, slotTrained } from "../testing/index.ts";
import { dosesFor } from "./index.ts";

const plank = madeUpExercise({ id: "plank", amounts: "hold", mode: "hold", hold: { from: 10, to: 60, step: 5 } });
const { hold: _, ...free } = { ...plank, id: "free-hold" };
const hold = (from: number, to = from): SetDose => ({ amount: { kind: "hold", span: { from, to } }, eachSide: false });
const held = (set: SetDose, done: readonly number[], more: Partial<SlotTrained> = {}) => {
  const input = slotTrained({
    exercise: plank,
    set,
    sets: 3,
    place: {},
    did: done.map((holdS, at) => [5 * at, { holdS, reps: "as asked", load: "none" }]),
    today: 5 * done.length,
    ...more,
  });
  return dosesFor(input)[0]!.next;
};
const spans = ({ patch }: ReturnType<typeof held>) =>
  patch?.change !== "reps"
    ? undefined
    : patch.dose.sets.map(({ amount }) => (amount.kind === "hold" ? [amount.span.from, amount.span.to] : []));

describe("longer", () => {
  test("a range rises as a whole, by the form's own step", () => {
    expect(spans(held(hold(20, 30), [30, 31]))).toEqual(Array(3).fill([25, 35]));
    const fine = { exercise: { ...plank, hold: { from: 10, to: 60, step: 2 } } };
    expect(spans(held(hold(20), [20, 20], fine))).toEqual(Array(3).fill([22, 22]));
  });

  test("up to the top of the form's range and no further: a plank ends at 60 s", () => {
    expect(spans(held(hold(50, 58), [58, 58]))).toEqual(Array(3).fill([52, 60]));
    expect(spans(held(hold(59), [59, 60]))).toEqual(Array(3).fill([60, 60]));
  });

  test("a form that says no range is lengthened by 5 s, up to 60 s", () => {
    expect(spans(held(hold(40), [40, 40], { exercise: free }))).toEqual(Array(3).fill([45, 45]));
    expect(spans(held(hold(57), [57, 57], { exercise: free }))).toEqual(Array(3).fill([60, 60]));
  });

  test("the shortest of all holds is what was shown", () => {
    const { evidence, since } = held(hold(30), [33, 31]);
    expect(evidence[0]).toEqual({
      code: "progress/held",
      data: { exercise: "plank", seconds: 31, sessions: [{ on: "2027-03-01" }, { on: "2027-03-06" }] },
    });
    expect(since).toBe(1);
  });

  test("its neighbours: the top of the range not reached, nobody timed it, repetitions", () => {
    expect(held(hold(20, 30), [30, 29]).kind).toBe("stay");
    const unread = [0, 5].map((on) => [on, { reps: "as asked", load: "none" }] as const);
    expect(held(hold(30), [], { did: unread, today: 6 }).kind).toBe("stay");
    const counted: SetDose = { amount: { kind: "reps", span: { from: 8, to: 8 } }, eachSide: false };
    expect(held(counted, [30, 30], { way: "hold time" }).kind).toBe("stay");
  });
});

// Short holds in place of ever longer ones: open case of the plank.
describe("at the top, with no harder form here: short holds of 10 s", () => {
  const short = (seconds: number) => held(hold(seconds), [seconds, seconds], { exercise: free });
  test("as many as half the longest took, three to six", () => {
    expect(spans(short(60))).toEqual(Array(3).fill([10, 10]));
    expect(spans(short(80))).toEqual(Array(4).fill([10, 10]));
    expect(spans(short(90))).toEqual(Array(5).fill([10, 10]));
    expect(spans(short(300))).toEqual(Array(6).fill([10, 10]));
  });
  test("with what speaks for it, and what the harder form still asks", () => {
    const next = held(hold(60), [60, 60]);
    expect(next.evidence.map(({ code }) => code)).toEqual(["progress/held", "progress/hold-full"]);
    expect(next.evidence[1]!.data).toEqual({ exercise: "plank", most: 60 });
    expect([next.kind, next.since]).toEqual(["up", 1]);
    const close = [0, 4].map((on) => [on, { holdS: 60, reps: "as asked", load: "none" }] as const);
    const longer = { ...plank, id: "long-plank" };
    const waits = held(hold(60), [], { did: close, today: 5, harder: [longer] });
    expect(waits.refused.map(({ code }) => code)).toEqual(["progress/gate-too-soon"]);
    expect(spans(waits)).toEqual(Array(3).fill([10, 10]));
  });
});

test("one hold that was short, in either session, earns nothing", () => {
  const did = [0, 5].map((on) => [on, { holdS: 30, reps: "as asked", load: "none" }] as const);
  const input = slotTrained({ exercise: plank, set: hold(30), sets: 3, place: {}, did, today: 10 });
  const short = (session: number, set: number) => {
    const log = input.log.map((each, at) =>
      at === session
        ? { ...each, sets: each.sets.map((one) => (one.set === set ? { ...one, holdS: { both: 29 } } : one)) }
        : each,
    );
    return dosesFor({ ...input, log })[0]!.next.kind;
  };
  expect([short(9, 9), short(0, 0), short(0, 2), short(1, 1)]).toEqual(["up", "stay", "stay", "stay"]);
});
