import { expect, test } from "vitest";
import { CATALOGUE } from "../exercises/index.ts";
import type { Place } from "../model/index.ts";
import { madeUpPlace, madeUpProgramme, madeUpSession, madeUpSlot, reps, sets, testCheck } from "../testing/index.ts";
import { notServedHere } from "./not-served-here.ts";
import { lookAt } from "./run/look.ts";

const doc = (first: string, place?: Place) => ({
  programme: madeUpProgramme([madeUpSession("a", 45, [madeUpSlot(first, "squat", sets(3, reps(8)))])]),
  catalogue: CATALOGUE,
  ...(place === undefined ? {} : { place }),
});
const AT = ["phases", 0, "sessions", 0, "work", 0, "first"];
const bells = madeUpPlace({ name: "Shed", equipment: { dumbbell: 2 } });

testCheck(notServedHere, {
  fine: {
    "no place is named": doc("back-squat"),
    "any one of a group is enough": doc("goblet-squat", bells),
    "it needs nothing": doc("body-squat", madeUpPlace()),
    "nobody knows it": doc("moonwalk", madeUpPlace()),
  },
  bad: {
    "no bar": {
      doc: doc("back-squat", bells),
      at: [AT],
      data: [{ exercise: "back-squat", place: "Shed", groups: [["barbell"], ["plates"], ["rack"]] }],
    },
    "none left of what there was": {
      doc: doc("goblet-squat", madeUpPlace({ equipment: { dumbbell: 0 } })),
      at: [AT],
      data: [{ exercise: "goblet-squat" }],
    },
  },
});

test("the remedies are the nearest forms of the ladder that the place serves", () => {
  const ids = (place: Place) =>
    notServedHere.run(lookAt(doc("back-squat", place)))[0]!.cures!().map(({ data }) => data["id"]);
  expect(ids(madeUpPlace({ equipment: { dumbbell: 4 } }))).toEqual(["double-dumbbell-front-squat", "goblet-squat"]);
  expect(ids(madeUpPlace())[0]).toBe("body-squat");
});
