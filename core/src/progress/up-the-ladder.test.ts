import { describe, expect, test } from "vitest";
import type { Exercise, SetDone, SetDose } from "../model/index.ts";
import { madeUpExercise, reps, type SlotTrained, setDone, slotTrained } from "../testing/index.ts";
import { dosesFor } from "./index.ts";

const push = madeUpExercise({ id: "bench-push-up" });
const floor = madeUpExercise({ id: "floor-push-up" });
const other = madeUpExercise({ id: "ring-push-up" });
const climbed = (did: readonly Partial<SetDone>[], more: Partial<SlotTrained> = {}) => {
  const input = slotTrained({
    exercise: push,
    harder: [floor],
    way: "ladder",
    set: reps({ from: 8, to: 12 }),
    sets: 3,
    place: {},
    did: did.map((each, at) => [5 * at, { ...each, load: "none" }]),
    today: 5 * did.length,
    ...more,
  });
  return dosesFor(input)[0]!.next;
};
const twice = (done: Partial<SetDone>) => [done, done];
const form = ({ patch }: ReturnType<typeof climbed>) => (patch?.change === "exercise" ? patch.exercise : undefined);

describe("the usual gate: 3 × 12 in two sessions five days apart (ours)", () => {
  test("what was shown is told, with both days", () => {
    const next = climbed(twice(setDone(12, 2)));
    expect(next.evidence[0]).toEqual({
      code: "progress/gate-met",
      data: {
        exercise: "bench-push-up",
        next: "floor-push-up",
        sets: 3,
        amount: { kind: "reps", value: 12 },
        sessions: [{ on: "2027-03-01" }, { on: "2027-03-06" }],
      },
    });
    expect([next.kind, next.since, next.others]).toEqual(["up", 1, []]);
  });

  test("two sets of twelve are not three", () => {
    expect(climbed(twice(setDone(12, 2)), { sets: 2 }).kind).toBe("stay");
    expect(climbed(twice(setDone(12, 2)), { sets: 4 }).kind).toBe("up");
  });

  test("with two in reserve on the last set: more is fine, one is not, unsaid is not", () => {
    expect(climbed(twice(setDone(12, 4))).kind).toBe("up");
    expect(climbed([setDone(12, 2), setDone(12, 1)]).kind).toBe("stay");
    expect(climbed([setDone(12), setDone(12, 2)]).kind).toBe("stay");
  });

  test("a form of which 70 % of body mass is moved asks for eight", () => {
    const heavy = { ...push, bodyShare: { share: 0.7, source: "ours" } } as Exercise;
    expect(climbed(twice(setDone(8, 2)), { exercise: heavy }).kind).toBe("up");
    expect(climbed(twice(setDone(8, 2))).kind).toBe("stay");
  });
});

describe("a gate of its own", () => {
  test("counts as the next form says it: one set of 20", () => {
    const own = { ...floor, need: { count: { of: "bench-push-up", reps: 20 }, conditions: [] } };
    expect(form(climbed(twice(setDone(20, 2)), { harder: [own], sets: 1 }))).toBe("floor-push-up");
    expect(climbed(twice(setDone(19, 2)), { harder: [own], sets: 1 }).kind).toBe("stay");
  });

  test("of two forms whose gates are met the first is proposed, the other put beside it", () => {
    const next = climbed(twice(setDone(12, 2)), { harder: [floor, other] });
    expect(form(next)).toBe("floor-push-up");
    expect(next.others).toEqual([{ slot: "it", change: "exercise", exercise: "ring-push-up" }]);
    const first = { ...floor, need: { count: { of: "bench-push-up", reps: 30 }, conditions: [] } };
    const second = climbed(twice(setDone(12, 2)), { harder: [first, other] });
    expect([form(second), second.others]).toEqual(["ring-push-up", []]);
  });

  test("conditions of the next form stand beside the proposal, where there are any", () => {
    const codes = (next: ReturnType<typeof climbed>) => next.evidence.map(({ code }) => code);
    expect(codes(climbed(twice(setDone(12, 2))))).toEqual(["progress/gate-met", "progress/try-first"]);
    const flat = { ...floor, need: { conditions: ["hands flat"] } };
    expect(codes(climbed(twice(setDone(12, 2)), { harder: [flat] }))).toEqual([
      "progress/gate-met",
      "progress/gate-conditions",
      "progress/try-first",
    ]);
  });

  test("a form that only lowers has no usual amount, and nothing is met", () => {
    const lowering = { ...push, lowering: true };
    expect(climbed(twice(setDone(50, 5)), { exercise: lowering }).kind).toBe("stay");
  });
});

describe("what is not counted in repetitions asks for no reserve", () => {
  const of = (amounts: Exercise["amounts"], more: Partial<Exercise> = {}) => ({ ...push, amounts, ...more });
  const next = (amounts: Exercise["amounts"], more: Partial<Exercise> = {}) => [{ ...of(amounts, more), id: "next" }];
  const amount = (kind: "metres" | "contacts" | "hold", value: number): SetDose => ({
    amount: { kind, span: { from: value, to: value } },
    eachSide: false,
  });
  test("3 × 30 m of a carry", () => {
    const carry = (reps: number) =>
      climbed(twice({ reps }), { exercise: of("metres"), harder: next("metres"), set: amount("metres", 30) }).kind;
    expect([carry(30), carry(29)]).toEqual(["up", "stay"]);
  });
  test("3 × 5 jumps", () => {
    const jump = (reps: number) =>
      climbed(twice({ reps }), { exercise: of("contacts"), harder: next("contacts"), set: amount("contacts", 5) }).kind;
    expect([jump(5), jump(4)]).toEqual(["up", "stay"]);
  });
  test("3 × the top of a hold's own range", () => {
    const range = { mode: "hold", hold: { from: 10, to: 30, step: 5 } } as const;
    const asks = {
      exercise: of("hold", range),
      harder: next("hold", range),
      set: amount("hold", 20),
      way: "ladder",
    } as const;
    const held = (holdS: number) => climbed(twice({ reps: "as asked", holdS }), asks).kind;
    expect([held(30), held(29)]).toEqual(["up", "stay"]);
  });
});

test("at the top of a ladder, and where the slot goes no further up, nothing comes", () => {
  expect(climbed(twice(setDone(12, 2)), { harder: [] }).kind).toBe("stay");
  expect(climbed([setDone(12, 2)]).kind).toBe("stay");
});
