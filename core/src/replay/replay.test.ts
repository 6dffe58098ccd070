import { describe, expect, test } from "vitest";
import type { DoneSet, HurtRecord, SlotSession } from "../measures/index.ts";
import type { PlanSlot } from "../model/index.ts";
import { madeUpCatalogue, madeUpExercise, reps, sets } from "../testing/index.ts";
import { replay } from "./replay.ts";
import { type Rule, TWO_FOR_TWO } from "./rule.ts";
import { sayNext } from "./say-next.ts";

const DAY_MS = 86_400_000;
const CATALOGUE = madeUpCatalogue([
  madeUpExercise({ id: "press", loadMeaning: "stack" }),
  madeUpExercise({ id: "pull", loadMeaning: "assist" }),
]);
const kg = (value: number) => ({ value, unit: "kg" }) as const;

interface Did {
  readonly day: number;
  /** Asked, kg; undefined for none. */
  readonly load?: number;
  /** Of each set; undefined: nobody read it. */
  readonly reps: readonly (number | undefined)[];
  readonly reserve?: number;
  readonly lifted?: number;
  readonly exercise?: string;
  readonly range?: { readonly from: number; readonly to: number };
  readonly light?: boolean;
}

/** Sessions of three sets of 8 to 10 with 2 left. */
function sessionsOf(did: readonly Did[]): readonly SlotSession[] {
  return did.map(({ day, load, reps: done, reserve, lifted = load, exercise = "press", range, light = false }, at) => {
    const dose = sets(3, reps(range ?? { from: 8, to: 10 }, { reserve: { from: 2, to: 2 } }));
    const asked: PlanSlot = {
      key: "it",
      exercise,
      dose,
      ...(load === undefined ? {} : { load: kg(load) }),
      why: [],
      offer: [],
    };
    const all = done.map(
      (count, set): DoneSet => ({
        set,
        exercise,
        asked: dose.sets[set]!,
        ...(count === undefined ? {} : { reps: { both: count } }),
        ...(reserve === undefined ? {} : { reserve }),
        ...(lifted === undefined ? {} : { lifted: kg(lifted) }),
      }),
    );
    const session = `base/${at + 1}/a`;
    return { session, phase: "base", week: at + 1, light, at: day * DAY_MS, n: at + 1, asked, sets: all, leftOut: [] };
  });
}
const next = (rule: Rule, did: readonly Did[], day: number) => sayNext(rule, sessionsOf(did), day * DAY_MS);
const two = (last: readonly [number, number], more: Partial<Did> = {}) =>
  last.map((count, at) => ({ day: at * 3, load: 40, reps: [10, 10, count], ...more }));

describe("haffTriplett2016, printed: top of the range 10, last sets of two sessions running", () => {
  test("12, 12 is a load more; 12, 11 and 12, 10, 12 are not", () => {
    expect(next(TWO_FOR_TWO, two([12, 12]), 6)).toBe("up");
    expect(next(TWO_FOR_TWO, two([12, 11]), 6)).toBe("same");
    expect(next(TWO_FOR_TWO, [...two([12, 10]), { day: 6, load: 40, reps: [10, 10, 12] }], 9)).toBe("same");
    expect(next(TWO_FOR_TWO, two([12, 12]).slice(1), 6)).toBe("same");
  });
});

describe("edges of a rule, ours", () => {
  test("a break of as many days as it allows begins anew, before the session as well as between two", () => {
    expect(next(TWO_FOR_TWO, two([12, 12]), 16.9)).toBe("up");
    expect(next(TWO_FOR_TWO, two([12, 12]), 17)).toBe("same");
    const apart = [
      { day: 0, load: 40, reps: [10, 10, 12] },
      { day: 14, load: 40, reps: [10, 10, 12] },
    ];
    expect(next(TWO_FOR_TWO, apart, 15)).toBe("same");
  });
  test("another load or form, a set that is not there, and one that nobody read show nothing", () => {
    expect(next(TWO_FOR_TWO, [two([12, 12])[0]!, { day: 3, load: 42.5, reps: [10, 10, 12] }], 6)).toBe("same");
    expect(next(TWO_FOR_TWO, two([12, 12], { lifted: 37.5 }), 6)).toBe("same");
    expect(
      next(
        TWO_FOR_TWO,
        two([12, 12]).map((each) => ({ ...each, reps: [12, 12] })),
        6,
      ),
    ).toBe("same");
    expect(
      next(
        TWO_FOR_TWO,
        two([12, 12]).map((each) => ({ ...each, reps: [12, 12, undefined] })),
        6,
      ),
    ).toBe("same");
  });
  test("reserve counts where the rule says so: 10 with 4 left is two over", () => {
    const counts: Rule = { ...TWO_FOR_TWO, up: { ...TWO_FOR_TWO.up, reserve: "counts" } };
    expect(next(counts, two([10, 10], { reserve: 4 }), 6)).toBe("up");
    expect(next(TWO_FOR_TWO, two([10, 10], { reserve: 4 }), 6)).toBe("same");
    expect(next(counts, two([12, 12], { reserve: 1 }), 6)).toBe("same");
    expect(next(TWO_FOR_TWO, two([12, 12], { reserve: 1 }), 6)).toBe("up");
  });
  test("which sets: the first, all", () => {
    const by = (which: "first" | "all"): Rule => ({
      ...TWO_FOR_TWO,
      up: { ...TWO_FOR_TWO.up, sets: which, sessions: 1 },
    });
    expect(next(by("first"), [{ day: 0, load: 40, reps: [12, 8, 8] }], 3)).toBe("up");
    expect(next(by("all"), [{ day: 0, load: 40, reps: [12, 12, 11] }], 3)).toBe("same");
    expect(next(by("all"), [{ day: 0, load: 40, reps: [12, 12, 12] }], 3)).toBe("up");
  });
  test("back: so many under the bottom in the first set", () => {
    const back: Rule = { ...TWO_FOR_TWO, back: { under: 2, sessions: 1 } };
    expect(next(back, [{ day: 0, load: 40, reps: [6, 8, 8] }], 3)).toBe("back");
    expect(next(back, [{ day: 0, load: 40, reps: [7, 5, 5] }], 3)).toBe("same");
    expect(next(TWO_FOR_TWO, [{ day: 0, load: 40, reps: [1, 1, 1] }], 3)).toBe("same");
  });
});

describe("a rule over a record", () => {
  const run = (did: readonly Did[], hurts: readonly HurtRecord[] = []) =>
    replay(TWO_FOR_TWO, [{ person: "ana", log: sessionsOf(did), hurts, now: 100 * DAY_MS }], CATALOGUE);
  const strong = (day: number, load: number): Did => ({ day, load, reps: [10, 10, 12] });
  const plain = (day: number, load: number, count = 9): Did => ({ day, load, reps: [count, count, count] });

  test("where it would have said what was asked, what came of it is counted", () => {
    const { agreed, differed, after, occasions } = run([
      strong(0, 40),
      strong(3, 40),
      plain(6, 42.5),
      plain(9, 42.5, 7),
    ]);
    expect(agreed.map(({ ruled, occasions: n, done }) => [ruled, n, done!.value, done!.n])).toEqual([
      ["up", 1, 1, 1],
      ["same", 2, 0.5, 2],
    ]);
    expect([differed, after]).toEqual([[], 0]);
    expect(occasions.map(({ outcome }) => outcome)).toEqual(["done", "done", "short"]);
  });
  test("the first difference is told; nothing after it is evidence, whatever it says", () => {
    const { agreed, differed, after, occasions } = run([
      strong(0, 40),
      strong(3, 40),
      plain(6, 40),
      plain(9, 40),
      plain(12, 42.5),
    ]);
    expect(agreed.map(({ ruled, occasions: n }) => [ruled, n])).toEqual([["same", 1]]);
    expect(differed.map(({ ruled, decided, occasions: n }) => [ruled, decided, n])).toEqual([["up", "same", 1]]);
    expect(after).toBe(2);
    expect(occasions.map(({ counts }) => counts)).toEqual([true, true, false, false]);
  });
  test("the rule sees nothing of the session that it is asked about", () => {
    const { occasions } = run([strong(0, 40), strong(3, 40)]);
    expect(occasions.map(({ ruled }) => ruled)).toEqual(["same"]);
  });
  test("another form, another range or no load is not compared; light weeks are passed over", () => {
    const none = (each: Did): Did => {
      const { load: _, ...rest } = each;
      return rest;
    };
    expect(run([plain(0, 40), { ...plain(3, 40), exercise: "pull" }]).notCompared).toBe(1);
    expect(run([plain(0, 40), { ...plain(3, 40), range: { from: 5, to: 8 } }]).notCompared).toBe(1);
    expect(run([none(plain(0, 0)), none(plain(3, 0))]).notCompared).toBe(1);
    const light = run([plain(0, 40), { ...plain(3, 20), light: true }, plain(6, 40)]);
    expect([light.notCompared, light.occasions.length, light.occasions[0]!.decided]).toEqual([0, 1, "same"]);
  });
  test("less help is a load more", () => {
    const helped = [30, 25].map((load, at): Did => ({ ...plain(at * 3, load), exercise: "pull" }));
    expect(run(helped).occasions[0]!.decided).toBe("up");
  });
  test("what hurt more than 2 of 10, fell short, or was not entered", () => {
    const hurt = (howMuch: number) =>
      ({ id: "h", session: "base/2/a", slot: "it", where: "knee", howMuch, at: 0, n: 9, device: "d" }) as HurtRecord;
    const record = [plain(0, 40), plain(3, 40)];
    expect([2, 3].map((howMuch) => run(record, [hurt(howMuch)]).occasions[0]!.outcome)).toEqual(["done", "hurt"]);
    const silent = run([plain(0, 40), { day: 3, load: 40, reps: [undefined, undefined, undefined] }]);
    expect(silent.occasions[0]!.outcome).toBe("not entered");
    expect("done" in silent.agreed[0]!).toBe(false);
  });
  test("of the session to come it says what is another load", () => {
    const now = (day: number) =>
      replay(
        TWO_FOR_TWO,
        [{ person: "ana", log: sessionsOf([strong(0, 40), strong(3, 40)]), hurts: [], now: day * DAY_MS }],
        CATALOGUE,
      ).open;
    expect(now(6)).toEqual([{ person: "ana", slot: "it", exercise: "press", load: kg(40), ruled: "up" }]);
    expect(now(30)).toEqual([]);
  });
  test("people and movements are counted; nobody gives nothing", () => {
    const found = replay(
      TWO_FOR_TWO,
      ["ana", "bo"].map((person) => ({
        person,
        log: sessionsOf([plain(0, 40), plain(3, 40)]),
        hurts: [],
        now: 0,
      })),
      CATALOGUE,
    );
    expect([found.people, found.movements, found.occasions.length]).toEqual([2, 2, 2]);
    expect(replay(TWO_FOR_TWO, [], CATALOGUE)).toMatchObject({ people: 0, agreed: [], occasions: [] });
  });
});
