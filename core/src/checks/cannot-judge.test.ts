import type { Block, Pattern, SetDose } from "../model/index.ts";
import {
  hold,
  madeUpCatalogue,
  madeUpExercise,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
} from "../testing/index.ts";
import { cannotJudge } from "./cannot-judge.ts";

const FORMS: readonly (readonly [string, Pattern])[] = [
  ["squat", "squat"],
  ["dead-bug", "anti-extension"],
  ["stretch", "mobility"],
];
const catalogue = madeUpCatalogue(FORMS.map(([id, pattern]) => madeUpExercise({ id, pattern })));
const left = { reserve: { from: 2, to: 2 } };
const slot = (set: SetDose, restS: number | undefined = 60, first = "squat", count = 3) =>
  madeUpSlot(first, "squat", sets(count, set, restS === 0 ? {} : { restS }));
const doc = (...work: readonly Block[]) => ({ programme: madeUpProgramme([madeUpSession("a", 60, work)]), catalogue });
const at = (...more: readonly (string | number)[]) => ["phases", 0, "sessions", 0, "work", ...more, "dose"];

testCheck(cannotJudge, {
  fine: {
    "reserve and rest": doc(slot(reps(8, left))),
    "a share of the 1RM": doc(slot(reps(8, { percent: 70 }))),
    "as many as possible": doc(slot({ amount: { kind: "most" }, eachSide: false })),
    "a hold": doc(slot(hold(20))),
    "trunk work": doc(slot(reps(8), 60, "dead-bug")),
    "range and readiness": doc(slot(reps(8), 60, "stretch")),
    "an exercise that nobody knows": doc(slot(reps(8), 60, "moonwalk")),
    "one set needs no rest": doc(slot(reps(8, left), 0, "squat", 1)),
    "the rest of a pair is that of the pair": doc({ pair: [slot(reps(8, left), 0), slot(reps(8, left), 0)] }),
  },
  bad: {
    "no effort is said in one of two doses": {
      doc: doc(slot(reps(8, left)), slot(reps(8))),
      at: [at(1)],
      data: [{ side: "effort", doses: 1, of: 2 }],
      severity: ["note"],
    },
    "a written load alone says no effort": {
      doc: doc(slot(reps(8, { load: { value: 40, unit: "kg" } }))),
      at: [at(0)],
      data: [{ side: "effort", doses: 1, of: 1 }],
    },
    "no rest is said": { doc: doc(slot(reps(8, left), 0)), at: [at(0)], data: [{ side: "rest", doses: 1, of: 1 }] },
    "one set of a dose says nothing": {
      doc: doc(madeUpSlot("squat", "squat", { sets: [reps(8, left), reps(8)], restS: 60 })),
      at: [at(0)],
      data: [{ side: "effort", doses: 1, of: 1 }],
    },
    "one set of repetitions beside holds": {
      doc: doc(madeUpSlot("squat", "squat", { sets: [hold(20), reps(8)], restS: 60 })),
      at: [at(0)],
      data: [{ side: "effort" }],
    },
    "two sets without a rest": {
      doc: doc(slot(reps(8, left), 0, "squat", 2)),
      at: [at(0)],
      data: [{ side: "rest" }],
    },
    "neither, in a pair only the effort": {
      doc: doc({ pair: [slot(reps(8), 0), slot(reps(8, left), 0)] }),
      at: [at(0, "pair", 0)],
      data: [{ side: "effort", doses: 1, of: 2 }],
    },
  },
});
