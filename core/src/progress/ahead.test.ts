import { describe, expect, test } from "vitest";
import type { Plan, PlanSlot } from "../model/index.ts";
import { madeUpExercise, reps, setDone, slotTrained } from "../testing/index.ts";
import { slotsAhead } from "./ahead.ts";

const made = slotTrained({
  exercise: madeUpExercise({ id: "squat" }),
  set: reps(8),
  sets: 2,
  place: {},
  did: [[0, setDone(8)]],
  today: 1,
});
const kg = (value: number) => ({ value, unit: "kg" }) as const;
/** Four weeks of a squat and a row, each asked with a load of its week; of some the week is light. */
const planOf = (light: readonly number[] = []): Plan => {
  const [phase] = made.plan.phases;
  const [week] = phase!.weeks;
  const [session] = week!.sessions;
  const slot = (key: string, load: number): PlanSlot => ({ ...session!.blocks[0]!.slots[0]!, key, load: kg(load) });
  const sessionOf = (key: string, ...slots: readonly PlanSlot[]) => ({
    ...session!,
    key,
    blocks: [{ kind: "straight" as const, slots }],
  });
  return {
    ...made.plan,
    phases: [
      {
        ...phase!,
        weeks: [1, 2, 3, 4].map((number) => ({
          ...week!,
          week: number,
          light: light.includes(number),
          sessions: [sessionOf("a", slot("squat", number)), sessionOf("b", slot("row", 10 + number))],
        })),
      },
    ],
  };
};
const ahead = (recorded: readonly string[], light: readonly number[] = []) => {
  const sessions = recorded.map((session) => ({ ...made.record.sessions[0]!, session }));
  return slotsAhead({ plan: planOf(light), record: { ...made.record, sessions } }).map(({ phase, slot }) => [
    phase,
    slot.key,
    slot.load?.value,
  ]);
};

describe("each slot as it is asked next", () => {
  test("at first in the first week, in the order in which they come", () => {
    expect(ahead([])).toEqual([
      ["base", "squat", 1],
      ["base", "row", 11],
    ]);
  });

  test("after the last session of it that was recorded, each by itself", () => {
    expect(ahead(["base/1/a"])).toEqual([
      ["base", "row", 11],
      ["base", "squat", 2],
    ]);
    expect(ahead(["base/1/a", "base/2/a", "base/1/b"])).toEqual([
      ["base", "row", 12],
      ["base", "squat", 3],
    ]);
  });

  test("a session that was left out is not come back to", () => {
    expect(ahead(["base/3/a"])).toEqual([
      ["base", "row", 11],
      ["base", "squat", 4],
    ]);
  });

  test("not in a light week", () => {
    expect(ahead(["base/1/a", "base/1/b"], [2])).toEqual([
      ["base", "squat", 3],
      ["base", "row", 13],
    ]);
  });

  test("when all is done, and when light weeks alone are left, nothing is asked", () => {
    expect(ahead(["base/4/a", "base/4/b"])).toEqual([]);
    expect(ahead(["base/2/a", "base/2/b"], [3, 4])).toEqual([]);
  });
});
