import { describe, expect, test } from "vitest";
import type { SetDose } from "../model/index.ts";
import { madeUpExercise, type SlotTrained, slotTrained } from "../testing/index.ts";
import { dosesFor } from "./index.ts";

const jump = madeUpExercise({ id: "jump", amounts: "contacts", mode: "ballistic", loadMeaning: "none" });
const harder = madeUpExercise({ id: "box-jump", amounts: "contacts", mode: "ballistic", loadMeaning: "none" });
const contacts = (from: number, to = from): SetDose => ({
  amount: { kind: "contacts", span: { from, to } },
  eachSide: false,
});
/** Sets of so many contacts, all done twice, five days apart. */
const jumped = (sets: number, set: SetDose, done: readonly number[], more: Partial<SlotTrained> = {}) => {
  const input = slotTrained({
    exercise: jump,
    set,
    sets,
    way: "contacts",
    place: {},
    did: done.map((reps, at) => [5 * at, { reps, load: "none" }]),
    today: 5 * done.length,
    ...more,
  });
  return dosesFor(input)[0]!.next;
};
const spans = ({ patch }: ReturnType<typeof jumped>) =>
  patch?.change !== "reps"
    ? undefined
    : patch.dose.sets.map(({ amount }) => (amount.kind === "contacts" ? [amount.span.from, amount.span.to] : []));
const tops = (next: ReturnType<typeof jumped>) => spans(next)?.map((span) => span[1]);

// 30 to 60 contacts a session to begin with: from memory; a tenth more at most: ours, as for loads.
describe("one contact more in each set, a tenth in all, 60 in a session", () => {
  test("3 × 10 are 33, with both sessions as proof", () => {
    const next = jumped(3, contacts(10), [10, 10]);
    expect(tops(next)).toEqual([11, 11, 11]);
    expect(next.evidence).toEqual([
      {
        code: "progress/contacts-done",
        data: { exercise: "jump", from: 30, to: 33, most: 60, sessions: [{ on: "2027-03-01" }, { on: "2027-03-06" }] },
      },
    ]);
    expect([next.kind, next.since]).toEqual(["up", 1]);
  });

  test("a tenth of 15 and of 19 is one more, of 20 two; of few there is always one", () => {
    expect(tops(jumped(5, contacts(3), [3, 3]))).toEqual([4, 3, 3, 3, 3]);
    expect(tops(jumped(1, contacts(19), [19, 19]))).toEqual([20]);
    expect(tops(jumped(4, contacts(5), [5, 5]))).toEqual([6, 6, 5, 5]);
    expect(tops(jumped(1, contacts(4), [4, 4]))).toEqual([5]);
  });

  test("the last step ends at 60, and there the form gets harder", () => {
    expect(tops(jumped(3, contacts(19), [19, 19]))).toEqual([20, 20, 20]);
    expect(tops(jumped(2, contacts(29), [29, 29]))).toEqual([30, 30]);
    expect(tops(jumped(1, contacts(59), [59, 59]))).toEqual([60]);
    expect(jumped(3, contacts(20), [20, 20], { harder: [harder] }).patch).toEqual({
      slot: "it",
      change: "exercise",
      exercise: "box-jump",
    });
  });

  test("of a range both ends rise, and its top must have been reached", () => {
    expect(spans(jumped(2, contacts(8, 10), [10, 10]))).toEqual([
      [9, 11],
      [9, 11],
    ]);
    expect(jumped(2, contacts(8, 10), [10, 9]).kind).toBe("stay");
  });
});

test("its neighbours: once, one short, nobody counted, and repetitions", () => {
  expect(jumped(3, contacts(10), [10]).kind).toBe("stay");
  expect(jumped(3, contacts(10), [9, 10]).kind).toBe("stay");
  const unread = [0, 5].map((on) => [on, { load: "none" }] as const);
  expect(jumped(3, contacts(10), [10, 10], { did: unread }).kind).toBe("stay");
  const counted: SetDose = { amount: { kind: "reps", span: { from: 10, to: 10 } }, eachSide: false };
  expect(jumped(3, counted, [10, 10]).kind).toBe("stay");
});

test("one set that was short, in either session, earns nothing", () => {
  const input = slotTrained({
    exercise: jump,
    set: contacts(10),
    sets: 3,
    way: "contacts",
    place: {},
    did: [0, 5].map((on) => [on, { reps: 10, load: "none" }] as const),
    today: 10,
  });
  const short = (session: number, set: number) => {
    const log = input.log.map((each, at) =>
      at === session
        ? { ...each, sets: each.sets.map((one) => (one.set === set ? { ...one, reps: { both: 9 } } : one)) }
        : each,
    );
    return dosesFor({ ...input, log })[0]!.next.kind;
  };
  expect([short(9, 9), short(0, 0), short(0, 2), short(1, 1)]).toEqual(["up", "stay", "stay", "stay"]);
});
