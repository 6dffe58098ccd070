import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { Candidate } from "../fit/index.ts";
import { loadsLeft, startingLoad } from "../loads/index.ts";
import type { Dose, Exercise, Lift, SetDose } from "../model/index.ts";
import { madeUpExercise, madeUpPerson, madeUpPlace, reps, sets } from "../testing/index.ts";
import { slotStart } from "./slot-start.ts";

const on = day("2027-03-01");
const kgs = (...values: readonly number[]) => values.map((value) => ({ value, unit: "kg" as const }));
const gym = madeUpPlace({ bars: kgs(20), plates: kgs(20, 10, 5, 2.5).map((load) => ({ load, pairs: 2 })) });
const squat = madeUpExercise({ id: "squat", loadMeaning: "total", hands: "two", needs: [["barbell"], ["plates"]] });

/** A form as fit hands it over: its own start, and with what any other dose of it begins. */
function candidateOf(dose: Dose, lifts: readonly Lift[], exercise: Exercise = squat, tooLight = false): Candidate {
  const person = madeUpPerson({ status: "intermediate", lifts });
  const startOf = (asked: Dose) => startingLoad({ exercise, dose: asked, person, place: gym, on });
  const start = startOf(dose);
  const light = tooLight || start.kind === "too light";
  const left = () => loadsLeft({ exercise, person, place: gym, on, cap: {} });
  const kept = { startOf, loadsLeft: left, want: 0, lines: [] };
  return { exercise, doses: [dose], watch: [], notes: [], start, tooLight: light, ...kept };
}
/** A 1RM of 100 kg by the record itself. */
const hundred: Lift = { exercise: "squat", load: kgs(100)[0]!, reps: 1, on: day("2027-02-20") };
const startOf = (dose: Dose, lifts: readonly Lift[] = [hundred]) => slotStart(candidateOf(dose, lifts), dose);
const dose = (...each: readonly SetDose[]): Dose => ({ sets: each, restS: 180 });

describe("one load", () => {
  test("a share of the maximum, with its evidence", () => {
    const start = startOf(sets(3, reps(8, { percent: 70 })));
    expect(start).toEqual({ load: kgs(70)[0], why: [expect.objectContaining({ code: "loads/from-record" })] });
  });
  test("sets of other repetitions at one share share one load", () => {
    expect(startOf(dose(reps(8, { percent: 70 }), reps(6, { percent: 70 }))).loads).toBeUndefined();
  });
  test("without a record it is to be found, and nothing is claimed", () => {
    const start = startOf(sets(3, reps(8, { percent: 70 })), []);
    expect(start).toEqual({ find: { because: expect.objectContaining({ code: "loads/nothing-known" }) }, why: [] });
  });
  test("a novice without a record begins with the lightest here", () => {
    const asked = sets(3, reps(8));
    const person = madeUpPerson();
    const start = (each: Dose) => startingLoad({ exercise: squat, dose: each, person, place: gym, on });
    expect(slotStart({ ...candidateOf(asked, []), startOf: start }, asked).find?.from).toEqual(kgs(20)[0]);
  });
  test("the body alone has no load", () => {
    const body = madeUpExercise({ id: "body" });
    const asked = sets(3, reps(8));
    expect(slotStart(candidateOf(asked, [], body), asked)).toEqual({ why: [] });
  });
});

describe("a load for each set", () => {
  test("where shares differ: 85 % and then 70 % of 100 kg", () => {
    const start = startOf(dose(reps(3, { percent: 85 }), reps(8, { percent: 70 }), reps(8, { percent: 70 })));
    expect(start.load).toEqual(kgs(85)[0]);
    expect(start.loads).toEqual(kgs(85, 70, 70));
  });
  test("where the coach wrote other loads: 60 kg and then 50 kg. Once all sets got the first one's", () => {
    const start = startOf(dose(reps(5, { load: kgs(60)[0]! }), reps(8, { load: kgs(50)[0]! })));
    expect(start.loads).toEqual(kgs(60, 50));
  });
  test("neighbour: shares that come to one load here are one load", () => {
    expect(startOf(dose(reps(8, { percent: 71 }), reps(8, { percent: 70 }))).loads).toBeUndefined();
  });
  test("where one of them cannot be told, the first alone is said", () => {
    const start = startOf(dose(reps(5, { load: kgs(60)[0]! }), reps(8)), []);
    expect(start.load).toEqual(kgs(60)[0]);
    expect(start.loads).toBeUndefined();
  });
});

describe("too light", () => {
  const much: Lift = { exercise: "squat", load: kgs(170)[0]!, reps: 10, on: day("2027-02-20") };
  test("the heaviest here, with what shows it and what long sets do instead", () => {
    const small = madeUpPlace({ bars: kgs(20), plates: [] });
    const asked = sets(3, reps(8));
    const person = madeUpPerson({ status: "intermediate", lifts: [much] });
    const start = startingLoad({ exercise: squat, dose: asked, person, place: small, on });
    const found = slotStart({ ...candidateOf(asked, [much]), start, tooLight: true }, asked);
    expect(found.load).toEqual(kgs(20)[0]);
    expect(found.why.map(({ code }) => code)).toEqual(["loads/too-light-by-maximum", "plan/long-sets-instead"]);
  });
  test("the body alone: no load, and long sets are said", () => {
    const body = madeUpExercise({ id: "body" });
    const asked = sets(3, reps(8));
    expect(slotStart(candidateOf(asked, [], body, true), asked)).toEqual({
      why: [{ code: "plan/long-sets-instead", data: {} }],
    });
  });
  test("neighbour: with plates enough it is a load like any other", () => {
    expect(startOf(sets(3, reps(8)), [much]).why.map(({ code }) => code)).not.toContain("plan/long-sets-instead");
  });
});
