import { describe, expect, test } from "vitest";
import type { Goal, SetDose, Slot, Status } from "../model/index.ts";
import {
  hold,
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
} from "../testing/index.ts";
import { outsideTable } from "./outside-table.ts";
import { lookAt } from "./run/look.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "squat", name: "Squat", loadMeaning: "total" }),
  madeUpExercise({ id: "front-squat", name: "Front squat", loadMeaning: "total" }),
  madeUpExercise({ id: "push-up", name: "Push-up", pattern: "horizontal push" }),
  madeUpExercise({ id: "hop", name: "Hop", pattern: "jump" }),
]);
const slot = (first: string, ...each: readonly SetDose[]): Slot =>
  madeUpSlot(first, "squat", { sets: each.length === 0 ? sets(3, reps(8)).sets : each });
const doc = (goal: Goal, slots: readonly Slot[], status: Status = "advanced") => ({
  programme: madeUpProgramme([madeUpSession("a", 45, slots)], { goal, status }),
  catalogue,
});
const AT = ["phases", 0, "sessions", 0, "work", 0, "dose"];

testCheck(outsideTable, {
  fine: {
    "size: 5 and 30 repetitions, heavy and light": doc("size", [
      slot("squat", reps(5, { percent: 90 })),
      slot("push-up", reps(30, { percent: 30 })),
    ]),
    "size: a span that reaches in": doc("size", [slot("squat", reps({ from: 3, to: 5 }))]),
    "size: jumps and holds are not counted": doc("size", [slot("hop", reps(2)), slot("squat", hold(60))]),
    "strength: one lift of the lane reaches the table": doc("strength", [
      slot("squat", reps(3, { percent: 85 })),
      slot("front-squat", reps(6, { percent: 70 })),
    ]),
    "strength: one set of it does": doc("strength", [
      slot("squat", reps(3, { percent: 80 }), reps(6, { percent: 65 })),
    ]),
    "strength: repetitions alone": doc("strength", [slot("squat", reps(5))]),
    "strength for a novice: 60–70 % for 8–12": doc("strength", [slot("squat", reps(10, { percent: 65 }))], "novice"),
    "strength: the body alone is no lift of the table": doc("strength", [slot("push-up", reps(20))]),
    "endurance: 15 at 60 %": doc("endurance", [slot("squat", reps(15, { percent: 60 }))]),
    "general and power have no table": doc("general", [slot("squat", reps(2, { percent: 95 }))]),
  },
  bad: {
    "size: 4 repetitions": {
      doc: doc("size", [slot("squat", reps({ from: 2, to: 4 }))]),
      at: [AT],
      data: [{ goal: "size", reps: { from: 5, to: 30 }, dose: "1 × 2–4" }],
      severity: ["warn"],
    },
    "size: 31 repetitions": { doc: doc("size", [slot("squat", reps(31))]), at: [AT], data: [{ dose: "1 × 31" }] },
    "strength: nothing of the lane is heavy": {
      doc: doc("strength", [slot("squat", reps(5, { percent: 75 })), slot("front-squat", reps(8, { percent: 70 }))]),
      at: [AT],
      data: [{ lane: "squat", slotName: "Squat", status: "advanced" }],
      severity: ["note"],
    },
    "strength: 15 repetitions": {
      doc: doc("strength", [slot("squat", reps(15))]),
      at: [AT],
      data: [{ goal: "strength" }],
    },
    "endurance: sets of 5": {
      doc: doc("endurance", [slot("squat", reps(5))]),
      at: [AT],
      data: [{ goal: "endurance" }],
    },
  },
});

test("the remedy moves repetitions and share into the table, the handbook's row first", () => {
  const one = (input: Parameters<typeof lookAt>[0]) => outsideTable.run(lookAt(input))[0]!.cures!();
  expect(one(doc("size", [slot("squat", reps({ from: 2, to: 40 })), slot("push-up", reps(40))]))[0]?.data["to"]).toBe(
    "1 × 30",
  );
  const strength = one(doc("strength", [slot("squat", reps(15, { percent: 60 }))]));
  expect(strength.map(({ data }) => data["to"])).toEqual(["1 × 6 @85 %", "1 × 12 @80 %"]);
});

describe("what is judged for strength", () => {
  const found = (slots: readonly Slot[], status: Status = "advanced", goal: Goal = "strength") =>
    outsideTable.run(lookAt(doc(goal, slots, status)));
  test("both ends of the table's row are in it: 85 %, one to six repetitions", () => {
    expect(found([slot("squat", reps(6, { percent: 85 }))])).toEqual([]);
    expect(found([slot("squat", reps(1, { percent: 100 }))])).toEqual([]);
    expect(found([slot("squat", reps({ from: 6, to: 9 }, { percent: 85 }))])).toEqual([]);
  });
  test("each lane by itself, at its first lift, with the table beside it", () => {
    const [one, ...more] = found([slot("squat", reps(20)), slot("front-squat", reps(25))]);
    expect(more).toEqual([]);
    expect(one!.data).toMatchObject({ lane: "squat", slotName: "Squat", goal: "strength", dose: "1 × 20" });
    expect((one!.data["bands"] as readonly unknown[]).length).toBeGreaterThan(0);
    expect(one!.data["bands"]).toContainEqual({ percent: { from: 85, to: 100 }, reps: { from: 1, to: 6 } });
  });
  test("by the person's own status where one is given", () => {
    const slots = [slot("squat", reps(10, { percent: 65 }))];
    expect(found(slots, "advanced")).toHaveLength(1);
    const input = { ...doc("strength", slots, "advanced"), person: madeUpPerson({ status: "novice" }) };
    expect(outsideTable.run(lookAt(input))).toEqual([]);
  });
  test("what nobody counts in repetitions reaches nothing and misses nothing", () => {
    expect(found([slot("squat", hold(30))])).toEqual([]);
  });
});

test("for size: five and thirty are in, a range is moved in at both ends, and what is not counted stays", () => {
  const cure = (...sets: readonly SetDose[]) =>
    outsideTable.run(lookAt(doc("size", [slot("squat", ...sets)])))[0]?.cures?.()[0]?.data["to"];
  expect(cure(reps({ from: 31, to: 40 }))).toBe("1 × 30");
  expect(cure(reps({ from: 1, to: 4 }))).toBe("1 × 5");
  expect(cure(reps(3), reps(10))).toBe("5, 10");
  expect(cure(reps({ from: 4, to: 5 }))).toBeUndefined();
  expect(cure(reps({ from: 30, to: 31 }))).toBeUndefined();
});
