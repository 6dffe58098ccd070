import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays } from "../day.ts";
import type { Caution, Limit, Patch, Screening } from "../model/index.ts";
import { madeUpExercise, reps, SLOT_START, type SlotTrained, slotTrained } from "../testing/index.ts";
import { dosesFor } from "./index.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const WAYS = ["reps then load", "load", "reserve"] as const;
/** Two forms of one dose: a bar with plates, where what is held is known, and a stack, where it is not. */
const bar = madeUpExercise({
  id: "squat",
  loadMeaning: "total",
  needs: [["barbell"], ["plates"]],
  stress: { knee_deep: 2 },
});
const stack = madeUpExercise({ id: "press", loadMeaning: "stack", needs: [["leg press"]], stress: { knee_deep: 2 } });
const PLATES = [10, 5, 2.5, 1.25];
const PINS = [20, 25, 30, 32, 40, 45, 47, 50, 60, 80, 81, 100];
const room: SlotTrained["place"] = {
  equipment: { barbell: 1, plates: 1, "leg press": 1 },
  bars: [kg(20)],
  plates: PLATES.map((value) => ({ load: kg(value), pairs: 1 })),
  stacks: { "leg press": { unit: "kg", pins: PINS } },
};
/** Every load that one pair of each plate makes on the bar, counted out. */
const SUMS = PLATES.reduce<readonly number[]>((sums, each) => sums.concat(sums.map((sum) => sum + 2 * each)), [20]);

const near = fc.integer({ min: -20, max: 60 });
const limits = fc.array(
  fc.record({
    kind: fc.constantFrom("load", "movement"),
    atMost: fc.constantFrom(20, 30, 40, 47, 60),
    from: near,
    days: fc.integer({ min: 0, max: 40 }),
    lifted: fc.option(near, { nil: undefined }),
  }),
  { maxLength: 2 },
);
const people = fc.record({
  form: fc.constantFrom(bar, stack),
  way: fc.constantFrom(...WAYS),
  start: fc.nat({ max: 11 }),
  did: fc.array(
    fc.record({
      gap: fc.constantFrom(2, 3, 3, 3, 3, 3, 4, 4, 7, 15),
      reps: fc.constantFrom(3, 5, 6, 7, 8, 9, 9, 9, 10, 10, 12, 14),
      reserve: fc.option(fc.integer({ min: 0, max: 6 }), { nil: undefined }),
      moved: fc.constantFrom(0, 0, 0, 0, 0, 0, 0, 1, -1),
    }),
    { minLength: 2, maxLength: 11 },
  ),
  later: fc.constantFrom(1, 2, 3, 3, 4, 7, 14),
  limits,
  caution: fc.option(fc.record({ ceiling: fc.constantFrom(0, 1, 2, 3), from: near }), { nil: undefined }),
  screening: fc.record({
    outcome: fc.constantFrom(...Array<string>(8).fill("no reason found"), "stop", "ask a doctor first"),
    until: fc.constantFrom(5, 20, 200, 200, 200, 200),
  }),
});
type Somebody = typeof people extends fc.Arbitrary<infer One> ? One : never;

/** The same person with their record, in the words of this room's tests. */
function inputOf(one: Somebody) {
  const here = (one.form === bar ? SUMS.toSorted((a, b) => a - b) : PINS) as readonly number[];
  let [day, at] = [0, Math.min(one.start, here.length - 1)];
  const did = one.did.map(({ gap, reps: count, reserve, moved }) => {
    [day, at] = [day + gap, Math.max(0, Math.min(here.length - 1, at + moved))];
    const said = { reps: count, load: kg(here[at]!), ...(reserve === undefined ? {} : { reserve }) };
    return [day, said] as const;
  });
  const today = addDays(SLOT_START, day + one.later);
  const on = (days: number) => addDays(SLOT_START, days);
  // Letters of different writers bind together; the steps of one letter would follow one another.
  const written = one.limits.map(({ kind, atMost, from, days, lifted }, letter): Limit => {
    const common = { side: "both", from: on(from), to: on(from + days), who: `Dr ${letter}` } as const;
    const review = lifted === undefined ? {} : { lifted: { on: on(lifted), who: "Dr Example" } };
    if (kind === "movement") return { kind, movement: one.form.id, ...common, ...review };
    return { kind: "load", atMost: kg(atMost), applies: "total", ...common, ...review };
  });
  const caution: readonly Caution[] =
    one.caution === undefined
      ? []
      : [
          {
            tag: "knee_deep",
            ceiling: one.caution.ceiling as 0,
            from: on(one.caution.from),
            recheck: on(300),
            who: "physiotherapist",
          },
        ];
  const screening: Screening = {
    outcome: one.screening.outcome as "stop",
    on: on(-30),
    until: on(one.screening.until),
    by: "coach",
  };
  const input = slotTrained({
    exercise: one.form,
    set: reps({ from: 5, to: 7 }, { reserve: { from: 2, to: 2 } }),
    sets: 3,
    load: here[at]!,
    place: room,
    person: { limits: written, cautions: caution, screening },
    did,
    today: day + one.later,
    way: one.way,
  });
  return { input, here, today, last: here[at]!, written };
}

function loadsOf(patch: Patch): readonly number[] {
  if (patch.change === "load") return [patch.load.value];
  return patch.change === "reps" ? patch.dose.sets.flatMap(({ load }) => load?.value ?? []) : [];
}

describe("whoever it is, whatever was recorded and whatever stands against it (made-up people)", () => {
  const seed = { seed: 1107, numRuns: 500 };
  let ups = 0;

  test("no way up or back breaks a limit, dated as it is, or asks for a load that is not here", () => {
    fc.assert(
      fc.property(people, (one) => {
        const { input, here, today, written } = inputOf(one);
        const [{ next }] = dosesFor(input) as [ReturnType<typeof dosesFor>[number]];
        // After its last day a limit stays until a review is recorded.
        const inForce = written.filter(({ from, lifted }) => from <= today && !(lifted && lifted.on <= today));
        const loads = [...(next.patch === undefined ? [] : [next.patch]), ...next.others].flatMap(loadsOf);
        for (const load of loads) expect(here).toContain(load);
        if (next.kind === "up") {
          ups++;
          expect(inForce.filter(({ kind }) => kind === "movement")).toEqual([]);
        }
        for (const { kind, atMost } of inForce) {
          if (kind !== "load") continue;
          // What a stack holds is not known, and is never under a limit in kilograms.
          if (one.form === stack) expect(loads).toEqual([]);
          else for (const load of loads) expect(load).toBeLessThanOrEqual(atMost!.value);
        }
      }),
      seed,
    );
    expect(ups).toBeGreaterThan(30);
  });

  test("nothing rises without a clearance that stands, nor over a ceiling", () => {
    fc.assert(
      fc.property(people, (one) => {
        const { input, today } = inputOf(one);
        const [{ next }] = dosesFor(input) as [ReturnType<typeof dosesFor>[number]];
        if (next.kind !== "up") return;
        expect(one.screening.outcome).toBe("no reason found");
        expect(addDays(SLOT_START, one.screening.until)).toBeGreaterThanOrEqual(today);
        const { caution } = one;
        const stands = caution !== undefined && addDays(SLOT_START, caution.from) <= today;
        if (stands) expect(caution.ceiling).toBeGreaterThanOrEqual(2);
      }),
      seed,
    );
  });

  test("a load rises by one that is here at a time, on two sessions running, and not while one of them fell short", () => {
    fc.assert(
      fc.property(people, (one) => {
        const { input, here, last } = inputOf(one);
        const [{ next }] = dosesFor(input) as [ReturnType<typeof dosesFor>[number]];
        const again = next.evidence.some(({ code }) => code === "progress/back-again");
        if (next.kind !== "up" || next.patch?.change !== "load" || again) return;
        const { load } = next.patch;
        expect(here.filter((each) => each > last && each < load.value)).toEqual([]);
        const two = one.did.slice(-2);
        // Repetitions said to be left beyond the two that were asked for count as done.
        const shown = two.map(({ reps: count, reserve = 2 }) => count + Math.max(0, reserve - 2));
        expect(Math.min(...shown)).toBeGreaterThanOrEqual(5);
        expect(two[1]!.gap).toBeLessThan(14);
        expect(one.later).toBeLessThan(14);
      }),
      seed,
    );
  });
});
