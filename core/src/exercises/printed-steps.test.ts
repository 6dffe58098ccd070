import { describe, expect, test } from "vitest";
import type { ExerciseId } from "../model/index.ts";
import { CATALOGUE } from "./catalogue.ts";

/**
 * The ladders as our tables print them, ours, unsigned: the numbers of the printed forms with the entries that are that
 * form, and the lines that may be walked. `beside` are our own steps: between entries of one printed form, and ways in.
 */
interface Printed {
  readonly forms: string;
  readonly lines: string;
  readonly beside?: string;
}

const PRINTED: Readonly<Record<string, Printed>> = {
  // Numbers 8 to 11 behind the letter are the upside-down branch of the overhead press, which begins on a push-up.
  "push-up": {
    forms: `1 wall-push-up, 2 counter-push-up, 3 push-up-60, 4 knee-push-up, 5 push-up-30, 6 floor-push-up,
      7 push-up-feet-30, 8 push-up-feet-60, 9 push-up-loaded, 10 strap-push-up, 11 uneven-push-up, 12 one-arm-push-up,
      o8 pike-push-up, o9 pike-push-up-feet-raised, o10 wall-handstand-hold, o11 wall-handstand-push-up`,
    lines: "1 2 3 5 6 7 8, 3 4 6, 6 9, 6 10, 8 11 12, 7 o8 o9 o11, o9 o10 o11",
  },
  row: {
    forms: `1 band-row-standing, 2 inverted-row-30, 3 inverted-row-45, 4 inverted-row-60, 5 inverted-row-knees-bent,
      6 inverted-row-75, 7 inverted-row-feet-raised, 8 inverted-row-loaded, 9 one-arm-inverted-row,
      10 one-arm-inverted-row-flat`,
    lines: "1 2 3 4 5 6 7 8, 7 9 10",
  },
  "loaded-row": {
    forms: "1 chest-supported-row, 2 one-arm-row, 3 cable-row-seated, 4 bent-over-row",
    lines: "1 2 3 4",
  },
  "pull-up": {
    forms: `1 lat-pull-down, 2 box-hang, 3 dead-hang, 4 hang-blades-down, 5 assisted-pull-up|band-assisted-pull-up,
      6 lowering-pull-up, 7 chin-up, 8 pull-up, 9 pull-up-pause, 10 pull-up-loaded, 11 uneven-pull-up`,
    lines: "1 5 6 7 8 9, 1 2 3 4 5, 8 10, 10 11",
  },
  overhead: {
    forms: `1 dumbbell-press-partial, 2 band-overhead-press-seated, 3 half-kneeling-angled-press, 4 half-kneeling-press,
      5 dumbbell-press-seated, 6 dumbbell-press-standing, 7 barbell-overhead-press`,
    lines: "1 2 5 6 7, 1 3 4 5",
  },
  squat: {
    forms: `1 sit-to-stand-high, 2 sit-to-stand-45, 3 touch-and-go-squat, 4 body-squat, 5 body-squat-pause,
      6 goblet-squat, 7 double-dumbbell-front-squat, 8 back-squat|front-rack-squat, 9 back-squat-pause`,
    lines: "1 2 3 4 6 7 8, 4 5",
    beside: "back-squat → back-squat-pause",
  },
  // Numbers 10 and 11 behind the letter are the one-leg squats of the squat ladder, which go on from the elevated form.
  "single-leg": {
    forms: `1 split-squat-support, 2 split-squat-support-full, 3 split-squat-free, 4 reverse-lunge, 5 split-squat-dumbbell,
      6 forward-lunge, 7 walking-lunge, 8 rear-foot-split-squat-body, 9 rear-foot-split-squat, 10 lateral-lunge,
      11 reverse-lunge-deficit, 12 jump-lunge, s10 one-leg-squat-bench, s11 one-leg-squat-free`,
    lines: "1 2 3 4 6 7, 3 5, 5 8 9, 3 10, 4 11, 6 12, 8 s10 s11",
    beside: "walking-lunge → walking-lunge-loaded, lateral-lunge → lateral-lunge-loaded",
  },
  hinge: {
    forms: `1 hip-fold-stick, 2 wall-reach-hinge, 3 kettlebell-deadlift-raised|band-pull-through, 4 kettlebell-deadlift,
      5 dumbbell-rdl, 6 hex-bar-deadlift, 7 barbell-rdl, 8 barbell-deadlift-blocks, 9 barbell-deadlift,
      10 split-stance-deadlift, 10b one-leg-deadlift, 11 kettlebell-swing,
      12 barbell-deadlift-pause|barbell-deadlift-deficit`,
    lines: "1 2 3 4 5 7, 4 6 9 12, 5 8 9, 5 10 10b, 4 11",
    beside: "wall-reach-hinge → bag-deadlift-raised, bag-deadlift-raised → kettlebell-deadlift",
  },
  bridge: {
    forms: `1 floor-bridge, 2 floor-bridge-pause, 3 floor-bridge-load, 4 floor-bridge-feet-raised, 5 marching-bridge,
      6 one-leg-bridge, 7 bench-bridge, 8 hip-thrust, 9 one-leg-hip-thrust`,
    lines: "1 2 7 8, 2 3, 2 4, 2 5, 2 6, 6 9, 8 9",
  },
  "front-trunk": {
    forms: `1 hands-knees-brace, 2 dead-bug, 3 dead-bug-opposite, 4 bench-plank, 5 knee-plank, 6 forearm-plank,
      7 long-lever-plank, 8 body-saw, 9 ball-roll-out, 10 wheel-roll-out, 11 hollow-hold, 12 standing-roll-out`,
    lines: "1 4 5 6 7 8, 1 2 3 11, 6 9 10 12",
    // A way in that needs no floor.
    beside: "wall-forearm-plank → bench-plank, wall-forearm-plank → hands-knees-brace",
  },
  "side-plank": {
    forms: `1 wall-side-plank, 2 side-plank-knees, 3 side-plank-staggered, 4 side-plank, 5 side-plank-leg-lift,
      7 side-plank-reach-under, 8a adductor-side-plank-short, 8b adductor-side-plank-long, 8c side-plank-feet-bench`,
    // The second and third printed form are one entry: a short and a long hold on the knees.
    lines: "1 2 3 4 5, 4 7, 4 8a 8b, 5 8c",
  },
  carry: {
    // The second and third printed form are one entry: more load in the same two hands.
    forms: `1 loaded-march, 2 carry-two-hand, 4 goblet-carry, 5 suitcase-carry, 6 rack-carry, 7 overhead-carry,
      8 hex-bar-carry, 9 carry-mixed`,
    lines: "1 2 8, 2 4, 2 5 6 7, 5 9, 7 9",
    beside: "loaded-march → bag-hug-carry",
  },
  "step-up": {
    // The first and second printed form are one entry: 10 cm or a stair, with a hand on the rail.
    forms: `1 step-up-low, 3 step-up-20, 4 step-up-30, 5 step-up-30-loaded, 6 lateral-step-up, 7 step-up-knee-height,
      8 step-down-slow, 9 step-up-knee-height-loaded`,
    lines: "1 3 4 7, 4 5, 5 9, 7 9, 3 6, 3 8",
  },
  calf: {
    forms: `1 calf-raise-seated, 2 calf-raise-wall, 3 calf-raise-step, 4 calf-raise-two-up, 5 one-leg-calf-raise,
      6 one-leg-calf-raise-step, 7 one-leg-calf-raise-loaded, 8 calf-raise-bent-knee, 9 pogo`,
    lines: "1 2 3 4 5 6 7, 2 8, 5 9",
  },
  "press-up": { forms: "1 chair-press-up, 2 narrow-push-up-60", lines: "1 2" },
  dip: {
    // The third and fourth printed form are one entry: less help from the same machine.
    forms: `3 assisted-dip, 5 dip-support-hold, 6 lowering-dip, 7 dip, 8 dip-loaded, 9a ring-support-hold, 9b ring-dip`,
    lines: "3 6 7 8, 3 5 6, 7 9a 9b",
  },
  jump: {
    forms: `1 snap-down, 2 pogo, 3 low-box-jump, 4 jump-squat, 5 drop-jump-30, 6 two-jumps, 7 standing-long-jump,
      8 drop-stick-60`,
    lines: "1 3 4 6 7 8, 1 2, 4 5 8",
  },
};

const START: Readonly<Record<string, ExerciseId>> = { "front-trunk": "wall-forearm-plank" };

function list(text: string): readonly string[] {
  return text.split(",").map((part) => part.trim());
}

describe("the steps of a ladder are the printed ones", () => {
  test.each(Object.entries(PRINTED))("%s", (id, { forms, lines, beside }) => {
    const entries = new Map(
      list(forms).map((form) => {
        const [number, ids] = form.split(" ") as [string, string];
        return [number, ids.split("|")];
      }),
    );
    const steps = list(lines).flatMap((line) => {
      const numbers = line.split(" ");
      return numbers
        .slice(1)
        .flatMap((to, i) =>
          entries.get(numbers[i]!)!.flatMap((from) => entries.get(to)!.map((form) => `${from} → ${form}`)),
        );
    });
    const printed = [...new Set(steps), ...(beside === undefined ? [] : list(beside))];
    const ladder = CATALOGUE.ladders.find((each) => each.id === id)!;
    expect(ladder.steps.map(({ from, to }) => `${from} → ${to}`).sort()).toEqual(printed.sort());
    expect(ladder.start).toBe(START[id] ?? [...entries.values()][0]![0]);
  });

  test("there are no other ladders: the fifteen tables, rows with a load and pushing down as lines of their own", () => {
    expect(CATALOGUE.ladders.map(({ id }) => id).sort()).toEqual(Object.keys(PRINTED).sort());
    expect(CATALOGUE.ladders.length).toBe(15 + 2);
  });
});

/** Entry criteria as the tables print them: the form, the count asked of which form, how many plain conditions beside. */
const COUNTS = `
  counter-push-up | 15 wall-push-up | 1
  push-up-60 | - | 1
  knee-push-up | - | 1
  push-up-30 | 8 push-up-60 | 1
  floor-push-up | 10 push-up-30 | 1
  push-up-feet-30 | 12 floor-push-up | 0
  push-up-feet-60 | 10 push-up-feet-30 | 0
  push-up-loaded | 15 floor-push-up | 0
  strap-push-up | 12 floor-push-up | 1
  uneven-push-up | 8 push-up-feet-60 | 1
  wall-handstand-hold | - | 2
  inverted-row-45 | 12 inverted-row-30 | 0
  inverted-row-60 | 12 inverted-row-45 | 0
  inverted-row-knees-bent | 10 inverted-row-60 | 0
  inverted-row-75 | 10 inverted-row-knees-bent | 0
  inverted-row-feet-raised | 10 inverted-row-75 | 0
  inverted-row-loaded | 12 inverted-row-feet-raised | 0
  one-arm-inverted-row | 10 inverted-row-feet-raised | 0
  one-arm-inverted-row-flat | 8 one-arm-inverted-row | 1
  box-hang | 12 lat-pull-down | 1
  hang-blades-down | 20 s dead-hang | 0
  assisted-pull-up | 12 lat-pull-down | 1
  band-assisted-pull-up | 8 hang-blades-down | 1
  lowering-pull-up | 8 assisted-pull-up | 2
  chin-up | 5 lowering-pull-up | 1
  pull-up | 5 chin-up | 0
  pull-up-pause | 8 pull-up | 0
  pull-up-loaded | 8 pull-up | 0
  uneven-pull-up | 5 pull-up-loaded | 1
  barbell-overhead-press | 10 dumbbell-press-standing | 2
  sit-to-stand-45 | 10 sit-to-stand-high | 0
  body-squat | 12 touch-and-go-squat | 1
  body-squat-pause | 12 body-squat | 0
  goblet-squat | 15 body-squat | 0
  double-dumbbell-front-squat | 10 goblet-squat | 1
  back-squat | 10 goblet-squat | 3
  one-leg-squat-bench | 8 rear-foot-split-squat-body | 0
  one-leg-squat-free | 8 one-leg-squat-bench | 1
  rear-foot-split-squat-body | 12 split-squat-dumbbell | 1
  jump-lunge | - | 1
  kettlebell-deadlift-raised | 10 hip-fold-stick | 1
  band-pull-through | 10 hip-fold-stick | 1
  barbell-deadlift | 8 hex-bar-deadlift | 2
  kettlebell-swing | 10 kettlebell-deadlift | 2
  one-leg-bridge | 15 floor-bridge-pause | 1
  hip-thrust | 15 bench-bridge | 0
  one-leg-hip-thrust | 12 one-leg-bridge | 1
  forearm-plank | 3 × 30 s knee-plank | 1
  long-lever-plank | 3 × 30 s forearm-plank | 1
  body-saw | 3 × 30 s long-lever-plank | 1
  one-leg-calf-raise-loaded | - | 1
  pogo | 20 calf-raise-wall | 0
  lowering-dip | - | 3
  dip | 5 lowering-dip | 1
  snap-down | 15 body-squat | 1
  low-box-jump | - | 1
  jump-squat | 15 low-box-jump | 2
  drop-jump-30 | - | 2
  standing-long-jump | - | 1
  drop-stick-60 | - | 2
`
  .trim()
  .split("\n")
  .map((line) => line.split("|").map((part) => part.trim()) as [ExerciseId, string, string]);

test.each(COUNTS)("%s asks first for %s and %s conditions", (id, asked, conditions) => {
  const { count, conditions: said } = CATALOGUE.exercises.get(id)!.need;
  const sets = count?.sets === undefined ? "" : `${count.sets} × `;
  const amount = count?.holdS === undefined ? `${count?.reps}` : `${count.holdS} s`;
  expect(count === undefined ? "-" : `${sets}${amount} ${count.of}`).toBe(asked);
  expect(said.length).toBe(Number(conditions));
});
