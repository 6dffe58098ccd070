import type { SetDose } from "@stave/core/model";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Asked,
  boundLoad,
  type Entry,
  entryOf,
  loadIndex,
  seedOf,
  setDone,
  stepped,
  steppedLoad,
} from "./index.ts";

const REPS: SetDose = { amount: { kind: "reps", span: { from: 8, to: 10 } }, eachSide: false };
const RACK = [4, 8, 12.5, 16].map((value) => ({ value, unit: "kg" as const }));
const ASKED: Asked = { dose: REPS, load: { value: 12.5, unit: "kg" } };

describe("what nobody touched is never a reading", () => {
  test("a bare done", () => {
    expect(setDone("squat", ASKED, {}, RACK)).toEqual({
      exercise: "squat",
      reps: "as asked",
      load: "as asked",
      reserve: "not said",
    });
  });
  test("one side said, the other as asked", () => {
    const sided = { ...ASKED, dose: { ...REPS, eachSide: true } };
    expect(setDone("row", sided, { left: 9 }, RACK).reps).toEqual({ left: 9, right: "as asked" });
  });
  test("a hold is counted in seconds, a distance not at all, and what has no loads has none", () => {
    const hold: Asked = { dose: { amount: { kind: "hold", span: { from: 20, to: 30 } }, eachSide: false } };
    expect(setDone("plank", hold, { both: 25 }, [])).toEqual({
      exercise: "plank",
      holdS: 25,
      load: "none",
      reserve: "not said",
    });
    const carry: Asked = { dose: { amount: { kind: "metres", span: { from: 30, to: 30 } }, eachSide: false } };
    expect(setDone("carry", carry, {}, [])).toEqual({ exercise: "carry", load: "none", reserve: "not said" });
  });
  test("only the side that is trained is recorded", () => {
    expect(setDone("row", { ...ASKED, side: "left" }, {}, RACK).reps).toEqual({ left: "as asked" });
  });
  test("a saved set opens again as it was said, whatever was said", () => {
    const number = fc.option(fc.nat(500), { nil: undefined });
    const entry = fc.record({
      one: number,
      left: number,
      right: number,
      load: fc.option(fc.constantFrom(...RACK), { nil: undefined }),
      reserve: fc.option(fc.nat(4), { nil: undefined }),
      eachSide: fc.boolean(),
    });
    fc.assert(
      fc.property(entry, ({ one, left, right, load, reserve, eachSide }) => {
        const sides = eachSide ? { left, right } : { both: one };
        const said = Object.fromEntries(
          Object.entries({ ...sides, load, reserve }).filter(([, value]) => value !== undefined),
        ) as Entry;
        const asked = { ...ASKED, dose: { ...REPS, eachSide } };
        expect(entryOf(setDone("squat", asked, said, RACK))).toEqual(said);
      }),
    );
  });
});

describe("what the next set shows", () => {
  const set = (load: Entry["load"]) => setDone("squat", ASKED, load === undefined ? {} : { load }, RACK);
  test("nothing, while nobody changed the load", () => expect(seedOf([set(undefined)], "squat")).toEqual({}));
  test("the load that was changed last, since it is still in the hand", () => {
    expect(seedOf([set(RACK[1]), set(RACK[3])], "squat")).toEqual({ load: RACK[3] });
  });
  test("as asked, once that was gone back to", () =>
    expect(seedOf([set(RACK[1]), set(undefined)], "squat")).toEqual({}));
  test("nothing of another form", () => expect(seedOf([set(RACK[1])], "box-squat")).toEqual({}));
});

describe("steps", () => {
  test("from an untouched value up says what was asked, down says one less", () => {
    expect(stepped(undefined, 1, REPS.amount)).toBe(10);
    expect(stepped(undefined, -1, REPS.amount)).toBe(9);
  });
  test("never below nothing, never above what the record takes", () => {
    expect(stepped(0, -1, REPS.amount)).toBe(0);
    expect(stepped(500, 1, REPS.amount)).toBe(500);
  });
  test("a load steps through those that exist and stops at the ends", () => {
    expect(steppedLoad(RACK[1], 1, RACK)).toEqual(RACK[2]);
    expect(steppedLoad(RACK[3], 1, RACK)).toBeUndefined();
    expect(steppedLoad(RACK[0], -1, RACK)).toBeUndefined();
    expect(steppedLoad(undefined, 1, RACK)).toEqual(RACK[0]);
  });
  test("a load that is not on the rack steps to its neighbours", () => {
    const between = { value: 10, unit: "kg" as const };
    expect(loadIndex(between, RACK)).toBe(-1);
    expect(steppedLoad(between, 1, RACK)).toEqual(RACK[2]);
    expect(steppedLoad(between, -1, RACK)).toEqual(RACK[1]);
  });
  test("an asked load that a limit took away falls to the heaviest that is left below it", () => {
    expect(boundLoad(RACK[2], RACK.slice(0, 2))).toEqual(RACK[1]);
    expect(boundLoad(RACK[1], RACK)).toEqual(RACK[1]);
    expect(boundLoad(RACK[0], RACK.slice(1))).toEqual(RACK[1]);
    expect(boundLoad(RACK[0], [])).toBeUndefined();
  });
});
