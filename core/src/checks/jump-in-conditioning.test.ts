import type { Conditioning } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpPhase,
  madeUpProgramme,
  madeUpSession,
  sets,
  testCheck,
  timeOf,
} from "../testing/index.ts";
import { jumpInConditioning } from "./jump-in-conditioning.ts";

const phase = (index: number, minutes: number, effort: Conditioning["effort"] = "steady") =>
  madeUpPhase(
    [madeUpSession("a", 240, [], { conditioning: [{ do: "run", dose: sets(1, timeOf(60 * minutes)), effort }] })],
    { key: `p${index}` },
  );
const doc = (...minutes: readonly (readonly [number, Conditioning["effort"]?])[]) => ({
  programme: madeUpProgramme([], { phases: minutes.map(([each, effort], index) => phase(index, each, effort)) }),
  catalogue: madeUpCatalogue([]),
});

testCheck(jumpInConditioning, {
  fine: {
    "half as much again": doc([60], [90]),
    "twice, and under thirty minutes more": doc([20], [49]),
    "the first phase": doc([200]),
    less: doc([90], [30]),
  },
  bad: {
    "over half as much again": {
      doc: doc([60], [91]),
      at: [["phases", 1]],
      data: [{ phase: "p1", minutes: 91, before: 60 }],
    },
    "thirty minutes more after none to speak of": {
      doc: doc([10], [40]),
      at: [["phases", 1]],
      data: [{ minutes: 40 }],
    },
    "the same minutes, made hard": {
      doc: doc([60], [60, "hard"]),
      at: [["phases", 1]],
      data: [{ minutes: 120, before: 60 }],
    },
  },
});
