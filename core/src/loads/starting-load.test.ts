import fc from "fast-check";
import { expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import type { Equipment, Exercise, LoadMeaning, Place } from "../model/index.ts";
import { madeUpExercise, madeUpPerson, madeUpPlace, reps, sets } from "../testing/index.ts";
import { kg, type Load, massOf } from "../units.ts";
import { heldTotal } from "./held.ts";
import { LOAD_CODES } from "./reasons.ts";
import { type StartingLoadContext, startingLoad } from "./starting-load.ts";

const on = day("2027-03-01");
const kgOf = (value: number): Load => ({ value, unit: "kg" });
const kgs = (...values: readonly number[]) => values.map(kgOf);
const form = (loadMeaning: LoadMeaning, ...tools: readonly Equipment[]): Exercise =>
  madeUpExercise({ id: "it", loadMeaning, hands: "two", needs: [tools] });
const goblet = form("one implement", "kettlebell");
const room: Place = madeUpPlace({
  kettlebells: kgs(8, 12, 16, 20, 24),
  bars: kgs(20),
  plates: kgs(10, 5, 2.5).map((load) => ({ load, pairs: 2 })),
  dumbbells: { loads: kgs(2, 4, 6, 8, 10), pairs: true },
  bands: ["A", "B"],
});
const start = (said: Partial<StartingLoadContext>) =>
  startingLoad({ exercise: goblet, dose: sets(3, reps(8)), person: madeUpPerson(), place: room, on, ...said });
const did = (load: number, done: number, ago = 0) =>
  madeUpPerson({ lifts: [{ exercise: "it", load: kgOf(load), reps: done, on: addDays(on, -ago) }] });

test("no load belongs to body mass, height and the rest", () => {
  for (const meaning of ["body only", "height", "none"] as const)
    expect(start({ exercise: form(meaning) })).toEqual({ kind: "body" });
});

test("a record of today gives a load that exists, not above the share", () => {
  expect(start({ person: did(24, 5) })).toMatchObject({
    kind: "load",
    load: kgOf(20),
    evidence: { code: "loads/from-record" },
  });
});

test("bands and a place without a list must be found", () => {
  expect(start({ exercise: form("band", "band") })).toEqual({
    kind: "find",
    because: { code: "loads/bands", data: { labels: ["A", "B"] } },
  });
  expect(start({ exercise: form("total", "hex bar") })).toMatchObject({
    kind: "find",
    because: { code: "loads/not-listed" },
  });
});

test("a written load stands before records, also where the place lists nothing", () => {
  const dose = sets(3, reps(8, { load: kgOf(12) }));
  expect(start({ dose, person: did(24, 5) })).toMatchObject({ load: kgOf(12), evidence: { code: "loads/as-written" } });
  expect(start({ dose, exercise: form("total", "hex bar") })).toMatchObject({
    load: kgOf(12),
    evidence: { code: "loads/written-not-listed" },
  });
});

test("too light: the heaviest was done 5 more than is asked with those in reserve", () => {
  expect(start({ person: did(24, 15) })).toEqual({
    kind: "too light",
    heaviest: kgOf(24),
    because: {
      code: "loads/too-light-by-record",
      data: {
        heaviest: kgOf(24),
        record: { exercise: "it", load: kgOf(24), reps: 15, reserve: null, on: "2027-03-01" },
        least: 15,
        asked: 10,
      },
    },
  });
  expect(start({ person: did(24, 14) }).kind).toBe("load");
  expect(start({ person: did(60, 5) })).toMatchObject({
    kind: "too light",
    because: { code: "loads/too-light-by-maximum", data: { percent: 36 } },
  });
});

test("a clinician's cap is never passed, and work that it makes light is not called too light", () => {
  expect(start({ person: did(24, 15), cap: { total: kg(13) } })).toMatchObject({ kind: "find", from: kgOf(12) });
  expect(start({ person: did(24, 5), cap: { total: kg(13) } })).toMatchObject({ kind: "load", load: kgOf(12) });
  expect(start({ cap: { total: kg(5) } })).toMatchObject({
    kind: "none under the cap",
    because: { code: "loads/lightest-over-limit" },
  });
  expect(start({ exercise: form("band", "band"), cap: { total: kg(50) } })).toMatchObject({
    kind: "none under the cap",
  });
  expect(start({ dose: sets(3, reps(8, { load: kgOf(24) })), cap: { total: kg(13) } })).toMatchObject({
    load: kgOf(12),
    evidence: { code: "loads/written-over-limit" },
  });
});

test("a written load that the place does not list still stands under the cap", () => {
  const exercise = form("total", "hex bar");
  const dose = sets(3, reps(8, { load: kgOf(30) }));
  expect(start({ exercise, dose, cap: { total: kg(40) } })).toMatchObject({ kind: "load", load: kgOf(30) });
  expect(start({ exercise, dose, cap: { total: kg(20) } })).toMatchObject({ kind: "none under the cap" });
});

test("a cap in per cent of the maximum cuts the share, and a written load whose share nobody knows must be found", () => {
  expect(start({ person: did(24, 5), cap: { percent: 60 } })).toMatchObject({ kind: "load", load: kgOf(16) });
  expect(start({ person: did(24, 5), cap: { percent: 60 } })).toMatchObject({ evidence: { data: { percent: 60 } } });
  const dose = sets(3, reps(8, { load: kgOf(24) }));
  expect(start({ dose, person: did(24, 5), cap: { percent: 60 } })).toMatchObject({
    load: kgOf(16),
    evidence: { code: "loads/written-over-limit" },
  });
  expect(start({ dose, cap: { percent: 60 } })).toMatchObject({
    kind: "find",
    from: kgOf(8),
    because: { code: "loads/share-unknown" },
  });
  expect(start({ dose, person: did(24, 5, 100), cap: { percent: 60 } })).toMatchObject({
    because: { code: "loads/share-unknown" },
  });
  expect(start({ person: did(8, 1), cap: { percent: 50 } })).toMatchObject({ kind: "none under the cap" });
});

test("a day that is not known makes every record old", () => {
  expect(start({ person: did(24, 5), on: Number.NaN as typeof on })).toMatchObject({
    kind: "find",
    because: { code: "loads/record-old" },
  });
});

test("whatever is known, a load exists here, is under the cap, and its reason has a code that is listed", () => {
  const context = fc.record({
    exercise: fc.constantFrom(goblet, form("total", "barbell"), form("per hand", "dumbbell")),
    load: fc.integer({ min: 1, max: 60 }),
    done: fc.integer({ min: 1, max: 15 }),
    asked: fc.integer({ min: 1, max: 20 }),
    ago: fc.integer({ min: 0, max: 100 }),
    total: fc.option(fc.integer({ min: 1, max: 40 }), { nil: undefined }),
    written: fc.option(fc.integer({ min: 1, max: 60 }), { nil: undefined }),
  });
  fc.assert(
    fc.property(context, ({ exercise, load, done, asked, ago, total, written }) => {
      const dose = sets(3, reps(asked, written === undefined ? {} : { load: kgOf(written) }));
      const cap = total === undefined ? {} : { total: kg(total) };
      const result = start({ exercise, dose, person: did(load, done, ago), cap });
      const reason = "evidence" in result ? result.evidence : "because" in result ? result.because : undefined;
      expect(LOAD_CODES).toContain(reason?.code);
      const given = result.kind === "load" ? result.load : result.kind === "find" ? result.from : undefined;
      if (given === undefined) return;
      if (written !== undefined && result.kind === "load") expect(massOf(given)).toBeLessThanOrEqual(kg(written));
      if (total !== undefined) expect(heldTotal(exercise, given)).toBeLessThanOrEqual(kg(total));
    }),
  );
});
