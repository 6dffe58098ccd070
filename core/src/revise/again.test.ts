import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { buildSync } from "esbuild";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../exercises/index.ts";
import { loadsLeft } from "../loads/index.ts";
import { slotsIn } from "../measures/index.ts";
import {
  type Bundle,
  HURT_PLACES,
  type HurtPlace,
  type PlanSession,
  type StressTag,
  stressesOf,
} from "../model/index.ts";
import { admitter } from "../offer/index.ts";
import { madeUpSituation } from "../testing/index.ts";
import { massOf } from "../units.ts";
import { again, bundleFor, nextRevision, type SessionSoFar } from "./index.ts";

const situation = madeUpSituation(CATALOGUE);
const planned = { ...situation, plan: nextRevision(situation) };
const bundle: Bundle = bundleFor(planned, "call");
const SESSION = "base/1/a";
const before = bundle.sessions.find(({ id }) => id === SESSION)!.session;
const soFar = (more: Partial<SessionSoFar> = {}): SessionSoFar => ({ session: SESSION, sets: {}, hurts: [], ...more });
const slotOf = (session: PlanSession, key: string) => slotsIn(session).find((slot) => slot.key === key);
const offerOf = (key: string) => bundle.offers.find(({ slot }) => slot === key)!.forms;
const formOf = (id: string) => bundle.exercises.find((form) => form.id === id)!;

describe("an easier form", () => {
  test("is the nearest below, with its own load and dose; asked again, the next below; at the end nothing changes", () => {
    const rungs: number[] = [0];
    let now = before;
    for (;;) {
      const { session, swaps, paused } = again(bundle, "squat", "easier", soFar({ now }));
      expect(paused).toEqual([]);
      if (swaps.length === 0) break;
      const form = offerOf("squat").find(({ exercise }) => exercise === swaps[0]!.to)!;
      expect(swaps).toEqual([
        {
          slot: "squat",
          from: slotOf(now, "squat")!.exercise,
          to: form.exercise,
          ...(form.load && { load: form.load }),
        },
      ]);
      expect(slotOf(session, "squat")).toMatchObject({ exercise: form.exercise, dose: form.dose ?? {} });
      expect(slotOf(session, "squat")!.load).toEqual(form.load);
      rungs.push(form.rung);
      now = session;
    }
    expect(rungs.length).toBeGreaterThan(3);
    expect(rungs).toEqual(rungs.toSorted((a, b) => b - a));
    expect(new Set(rungs).size).toBe(rungs.length);
    expect(slotOf(now, "row")).toEqual(slotOf(before, "row"));
  });

  test("takes away the lighter sets that led up to the old form, unless they are done", () => {
    const lead = { exercise: "back-squat", dose: slotOf(before, "squat")!.dose, for: "squat" };
    const now = { ...before, warmup: [lead] };
    expect(again(bundle, "squat", "easier", soFar({ now })).session.warmup).toEqual([]);
    expect(again(bundle, "squat", "easier", soFar({ now, sets: { squat: 1 } })).session.warmup).toEqual([lead]);
  });
});

describe("other equipment", () => {
  test("does without what the form needed, or the slot waits", () => {
    const { swaps, session } = again(bundle, "squat", "equipment", soFar());
    const needs = formOf(swaps[0]!.to).needs.flat();
    for (const tool of ["barbell", "plates", "rack"] as const) expect(needs).not.toContain(tool);
    expect(slotOf(session, "squat")!.exercise).toBe(swaps[0]!.to);
    const alone: Bundle = { ...bundle, offers: [] };
    expect(again(alone, "squat", "equipment", soFar())).toMatchObject({
      swaps: [],
      paused: [{ slot: "squat", because: { code: "plan/nothing-else-here", data: { exercise: "back-squat" } } }],
    });
  });
});

describe("pain", () => {
  const hurt = (where: string, howMuch: number, more: Partial<SessionSoFar> = {}) =>
    again(bundle, "squat", "hurt", soFar({ hurts: [{ where, howMuch }], ...more }));
  const stresses = (exercise: string, tags: readonly StressTag[]) =>
    tags.filter((tag) => (formOf(exercise).stress[tag] ?? 0) > 0);

  test("takes what spares the place, or the slot waits with the reason", () => {
    const { swaps, paused } = hurt("low back", 4);
    const tags = stresses("back-squat", stressesOf("low back") as readonly StressTag[]);
    expect(tags.length).toBeGreaterThan(0);
    for (const { to } of swaps) expect(stresses(to, tags)).toEqual([]);
    expect([...swaps, ...paused].map(({ slot }) => slot)).toContain("squat");
    const alone = again(
      { ...bundle, offers: [] },
      "squat",
      "hurt",
      soFar({ hurts: [{ where: "low back", howMuch: 4 }] }),
    );
    expect(alone.paused[0]).toEqual({
      slot: "squat",
      because: { code: "plan/nothing-spares", data: { exercise: "back-squat", where: "low back" } },
    });
    expect(slotOf(alone.session, "squat")).toBeUndefined();
  });

  test("reaches every slot still to come that shares the stress, above what is free to go on with", () => {
    const touched = ({ swaps, paused }: ReturnType<typeof again>) =>
      [...swaps, ...paused].map(({ slot }) => slot).sort();
    const shares = stresses("one-arm-row", stresses("back-squat", stressesOf("low back") as readonly StressTag[]));
    expect(shares.length).toBeGreaterThan(0);
    expect(touched(hurt("low back", 3))).toEqual(["row", "squat"]);
    expect(touched(hurt("low back", 2))).toEqual(["squat"]);
    const sets = { row: slotOf(before, "row")!.dose.sets.length };
    expect(touched(hurt("low back", 3, { sets }))).toEqual(["squat"]);
  });

  test("of a form that loads nothing there takes another form all the same", () => {
    expect(stresses("back-squat", stressesOf("elbow") as readonly StressTag[])).toEqual([]);
    const { swaps } = hurt("elbow", 4);
    expect(swaps.map(({ slot }) => slot)).toContain("squat");
  });

  test.each(["chest", "dizzy"])("%s stops everything", (where) => {
    const { paused, swaps, session } = hurt(where, 1, { sets: { squat: 3, row: 1 } });
    expect(swaps).toEqual([]);
    expect(paused.map(({ slot }) => slot)).toEqual(["squat", "row"]);
    expect(slotsIn(session)).toEqual([]);
  });
});

const asked = fc.record({
  slot: fc.constantFrom(...slotsIn(before).map(({ key }) => key)),
  because: fc.constantFrom("easier" as const, "hurt" as const, "equipment" as const),
  sets: fc.record({ squat: fc.nat(4), row: fc.nat(4) }),
  hurts: fc.array(
    fc.record({ where: fc.constantFrom(...(Object.keys(HURT_PLACES) as HurtPlace[])), howMuch: fc.nat(10) }),
    { minLength: 1, maxLength: 3 },
  ),
});

describe("whatever is asked", () => {
  test("phone and server agree to the byte", () => {
    const carried = JSON.parse(JSON.stringify(bundle)) as Bundle;
    fc.assert(
      fc.property(asked, ({ slot, because, sets, hurts }) => {
        const here = again(bundle, slot, because, soFar({ sets, hurts }));
        const there = again(carried, slot, because, JSON.parse(JSON.stringify(soFar({ sets, hurts }))) as SessionSoFar);
        expect(JSON.stringify(there)).toBe(JSON.stringify(here));
      }),
    );
  });

  test("every form that comes is one that the server admits for this person, at that dose and load", () => {
    const { person, place, catalogue, today: on } = situation;
    const admit = admitter({ person, place, catalogue, on });
    fc.assert(
      fc.property(asked, ({ slot, because, sets, hurts }) => {
        const { session, swaps } = again(bundle, slot, because, soFar({ sets, hurts }));
        for (const { slot: key, to } of swaps) {
          const { dose, load } = slotOf(session, key)!;
          const exercise = catalogue.exercises.get(to)!;
          const admission = admit(exercise, dose);
          expect(admission.ok).toBe(true);
          if (!admission.ok || load === undefined) continue;
          const left = loadsLeft({ exercise, person, place, on, cap: admission.cap }).loads.map(massOf);
          expect(left).toContain(massOf(load));
        }
      }),
    );
  });

  test("no form stands twice, and asked again of its own answer it changes nothing", () => {
    fc.assert(
      fc.property(asked, ({ slot, sets, hurts }) => {
        const first = again(bundle, slot, "hurt", soFar({ sets, hurts }));
        const forms = slotsIn(first.session).map(({ exercise }) => exercise);
        expect(new Set(forms).size).toBe(forms.length);
        const second = again(bundle, slot, "hurt", soFar({ sets, hurts, now: first.session }));
        expect(second).toEqual({ session: first.session, swaps: [], paused: [] });
      }),
    );
  });
});

test("a session that the bundle does not hold is a mistake of the caller", () => {
  expect(() => again(bundle, "squat", "easier", soFar({ session: "base/9/z" }))).toThrow(RangeError);
});

test("on a phone this is a few kilobytes, with no catalogue and no fit in it", () => {
  const folder = fileURLToPath(new URL(".", import.meta.url));
  const { outputFiles, metafile } = buildSync({
    stdin: {
      contents: `
        export { again } from "@stave/core/revise";
        export { foldRecord } from "@stave/core/measures";
        export { compareEvents, mergeEvents, standingEvents, stressesOf } from "@stave/core/model";`,
      resolveDir: folder,
    },
    bundle: true,
    minify: true,
    format: "esm",
    write: false,
    metafile: true,
    logLevel: "silent",
  });
  const kept = Object.values(metafile.outputs).flatMap(({ inputs }) =>
    Object.entries(inputs).flatMap(([path, { bytesInOutput }]) => (bytesInOutput > 0 ? [path] : [])),
  );
  expect(kept.filter((path) => /\/(exercises|fit|offer|loads|calendar|text|tables)\//.test(path))).toEqual([]);
  expect(gzipSync(outputFiles[0]!.contents).length).toBeLessThan(6000);
});
