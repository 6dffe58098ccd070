import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { foldRecord } from "../measures/index.ts";
import type { Patch, StaveEvent } from "../model/index.ts";
import { madeUpEvent, reps, sets, shuffled } from "../testing/index.ts";
import { patchesInForce } from "./patches-in-force.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const dose = sets(3, reps(10));
const TODAY = day("2027-03-10");
const load = (value: number, exercise?: string): Patch => ({
  slot: "squat",
  change: "load",
  load: kg(value),
  ...(exercise === undefined ? {} : { exercise }),
});
const REPS: Patch = { slot: "squat", change: "reps", dose };
const FORM: Patch = { slot: "squat", change: "exercise", exercise: "goblet-squat" };
const PAUSE: Patch = { slot: "squat", change: "pause" };

/** By hand, or as the answer to a proposal. */
function said(patch: Patch, n: number, byHand: boolean): StaveEvent {
  if (byHand) return madeUpEvent(`word-${n}`, n, "pinned", { patch, by: "Imke" });
  const proposal = { proposal: `proposal-${n}`, patch, evidence: [], cut: {}, engine: "1" };
  return madeUpEvent(`word-${n}`, n, "accepted", { ...proposal, by: "Imke" });
}
const inForce = (patches: readonly Patch[], byHand = false) =>
  patchesInForce(foldRecord(patches.map((patch, at) => said(patch, at + 1, byHand))), TODAY).get("squat");

describe("of several words on one slot", () => {
  test("the later load stands", () => expect(inForce([load(60), load(65)])?.load?.load).toEqual(kg(65)));
  test("a load takes back a dose that was proposed, and leaves one that was set by hand", () => {
    expect(inForce([REPS, load(60)])?.dose).toBeUndefined();
    expect(inForce([REPS, load(60)], true)?.dose?.dose).toEqual(dose);
    expect(inForce([load(60), REPS])).toMatchObject({ load: { load: kg(60) }, dose: { dose } });
  });
  test("another form takes away load, dose and pause of the one before", () => {
    expect(inForce([load(60, "back-squat"), REPS, PAUSE, FORM])).toEqual({ exercise: "goblet-squat" });
    expect(inForce([FORM, load(20, "goblet-squat")])).toMatchObject({
      exercise: "goblet-squat",
      load: { load: kg(20) },
    });
  });
  test("a pause is over on the day it names, or when it is taken up", () => {
    const until = (text: string): Patch => ({ slot: "squat", change: "pause", until: text });
    expect(inForce([until("2027-03-11")])?.paused).toEqual({ until: "2027-03-11" });
    expect(inForce([until("2027-03-10")])?.paused).toBeUndefined();
    expect(inForce([PAUSE, { slot: "squat", change: "resume" }])?.paused).toBeUndefined();
    expect(inForce([PAUSE, load(60)])?.paused).toEqual({});
  });
});

test("refusals apply nothing, and slots do not touch one another", () => {
  const proposal = { proposal: "proposal-1", patch: load(60), evidence: [], cut: {}, engine: "1" };
  const refused = madeUpEvent("word-1", 1, "refused", { ...proposal, by: "Imke" });
  const row = said({ slot: "row", change: "pause" }, 2, true);
  expect([...patchesInForce(foldRecord([refused, row]), TODAY).keys()]).toEqual(["row"]);
});

test("the order in which words arrive never matters", () => {
  const patches = fc.array(fc.constantFrom(load(60), load(65), REPS, FORM, PAUSE), { maxLength: 8 });
  fc.assert(
    fc.property(patches, fc.boolean(), fc.infiniteStream(fc.nat(1000)), (all, byHand, keys) => {
      const events = all.map((patch, at) => said(patch, at + 1, byHand));
      expect(patchesInForce(foldRecord(shuffled(events, keys)), TODAY)).toEqual(
        patchesInForce(foldRecord(events), TODAY),
      );
    }),
  );
});
