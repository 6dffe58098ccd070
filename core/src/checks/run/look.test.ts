import { expect, test } from "vitest";
import {
  madeUpCatalogue,
  madeUpPhase,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
} from "../../testing/index.ts";
import { lookAt } from "./look.ts";

const dose = sets(4, reps(8));
const slot = madeUpSlot("squat", "squat", dose, { changes: [{ week: 3, dose: sets(2, reps(5)) }] });
const phase = madeUpPhase([madeUpSession("a", 45, [slot])], { weeks: 3, light: [3] });

test("slots, doses and the weeks to judge, each with what it asks for", () => {
  const look = lookAt({ programme: madeUpProgramme([], { phases: [phase] }), catalogue: madeUpCatalogue([]) });
  expect([look.slots.length, look.items.length, look.doses.length]).toEqual([1, 0, 2]);
  const asked = look.weeks[0]!.map(({ week, light, sessions }) => {
    return [week, light, sessions[0]?.blocks[0]?.slots[0]?.dose.sets.length];
  });
  expect(asked).toEqual([
    [1, false, 4],
    [3, true, 1],
  ]);
});
