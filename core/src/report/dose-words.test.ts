import { describe, expect, test } from "vitest";
import { hold, reps, sets, timeOf } from "../testing/index.ts";
import { doseChange, easyDose, slotDose } from "./dose-words.ts";

const each = sets(3, reps({ from: 8, to: 10 }, { eachSide: true }), { restS: 90 });

describe("the dose of a slot", () => {
  test("both sides", () => expect(slotDose({ dose: each })).toBe("3 × 8–10 each side, rest 90 s"));
  test("one side is said once and as such", () =>
    expect(slotDose({ dose: each, side: "left" })).toBe("3 × 8–10, rest 90 s; left side only"));
});

describe("what changes from the first week", () => {
  const first = { dose: sets(3, reps(8, { reserve: { from: 3, to: 3 } }), { restS: 90, tempo: [3, 1, 1, 0] }) };
  test("nothing", () => expect(doseChange(first, { dose: { ...first.dose } })).toBeNull());
  test("sets and reserve: rest and tempo that stay are left out", () => {
    const now = { dose: { ...first.dose, sets: sets(2, reps(8, { reserve: { from: 4, to: 4 } })).sets } };
    expect(doseChange(first, now)).toBe("2 × 8, 4 in reserve");
  });
  test("a rest that is new is said", () =>
    expect(doseChange(first, { dose: { ...first.dose, restS: 120 } })).toBe("3 × 8, rest 2 min, 3 in reserve"));
  test("a tempo that is new is said", () =>
    expect(doseChange(first, { dose: { ...first.dose, tempo: [4, 0, 1, 0] } })).toContain("tempo 4-0-1-0"));
  test("a side is not a change of dose", () =>
    expect(
      doseChange({ dose: each, side: "left" }, { dose: sets(2, each.sets[0]!, { restS: 90 }), side: "left" }),
    ).toBe("2 × 8–10"));
});

describe("easy work", () => {
  test("one set has no count", () => expect(easyDose(sets(1, timeOf(240)))).toBe("4 min"));
  test("more have", () => expect(easyDose(sets(8, timeOf(30)))).toBe("8 × 0:30 min"));
  test("groups keep theirs", () =>
    expect(easyDose({ sets: [hold(30), hold({ from: 20, to: 25 }), hold(20), hold(20), hold(20)] })).toMatch(
      /^1 × 30 s \+ /,
    ));
});
