import { expect, test } from "vitest";
import type { Path } from "../../model/index.ts";
import { madeUpPhase, madeUpProgramme, madeUpSession, madeUpSlot, reps, sets, timeOf } from "../../testing/index.ts";
import { aboutDose, aboutPlace, dosesOfSlots, itemPlaces, pathOf, pathOfDose, slotPlaces } from "./walk.ts";

const dose = sets(3, reps(8));
const slot = (key: string) => madeUpSlot("squat", "squat", dose, { slot: key });
const work = [slot("a"), { pair: [slot("b"), slot("c")] }, { round: [slot("d"), slot("e"), slot("f")] }];
const session = madeUpSession("s", 45, work, {
  warmup: [
    { do: "cycle", dose: sets(1, timeOf(300)), or: ["row"] },
    { ramp: "a", sets: 2 },
    { do: "circles", dose: sets(1, reps(10)) },
  ],
  conditioning: [{ do: "walk", dose: sets(1, timeOf(600)), effort: "easy" }],
});
const changing = madeUpSlot("squat", "squat", dose, { slot: "g", changes: [{ week: 3, dose: sets(4, reps(6)) }] });
const programme = madeUpProgramme([], {
  phases: [madeUpPhase([session]), madeUpPhase([madeUpSession("t", 30, [changing])], { key: "two" })],
});

function at(path: Path): unknown {
  return path.reduce<unknown>((node, key) => (node as Record<string | number, unknown>)[key], programme);
}

test("every slot in the order of the file, each at its own path", () => {
  const places = slotPlaces(programme);
  expect(places.map((place) => place.slot.slot)).toEqual(["a", "b", "c", "d", "e", "f", "g"]);
  for (const place of places) expect(at(pathOf(place))).toBe(place.slot);
  expect(aboutPlace(places.at(-1)!)).toEqual({ phase: "two", session: "t", slot: "g" });
});

test("every dose of a slot at its own path, later ones with their week", () => {
  const doses = dosesOfSlots(slotPlaces(programme));
  expect(doses).toHaveLength(8);
  for (const place of doses) expect(at(pathOfDose(place))).toBe(place.dose);
  const [first, later] = doses.slice(-2).map(aboutDose);
  expect(first).toEqual({ phase: "two", session: "t", slot: "g", exercise: "squat" });
  expect(later).toEqual({ phase: "two", session: "t", slot: "g", exercise: "squat", fromWeek: 3 });
});

test("warm-up and conditioning, without the lighter sets before a slot", () => {
  const places = itemPlaces(programme);
  expect(places.map((place) => [place.exercise, aboutPlace(place)["item"], place.others])).toEqual([
    ["cycle", "warmup 1", ["row"]],
    ["circles", "warmup 3", []],
    ["walk", "conditioning 1", []],
  ]);
  for (const place of places) expect(at([...pathOf(place), "do"])).toBe(place.exercise);
});
