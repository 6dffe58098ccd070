import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { Exercise, Person, Place, Session } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpPlace,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
} from "../testing/index.ts";
import type { FitInput } from "./build.ts";
import { whyNot, whyThis } from "./explain.ts";
import { fitPhase } from "./fit.ts";

const form = (id: string, more: Partial<Exercise> = {}) => madeUpExercise({ id, ...more });
const three = sets(3, reps(10));
const first = form("first", { muscles: { "front thigh": 1 } });
const same = form("same", { muscles: { "front thigh": 1 } });
const near = form("near", { pattern: "single leg", muscles: { buttocks: 1 } });
const far = form("far", { needs: [["rack"]] });
const pull = form("pull", { pattern: "horizontal pull" });

function input(
  sessions: readonly Session[],
  said: {
    readonly person?: Partial<Person>;
    readonly place?: Partial<Place>;
    readonly forms?: readonly Exercise[];
  } = {},
): FitInput {
  const programme = madeUpProgramme(sessions);
  return {
    programme,
    phase: { ...programme.phases[0]!, weeks: 1 },
    person: madeUpPerson({ status: "intermediate", minutes: 60, ...said.person }),
    place: madeUpPlace(said.place),
    catalogue: madeUpCatalogue(said.forms ?? [first, same, near, far, pull]),
    on: day("2027-03-01"),
    perWeek: sessions.length,
  };
}
const slot = madeUpSlot("first", "squat", three);
const one = [madeUpSession("a", 40, [slot])];

/** Why the first slot has what it has, as codes with what they name. */
function codes(task: FitInput): readonly string[] {
  const [fitted] = fitPhase(task).sessions[0]!.blocks[0]!.slots;
  return whyThis(fitted!).map(({ code, data }) =>
    [code, data["exercise"], data["first"], data["could"]].join(" ").trim(),
  );
}

describe("why this", () => {
  test("the coach's first choice, where it may be done", () => {
    expect(codes(input(one))).toEqual(["fit/first-choice first"]);
  });

  test("a pin, and a pin that gives way", () => {
    const pinned = (exercise: string) => input(one, { person: { pins: [{ slot: "first", exercise }] } });
    expect(codes(pinned("near"))).toEqual(["fit/pinned near"]);
    expect(codes(pinned("far"))).toEqual(["fit/first-choice first", "fit/pin-beaten far"]);
  });

  test("instead of a first choice that is set aside, with the reasons against it", () => {
    const asked = [madeUpSession("a", 40, [{ ...slot, first: "far" }])];
    const [fitted] = fitPhase(input(asked)).sessions[0]!.blocks[0]!.slots;
    expect(whyThis(fitted!)[0]).toEqual({
      code: "fit/instead",
      data: {
        first: "far",
        exercise: "first",
        why: [{ code: "offer/equipment", data: { groups: [["rack"]] } }],
      },
    });
  });

  test("more points than the first choice, where that may be done too", () => {
    expect(
      codes(
        input(one, { person: { dislikes: ["first"], lifts: [{ exercise: "same", reps: 8, on: day("2027-02-01") }] } }),
      ),
    ).toEqual(["fit/first-choice first", "fit/disliked"]);
    const long = { ...first, setupS: 3000 };
    const hurried = [madeUpSession("a", 40, [slot])];
    expect(codes(input(hurried, { forms: [long, same] }))).toEqual(["fit/more-points same first"]);
  });

  test("likes, watched stresses and changed sets are said beside it", () => {
    const short = { ...first, secondsPerRep: 60 };
    const task = input([madeUpSession("a", 20, [slot])], { forms: [short], person: { likes: ["first"] } });
    const [fitted] = fitPhase(task).sessions[0]!.blocks[0]!.slots;
    // 10 repetitions of 60 s are 12.5 min with a quarter more: there is time for one set.
    expect(whyThis(fitted!)).toEqual([
      { code: "fit/first-choice", data: { exercise: "first" } },
      { code: "fit/liked", data: {} },
      { code: "fit/sets-changed", data: { asked: 3, sets: 1 } },
    ]);
  });

  test("open, because there is no room for what could come", () => {
    const long = { ...first, setupS: 3000 };
    expect(codes(input(one, { forms: [long] }))).toEqual(["fit/no-room  first first"]);
  });

  test("open, because nothing fits, with the reasons against the first choice", () => {
    const [fitted] = fitPhase(input([madeUpSession("a", 40, [{ ...slot, first: "far" }])], { forms: [far] }))
      .sessions[0]!.blocks[0]!.slots;
    expect(whyThis(fitted!)).toEqual([
      { code: "fit/nothing-fits", data: { pattern: "squat", tried: 1 } },
      {
        code: "fit/set-aside",
        data: { exercise: "far", why: [{ code: "offer/equipment", data: { groups: [["rack"]] } }] },
      },
    ]);
  });
});

describe("why not", () => {
  test("it is what the plan has", () => {
    expect(whyNot(input(one), "first", "first")).toEqual({ kind: "chosen" });
  });

  test("it is set aside, with every reason", () => {
    expect(whyNot(input(one), "first", "far")).toEqual({
      kind: "set aside",
      why: [{ code: "offer/equipment", data: { groups: [["rack"]] } }],
    });
  });

  test("another form is pinned", () => {
    const pins = [{ slot: "first", exercise: "near" }];
    expect(whyNot(input(one, { person: { pins } }), "first", "same")).toEqual({ kind: "pinned", exercise: "near" });
    expect(whyNot(input(one, { person: { pins } }), "first", "near")).toEqual({ kind: "chosen" });
  });

  test("the slot never asks for its pattern; the phase has no such slot", () => {
    expect(whyNot(input(one), "first", "pull")).toEqual({ kind: "not thought of" });
    expect(whyNot(input(one), "no-such", "first")).toBeUndefined();
  });

  test("no plan with it keeps the session within its minutes", () => {
    const long = { ...same, setupS: 3000 };
    expect(whyNot(input(one, { forms: [first, long] }), "first", "same")).toEqual({ kind: "does not fit" });
  });

  test("it costs points, and says of which constraints: they sum up to the loss", () => {
    const answer = whyNot(input(one), "first", "near");
    if (answer?.kind !== "costs") throw new Error(`It is ${answer?.kind}`);
    const lost = (level: "must" | "want") =>
      answer.lines.reduce((sum, line) => (line.level === level ? sum + line.best - line.forced : sum), 0);
    expect([lost("must"), lost("want")]).toEqual([0 - answer.must, answer.want]);
    expect(answer).toMatchObject({ must: 0, proven: true });
    // The first choice suits (100), is of the pattern (60), has its muscles (40); a neighbour counts 25.
    const points = Object.fromEntries(answer.lines.map(({ id, best, forced }) => [id, forced - best]));
    expect(points).toMatchObject({
      "fit/suits": -100,
      "fit/pattern": -60,
      "fit/neighbour-pattern": 25,
      "fit/muscles": -40,
    });
  });

  test("it pushes a form out of another slot, and the loss counts that too", () => {
    const both = [madeUpSession("a", 40, [slot, { ...slot, slot: "second", first: "same" }])];
    const answer = whyNot(input(both, { forms: [first, same] }), "first", "same");
    expect(answer).toMatchObject({ kind: "costs", must: 0 });
    if (answer?.kind !== "costs") throw new Error();
    expect(answer.lines.find(({ id }) => id === "fit/suits")).toEqual({
      id: "fit/suits",
      level: "want",
      best: 200,
      forced: 0,
    });
  });

  test("it takes the time of another slot, which then stays open: that is a must point", () => {
    const slow = { ...same, setupS: 1500 };
    const both = [madeUpSession("a", 40, [slot, madeUpSlot("pull", "horizontal pull", three)])];
    const task = input(both, { forms: [first, slow, { ...pull, setupS: 600 }] });
    expect(whyNot(task, "first", "same")).toMatchObject({ kind: "costs", must: 10 });
  });
});
