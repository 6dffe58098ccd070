import { expect, test } from "vitest";
import type { Block, Place } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPlace,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
} from "../testing/index.ts";
import { oneStationTwice } from "./one-station-twice.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "cable-row", name: "Cable row", needs: [["cable"]] }),
  madeUpExercise({ id: "cable-press", name: "Cable press", needs: [["cable"]] }),
  madeUpExercise({ id: "band-press", name: "Band press", needs: [["cable", "band"]] }),
  madeUpExercise({ id: "bench", name: "Bench", needs: [["bench"]] }),
  madeUpExercise({ id: "fly", name: "Fly", needs: [["bench"]] }),
]);
const slot = (id: string) => madeUpSlot(id, "horizontal push", sets(3, reps(10)));
const doc = (block: Block, place?: Place) => ({
  programme: madeUpProgramme([madeUpSession("a", 45, [slot("bench"), block])]),
  catalogue,
  ...(place === undefined ? {} : { place }),
});
const pair: Block = { pair: [slot("cable-row"), slot("cable-press")], restS: 60 };
const AT = ["phases", 0, "sessions", 0, "work", 1];

testCheck(oneStationTwice, {
  fine: {
    "two stations": doc({ pair: [slot("cable-row"), slot("fly")] }),
    "one of them can be done without": doc({ pair: [slot("cable-row"), slot("band-press")] }),
    "benches can be moved": doc({ pair: [slot("bench"), slot("fly")] }),
    "one after the other": doc(slot("cable-row")),
    "the place has two": doc(pair, madeUpPlace({ equipment: { cable: 2 } })),
    "the place has none, which is told elsewhere": doc(pair, madeUpPlace()),
  },
  bad: {
    "two machines at once, of which the place has one each": {
      doc: doc(
        { round: [slot("cable-row"), slot("cable-press"), slot("fly")] },
        madeUpPlace({ equipment: { cable: 1 } }),
      ),
      at: [AT],
      data: [{ station: "cable", names: ["Cable row", "Cable press"] }],
    },
    "no place is named: a note": {
      doc: doc(pair),
      at: [AT],
      data: [{ station: "cable", names: ["Cable row", "Cable press"], have: null }],
      severity: ["note"],
    },
    "the place has one": {
      doc: doc(pair, madeUpPlace({ equipment: { cable: 1 } })),
      at: [AT],
      data: [{ have: 1, slot: "cable-row" }],
      severity: ["warn"],
    },
    "a round of three where there are two": {
      doc: doc(
        { round: [slot("cable-row"), slot("cable-press"), slot("cable-row")] },
        madeUpPlace({ equipment: { cable: 2 } }),
      ),
      at: [AT],
      data: [{ have: 2 }],
    },
  },
});

test("the remedy does them one after the other, with the rest they had", () => {
  const { programme } = doc(pair);
  const [cure] = oneStationTwice.run(lookAt({ programme, catalogue }))[0]!.cures!();
  const after = changed(programme, cure!.changes).phases[0]!.sessions[0]!.work;
  expect(after).toEqual([
    slot("bench"),
    { ...slot("cable-row"), dose: sets(3, reps(10), { restS: 60 }) },
    { ...slot("cable-press"), dose: sets(3, reps(10), { restS: 60 }) },
  ]);
});
