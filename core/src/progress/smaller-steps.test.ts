import { describe, expect, test } from "vitest";
import type { Patch, Reason } from "../model/index.ts";
import { madeUpExercise, reps, setDone, slotTrained } from "../testing/index.ts";
import type { DoseState } from "./dose-state.ts";
import { dosesFor } from "./index.ts";
import { smallerSteps } from "./smaller-steps.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const raise = madeUpExercise({ id: "raise", loadMeaning: "per hand", needs: [["dumbbell"]] });
const BASE = dosesFor(
  slotTrained({
    exercise: raise,
    set: reps({ from: 10, to: 15 }, { reserve: { from: 2, to: 2 } }),
    sets: 3,
    load: 5,
    place: { equipment: { dumbbell: 4 }, dumbbells: { loads: [5, 7.5].map(kg), pairs: true } },
    did: [[0, { ...setDone(15), load: kg(5) }]],
    today: 1,
  }),
)[0]!.state;
const NEARLY: Reason = { code: "progress/weekly-growth", data: {} };
/** The state with these words instead; what is computed when asked is written out. */
const ways = (more: Partial<DoseState> = {}) =>
  smallerSteps(
    { slot: BASE.slot, oneMoreSet: { ok: true, because: NEARLY }, shareAtMost: undefined, ...more } as DoseState,
    kg(7.5),
  );
const dose = (patch: Patch | undefined) => (patch?.change === "reps" ? patch.dose : undefined);
const kinds = (patches: readonly Patch[]) =>
  patches.map((patch) => {
    const { sets, tempo } = dose(patch)!;
    if (sets.length > BASE.slot.dose.sets.length) return "a set more";
    return sets[0]!.load === undefined ? `slow ${tempo?.join("-")}` : "a set tried";
  });

describe("where the next load is a large step", () => {
  test("lower slowly, then one set more, then one set with the load", () => {
    expect(kinds(ways())).toEqual(["slow 4-1-1-0", "a set more", "a set tried"]);
  });

  test("one set more is like the last, and what is slower asks for as many", () => {
    const [slow, more] = ways();
    expect(dose(slow)).toEqual({ ...BASE.slot.dose, tempo: [4, 1, 1, 0] });
    expect(dose(more)!.sets).toEqual(Array(4).fill(BASE.slot.dose.sets[0]));
  });

  test("the set that is tried asks for 6 to 8; the others keep their load, range and reserve", () => {
    const asked = BASE.slot.dose.sets[0]!;
    expect(dose(ways()[2])!.sets).toEqual([
      { ...asked, amount: { kind: "reps", span: { from: 6, to: 8 } }, load: kg(7.5) },
      { ...asked, load: kg(5) },
      { ...asked, load: kg(5) },
    ]);
  });

  test("not slower than slow, no set where the week has grown enough or nobody knows, none tried of one set", () => {
    const slow = { ...BASE.slot, dose: { ...BASE.slot.dose, tempo: [4, 1, 1, 0] as const } };
    expect(kinds(ways({ slot: slow }))).toEqual(["a set more", "a set tried"]);
    const faster = { ...BASE.slot, dose: { ...BASE.slot.dose, tempo: [2, 0, 1, 0] as const } };
    expect(kinds(ways({ slot: faster }))[0]).toBe("slow 4-1-1-0");
    expect(kinds(ways({ oneMoreSet: { ok: false, because: NEARLY } }))).toEqual(["slow 4-1-1-0", "a set tried"]);
    expect(kinds(ways({ oneMoreSet: undefined }))).toEqual(["slow 4-1-1-0", "a set tried"]);
    const single = { ...BASE.slot, dose: { ...BASE.slot.dose, sets: BASE.slot.dose.sets.slice(1, 2) } };
    expect(ways({ slot: single })).toHaveLength(2);
  });

  test("no set is tried where limits allow a share of a best that nobody knows", () => {
    expect(kinds(ways({ shareAtMost: 70 }))).toEqual(["slow 4-1-1-0", "a set more"]);
  });

  test("none at all without a load, and of what is not counted in repetitions", () => {
    const { load: _, ...bare } = BASE.slot;
    expect(ways({ slot: bare })).toEqual([]);
    const most = { sets: [{ amount: { kind: "most" }, eachSide: false }] } as const;
    expect(ways({ slot: { ...BASE.slot, dose: most } })).toEqual([]);
  });
});
