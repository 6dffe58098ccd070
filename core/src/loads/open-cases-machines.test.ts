/** Situations with the answer a competent coach gives, each with a neighbour that differs in one fact. */
import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { madeUpPerson, madeUpPlace, reps, sets } from "../testing/index.ts";
import type { Load } from "../units.ts";
import { fromRecords } from "./from-records.ts";
import type { LoadSet } from "./load-set.ts";

describe("lm-09: cable row 60 kg × 10 at gym A; gym B's stack feels like nothing, gym C's plates have no unit (real question)", () => {
  const on = day("2027-03-01");
  const kg = (value: number): Load => ({ value, unit: "kg" });
  const exercise = CATALOGUE.exercises.get("cable-row-seated")!;
  const stack = (pins: readonly number[]): LoadSet => ({
    kind: "stack",
    machine: "cable",
    stack: { pins, unit: "kg" } as never,
    help: false,
  });
  const tens = Array.from({ length: 12 }, (_, at) => 10 * (at + 1));
  const lifts = [{ exercise: exercise.id, load: kg(60), reps: 10, on }];
  const person = madeUpPerson({ place: "gym-a", lifts, born: day("1975-01-01") });
  const at = (place: string, set: LoadSet) =>
    fromRecords({ exercise, dose: sets(3, reps(10)), person, place: madeUpPlace({ id: place }), on }, set);
  test("at gym A the record of that machine sets the load", () => {
    const here = at("gym-a", stack(tens));
    expect(here.kind).toBe("load");
    expect(here).toMatchObject({ evidence: { data: { record: { load: kg(60), reps: 10 } } } });
  });
  test.each([
    ["gym-b", tens],
    ["gym-c", Array.from({ length: 15 }, (_, index) => index + 1)],
  ])("at %s nothing carries over: the load is found there by feel, and it says why", (place, pins) => {
    const there = at(place, stack(pins));
    expect(there).toMatchObject({ kind: "find", because: { code: "loads/other-machine" } });
    expect(JSON.stringify(there)).not.toContain("60");
  });
  test("a dumbbell weighs the same everywhere: its record goes along", () => {
    const press = CATALOGUE.exercises.get("dumbbell-bench-press")!;
    const strong = madeUpPerson({ place: "gym-a", lifts: [{ exercise: press.id, load: kg(20), reps: 10, on }] });
    const masses: LoadSet = { kind: "masses", loads: [10, 12, 14, 16, 18, 20].map(kg) };
    const context = { exercise: press, dose: sets(3, reps(10)), person: strong, on };
    expect(fromRecords({ ...context, place: madeUpPlace({ id: "gym-b" }) }, masses).kind).toBe("load");
  });
});
