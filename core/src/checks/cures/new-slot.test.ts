import { expect, test } from "vitest";
import { type Dose, printDose, type Slot } from "../../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPlace,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
} from "../../testing/index.ts";
import { canBeDoneAt, newSlotCures } from "./new-slot.ts";

const squat = madeUpExercise({ id: "squat", name: "Squat", secondsPerRep: 4 });
const catalogue = madeUpCatalogue([squat]);
const programme = madeUpProgramme([
  madeUpSession("a", 30, [madeUpSlot("squat", "squat", sets(3, reps(8)))]),
  madeUpSession("b", 30, [madeUpSlot("squat", "squat", sets(1, reps(8)), { slot: "squat-2" })]),
]);

function slotsFor(exercise: typeof squat): readonly Slot[] {
  const cures = newSlotCures({ programme, catalogue }, 0, [exercise]);
  return cures.map(({ changes }) =>
    changes[0]?.op === "insert" ? (changes[0].value as Slot) : expect.fail("no slot"),
  );
}
const dosesFor = (exercise: typeof squat) => slotsFor(exercise).map((slot) => printDose(slot.dose as Dose));

test("the session with most time to spare first, two sets before one, all one group", () => {
  const cures = newSlotCures({ programme, catalogue }, 0, [squat]);
  expect(cures.map(({ data }) => [data["session"], data["sets"]])).toEqual([
    ["Session b", 2],
    ["Session a", 2],
    ["Session b", 1],
    ["Session a", 1],
  ]);
  expect(new Set(cures.map(({ group }) => group))).toEqual(new Set(["add-slot"]));
});

test("a key that is taken gets a number", () => {
  expect(slotsFor(squat)[0]?.slot).toBe("squat-3");
});

test("a long id is cut to what a file takes", () => {
  const id = "standing-one-arm-very-long-named-overhead-press";
  expect(slotsFor({ ...squat, id })[0]?.slot).toBe("standing-one-arm-very-long-named-ove");
});

test("a session that is full gets no more", () => {
  const full = Array.from({ length: 20 }, (_, n) => madeUpSlot("squat", "squat", sets(1, reps(8)), { slot: `s-${n}` }));
  const input = { programme: madeUpProgramme([madeUpSession("a", 30, full)]), catalogue };
  expect(newSlotCures(input, 0, [squat])).toEqual([]);
});

test("the dose suits what the exercise is counted in", () => {
  expect(dosesFor(squat)[0]).toBe("2 × 8–12, rest 60 s, 2–3 in reserve");
  const hold = { ...squat, amounts: "hold" as const, hold: { from: 10, to: 15, step: 5 } };
  expect(dosesFor({ ...squat, amounts: "hold" })[0]).toBe("2 × 20 s, rest 60 s");
  expect(dosesFor({ ...hold, hold: { from: 10, to: 60, step: 5 } })[0]).toBe("2 × 10–20 s, rest 60 s");
  expect(dosesFor({ ...hold, eachSide: true })[0]).toBe("2 × 10–15 s each side, rest 60 s");
  expect(dosesFor({ ...squat, amounts: "metres" })[0]).toBe("2 × 20 m, rest 60 s");
  expect(dosesFor({ ...squat, amounts: "time" })[0]).toBe("1 × 5 min");
  expect(dosesFor({ ...squat, amounts: "contacts" })[0]).toBe("2 × 5 contacts, rest 60 s");
});

test("what a place lacks cannot be done there; without a place all can", () => {
  const row = { ...squat, needs: [["band", "cable"], ["bench"]] as const };
  expect(canBeDoneAt(row, undefined)).toBe(true);
  expect(canBeDoneAt(row, madeUpPlace({ equipment: { cable: 1, bench: 1 } }))).toBe(true);
  expect(canBeDoneAt(row, madeUpPlace({ equipment: { cable: 1, bench: 0 } }))).toBe(false);
});

test("time to spare is that of a full week, at the upper estimate", () => {
  // Full: (2 × 11 × 4 s + 30 s) × 1.25 is over two minutes, so the session of 29 minutes has more to spare.
  const work = [madeUpSlot("squat", "squat", sets(2, reps(11), { restS: 30 }))];
  const two = madeUpProgramme([madeUpSession("a", 30, work), madeUpSession("b", 29, [])]);
  const cures = newSlotCures({ programme: two, catalogue }, 0, [squat]);
  expect(cures.map(({ data }) => data["session"]).slice(0, 2)).toEqual(["Session b", "Session a"]);
});

test("one set is asked without a rest, and each kind goes up in its own way", () => {
  expect(dosesFor(squat).at(-1)).toBe("1 × 8–12, 2–3 in reserve");
  const way = (amounts: typeof squat.amounts) => slotsFor({ ...squat, amounts })[0]!.way;
  expect((["reps", "hold", "metres", "time", "contacts"] as const).map(way)).toEqual([
    "reps then load",
    "hold time",
    "load",
    "stay",
    "contacts",
  ]);
});

test("a session of nineteen slots takes one more; slots of pairs count", () => {
  const slot = (n: number) => madeUpSlot("squat", "squat", sets(1, reps(8)), { slot: `s-${n}` });
  const of = (pairs: number, singles: number) => {
    const work = [
      ...Array.from({ length: pairs }, (_, n) => ({ pair: [slot(2 * n), slot(2 * n + 1)] })),
      ...Array.from({ length: singles }, (_, n) => slot(100 + n)),
    ];
    return newSlotCures({ programme: madeUpProgramme([madeUpSession("a", 30, work)]), catalogue }, 0, [squat]).length;
  };
  expect([of(9, 1), of(10, 0), of(0, 19)]).toEqual([2, 0, 2]);
});

test("the new slot may be eased by one step and goes up by two, for what the exercise is", () => {
  expect(slotsFor({ ...squat, pattern: "hinge" })[0]).toMatchObject({
    pattern: "hinge",
    first: "squat",
    down: 1,
    up: 2,
  });
});
