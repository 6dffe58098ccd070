import { describe, expect, test } from "vitest";
import type { MuscleShares, Plan, PlanSlot } from "../model/index.ts";
import { madeUpCatalogue, madeUpExercise, published, reps, setDone, sets, slotTrained } from "../testing/index.ts";
import { oneMoreSet, weeklyCap } from "./one-more-set.ts";

published("iusca2021", "most weekly sets after a rise of 20 % in about four weeks, whole sets", [
  ["worked", "15 and 20 %", () => weeklyCap(15), 18, 0],
  ["worked", "14 and 20 %, rounded down", () => weeklyCap(14), 16, 0],
]);

test("under ten sets, one more is no steep rise; from ten on only the share counts (ours, on iusca2021)", () => {
  expect([0, 2.5, 4, 9, 9.5, 10, 11].map(weeklyCap)).toEqual([1, 3, 5, 10, 11, 12, 13]);
});

const exercise = (id: string, muscles: MuscleShares) => madeUpExercise({ id, muscles });
const CATALOGUE = madeUpCatalogue([
  exercise("row", { lats: 1, biceps: 0.5 }),
  exercise("pull", { lats: 1, biceps: 1 }),
  exercise("curl", { biceps: 1 }),
  exercise("carry", { forearm: 0.5 }),
]);
const slot = (key: string, id: string, count: number): PlanSlot => ({
  key,
  exercise: id,
  dose: sets(count, reps(8)),
  why: [],
  offer: [],
});
/** A plan of these weeks, each of sessions of these slots. */
const planOf = (weeks: readonly (readonly (readonly PlanSlot[])[])[], light: readonly number[] = []): Plan => {
  const { plan } = slotTrained({
    exercise: exercise("row", {}),
    set: reps(8),
    sets: 1,
    place: {},
    did: [[0, setDone(8)]],
    today: 1,
  });
  const [phase] = plan.phases;
  const [first] = phase!.weeks;
  return {
    ...plan,
    phases: [
      {
        ...phase!,
        weeks: weeks.map((sessions, at) => ({
          ...first!,
          week: at + 1,
          light: light.includes(at + 1),
          sessions: sessions.map((slots, session) => ({
            ...first!.sessions[0]!,
            key: `s${session}`,
            blocks: [{ kind: "straight" as const, slots }],
          })),
        })),
      },
    ],
  };
};
const asks = (plan: Plan, week: number, key = "row") => oneMoreSet(plan, CATALOGUE, key, week);

describe("one more set of a slot", () => {
  test("three sets a week may become four, and the muscle is named with its figures", () => {
    expect(asks(planOf([[[slot("row", "row", 3)]]]), 0)).toEqual({
      ok: true,
      because: { code: "progress/weekly-growth", data: { muscle: "lats", from: 3, to: 4, most: 4 } },
    });
  });

  test("a slot done twice a week adds two", () => {
    const twice = planOf([[[slot("row", "row", 3)], [slot("row", "row", 3)]]]);
    expect(asks(twice, 0)).toMatchObject({ ok: false, because: { data: { from: 6, to: 8, most: 7 } } });
  });

  test("sets of other slots for the muscle count", () => {
    const many = (others: number) => planOf([[[slot("row", "row", 3), slot("pull", "pull", others)]]]);
    expect(asks(many(9), 0)).toMatchObject({ ok: true, because: { data: { from: 12, to: 13, most: 14 } } });
  });

  test("it is held against the least of the last four weeks, light ones left out", () => {
    const weeks = [2, 5, 5, 5, 5].map((count) => [[slot("row", "row", count)]]);
    expect(asks(planOf(weeks), 4)).toMatchObject({ ok: true, because: { data: { from: 5, to: 6 } } });
    expect(asks(planOf(weeks), 3)).toMatchObject({ ok: false, because: { data: { from: 2, to: 6, most: 3 } } });
    expect(asks(planOf(weeks, [1]), 3)).toMatchObject({ ok: true, because: { data: { from: 5 } } });
  });

  test("weeks to come say nothing yet", () => {
    const weeks = [5, 1].map((count) => [[slot("row", "row", count)]]);
    expect(asks(planOf(weeks), 0)).toMatchObject({ ok: true, because: { data: { from: 5, to: 6 } } });
  });

  test("of two muscles the one that comes nearest to its most, or over it, is named", () => {
    const plan = planOf([
      [[slot("pull", "pull", 3), slot("curl", "curl", 12)]],
      [[slot("pull", "pull", 3), slot("curl", "curl", 15)]],
    ]);
    expect(asks(plan, 1, "pull")).toMatchObject({
      ok: false,
      because: { data: { muscle: "biceps", from: 15, to: 19, most: 18 } },
    });
  });

  test("a muscle that only helps does not hold it back", () => {
    const plan = planOf([
      [[slot("row", "row", 3), slot("curl", "curl", 1)]],
      [[slot("row", "row", 3), slot("curl", "curl", 20)]],
    ]);
    expect(asks(plan, 1)).toMatchObject({ ok: true, because: { data: { muscle: "lats" } } });
  });

  test("nothing is said of a week that is not there, a slot that is not in it, or one that is for no muscle", () => {
    const plan = planOf([[[slot("row", "row", 3), slot("carry", "carry", 3)]]]);
    expect(asks(plan, 1)).toBeUndefined();
    expect(asks(plan, 0, "gone")).toBeUndefined();
    expect(asks(plan, 0, "carry")).toBeUndefined();
    expect(oneMoreSet(plan, madeUpCatalogue([]), "row", 0)).toBeUndefined();
  });
});

describe("one more set, at its edges", () => {
  const weeksOf = (...counts: readonly number[]) => planOf(counts.map((count) => [[slot("row", "row", count)]]));

  test("four weeks count, the one in which it is asked among them: the fifth back does not, the fourth does", () => {
    expect(asks(weeksOf(1, 5, 5, 5, 5), 4)!.because.data["from"]).toBe(5);
    expect(asks(weeksOf(5, 1, 5, 5, 5), 4)!.because.data["from"]).toBe(1);
    expect(asks(weeksOf(5, 5, 5, 5, 1), 4)!.because.data).toMatchObject({ from: 1, to: 2, most: 2 });
  });

  test("as much as the most is within it, one more is not", () => {
    expect(asks(weeksOf(10, 11), 1)).toMatchObject({ ok: true, because: { data: { from: 10, to: 12, most: 12 } } });
    expect(asks(weeksOf(10, 12), 1)).toMatchObject({ ok: false, because: { data: { from: 10, to: 13, most: 12 } } });
  });

  test("a week without the muscle is the least there is", () => {
    const plan = planOf([[[slot("curl", "curl", 3)]], [[slot("row", "row", 1), slot("curl", "curl", 3)]]]);
    expect(asks(plan, 1)).toMatchObject({ ok: false, because: { data: { muscle: "lats", from: 0, to: 2, most: 1 } } });
  });
});
