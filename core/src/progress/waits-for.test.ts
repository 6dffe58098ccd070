import { expect, test } from "vitest";
import type { SetDone } from "../model/index.ts";
import { hold, madeUpExercise, reps, type SlotTrained, setDone, slotTrained } from "../testing/index.ts";
import { dosesFor } from "./index.ts";
import { waitsFor } from "./waits-for.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const press = madeUpExercise({ id: "press", loadMeaning: "stack", needs: [["leg press"]], muscles: { chest: 1 } });
const next = (did: readonly Partial<SetDone>[], more: Partial<SlotTrained> = {}) =>
  dosesFor(
    slotTrained({
      exercise: press,
      set: reps({ from: 5, to: 6 }),
      sets: 3,
      load: 100,
      way: "load",
      place: { equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins: [95, 100, 105] } } },
      did: did.map((each, at) => [3 * at, { load: kg(100), ...each }]),
      today: 3 * did.length,
      ...more,
    }),
  )[0]!;

// haffTriplett2016: two repetitions over the goal; acsm2009: two sessions running.
test.each([
  ["nothing recorded", [], {}, { code: "progress/waits-sessions", data: { sessions: 0, needed: 2 } }],
  ["one session", [setDone(6)], {}, { code: "progress/waits-sessions", data: { sessions: 1, needed: 2 } }],
  [
    "another load than is asked",
    [
      { ...setDone(6), load: kg(95) },
      { ...setDone(6), load: kg(95) },
    ],
    {},
    { code: "progress/waits-load", data: { asked: kg(100), done: kg(95) } },
  ],
  [
    "a repetition short",
    [setDone(6), setDone(5)],
    {},
    { code: "progress/waits-all-sets", data: { goal: 6, needed: 2 } },
  ],
  [
    "the other way up",
    [setDone(6), setDone(7)],
    { way: "reps then load" },
    { code: "progress/waits-repetitions", data: { goal: 8, needed: 2 } },
  ],
  ["no harder form", [setDone(6), setDone(6)], { way: "ladder" }, { code: "progress/waits-no-harder", data: {} }],
] as const)("%s: what it waits for is told, and nothing rises", (_, did, more, wanted) => {
  const { state, next: said } = next(did, more as Partial<SlotTrained>);
  expect(waitsFor((more as Partial<SlotTrained>).way ?? "load", state)).toEqual(wanted);
  expect(said).toMatchObject({ kind: "stay", evidence: [wanted], refused: [] });
});

test("a slot that is to stay waits for nothing", () => {
  expect(waitsFor("stay", next([setDone(6), setDone(6)], { way: "stay" }).state)).toBeUndefined();
});

test("a heavier load than is asked is another load too; where the way counts something else, the way is told", () => {
  const heavy = { ...setDone(6), load: kg(105) };
  expect(waitsFor("load", next([setDone(6), heavy]).state)).toEqual({
    code: "progress/waits-load",
    data: { asked: kg(100), done: kg(105) },
  });
  expect(waitsFor("reserve", next([setDone(6), setDone(6)]).state)).toEqual({
    code: "progress/waits-way",
    data: { way: "reserve" },
  });
  const harder = { harder: [madeUpExercise({ id: "harder" })] };
  expect(waitsFor("ladder", next([setDone(6), setDone(6)], harder).state)?.code).toBe("progress/waits-way");
  expect(waitsFor("load", next([setDone(6), setDone(6)], { set: hold(30) }).state)?.code).toBe("progress/waits-way");
});
