import { describe, expect, test } from "vitest";
import type { Block, Slot } from "../../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
} from "../../testing/index.ts";
import { type Quarters, quarters } from "../../units.ts";
import { setsCures } from "./sets-cures.ts";

const form = (id: string, muscles: Parameters<typeof madeUpExercise>[0]["muscles"], more = {}) =>
  madeUpExercise({ id, name: `The ${id}`, muscles: muscles ?? {}, ...more });
const catalogue = madeUpCatalogue(
  [
    form("curl", { biceps: 1 }),
    form("row", { lats: 1, biceps: 0.5 }),
    form("squat", { "front thigh": 1 }),
    form("coached", { calf: 1 }, { coachOnly: true }),
    form("calf-a", { calf: 1 }),
    form("calf-b", { calf: 1 }),
    form("calf-c", { calf: 1 }),
  ],
  [{ id: "ladder", name: "Ladder", start: "calf-c", steps: [] }],
);
const slot = (first: string, count: number, key = first): Slot =>
  madeUpSlot(first, "upper isolation", sets(count, reps(8)), { slot: key });
const cures = (
  sessions: readonly (readonly Block[])[],
  side: "under" | "over",
  gap: number,
  muscle: "biceps" | "calf" = "biceps",
  only?: number,
) => {
  const programme = madeUpProgramme(sessions.map((work, at) => madeUpSession("abc"[at]!, 60, work)));
  return setsCures({ programme, catalogue }, 0, muscle, side, quarters(gap) as Quarters, only);
};
const said = (...args: Parameters<typeof cures>) =>
  cures(...args).map(({ data }) =>
    ((data["slots"] ?? []) as readonly { readonly slot: string; readonly from: number; readonly to: number }[])
      .map((one) => `${one.slot} ${one.from}-${one.to}`)
      .join(", "),
  );

describe("more sets", () => {
  test("first of what is for the muscle, spread to where fewest are; then of each alone; then of all that train it", () => {
    expect(said([[slot("curl", 3), slot("curl", 2, "curl-b"), slot("row", 1)]], "under", 2)).toEqual([
      "curl-b 2-3, curl 3-4",
      "curl 3-5",
      "curl-b 2-4",
      "row 1-3, curl-b 2-3",
      "row 1-5",
    ]);
  });

  test("no slot gets more than six; where that does not close the gap, nothing is offered", () => {
    expect(said([[slot("curl", 5)]], "under", 1)).toEqual(["curl 5-6"]);
    expect(said([[slot("curl", 5)]], "under", 2)).toEqual([]);
    expect(said([[slot("curl", 6)]], "under", 1)).toEqual([]);
  });

  test("a gap of part of a set takes a whole one", () => {
    expect(said([[slot("curl", 3)]], "under", 0.5)).toEqual(["curl 3-4"]);
    expect(said([[slot("row", 3)]], "under", 1)).toEqual(["row 3-5"]);
  });

  test("a pair goes up together, and counts what it adds together", () => {
    const pair: Block = { pair: [slot("curl", 2), slot("row", 2)] };
    expect(said([[pair]], "under", 1.5)).toEqual(["curl 2-3, row 2-3"]);
  });

  test("in one session alone, where that is asked", () => {
    const sessions = [[slot("curl", 2)], [slot("curl", 2, "curl-b")]];
    expect(said(sessions, "under", 1, "biceps", 1)).toEqual(["curl-b 2-3"]);
    expect(said(sessions, "under", 1)).toEqual(["curl 2-3", "curl-b 2-3"]);
  });

  test("all of them are one group, and each names its slots", () => {
    const [cure] = cures([[slot("curl", 3)]], "under", 1);
    expect(cure).toMatchObject({
      id: "more-sets",
      group: "sets",
      data: { slots: [{ slot: "curl", name: "The curl", from: 3, to: 4 }] },
    });
  });
});

describe("fewer sets", () => {
  test("from where most are, and never the last one", () => {
    expect(said([[slot("curl", 5), slot("curl", 3, "curl-b")]], "over", 2)[0]).toBe("curl 5-3");
    expect(said([[slot("curl", 3)]], "over", 2)).toEqual(["curl 3-1"]);
    expect(said([[slot("curl", 3)]], "over", 3)).toEqual([]);
    expect(cures([[slot("curl", 3)]], "over", 2)[0]!.id).toBe("fewer-sets");
  });
});

describe("where nothing trains the muscle", () => {
  const first = (found: ReturnType<typeof cures>) => [...new Set(found.map(({ data }) => data["exercise"]))];
  test("a new slot: the start of a ladder first, then another form, two at most, none for the coach alone", () => {
    expect(first(cures([[slot("squat", 3)]], "under", 4, "calf"))).toEqual(["calf-c", "calf-a"]);
  });
  test("too much has no such remedy", () => {
    expect(cures([[slot("squat", 3)]], "over", 4, "calf")).toEqual([]);
  });
});
