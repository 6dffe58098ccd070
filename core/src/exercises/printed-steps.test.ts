import { describe, expect, test } from "vitest";
import type { ExerciseId } from "../model/index.ts";
import { CATALOGUE } from "./catalogue.ts";

/**
 * The order of the lower-body ladders as our table prints it, ours, unsigned: the numbers of the printed forms, and the
 * lines that may be walked. Forms without an entry are left out, and a line goes on past them.
 */
interface Printed {
  readonly forms: Readonly<Record<number, readonly ExerciseId[]>>;
  readonly lines: readonly (readonly number[])[];
}

const SQUAT: Printed = {
  forms: {
    1: ["sit-to-stand-high"],
    2: ["sit-to-stand-45"],
    3: ["touch-and-go-squat"],
    4: ["body-squat"],
    5: ["body-squat-pause"],
    6: ["goblet-squat"],
    7: ["double-dumbbell-front-squat"],
    8: ["back-squat", "front-rack-squat"],
    9: ["back-squat-pause"],
  },
  lines: [
    [1, 2, 3, 4, 6, 7, 8],
    [4, 5],
  ],
};

const SINGLE_LEG: Printed = {
  forms: {
    1: ["split-squat-support"],
    2: ["split-squat-support-full"],
    3: ["split-squat-free"],
    4: ["reverse-lunge"],
    5: ["split-squat-dumbbell"],
    6: ["forward-lunge"],
    7: ["walking-lunge"],
    8: ["rear-foot-split-squat-body"],
    9: ["rear-foot-split-squat"],
    10: ["lateral-lunge"],
  },
  lines: [
    [1, 2, 3, 4, 6, 7],
    [3, 5, 8, 9],
    [3, 10],
  ],
};

const HINGE: Printed = {
  forms: {
    1: ["hip-fold-stick"],
    2: ["wall-reach-hinge"],
    3: ["kettlebell-deadlift-raised", "band-pull-through"],
    4: ["kettlebell-deadlift"],
    5: ["dumbbell-rdl"],
    6: ["hex-bar-deadlift"],
    7: ["barbell-rdl"],
    8: ["barbell-deadlift-blocks"],
    9: ["barbell-deadlift"],
    10: ["split-stance-deadlift"],
    11: ["kettlebell-swing"],
  },
  lines: [
    [1, 2, 3, 4, 5, 7],
    [4, 6, 9],
    [5, 8, 9],
    [5, 10],
    [4, 11],
  ],
};

const BRIDGE: Printed = {
  forms: {
    1: ["floor-bridge"],
    2: ["floor-bridge-pause"],
    3: ["floor-bridge-load"],
    6: ["one-leg-bridge"],
    7: ["bench-bridge"],
    8: ["hip-thrust"],
  },
  lines: [
    [1, 2, 7, 8],
    [2, 3],
    [2, 6],
  ],
};

const STEP_UP: Printed = {
  forms: { 1: ["step-up-low"], 3: ["step-up-20"], 4: ["step-up-30"], 8: ["step-down-slow"] },
  lines: [
    [1, 3, 4],
    [3, 8],
  ],
};

const CALF: Printed = {
  forms: {
    1: ["calf-raise-seated"],
    2: ["calf-raise-wall"],
    3: ["calf-raise-step"],
    4: ["calf-raise-two-up"],
    5: ["one-leg-calf-raise"],
    6: ["one-leg-calf-raise-step"],
  },
  lines: [[1, 2, 3, 4, 5, 6]],
};

/** Steps that the printed lines cannot say: within one number, on from a form to another ladder's, and our own. */
const BESIDE: Readonly<Record<string, readonly string[]>> = {
  squat: ["back-squat → back-squat-pause"],
  "single-leg": [
    "rear-foot-split-squat-body → one-leg-squat-bench",
    "one-leg-squat-bench → one-leg-squat-free",
    "walking-lunge → walking-lunge-loaded",
  ],
  hinge: [
    "split-stance-deadlift → one-leg-deadlift",
    "wall-reach-hinge → bag-deadlift-raised",
    "bag-deadlift-raised → kettlebell-deadlift",
  ],
};

const ROWS = [
  ["squat", SQUAT],
  ["single-leg", SINGLE_LEG],
  ["hinge", HINGE],
  ["bridge", BRIDGE],
  ["step-up", STEP_UP],
  ["calf", CALF],
] as const;

describe("the steps of a ladder are the printed ones", () => {
  test.each(ROWS)("%s", (id, { forms, lines }) => {
    const printed = lines.flatMap((line) =>
      line.slice(1).flatMap((to, i) => forms[line[i]!]!.flatMap((a) => forms[to]!.map((b) => `${a} → ${b}`))),
    );
    const ladder = CATALOGUE.ladders.find((each) => each.id === id)!;
    const steps = ladder.steps.map(({ from, to }) => `${from} → ${to}`);
    expect(steps.sort()).toEqual([...printed, ...(BESIDE[id] ?? [])].sort());
    expect(ladder.start).toBe(forms[1]![0]);
  });

  test("the squat table has its eleven rows in the catalogue, the one-leg ones on from the elevated split squat", () => {
    const rows = [...Object.values(SQUAT.forms), ["one-leg-squat-bench"], ["one-leg-squat-free"]];
    expect(rows.length).toBe(11);
    expect(rows.flat().filter((id) => !CATALOGUE.exercises.has(id))).toEqual([]);
  });
});

/** Entry criteria as the tables print them: the form counted, how many, and how many plain conditions beside. */
const COUNTS: readonly (readonly [ExerciseId, ExerciseId, number, number])[] = [
  ["sit-to-stand-45", "sit-to-stand-high", 10, 0],
  ["body-squat", "touch-and-go-squat", 12, 1],
  ["body-squat-pause", "body-squat", 12, 0],
  ["goblet-squat", "body-squat", 15, 0],
  ["double-dumbbell-front-squat", "goblet-squat", 10, 1],
  ["back-squat", "goblet-squat", 10, 3],
  ["one-leg-squat-bench", "rear-foot-split-squat-body", 8, 0],
  ["one-leg-squat-free", "one-leg-squat-bench", 8, 1],
  ["rear-foot-split-squat-body", "split-squat-dumbbell", 12, 1],
  ["kettlebell-deadlift-raised", "hip-fold-stick", 10, 1],
  ["band-pull-through", "hip-fold-stick", 10, 1],
  ["barbell-deadlift", "hex-bar-deadlift", 8, 2],
  ["kettlebell-swing", "kettlebell-deadlift", 10, 2],
  ["one-leg-bridge", "floor-bridge-pause", 15, 1],
  ["hip-thrust", "bench-bridge", 15, 0],
];

test.each(COUNTS)("%s asks first for %s × %i", (id, of, reps, conditions) => {
  const need = CATALOGUE.exercises.get(id)?.need;
  expect(need?.count).toEqual({ of, reps });
  expect(need?.conditions.length).toBe(conditions);
});
