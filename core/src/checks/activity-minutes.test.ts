import type { Conditioning } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
  timeOf,
} from "../testing/index.ts";
import { activityMinutes } from "./activity-minutes.ts";

const run = (minutes: number, effort: Conditioning["effort"] = "steady"): Conditioning => ({
  do: "run",
  dose: sets(1, timeOf(60 * minutes)),
  effort,
});
const lift = [madeUpSlot("squat", "squat", sets(3, reps(8)))];
const doc = (...sessions: readonly (readonly [work: typeof lift, items: readonly Conditioning[]])[]) => ({
  programme: madeUpProgramme(
    sessions.map(([work, conditioning], index) => madeUpSession(`s${index}`, 240, work, { conditioning })),
  ),
  catalogue: madeUpCatalogue([]),
});
const AT = [["phases", 0]];

// 150 to 300 moderate minutes a week, or 75 to 150 vigorous ones: who2020.
testCheck(activityMinutes, {
  fine: {
    "150 moderate minutes": doc([[], [run(75)]], [[], [run(75, "easy")]]),
    "75 hard ones": doc([[], [run(75, "hard")]]),
    "90 moderate and 40 hard": doc([[], [run(90)]], [[], [run(40, "hard")]]),
    "conditioning that only rounds off the work": doc([lift, [run(10)]], [lift, [run(10)]]),
    "no conditioning": doc([lift, []]),
  },
  bad: {
    "60 moderate and 40 hard": {
      doc: doc([[], [run(60)]], [lift, [run(40, "hard")]]),
      at: AT,
      data: [{ side: "under", moderate: 60, vigorous: 40, equivalent: 140, least: 150 }],
    },
    "once a week": { doc: doc([lift, []], [[], [run(45)]]), at: AT, data: [{ side: "under", equivalent: 45 }] },
    "metres, of which the minutes are not known": {
      doc: doc([
        [],
        [{ ...run(0), dose: sets(1, { amount: { kind: "metres", span: { from: 2000, to: 2000 } }, eachSide: false }) }],
      ]),
      at: AT,
      data: [{ side: "cannot judge", equivalent: 0 }],
    },
  },
});
