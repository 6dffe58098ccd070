import { expect, test } from "vitest";
import type { Equipment, Exercise, LoadMeaning, Place } from "../model/index.ts";
import { madeUpExercise, madeUpPlace } from "../testing/index.ts";
import type { Load } from "../units.ts";
import { loadsFor } from "./loads-for.ts";

const kgs = (...values: readonly number[]) => values.map((value): Load => ({ value, unit: "kg" }));
const needing = (loadMeaning: LoadMeaning, ...needs: (readonly Equipment[])[]): Exercise =>
  madeUpExercise({ id: "it", loadMeaning, needs });
const values = (exercise: Exercise, said: Partial<Place>) => {
  const set = loadsFor(exercise, madeUpPlace(said));
  return set.kind === "masses" ? set.loads.map((load) => load.value) : set.kind;
};
const plates = [5, 1.25].map((value) => ({ load: { value, unit: "kg" } as const, pairs: 1 }));

test("a barbell exercise may use any bar of the place, and each total stands once", () => {
  const squat = needing("total", ["barbell"], ["plates"], ["rack"]);
  expect(values(squat, { bars: kgs(20, 15), plates })).toEqual([15, 17.5, 20, 22.5, 25, 27.5, 30, 32.5]);
  expect(values(squat, { bars: kgs(20) })).toEqual([20]);
  expect(values(squat, { plates })).toBe("none");
  expect(values(squat, { bars: kgs(20), equipment: { barbell: 0 } })).toBe("none");
});

test("the mass of a hex, curl or guided bar is not known until the place says it", () => {
  for (const bar of ["hex bar", "curl bar", "guided-bar rack"] as const) {
    expect(values(needing("total", [bar], ["plates"]), { bars: kgs(20), plates, equipment: { [bar]: 1 } })).toBe(
      "none",
    );
    expect(
      values(needing("total", [bar], ["plates"]), { bars: kgs(20), plates, otherBars: { [bar]: kgs(25)[0] } }),
    ).toEqual([25, 27.5, 35, 37.5]);
  }
});

test("per hand needs two of a kind", () => {
  const press = needing("per hand", ["dumbbell", "kettlebell"], ["bench"]);
  expect(values(press, { dumbbells: { loads: kgs(4, 6), pairs: true }, kettlebells: kgs(16) })).toEqual([4, 6]);
  expect(values(press, { dumbbells: { loads: kgs(4, 6, 6), pairs: false } })).toEqual([6]);
  expect(values(press, { kettlebells: kgs(8, 16, 16) })).toEqual([16]);
  expect(values(press, { dumbbells: { loads: kgs(4), pairs: false } })).toBe("none");
});

test("one implement may be any single thing the exercise names, and nothing else", () => {
  const goblet = needing("one implement", ["dumbbell", "kettlebell", "plates", "backpack"]);
  const has: Partial<Place> = {
    dumbbells: { loads: kgs(10), pairs: false },
    kettlebells: kgs(8, 16),
    plates,
    bags: kgs(12),
  };
  expect(values(goblet, has)).toEqual([1.25, 5, 8, 10, 16]);
  expect(values(goblet, { ...has, equipment: { backpack: 1 } })).toEqual([1.25, 5, 8, 10, 12, 16]);
  expect(values(needing("one implement", ["kettlebell"]), has)).toEqual([8, 16]);
});

test("added load: bags, single implements, and on a belt both plates of a pair", () => {
  const pullUp = needing("added to body", ["pull-up bar"], ["dip belt", "dumbbell"]);
  expect(values(pullUp, { plates, dumbbells: { loads: kgs(3), pairs: false } })).toEqual([3]);
  expect(values(pullUp, { plates, equipment: { "dip belt": 1 } })).toEqual([1.25, 2.5, 5, 6.25, 7.5, 10, 11.25, 12.5]);
});

test("a stack is the pins of a machine that is here, and help is said", () => {
  const stack = { unit: "kg", pins: [7, 14, 21] } as const;
  const place: Partial<Place> = { stacks: { "assisted pull-up machine": stack, cable: stack } };
  expect(loadsFor(needing("stack", ["pull-down machine", "cable"]), madeUpPlace(place))).toEqual({
    kind: "stack",
    machine: "cable",
    stack,
    help: false,
  });
  expect(loadsFor(needing("assist", ["assisted pull-up machine"]), madeUpPlace(place))).toMatchObject({ help: true });
  expect(values(needing("stack", ["leg press"]), place)).toBe("none");
  expect(values(needing("stack", ["cable"]), { ...place, equipment: { cable: 0 } })).toBe("none");
});

test("bands are labels, also where a band helps", () => {
  const place = madeUpPlace({ bands: ["A", "B"] });
  expect(loadsFor(needing("band", ["band"]), place)).toEqual({ kind: "bands", labels: ["A", "B"] });
  expect(loadsFor(needing("assist", ["band"]), place)).toEqual({ kind: "bands", labels: ["A", "B"] });
  expect(loadsFor(needing("assist", ["assisted pull-up machine"]), place)).toEqual({ kind: "none" });
  expect(loadsFor(needing("band", ["band"]), madeUpPlace())).toEqual({ kind: "none" });
});

test("body mass, height and the rest have none", () => {
  for (const meaning of ["body only", "height", "none"] as const) {
    expect(values(needing(meaning, ["dumbbell"]), { dumbbells: { loads: kgs(10), pairs: true } })).toBe("none");
  }
});

test("kilograms and pounds stand in one row by mass", () => {
  const mixed = {
    kettlebells: [
      { value: 20, unit: "lb" },
      { value: 8, unit: "kg" },
      { value: 10, unit: "kg" },
    ] as const,
  };
  expect(values(needing("one implement", ["kettlebell"]), mixed)).toEqual([8, 20, 10]);
});
