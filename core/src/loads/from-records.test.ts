import { expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import type { Dose, Exercise, Lift, LoadMeaning, Person } from "../model/index.ts";
import { hold, madeUpExercise, madeUpPerson, madeUpPlace, reps, sets } from "../testing/index.ts";
import type { Load } from "../units.ts";
import { fromRecords } from "./from-records.ts";
import type { LoadSet } from "./load-set.ts";
import type { LoadCap } from "./under-cap.ts";

const on = day("2027-03-01");
const kgOf = (value: number): Load => ({ value, unit: "kg" });
const halves: LoadSet = { kind: "masses", loads: Array.from({ length: 80 }, (_, i) => kgOf(2.5 * (i + 1))) };
const form = (loadMeaning: LoadMeaning, said: Partial<Exercise> = {}) =>
  madeUpExercise({ id: "it", loadMeaning, bodyShare: { share: 1, source: "ours" }, ...said });
const lift = (load: number, done: number, more: Partial<Lift> = {}): Lift => ({
  exercise: "it",
  load: kgOf(load),
  reps: done,
  on,
  ...more,
});
const failTen = sets(3, reps(8));
const start = (
  lifts: readonly Lift[],
  said: { dose?: Dose; exercise?: Exercise; person?: Partial<Person>; set?: LoadSet; cap?: LoadCap } = {},
) =>
  fromRecords(
    {
      exercise: said.exercise ?? form("total"),
      dose: said.dose ?? failTen,
      person: madeUpPerson({ lifts, mass: { load: kgOf(80), on }, ...said.person }),
      place: madeUpPlace(),
      on,
      ...(said.cap === undefined ? {} : { cap: said.cap }),
    },
    said.set ?? halves,
  );

test("a share of the low end of the band, rounded down: 75 % of 112.5 kg is 84.4, so 82.5 kg", () => {
  expect(start([lift(100, 5)])).toEqual({
    kind: "load",
    load: kgOf(82.5),
    evidence: {
      code: "loads/from-record",
      data: {
        record: { exercise: "it", load: kgOf(100), reps: 5, reserve: null, on: "2027-03-01" },
        low: kgOf(112.5),
        high: kgOf(119.011),
        moved: false,
        percent: 75,
        up: kgOf(85),
      },
    },
  });
});

test("per hand: the 1RM is said and used for each hand", () => {
  const result = start([lift(20, 5)], { exercise: form("per hand") });
  expect(result).toMatchObject({ load: kgOf(15), evidence: { data: { low: kgOf(22.5), moved: false } } });
});

test("added load: the body is part of the 1RM; a goal under the body's own mass is too heavy with any load", () => {
  const strong = start([lift(20, 3)], {
    exercise: form("added to body"),
    dose: sets(3, reps(1, { reserve: { from: 2, to: 2 } })),
  });
  expect(strong).toMatchObject({ kind: "load", load: kgOf(17.5), evidence: { data: { moved: true } } });
  expect(start([lift(2.5, 3)], { exercise: form("added to body") })).toMatchObject({
    kind: "too heavy",
    lightest: kgOf(2.5),
  });
});

test("help is rounded up, which is easier", () => {
  const stack = { unit: "kg", pins: [8, 15, 22, 29, 36, 43, 50] } as const;
  const set: LoadSet = { kind: "stack", machine: "assisted pull-up machine", stack, help: true };
  // 80 − 29 = 51 kg for 5: at least 57.4 kg for 1; 75 % are 43 kg, so 37 kg of help.
  expect(start([lift(29, 5)], { exercise: form("assist"), set })).toMatchObject({ kind: "load", load: kgOf(43) });
});

test("nothing known, another machine, no body mass, no list: to be found, and the reason is the one that holds", () => {
  const stack: LoadSet = { kind: "stack", machine: "cable", stack: { unit: "kg", pins: [5] }, help: false };
  const code = (result: ReturnType<typeof start>) => "because" in result && result.because.code;
  expect(code(start([]))).toBe("loads/nothing-known");
  expect(code(start([lift(20, 5)], { exercise: form("stack"), set: stack, person: { place: "elsewhere" } }))).toBe(
    "loads/other-machine",
  );
  expect(start([lift(20, 5)], { exercise: form("stack"), set: stack })).toMatchObject({ kind: "load" });
  const { bodyShare: _, ...unshared } = form("assist");
  expect(code(start([lift(20, 5)], { exercise: unshared, set: { ...stack, help: true } }))).toBe(
    "loads/body-mass-unknown",
  );
  expect(code(start([lift(20, 5)], { set: { kind: "none" } }))).toBe("loads/not-listed");
});

test("an old record is a place to begin, at half", () => {
  const old = lift(100, 5, { on: addDays(on, -85) });
  expect(start([old])).toMatchObject({
    kind: "find",
    from: kgOf(40),
    because: { code: "loads/record-old", data: { weeks: 12 } },
  });
  expect(start([lift(100, 15, { on: addDays(on, -85) })])).toMatchObject({
    from: kgOf(2.5),
    because: { code: "loads/record-old" },
  });
  expect(start([lift(100, 5, { on: addDays(on, -84) })]).kind).toBe("load");
});

test("more than 10 repetitions give no figure: the load stays if it was lifted as often as is asked, or a little more", () => {
  expect(start([lift(40, 12)])).toMatchObject({
    kind: "load",
    load: kgOf(40),
    evidence: { code: "loads/as-on-record", data: { asked: 10 } },
  });
  expect(start([lift(40, 12)], { cap: { percent: 70 } })).toMatchObject({ kind: "load", load: kgOf(40) });
  expect(start([lift(40, 12)], { cap: { percent: 60 } })).toMatchObject({ kind: "find" });
  expect(start([lift(40, 12)], { dose: sets(3, reps(12)) })).toMatchObject({ from: kgOf(2.5) });
});

test("repetitions beyond the table, and doses without a number of them, begin at half", () => {
  expect(start([lift(100, 5)], { dose: sets(2, reps(30)) })).toMatchObject({
    kind: "find",
    from: kgOf(55),
    because: { code: "loads/reps-beyond-table", data: { reps: 32 } },
  });
  const carry = sets(2, hold(30));
  expect(start([lift(100, 5)], { dose: carry })).toMatchObject({
    from: kgOf(55),
    because: { code: "loads/not-in-reps" },
  });
  const { reps: _, ...heldLift } = lift(24, 1, { holdS: 40 });
  expect(start([heldLift], { dose: carry })).toMatchObject({
    from: kgOf(22.5),
    because: { code: "loads/not-in-reps" },
  });
});
