import { expect, test } from "vitest";
import type { Pattern, Place } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPhase,
  madeUpPlace,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
  timeOf,
} from "../testing/index.ts";
import { patternNeverTrained } from "./pattern-never-trained.ts";
import { lookAt } from "./run/look.ts";

const PATTERN_OF: Readonly<Record<string, Pattern>> = {
  squat: "squat",
  hinge: "hinge",
  "split-squat": "single leg",
  push: "horizontal push",
  pull: "vertical pull",
  plank: "anti-extension",
  carry: "carry",
  curl: "upper isolation",
};
const exercises = Object.entries(PATTERN_OF).map(([id, pattern]) => madeUpExercise({ id, name: `The ${id}`, pattern }));
const catalogue = madeUpCatalogue(
  [
    ...exercises,
    madeUpExercise({ id: "band-row", name: "Band row", pattern: "horizontal pull", needs: [["band"]] }),
    madeUpExercise({ id: "wall-hinge", name: "Wall hinge", pattern: "hinge", amounts: "reps" }),
    madeUpExercise({
      id: "short-plank",
      name: "Short plank",
      pattern: "anti-extension",
      amounts: "hold",
      hold: { from: 10, to: 60, step: 5 },
    }),
    madeUpExercise({ id: "cycle", name: "Cycle", pattern: "locomotion" }),
  ],
  [
    { id: "row", name: "Row", start: "band-row", steps: [] },
    { id: "pull-down", name: "Pull-down", start: "pull", steps: [] },
    { id: "hinge", name: "Hinge", start: "wall-hinge", steps: [] },
    { id: "plank", name: "Plank", start: "short-plank", steps: [] },
  ],
);

const dose = sets(2, reps(8));
const slotsOf = (names: readonly string[]) => names.map((id) => madeUpSlot(id, PATTERN_OF[id] ?? "squat", dose));
const ALL = ["squat", "hinge", "split-squat", "push", "pull", "plank", "carry"];
const without = (...names: readonly string[]) => ALL.filter((name) => !names.includes(name));
const doc = (names: readonly string[], more: { place?: Place } = {}) => ({
  programme: madeUpProgramme([madeUpSession("a", 45, slotsOf(names))]),
  catalogue,
  ...more,
});
const PHASE = ["phases", 0];

testCheck(patternNeverTrained, {
  fine: {
    "every lane": doc(ALL),
    "lanes spread over two sessions": {
      programme: madeUpProgramme([
        madeUpSession("a", 45, slotsOf(ALL.slice(0, 3))),
        madeUpSession("b", 45, slotsOf(ALL.slice(3))),
      ]),
      catalogue,
    },
    "conditioning in place of a carry": {
      programme: madeUpProgramme([
        madeUpSession("a", 45, slotsOf(without("carry")), {
          conditioning: [{ do: "cycle", dose: sets(1, timeOf(600)), effort: "easy" }],
        }),
      ]),
      catalogue,
    },
    "an exercise that nobody knows, whose slot says what it is for": {
      programme: madeUpProgramme([
        madeUpSession("a", 45, [...slotsOf(without("hinge")), madeUpSlot("moonwalk", "hinge", dose)]),
      ]),
      catalogue,
    },
  },
  bad: {
    "no pull": {
      doc: doc(without("pull")),
      at: [PHASE],
      data: [{ phase: "one", lane: "pull", status: "novice" }],
      severity: ["warn"],
    },
    "a squat that single-leg work stands in for, and no trunk work for a novice": {
      doc: doc(without("squat", "plank")),
      at: [PHASE, PHASE],
      data: [{ lane: "squat" }, { lane: "trunk" }],
      severity: ["note", "warn"],
    },
    "one set of single-leg work stands in for a squat": {
      doc: {
        programme: madeUpProgramme([
          madeUpSession("a", 45, [
            ...slotsOf(without("squat", "split-squat")),
            madeUpSlot("split-squat", "single leg", sets(1, reps(8))),
          ]),
        ]),
        catalogue,
      },
      at: [PHASE],
      data: [{ lane: "squat" }],
      severity: ["note"],
    },
    "neither squat nor single leg": {
      doc: doc(without("squat", "split-squat")),
      at: [PHASE, PHASE],
      data: [{ lane: "squat" }, { lane: "single leg" }],
      severity: ["warn", "note"],
    },
    "only curls": {
      doc: doc(["curl"]),
      at: [PHASE, PHASE, PHASE, PHASE, PHASE, PHASE, PHASE],
      data: ["squat", "hinge", "single leg", "push", "pull", "trunk", "carry or conditioning"].map((lane) => ({
        lane,
      })),
    },
    "one phase of two": {
      doc: {
        programme: madeUpProgramme([], {
          phases: [
            madeUpPhase([madeUpSession("a", 45, slotsOf(ALL))]),
            madeUpPhase([madeUpSession("a", 45, slotsOf(without("hinge")))], { key: "two" }),
          ],
        }),
        catalogue,
      },
      at: [["phases", 1]],
      data: [{ phase: "two", lane: "hinge" }],
    },
  },
});

test("the remedy is the first form of a ladder, in the session with most time to spare", () => {
  const two = {
    programme: madeUpProgramme([
      madeUpSession("long", 30, slotsOf(without("pull"))),
      madeUpSession("short", 60, slotsOf(without("pull"))),
    ]),
    catalogue,
  };
  const cures = patternNeverTrained.run(lookAt(two))[0]?.cures?.() ?? [];
  expect(cures[0]?.data).toEqual({ exercise: "band-row", name: "Band row", session: "Session short", sets: 2 });
  expect(cures[0]?.changes).toMatchObject([
    {
      op: "insert",
      at: ["phases", 0, "sessions", 1, "work", 6],
      value: { pattern: "horizontal pull", first: "band-row" },
    },
  ]);
});

test("in a place without bands it is a form that can be done there", () => {
  const cures = patternNeverTrained
    .run(lookAt(doc(without("pull"), { place: madeUpPlace({ equipment: {} }) })))[0]
    ?.cures?.();
  expect(cures?.map((cure) => cure.data["exercise"])).toEqual(["pull", "pull"]);
});

test("a hold is asked at the low end of its range", () => {
  const [found] = patternNeverTrained.run(lookAt(doc(without("plank"))));
  const change = found?.cures?.()[0]?.changes[0];
  expect(change).toMatchObject({
    value: {
      first: "short-plank",
      way: "hold time",
      dose: { sets: [{ amount: { kind: "hold", span: { from: 10, to: 20 } } }, {}] },
    },
  });
});
