import { describe, expect, test } from "vitest";
import { type Entry, entry, wholeEntry } from "./entry.ts";

const SAID: Entry = {
  id: "made-up",
  name: "Made up",
  pattern: "squat",
  limb: "two legs",
  position: "standing",
  muscles: { "front thigh": 1 },
  loadMeaning: "body only",
  stress: { pressor: 1 },
  setUp: "Stand.",
  move: "Move.",
  cues: ["one", "two", "three"],
  faults: [
    ["seen 1", "why 1", "fix 1"],
    ["seen 2", "why 2", "fix 2"],
    ["seen 3", "why 3", "fix 3"],
  ],
};

describe("entry", () => {
  test("fills in what is usual", () => {
    const made = wholeEntry(SAID);
    expect(made).toMatchObject({
      amounts: "reps",
      mode: "dynamic",
      eachSide: false,
      switchS: 0,
      setupS: 15,
      changeS: 0,
    });
    expect(made).toMatchObject({ plane: "sagittal", hands: "none", fixed: false, seated: false, sources: ["ours"] });
    expect(made.need).toEqual({ conditions: [] });
    expect(made.faults[1]).toEqual({ see: "seen 2", why: "why 2", fix: "fix 2" });
  });

  test.each(["one arm", "one leg", "split stance"] as const)(
    "%s is done on each side, with a change of sides",
    (limb) => {
      expect(wholeEntry({ ...SAID, limb })).toMatchObject({ eachSide: true, switchS: 5 });
    },
  );

  test("what is said wins over what is usual", () => {
    const made = wholeEntry({
      ...SAID,
      limb: "one leg",
      eachSide: false,
      secondsPerRep: 7,
      setupS: 99,
      amounts: "time",
    });
    expect(made).toMatchObject({ eachSide: false, switchS: 0, secondsPerRep: 7, setupS: 99, amounts: "time" });
  });

  test("a hold range makes a hold, a carry is in metres, a jump in contacts", () => {
    const hold = { from: 10, to: 60, step: 5 };
    expect(wholeEntry({ ...SAID, hold })).toMatchObject({ amounts: "hold", mode: "hold", hold });
    expect(wholeEntry({ ...SAID, pattern: "carry" })).toMatchObject({ amounts: "metres", mode: "dynamic" });
    expect(wholeEntry({ ...SAID, pattern: "jump" })).toMatchObject({ amounts: "contacts", mode: "ballistic" });
  });

  test("one thing needed is a group of one", () => {
    expect(wholeEntry({ ...SAID, needs: ["wall", ["chair", "box"]] }).needs).toEqual([["wall"], ["chair", "box"]]);
  });

  test("a share of body mass adds its source", () => {
    const bodyShare = { share: 0.88, source: "deLeva1996" } as const;
    expect(wholeEntry({ ...SAID, bodyShare }).sources).toEqual(["ours", "deLeva1996"]);
  });
});

test("an entry of the catalogue is made only when it is asked for", () => {
  let asked = 0;
  const listed = entry("it", () => {
    asked++;
    const { id: _, ...said } = SAID;
    return said;
  });
  expect([listed.id, asked]).toEqual(["it", 0]);
  expect(listed.make()).toEqual(wholeEntry({ ...SAID, id: "it" }));
  expect(asked).toBe(1);
});
