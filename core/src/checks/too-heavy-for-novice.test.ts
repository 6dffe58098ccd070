import { expect, test } from "vitest";
import type { Status } from "../model/index.ts";
import { loadBandsFor } from "../tables/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  published,
  reps,
  sets,
  testCheck,
} from "../testing/index.ts";
import { lookAt } from "./run/look.ts";
import { tooHeavyForNovice } from "./too-heavy-for-novice.ts";

const catalogue = madeUpCatalogue([madeUpExercise({ id: "squat", name: "Squat" })]);
const doc = (status: Status, percent?: number) => ({
  programme: madeUpProgramme(
    [
      madeUpSession("a", 45, [
        madeUpSlot("squat", "squat", sets(3, reps(3, percent === undefined ? {} : { percent }))),
      ]),
    ],
    { status },
  ),
  catalogue,
});
const AT = ["phases", 0, "sessions", 0, "work", 0, "dose"];

published("acsm2009", "most per cent of 1RM advised to novices for strength", [
  ["printed", "evidence table", () => loadBandsFor("strength", "novice").at(-1)!.percent.to, 70, 0],
]);
published("haffTriplett2016", "least per cent of 1RM for strength, whoever lifts", [
  ["printed", "table of loads by goal", () => loadBandsFor("strength", "novice")[0]!.percent.from, 85, 0],
]);

testCheck(tooHeavyForNovice, {
  fine: {
    "84 %": doc("novice", 84),
    "no share": doc("novice"),
    "an intermediate at 95 %": doc("intermediate", 95),
    "a novice's programme for somebody who is none": {
      ...doc("novice", 90),
      person: madeUpPerson({ status: "advanced" }),
    },
  },
  bad: {
    "85 %": { doc: doc("novice", 85), at: [AT], data: [{ percent: 85, advised: 70, name: "Squat" }] },
    "an advanced programme for a novice": {
      doc: { ...doc("advanced", 90), person: madeUpPerson({ status: "novice" }) },
      at: [AT],
      data: [{ percent: 90 }],
    },
  },
});

test("the remedy lowers only the shares that are too heavy", () => {
  const mixed = { sets: [...sets(1, reps(3, { percent: 90 })).sets, ...sets(2, reps(8, { percent: 65 })).sets] };
  const input = {
    programme: madeUpProgramme([madeUpSession("a", 45, [madeUpSlot("squat", "squat", mixed)])]),
    catalogue,
  };
  const [cure] = tooHeavyForNovice.run(lookAt(input))[0]!.cures!();
  expect(cure!.data["to"]).toBe("1 × 3 @70 % + 2 × 8 @65 %");
});
