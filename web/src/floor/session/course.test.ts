import type { PlanSession, PlanSlot } from "@stave/core/model";
import { expect, test } from "vitest";
import { courseOf, stepKey } from "./index.ts";

function slot(key: string, sets: number): PlanSlot {
  const set = { amount: { kind: "reps", span: { from: 8, to: 8 } }, eachSide: false } as const;
  return { key, exercise: key, dose: { sets: Array.from({ length: sets }, () => set) }, why: [], offer: [] };
}
function session(blocks: PlanSession["blocks"], more: Partial<PlanSession> = {}): PlanSession {
  return {
    key: "a",
    title: "A",
    warmup: [],
    blocks,
    conditioning: [],
    open: [],
    minutes: { low: 1, high: 1 },
    ...more,
  };
}
const keys = (of: PlanSession) => courseOf(of).map(stepKey);

test("a straight block does all sets of a movement before the next", () => {
  expect(keys(session([{ kind: "straight", slots: [slot("x", 2), slot("y", 1)] }]))).toEqual(["x/0", "x/1", "y/0"]);
});
test("in a pair the movements alternate, and the longer one goes on alone", () => {
  expect(keys(session([{ kind: "pair", slots: [slot("x", 3), slot("y", 2)] }]))).toEqual([
    "x/0",
    "y/0",
    "x/1",
    "y/1",
    "x/2",
  ]);
});
test("warm-up comes first and conditioning last, where there are any", () => {
  const easy = { exercise: "walk", dose: slot("w", 1).dose };
  const whole = session([{ kind: "straight", slots: [slot("x", 1)] }], {
    warmup: [easy],
    conditioning: [{ ...easy, effort: "easy" }],
  });
  expect(keys(whole)).toEqual(["warm-up", "x/0", "conditioning"]);
});
test("the rest is the movement's own, or else the block's", () => {
  const own = { ...slot("x", 1), dose: { ...slot("x", 1).dose, restS: 120 } };
  const rests = courseOf(session([{ kind: "pair", restS: 60, slots: [own, slot("y", 1)] }])).map(
    (step) => step.kind === "set" && step.restS,
  );
  expect(rests).toEqual([120, 60]);
});
