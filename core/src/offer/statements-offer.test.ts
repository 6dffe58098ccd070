import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import type { Exercise, Statement } from "../model/index.ts";
import { STATEMENT_TABLE } from "../tables/index.ts";
import {
  askedAt,
  CHECK_DOSES,
  type CheckDose,
  FULL_ROOM,
  madeUpPlace,
  PRINTED_MOVEMENTS,
  stating,
} from "../testing/index.ts";
import { admitter } from "./admit.ts";
import { clearanceOf } from "./clearance.ts";
import { gradesOf } from "./grade.ts";

/** Section 5.3b of the guide to the catalogue: row, preferred, named stressful. */
const PRINTED = `
1 | sit-to-stand-45 goblet-squat wall-reach-hinge step-up-low counter-push-up band-press-seated chest-press-machine band-row-seated cable-row-seated wall-side-plank band-press-out carry-two-hand bag-hug-carry walk-brisk cycle-upright | barbell-deadlift; sit-up; wheel-roll-out; barbell-bench-press; jump-squat; squat-thrust-jump; one-leg-deadlift; forearm-plank; back-squat from middle; hip-thrust from middle
2 | sit-to-stand-45 floor-bridge step-up-low counter-push-up band-row-seated cable-row-seated dead-bug wall-side-plank walk-easy bag-hug-carry | run; skip-rope; jump-squat; squat-thrust-jump; sit-up; curl-up; wheel-roll-out; barbell-deadlift; forearm-plank; back-squat from middle
3 | sit-to-stand-45 leg-press-mid chest-press-machine cable-row-seated lat-pull-down step-up-low wall-reach-hinge wall-side-plank cycle-upright walk-brisk | barbell-deadlift; pike-push-up; pull-up; leg-press-mid at heavy; back-squat from middle; wall-sit-high at heavy; barbell-bench-press from middle
4 | sit-to-stand-45 goblet-squat wall-reach-hinge dumbbell-rdl step-up-low cable-row-seated chest-supported-row counter-push-up hands-knees-reach band-press-out carry-two-hand walk-brisk | sit-up; curl-up; loaded-twist; hanging-knee-raise; prone-arms-legs-raise; pike-push-up; jump-squat; run; cable-chop from middle; rowing-machine; kettlebell-swing
5 | goblet-squat floor-bridge split-squat-free step-up-low inverted-row-45 chest-supported-row side-plank-knees hands-knees-reach carry-two-hand walk-brisk counter-push-up | barbell-deadlift; bent-over-row; kettlebell-swing; back-squat; squat-thrust-jump; sit-up; loaded-twist; prone-arms-legs-raise; barbell-overhead-press from middle; dumbbell-rdl from middle
6 | dumbbell-floor-press counter-push-up chest-press-machine band-press-seated one-arm-row cable-row-seated chest-supported-row lat-pull-down band-pull-down band-external-rotation goblet-squat carry-two-hand | dumbbell-press-seated; barbell-overhead-press; behind-neck-press; pull-down-behind-neck; upright-row; bench-dip; pull-up; barbell-bench-press; overhead-carry; pike-push-up; hanging-knee-raise; back-squat
7 | mini-squat-support sit-to-stand-high leg-press-mid wall-reach-hinge floor-bridge dumbbell-rdl split-squat-support step-up-low cycle-upright walk-brisk dead-bug | deep-squat; leg-press-deep; step-down-slow; leg-extension; jump-squat; run; one-leg-squat-bench; knee-push-up; wheel-roll-out; rear-foot-split-squat
8 | goblet-squat dumbbell-floor-press barbell-bench-press chest-press-machine forearm-wall-push bag-floor-press forearm-plank wall-forearm-plank cable-row-seated band-row-seated bag-hug-carry carry-two-hand dumbbell-rdl | floor-push-up; knee-push-up; counter-push-up; wall-push-up; bench-dip; pike-push-up; hands-knees-reach; front-rack-squat; squat-thrust-jump
9 | sit-to-stand-45 leg-press-mid wall-reach-hinge step-up-low chest-press-machine band-press-seated cable-row-seated lat-pull-down wall-side-plank band-press-out cycle-upright walk-easy | back-squat; run; pull-up; squat-thrust-jump; kettlebell-swing; pike-push-up; floor-to-stand; sit-up; dead-bug; skip-rope; one-leg-deadlift; back-extension; bent-over-row
10 | sit-to-stand-45 leg-press-mid wall-reach-hinge step-up-low chest-press-machine band-press-seated cable-row-seated wall-side-plank walk-brisk cycle-upright | pike-push-up; barbell-deadlift; back-extension; dumbbell-rdl; kettlebell-swing; leg-press-mid at heavy; back-squat from middle
11 | sit-to-stand-45 leg-press-mid wall-reach-hinge step-up-low chest-press-machine cable-row-seated one-arm-row wall-side-plank walk-brisk | barbell-deadlift; sit-up; curl-up; wheel-roll-out; hanging-knee-raise; jump-squat; run; forearm-plank; back-squat from middle; hip-thrust from middle
12a | sit-to-stand-45 wall-reach-hinge walk-easy | floor-push-up; pull-up; counter-push-up; goblet-squat; forearm-plank; bag-hug-carry; seated-arm-drive
12b | chest-press-machine band-row-seated seated-lean-hold seated-arm-drive | body-squat; run; step-up-low; wall-sit-high
12c | sit-to-stand-high step-up-low walk-easy | sit-up; barbell-deadlift; carry-two-hand; forearm-plank
13 | mini-squat-support sit-to-stand-high leg-press-mid wall-reach-hinge floor-bridge step-up-low chest-press-machine cable-row-seated wall-side-plank walk-brisk | pike-push-up; hanging-knee-raise; deep-squat; leg-press-deep; body-squat; lateral-lunge; rowing-machine; barbell-deadlift; jump-squat; run; rear-foot-split-squat
14 | sit-to-stand-high leg-press-mid wall-reach-hinge step-up-low wall-push-up counter-push-up incline-press-30 band-row-seated cable-row-seated wall-forearm-plank cycle-upright walk-easy | squat-thrust-jump; floor-push-up; jump-squat; run; skip-rope; forearm-plank; one-leg-squat-bench
15 | mini-squat-support sit-to-stand-high wall-reach-hinge floor-bridge step-up-low wall-push-up band-press-seated chest-press-machine band-row-seated cable-row-seated wall-side-plank walk-easy cycle-upright | deep-squat; bench-dip; pull-up; barbell-deadlift; floor-push-up; jump-squat; run; upright-row
16 | sit-to-stand-45 leg-press-mid wall-reach-hinge chest-press-machine cable-row-seated wall-side-plank cycle-upright walk-easy seated-arm-drive | jump-squat; run; skip-rope; pike-push-up; barbell-deadlift; one-leg-deadlift; back-squat from middle
17 | bag-press-seated band-press-seated chest-press-machine towel-self-row band-row-seated cable-row-seated lat-pull-down seated-thigh-press seated-lean-hold seated-arm-drive wheel-push | dumbbell-press-seated from middle; bench-dip
18 | goblet-squat dumbbell-rdl split-squat-free floor-push-up cable-row-seated lat-pull-down forearm-plank carry-two-hand run | back-squat at heavy; barbell-deadlift at heavy; barbell-bench-press at heavy
`
  .trim()
  .split("\n")
  .map((line) => {
    const [row, preferred, stressful] = line.split(" | ") as [string, string, string];
    return { row, preferred: preferred.split(" "), stressful: stressful.split("; ") };
  });

const ON = day("2027-03-01");
const ROOM = madeUpPlace({ equipment: FULL_ROOM });

/** By the coach's hand, so that only limits can refuse: what is asked for here is never a matter of skill. */
function admit(statement: Statement, exercise: Exercise, named: CheckDose) {
  const person = stating(statement);
  const context = { person, place: ROOM, catalogue: CATALOGUE, on: ON, byHand: true };
  const { dose, effort } = askedAt(exercise, named);
  return admitter(context)(exercise, dose, effort);
}

const REFUSALS = ["ceiling", "lane-withheld", "seated-only", "arms-used", "lowering-only"].map(
  (name) => `offer/${name}`,
);
const printed = new Map(PRINTED_MOVEMENTS.map((exercise) => [exercise.id, exercise]));
/** The guide's own grades, and beside them the entry of the catalogue where it has one of that name. */
const formsOf = (id: string): [string, Exercise][] => {
  const entry = CATALOGUE.exercises.get(id);
  return [
    ["as printed", printed.get(id)!],
    ...(entry === undefined ? [] : [["in the catalogue", entry] as [string, Exercise]]),
  ];
};

for (const [index, { row, preferred, stressful }] of PRINTED.entries()) {
  const { id, limits } = STATEMENT_TABLE.rows[index]!;
  describe(`ours 5.3b, printed: row ${row} ${id}`, () => {
    for (const name of preferred) {
      for (const [which, exercise] of formsOf(name)) {
        test(`${name}, ${which}, passes at an untrained dose, and at a trained one once that is cut`, () => {
          for (const named of ["untrained", "trained"] as const) {
            const admission = admit(id, exercise, named);
            expect(admission).toMatchObject({ ok: true });
            for (const set of admission.ok ? admission.dose.sets : []) {
              expect(set.percent ?? 0).toBeLessThanOrEqual(limits.percent ?? 100);
              expect(set.reserve?.from ?? 99).toBeGreaterThanOrEqual(limits.reserve ?? 0);
              if (set.amount.kind === "hold") expect(set.amount.span.to).toBeLessThanOrEqual(limits.holdS ?? 120);
            }
          }
        });
      }
    }
    for (const item of stressful) {
      const [name, , from] = item.split(" ") as [string, string?, string?];
      for (const [which, exercise] of formsOf(name)) {
        if (from === "heavy") {
          test(`${name}, ${which}, is never done heavy`, () => {
            const { dose, effort } = askedAt(exercise, "heavy");
            const clearance = clearanceOf(stating(id), ON);
            const raw = gradesOf(exercise, dose, effort === undefined ? {} : { effort });
            const over = Object.entries(clearance.ceilings).some(
              ([tag, { grade }]) => (raw[tag as "grip"] ?? 0) > grade,
            );
            expect(over || (limits.percent ?? 100) < CHECK_DOSES.heavy.percent).toBe(true);
            const admission = admit(id, exercise, "heavy");
            if (admission.ok) {
              expect(admission.dose).not.toEqual(dose);
              expect(admission.notes.map(({ code }) => code)).toContain(
                exercise.amounts === "hold" ? "offer/hold-cut" : "offer/percent-cut",
              );
            }
          });
          continue;
        }
        const at: CheckDose[] =
          from === "middle" ? ["middle", "trained", "heavy"] : ["light", "untrained", "middle", "trained", "heavy"];
        test(`${name}, ${which}, is refused ${from === undefined ? "at every dose" : "from a middle dose on"}`, () => {
          for (const named of at) {
            const admission = admit(id, exercise, named);
            expect(admission.ok).toBe(false);
            const codes = admission.ok ? [] : admission.why.map(({ code }) => code);
            expect(codes.some((code) => REFUSALS.includes(code))).toBe(true);
          }
          if (from === "middle") expect(admit(id, exercise, "light").ok).toBe(true);
        });
      }
    }
  });
}

test("every name of the printed rows has printed grades and an entry in the catalogue", () => {
  const names = PRINTED.flatMap(({ preferred, stressful }) => [
    ...preferred,
    ...stressful.map((item) => item.split(" ")[0]!),
  ]);
  expect(names.filter((name) => !printed.has(name))).toEqual([]);
  expect(names.filter((name) => !CATALOGUE.exercises.has(name))).toEqual([]);
  expect([PRINTED.length, printed.size]).toEqual([20, 103]);
});
