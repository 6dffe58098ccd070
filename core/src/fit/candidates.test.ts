import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { Dose, Exercise, Ladder, Lift, Person, Phase, Place, Slot } from "../model/index.ts";
import {
  hold,
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpPhase,
  madeUpPlace,
  madeUpSlot,
  reps,
  sets,
} from "../testing/index.ts";
import { admitFor, choicesFor } from "./candidates.ts";

const on = day("2027-03-01");
const form = (id: string, more: Partial<Exercise> = {}) => madeUpExercise({ id, ...more });

interface Said {
  readonly person?: Partial<Person>;
  readonly place?: Partial<Place>;
  readonly phase?: Partial<Phase>;
  readonly ladders?: readonly Ladder[];
}

function choose(slot: Slot, exercises: readonly Exercise[], { person, place, phase, ladders }: Said = {}) {
  const context = {
    phase: madeUpPhase([], { weeks: 1, ...phase }),
    person: madeUpPerson({ status: "intermediate", ...person }),
    place: madeUpPlace(place),
    catalogue: madeUpCatalogue(exercises, ladders),
    on,
  };
  return choicesFor(context, admitFor(context), slot);
}
const names = (found: ReturnType<typeof choose>) => found.candidates.map(({ exercise }) => exercise.id);
const eight = sets(3, reps(8));
const did = (exercise: string, more: Partial<Lift> = {}): Lift => ({
  exercise,
  reps: 8,
  on: day("2027-02-20"),
  ...more,
});

describe("which forms are thought of", () => {
  const squat = form("squat", { muscles: { "front thigh": 1 } });
  const more = [
    squat,
    form("same"),
    form("near", { pattern: "single leg" }),
    form("counts", { pattern: "hinge", alsoCounts: "squat" }),
    form("other", { pattern: "hinge" }),
  ];

  test("the pattern's, a neighbour's, those that also count as it, and the first choice whatever it is", () => {
    expect(names(choose(madeUpSlot("squat", "squat", eight), more)).toSorted()).toEqual([
      "counts",
      "near",
      "same",
      "squat",
    ]);
    expect(names(choose(madeUpSlot("other", "squat", eight), more))).toContain("other");
  });

  test("for a single joint, only those that train one of the slot's muscles", () => {
    const curl = form("curl", { pattern: "upper isolation", muscles: { biceps: 1, forearm: 0.5 } });
    const all = [
      curl,
      form("hammer", { pattern: "upper isolation", muscles: { biceps: 0.5 } }),
      form("wrist", { pattern: "upper isolation", muscles: { forearm: 1 } }),
      form("press-down", { pattern: "upper isolation", muscles: { triceps: 1 } }),
    ];
    const slot = madeUpSlot("curl", "upper isolation", eight);
    // The helping muscle of the first choice is not what it is for.
    expect(names(choose(slot, all)).toSorted()).toEqual(["curl", "hammer"]);
    expect(names(choose({ ...slot, muscles: ["triceps", "forearm"] }, all)).toSorted()).toEqual([
      "curl",
      "press-down",
      "wrist",
    ]);
    const legs = madeUpSlot("leg-curl", "lower isolation", eight);
    const both = [
      form("leg-curl", { pattern: "lower isolation", muscles: { "back thigh": 1 } }),
      form("leg-extension", { pattern: "lower isolation", muscles: { "front thigh": 1 } }),
    ];
    expect(names(choose(legs, both))).toEqual(["leg-curl"]);
  });

  test("for a single joint whose first choice nobody knows, all of its pattern", () => {
    const all = [form("a", { pattern: "upper isolation" }), form("b", { pattern: "upper isolation" })];
    expect(names(choose(madeUpSlot("no-such", "upper isolation", eight), all))).toEqual(["a", "b"]);
  });
});

describe("the order of candidates", () => {
  test("most want points first; of equals what is on record, then what takes a load, then the name", () => {
    const all = [
      form("d"),
      form("c", { loadMeaning: "one implement" }),
      form("b"),
      form("a"),
      form("first"),
      form("near", { pattern: "single leg" }),
    ];
    const place = { kettlebells: [{ value: 8, unit: "kg" }] } as const;
    const slot = madeUpSlot("first", "squat", eight);
    expect(names(choose(slot, all, { place }))).toEqual(["first", "c", "a", "b", "d", "near"]);
    const branches = {
      id: "l",
      name: "L",
      start: "first",
      steps: ["a", "b", "d"].map((to) => ({ from: "first", to, branch: to })),
    };
    const onRecord = choose(slot, all, { place, ladders: [branches], person: { lifts: [did("d", { reps: 1 })] } });
    expect(names(onRecord)).toEqual(["d", "a", "b", "first", "c", "near"]);
  });

  test("does not hang on the order of the catalogue", () => {
    const all = ["a", "b", "c", "first"].map((id) => form(id));
    const slot = madeUpSlot("first", "squat", eight);
    expect(names(choose(slot, all.toReversed()))).toEqual(names(choose(slot, all)));
  });
});

describe("what is set aside", () => {
  test("is named with every reason, in the order of names", () => {
    const all = [form("z", { needs: [["rack"]] }), form("b", { needs: [["sled"]], coachOnly: true }), form("first")];
    expect(choose(madeUpSlot("first", "squat", eight), all).aside).toEqual([
      {
        exercise: "b",
        why: [
          { code: "offer/equipment", data: { groups: [["sled"]] } },
          { code: "offer/coach-only", data: {} },
        ],
      },
      { exercise: "z", why: [{ code: "offer/equipment", data: { groups: [["rack"]] } }] },
    ]);
  });

  test("one week whose dose may not be done sets a form aside for the phase", () => {
    const plank = form("plank", { pattern: "anti-extension", amounts: "hold", hold: { from: 10, to: 60, step: 10 } });
    const slot = (from: number) =>
      madeUpSlot("plank", "anti-extension", sets(2, hold(20)), { changes: [{ week: 2, dose: sets(2, hold(from)) }] });
    const phase = { weeks: 2 };
    expect(names(choose(slot(30), [plank], { phase }))).toEqual(["plank"]);
    expect(choose(slot(30), [plank], { phase }).candidates[0]!.doses).toEqual([sets(2, hold(20)), sets(2, hold(30))]);
  });

  test("a form whose lightest load is too heavy here is set aside with that reason", () => {
    const press = form("press", { loadMeaning: "one implement", needs: [["kettlebell"]] });
    const place = { equipment: { kettlebell: 1 }, kettlebells: [{ value: 24, unit: "kg" }] } as const;
    const person = { lifts: [did("press", { load: { value: 8, unit: "kg" } })] };
    const found = choose(madeUpSlot("press", "squat", eight), [press], { place, person });
    expect(found.candidates).toEqual([]);
    expect(found.aside).toMatchObject([{ exercise: "press", why: [{ code: "loads/lightest-too-heavy" }] }]);
  });
});

describe("too light", () => {
  const easy = form("easy");
  const hard = form("hard");
  const ladder: Ladder = { id: "l", name: "L", start: "easy", steps: [{ from: "easy", to: "hard", branch: "main" }] };
  const slot = (dose: Dose) => madeUpSlot("easy", "squat", dose);
  const lightness = (lift: Lift, dose: Dose = eight) =>
    choose(slot(dose), [easy, hard], { ladders: [ladder], person: { lifts: [lift] } }).candidates.find(
      ({ exercise }) => exercise.id === "easy",
    )!;

  test("is the body alone from 5 repetitions over those asked, of the form or of a harder one of its ladder", () => {
    expect(lightness(did("easy", { reps: 12, reserve: 0 })).tooLight).toBe(false);
    expect(lightness(did("easy", { reps: 13, reserve: 0 })).tooLight).toBe(true);
    expect(lightness(did("hard", { reps: 13, reserve: 0 })).tooLight).toBe(true);
    const upward = choose(slot(eight), [easy, hard], {
      ladders: [ladder],
      person: { lifts: [did("easy", { reps: 30 })] },
    });
    expect(upward.candidates.find(({ exercise }) => exercise.id === "hard")!.tooLight).toBe(false);
  });

  test("asks for long slow sets in every week, and costs points", () => {
    const found = lightness(did("easy", { reps: 20, reserve: 0 }));
    expect(found.doses[0]!.sets[0]!.amount).toEqual({ kind: "reps", span: { from: 15, to: 30 } });
    expect(found.lines).toContainEqual({ id: "fit/too-light", level: "want", points: -60, data: {} });
    expect(found.want).toBe(found.lines.reduce((sum, { points }) => sum + points, 0));
  });

  test("is never as many as possible, a hold, or a dose that asks for less than the form has on record", () => {
    const most = { sets: [{ amount: { kind: "most" }, eachSide: false }] } as const satisfies Dose;
    expect(lightness(did("easy", { reps: 40 }), most).tooLight).toBe(false);
  });
});

describe("a pin", () => {
  const all = [form("first"), form("other"), form("far", { needs: [["rack"]] }), form("coach", { coachOnly: true })];
  const slot = madeUpSlot("first", "squat", eight);
  const pin = (exercise: string) => choose(slot, all, { person: { pins: [{ slot: "first", exercise }] } });

  test("leaves the slot only the coach's form, one that is never offered by itself too", () => {
    expect(names(pin("other"))).toEqual(["other"]);
    expect(pin("other").pinned).toEqual({ exercise: "other", kept: true, why: [] });
    expect(names(pin("coach"))).toEqual(["coach"]);
  });

  test("gives way to what may never be, with the reason, and the slot chooses as usual", () => {
    expect(pin("far").pinned).toEqual({
      exercise: "far",
      kept: false,
      why: [{ code: "offer/equipment", data: { groups: [["rack"]] } }],
    });
    expect(names(pin("far"))).toEqual(["first", "other"]);
  });

  test("on a form that nobody knows says so; a pin of sets, or of another slot, is no pin of the form", () => {
    expect(pin("no-such").pinned).toEqual({
      exercise: "no-such",
      kept: false,
      why: [{ code: "fit/unknown-exercise", data: { exercise: "no-such" } }],
    });
    const others = [
      { slot: "first", sets: 2 },
      { slot: "elsewhere", exercise: "other" },
    ];
    const found = choose(slot, all, { person: { pins: others } });
    expect(found.pinned).toBeUndefined();
    expect(names(found)).toEqual(["first", "other"]);
  });
});
