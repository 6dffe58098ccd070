import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { atOrBelow, CATALOGUE } from "../exercises/index.ts";
import { ASSESSMENT_TESTS, type ResultsFile, startingRungs, type TestResult } from "./index.ts";

const BORN = day("1954-05-02");
const of = (test: string, value: number | readonly [number, number], more: Partial<TestResult> = {}): TestResult => ({
  test,
  on: day("2027-03-08"),
  conditions: {},
  ...(typeof value === "number" ? { value } : { left: value[0], right: value[1] }),
  ...more,
});
const starts = (results: readonly TestResult[], more: Partial<ResultsFile> = {}) =>
  startingRungs({ born: BORN, sex: "woman", results, ...more }, CATALOGUE);
const rungsOf = (...results: readonly TestResult[]) =>
  Object.fromEntries(starts(results).rungs.map(({ ladder, exercise }) => [ladder, exercise]));
const codesOf = (...results: readonly TestResult[]) => starts(results).rungs[0]!.because.map(({ code }) => code);

describe("ours: a form is stood on from a set of five, its gate opens the next, too few stand one form easier", () => {
  test.each([
    ["push-up-toes", 4, "push-up", "push-up-30"],
    ["push-up-toes", 5, "push-up", "floor-push-up"],
    // catalogue gate of the raised feet: 12 on the floor in one set
    ["push-up-toes", 11, "push-up", "floor-push-up"],
    ["push-up-toes", 12, "push-up", "push-up-feet-30"],
    ["push-up-toes", 150, "push-up", "push-up-feet-30"],
    ["push-up-knees", 4, "push-up", "push-up-60"],
    ["push-up-knees", 40, "push-up", "knee-push-up"],
    ["front-plank", 9, "front-trunk", "knee-plank"],
    ["front-plank", 10, "front-trunk", "forearm-plank"],
    ["front-plank", 180, "front-trunk", "forearm-plank"],
    ["dead-hang", 9, "pull-up", "box-hang"],
    ["dead-hang", 10, "pull-up", "dead-hang"],
    // catalogue gate of the drawn-down blades: a hang of 20 s
    ["dead-hang", 19, "pull-up", "dead-hang"],
    ["dead-hang", 20, "pull-up", "hang-blades-down"],
  ] as const)("%s %d: %s starts on %s", (id, value, ladder, exercise) => {
    expect(rungsOf(of(id, value))).toEqual({ [ladder]: exercise });
  });
});

describe("a test is the form it was done as, and no other", () => {
  test.each([
    ["push-up-toes", "from", "knees", "knee-push-up"],
    ["push-up-knees", "from", "toes", "floor-push-up"],
    ["front-plank", "from", "knees", "knee-plank"],
  ] as const)("%s under %s %s: %s", (id, condition, choice, exercise) => {
    const { rungs } = starts([of(id, 11, { conditions: { [condition]: choice } })]);
    expect(rungs.map((rung) => rung.exercise)).toEqual([exercise]);
  });
  test("a chair of another height says nothing of a start", () => {
    expect(starts([of("chair-stand-30", 13, { conditions: { seat: "other" } })])).toEqual({ rungs: [], open: [] });
    expect(rungsOf(of("chair-stand-30", 13), of("chair-stand-30", 2, { conditions: { seat: "other" } }))).toEqual({
      squat: "touch-and-go-squat",
    });
  });
  test("tests that are no form of a ladder say nothing", () => {
    expect(starts([of("grip", [20, 22]), of("one-leg-stand", [9, 12]), of("usual-walk", 1)])).toEqual({
      rungs: [],
      open: [],
    });
  });
});

describe("sides: the weaker one decides, never the mean", () => {
  test.each([
    [[4, 30], "calf-raise-two-up", "left"],
    [[30, 4], "calf-raise-two-up", "right"],
    [[5, 30], "one-leg-calf-raise", "left"],
    [[6, 6], "one-leg-calf-raise", undefined],
  ] as const)("heel raises %j: %s", (sides, exercise, side) => {
    const [rung] = starts([of("heel-raise", sides)]).rungs;
    expect(rung?.exercise).toBe(exercise);
    expect(rung?.because[0]?.data["side"]).toBe(side);
    expect(rung?.because[0]?.data["value"]).toBe(Math.min(...sides));
  });
  test("on a step, and side planks from feet and knees", () => {
    expect(rungsOf(of("heel-raise", [8, 8], { conditions: { floor: "step" } }))).toEqual({
      calf: "one-leg-calf-raise-step",
    });
    expect(rungsOf(of("side-plank", [9, 40]))).toEqual({ "side-plank": "side-plank-knees" });
    expect(rungsOf(of("side-plank", [12, 40]))).toEqual({ "side-plank": "side-plank-staggered" });
    expect(rungsOf(of("side-plank", [9, 9], { conditions: { from: "knees" } }))).toEqual({
      "side-plank": "wall-side-plank",
    });
  });
});

describe("rikliJones1999, printed lower edges of the middle half", () => {
  // women 70–74: 10; women 75–79: 10; women 80–84: 9; men 70–74: 12
  test.each([
    [9, "woman", "1954-05-02", "sit-to-stand-45"],
    [10, "woman", "1954-05-02", "touch-and-go-squat"],
    [11, "man", "1954-05-02", "sit-to-stand-45"],
    [12, "man", "1954-05-02", "touch-and-go-squat"],
    [9, "woman", "1945-05-02", "touch-and-go-squat"],
    [4, "woman", "1954-05-02", "sit-to-stand-high"],
  ] as const)("%d stands, %s born %s: %s", (value, sex, born, exercise) => {
    const { rungs } = starts([of("chair-stand-30", value)], { sex, born: day(born) });
    expect(rungs.map((rung) => rung.exercise)).toEqual([exercise]);
  });
  test("arms used scores 0 and stands on the high seat", () => {
    expect(rungsOf(of("chair-stand-30", 14, { conditions: { arms: "used" } }))).toEqual({ squat: "sit-to-stand-high" });
  });
  test("without a printed row nothing is judged, and it is said why", () => {
    const young = starts([of("chair-stand-30", 20)], { born: day("1990-01-01") });
    expect(young).toEqual({
      rungs: [],
      open: [{ code: "assess/rung-no-norm", data: { ladder: "squat", test: "chair-stand-30", age: 37, sex: "woman" } }],
    });
    const { open } = startingRungs({ born: BORN, results: [of("chair-stand-30", 12)] }, CATALOGUE);
    expect(open[0]?.data).toMatchObject({ sex: null });
  });
  test("born on 29 February: the row is that of the age on the day of the test", () => {
    // Women 75–79: from 10; 80–84: from 9. 80 on 1 March in a year without the day, by the rule that birthdays move on.
    const born = day("1948-02-29");
    const on = (text: string) =>
      starts([of("chair-stand-30", 9, { on: day(text) })], { born, sex: "woman" }).rungs[0]?.exercise;
    expect(on("2028-02-28")).toBe("sit-to-stand-45");
    expect(on("2028-02-29")).toBe("touch-and-go-squat");
    const odd = day("1947-03-01");
    const last = starts([of("chair-stand-30", 9, { on: day("2027-02-28") })], { born: odd, sex: "woman" });
    expect(last.rungs[0]?.exercise).toBe("sit-to-stand-45");
  });
});

describe("several results", () => {
  test("the latest of a test decides, whatever its place in the file", () => {
    const early = of("push-up-toes", 20, { on: day("2026-01-01") });
    expect(rungsOf(of("push-up-toes", 6), early)).toEqual({ "push-up": "floor-push-up" });
    expect(rungsOf(early, of("push-up-toes", 6))).toEqual({ "push-up": "floor-push-up" });
  });
  test("two tests of one ladder: the later one; on one day the harder form", () => {
    const knees = of("push-up-knees", 10);
    expect(rungsOf(of("push-up-toes", 6, { on: day("2026-01-01") }), knees)).toEqual({ "push-up": "knee-push-up" });
    expect(rungsOf(of("push-up-toes", 6), knees)).toEqual({ "push-up": "floor-push-up" });
    expect(rungsOf(of("push-up-toes", 2), knees)).toEqual({ "push-up": "push-up-30" });
    expect(rungsOf(knees, of("push-up-toes", 6, { on: day("2027-03-09") }))).toEqual({ "push-up": "floor-push-up" });
  });
  test("a short forearm plank keeps the push-up off the floor; a long one is told no more; without one the coach looks", () => {
    expect(rungsOf(of("push-up-toes", 20), of("front-plank", 29))["push-up"]).toBe("push-up-30");
    expect(rungsOf(of("push-up-toes", 20), of("front-plank", 30))["push-up"]).toBe("push-up-feet-30");
    expect(codesOf(of("push-up-toes", 8))).toEqual(["assess/rung", "assess/rung-conditions"]);
    expect(codesOf(of("push-up-toes", 8), of("front-plank", 40))).toEqual(["assess/rung"]);
    expect(codesOf(of("push-up-toes", 8), of("front-plank", 40, { conditions: { from: "knees" } }))).toContain(
      "assess/rung-conditions",
    );
  });
});

test("every start stands on its ladder with a way down to its start", () => {
  const low = ASSESSMENT_TESTS.map(({ id, sides }) => of(id, sides ? [1, 1] : 1));
  const high = ASSESSMENT_TESTS.map(({ id, sides }) => of(id, sides ? [60, 60] : 60));
  for (const { ladder, exercise } of [...starts(low).rungs, ...starts(high).rungs]) {
    const { start } = CATALOGUE.ladders.find(({ id }) => id === ladder)!;
    expect(atOrBelow(CATALOGUE, ladder, exercise), `${ladder}: ${exercise}`).toContain(start);
  }
});
