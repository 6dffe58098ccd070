import fc from "fast-check";
import { expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import type { Person, Phase } from "../model/index.ts";
import {
  LOOP_PLACE,
  madeUpPerson,
  madeUpPhase,
  madeUpPlace,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
} from "../testing/index.ts";
import { build, type FitInput } from "./build.ts";
import { fitPhase } from "./fit.ts";
import { FitMemory } from "./memory.ts";
import { solve } from "./search.ts";

const on = day("2027-03-01");
const kg = (value: number) => ({ value, unit: "kg" }) as const;

function phaseOf(count: number, restS: number, weeks: number, light: readonly number[]): Phase {
  const asked = sets(count, reps({ from: 8, to: 10 }), { restS });
  const session = madeUpSession("a", 40, [
    madeUpSlot("goblet-squat", "squat", asked, { slot: "squat" }),
    {
      pair: [
        madeUpSlot("push-up", "horizontal push", asked, { slot: "push" }),
        madeUpSlot("one-arm-row", "horizontal pull", asked, { slot: "row" }),
      ],
    },
    madeUpSlot("goblet-squat", "squat", asked, { slot: "again" }),
  ]);
  return madeUpPhase([session], { key: "p", title: "P", weeks, light });
}

const people = fc.record(
  {
    status: fc.constantFrom("novice", "advanced"),
    minutes: fc.constantFrom(20, 40),
    perWeek: fc.constantFrom(1, 3),
    likes: fc.constantFrom([], ["leg-press-mid"]),
    rungs: fc.constantFrom({}, { squat: "body-squat" }),
    lifts: fc.constantFrom([], [{ exercise: "goblet-squat", load: kg(16), reps: 8, on }]),
    cannot: fc.constantFrom([], ["floor"]),
    pins: fc.subarray([
      { slot: "squat", exercise: "leg-press-mid" },
      { slot: "again", sets: 4 },
      { slot: "row", exercise: "goblet-squat" },
    ]),
    cautions: fc.constantFrom([], [{ statement: "knee", from: on, recheck: addDays(on, 30), who: "Dr B" }]),
  } as const,
  { requiredKeys: [] },
);
const inputs = fc
  .tuple(
    people,
    fc.constantFrom(LOOP_PLACE, madeUpPlace({ equipment: { floor: 1, wall: 1, chair: 1 } })),
    fc.tuple(fc.constantFrom(2, 3), fc.constantFrom(60, 120), fc.constantFrom(2, 3), fc.constantFrom([], [2])),
    fc.constantFrom(on, addDays(on, 40)),
    fc.constantFrom(undefined, new Map([["squat", "body-squat"]])),
  )
  .map(([said, place, [count, restS, weeks, light], from, last]): FitInput => {
    const phase = phaseOf(count, restS, weeks, light);
    const person = madeUpPerson(said as unknown as Partial<Person>);
    const programme = madeUpProgramme([], { phases: [phase] });
    const more = last === undefined ? {} : { last };
    return { programme, phase, person, place, catalogue: CATALOGUE, on: from, perWeek: person.perWeek ?? 1, ...more };
  });

test("a fit that others were remembered before has the same task and answer as one without a memory", () => {
  fc.assert(
    fc.property(fc.array(inputs, { minLength: 2, maxLength: 6 }), (several) => {
      const memory = new FitMemory(3);
      for (const input of several) {
        expect(build({ ...input, memory }).task).toEqual(build(input).task);
        const [first, again] = [fitPhase({ ...input, memory }), fitPhase({ ...input, memory })];
        expect(first.solution).toEqual(solve(build(input).task));
        expect(again.solution).toBe(first.solution);
      }
    }),
    { numRuns: 15, seed: 31 },
  );
});

const plain = (): FitInput => {
  const phase = phaseOf(3, 90, 2, []);
  return {
    programme: madeUpProgramme([], { phases: [phase] }),
    phase,
    person: madeUpPerson(),
    place: LOOP_PLACE,
    catalogue: CATALOGUE,
    on,
    perWeek: 1,
  };
};

test("what has not changed is there already: all for somebody with less time, and the other slots after a pin", () => {
  const memory = new FitMemory(1);
  const input = plain();
  const slots = (other: FitInput) =>
    build({ ...other, memory }).sessions.flatMap(({ blocks }) => blocks.flatMap((block) => block.slots));
  const [squat, ...others] = slots(input);
  expect(slots({ ...input, person: madeUpPerson({ name: "Else", minutes: 20, pins: [] }) })[0]).toBe(squat);
  const [pinned, ...rest] = slots({
    ...input,
    person: madeUpPerson({ pins: [{ slot: "squat", exercise: "leg-press-mid" }] }),
  });
  expect(pinned).not.toBe(squat);
  expect(rest.map((slot, at) => slot === others[at])).toEqual([true, true, true]);
});

test("no more people are kept than was said, those used last", () => {
  const memory = new FitMemory(2);
  const of = (status: Person["status"]) => memory.of({ ...plain(), person: madeUpPerson({ status }) });
  const novice = of("novice");
  of("intermediate");
  expect(of("novice")).toBe(novice);
  of("advanced");
  expect(of("novice")).toBe(novice);
  const again = of("intermediate");
  expect(again.choices.size).toBe(0);
  expect(of("novice")).toBe(novice);
});

test("a person about whom more is decided than is kept begins anew", () => {
  const memory = new FitMemory(2);
  const before = memory.of(plain());
  for (let sets = 1; sets <= 120; sets++) before.solutions.set(String(sets), undefined);
  expect(memory.of(plain()).solutions.size).toBe(0);
});

test("another catalogue is another memory", () => {
  const memory = new FitMemory(2);
  const before = memory.of(plain());
  expect(memory.of({ ...plain(), catalogue: { ...CATALOGUE } })).not.toBe(before);
});
