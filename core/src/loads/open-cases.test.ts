import { expect, test } from "vitest";
import { day } from "../day.ts";
import type { Exercise, Place } from "../model/index.ts";
import { madeUpCatalogue, madeUpExercise, madeUpPerson, madeUpPlace, reps, sets } from "../testing/index.ts";
import { asLoad, inKg, kg, type Load, lb } from "../units.ts";
import { reachableTotals } from "./bar-loadings.ts";
import { loadingOf } from "./loading-of.ts";
import { loadsFor } from "./loads-for.ts";
import { loadToMove, movedBy } from "./moved-by.ts";
import { nearest } from "./nearest.ts";
import { startingLoad } from "./starting-load.ts";

const on = day("2027-03-10");
const kgOf = (value: number): Load => ({ value, unit: "kg" });
const kgs = (...values: readonly number[]) => values.map(kgOf);
const valuesOf = (loads: readonly Load[]) => loads.map((load) => load.value);

const barPress = madeUpExercise({
  id: "bar-press",
  loadMeaning: "total",
  hands: "two",
  needs: [["barbell"], ["plates"]],
});
const dumbbellPress = madeUpExercise({
  id: "dumbbell-press",
  loadMeaning: "per hand",
  hands: "two",
  needs: [["dumbbell"]],
});

function garage(tens: number): Place {
  return madeUpPlace({
    bars: kgs(20),
    plates: [
      { load: kgOf(15), pairs: 1 },
      { load: kgOf(10), pairs: tens },
    ],
  });
}

test("lm-01 one pair of 15 and two of 10: 60 kg is two tens a side, 55 goes down to 50, 42.5 to 40", () => {
  const place = garage(2);
  expect(valuesOf(reachableTotals(place.bars![0]!, undefined, place.plates!))).toEqual([20, 40, 50, 60, 70, 90]);
  expect(loadingOf(kgOf(60), place)).toEqual({ bar: kgOf(20), side: kgs(10, 10) });
  const set = loadsFor(barPress, place);
  expect(nearest(kg(55), set, "down")).toEqual({ down: kgOf(50), up: kgOf(60), chosen: kgOf(50) });
  expect(nearest(kg(42.5), set, "down").chosen).toEqual(kgOf(40));
  expect(loadingOf(kgOf(55), place)).toBeUndefined();
});

test("lm-01 neighbour, only one pair of 10: 60 kg is not there and goes down to 50", () => {
  const place = garage(1);
  expect(loadingOf(kgOf(60), place)).toBeUndefined();
  expect(nearest(kg(60), loadsFor(barPress, place), "down")).toEqual({
    down: kgOf(50),
    up: kgOf(70),
    chosen: kgOf(50),
  });
});

const gym = madeUpPlace({ bars: kgs(20, 15), dumbbells: { loads: kgs(2, 4, 6, 8, 10), pairs: true } });
const seventyPercent = sets(3, reps(8, { percent: 70 }));
const pressed = (load: number) =>
  madeUpPerson({
    mass: { load: kgOf(52), on },
    lifts: [{ exercise: "bar-press", load: kgOf(load), reps: 1, on }],
  });

test("lm-03 14 kg is below every bar: the tool changes to dumbbells of 6 or 8 kg, the lower by default", () => {
  const start = startingLoad({ exercise: barPress, dose: seventyPercent, person: pressed(20), place: gym, on });
  expect(start).toEqual({
    kind: "too heavy",
    lightest: kgOf(15),
    because: { code: "loads/lightest-too-heavy", data: { lightest: kgOf(15), aim: kgOf(14) } },
  });
  const each = loadToMove(dumbbellPress, kg(14))!;
  expect(nearest(each, loadsFor(dumbbellPress, gym), "down")).toEqual({ down: kgOf(6), up: kgOf(8), chosen: kgOf(6) });
  const other = startingLoad({ exercise: dumbbellPress, dose: seventyPercent, person: pressed(20), place: gym, on });
  expect(other).toMatchObject({ kind: "find", because: { code: "loads/nothing-known" } });
});

test("lm-03 neighbour, a maximum of 22 kg: 15.4 kg is above the lighter bar, which is taken", () => {
  const start = startingLoad({ exercise: barPress, dose: seventyPercent, person: pressed(22), place: gym, on });
  expect(start).toMatchObject({ kind: "load", load: kgOf(15) });
});

const assisted: Exercise = madeUpExercise({
  id: "assisted-pull-up",
  pattern: "vertical pull",
  loadMeaning: "assist",
  hands: "two",
  needs: [["assisted pull-up machine"]],
  bodyShare: { share: 1, source: "ours" },
});
const pins = { unit: "kg", pins: [29, 36, 43, 50, 57, 64] } as const;
const withMachine = madeUpPlace({ stacks: { "assisted pull-up machine": pins } });
const movedAt = (bodyMass: number, help: number) => inKg(movedBy(assisted, kgOf(help), kg(bodyMass))!);

test("lm-07 less help is harder: 18 kg moved then, 34 now, 41 at the next pin, which is 21 % more", () => {
  expect([movedAt(82, 64), movedAt(77, 43), movedAt(77, 36)]).toEqual([18, 34, 41]);
  expect(movedAt(82, 43)).toBe(39);
  expect(Math.round(100 * (movedAt(77, 36) / movedAt(77, 43) - 1))).toBe(21);
  const set = loadsFor(assisted, withMachine);
  expect(nearest(kg(42), set, "down")).toEqual({ down: kgOf(43), up: kgOf(36), chosen: kgOf(43) });
});

test("lm-07 neighbour, body mass of the day unknown: nothing is said but the help", () => {
  expect(movedBy(assisted, kgOf(43))).toBeUndefined();
  const lifts = [{ exercise: "assisted-pull-up", load: kgOf(43), reps: 8, on }];
  const dose = sets(3, reps(8));
  const context = { exercise: assisted, dose, place: withMachine, on };
  expect(startingLoad({ ...context, person: madeUpPerson({ lifts }) })).toMatchObject({
    kind: "find",
    from: kgOf(64),
    because: { code: "loads/body-mass-unknown" },
  });
  const weighed = madeUpPerson({ lifts, mass: { load: kgOf(77), on } });
  expect(startingLoad({ ...context, person: weighed })).toMatchObject({ kind: "load", load: kgOf(50) });
});

const goblet = madeUpExercise({
  id: "goblet-squat",
  loadMeaning: "one implement",
  hands: "two",
  needs: [["dumbbell", "kettlebell"]],
  bodyShare: { share: 0.88, source: "deLeva1996" },
});
const bells = madeUpPlace({ kettlebells: kgs(8, 12), dumbbells: { loads: kgs(5, 6), pairs: true } });

test("pf-05 25 lb are 11.34 kg held at once: 12 kg is refused, 2 × 6 kg too, 2 × 5 kg allowed", () => {
  const cap = { total: lb(25) };
  expect(asLoad(cap.total, "kg").value).toBe(11.34);
  const person = madeUpPerson({ mass: { load: kgOf(88), on } });
  const asked = (exercise: Exercise, load: number, limit = cap) =>
    startingLoad({ exercise, dose: sets(3, reps(10, { load: kgOf(load) })), person, place: bells, on, cap: limit });
  expect(asked(goblet, 12)).toMatchObject({ load: kgOf(8), evidence: { code: "loads/written-over-limit" } });
  expect(asked(dumbbellPress, 6)).toMatchObject({ load: kgOf(5), evidence: { code: "loads/written-over-limit" } });
  expect(asked(dumbbellPress, 5)).toMatchObject({ load: kgOf(5), evidence: { code: "loads/as-written" } });
  expect(asked(goblet, 12, { total: lb(10) })).toMatchObject({ kind: "none under the cap" });
});

test("pf-05 neighbour, a limit of 25 kg: both stand as the coach wrote them", () => {
  const dose = sets(3, reps(10, { load: kgOf(12) }));
  expect(
    startingLoad({ exercise: goblet, dose, person: madeUpPerson(), place: bells, on, cap: { total: kg(25) } }),
  ).toMatchObject({
    load: kgOf(12),
    evidence: { code: "loads/as-written" },
  });
});

const backSquat = madeUpExercise({
  id: "back-squat",
  loadMeaning: "total",
  needs: [["barbell"]],
  bodyShare: { share: 0.88, source: "deLeva1996" },
});
const rearFootRaised = madeUpExercise({
  id: "rear-foot-raised",
  pattern: "single leg",
  limb: "split stance",
  loadMeaning: "per hand",
  needs: [["dumbbell"]],
  bodyShare: { share: 0.844, source: "helme2020" },
});
const catalogue = madeUpCatalogue([backSquat, goblet, rearFootRaised]);
const twoTens = madeUpPlace({ dumbbells: { loads: kgs(10), pairs: true } });
const onceStrong = (gobletReps: number) =>
  madeUpPerson({
    status: "intermediate",
    mass: { load: kgOf(78), on },
    lifts: [
      { exercise: "back-squat", load: kgOf(120), reps: 5, on: day("2025-03-10") },
      { exercise: "goblet-squat", load: kgOf(10), reps: gobletReps, on },
    ],
  });
const at = (exercise: Exercise, gobletReps: number) =>
  startingLoad({
    exercise,
    dose: sets(3, reps({ from: 8, to: 12 })),
    person: onceStrong(gobletReps),
    place: twoTens,
    on,
    catalogue,
  });

test("pf-09 with 2 × 10 kg at home a two-legged squat is too light and one with the rear foot raised is not", () => {
  expect(at(goblet, 30)).toMatchObject({
    kind: "too light",
    heaviest: kgOf(10),
    because: { code: "loads/too-light-by-record" },
  });
  expect(at(rearFootRaised, 30).kind).not.toBe("too light");
});

test("pf-09 neighbour, 10 kg was hard after 12: the same squat is not too light", () => {
  expect(at(goblet, 12)).toMatchObject({ kind: "load" });
});
