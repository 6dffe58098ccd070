import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { Patch, SetDone } from "../model/index.ts";
import { madeUpExercise, published, reps, type SlotTrained, setDone, slotTrained } from "../testing/index.ts";
import { fallBackLimit } from "./fall-back.ts";
import { dosesFor } from "./index.ts";
import { weeklyCap } from "./one-more-set.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const press = madeUpExercise({ id: "x-press", loadMeaning: "stack", needs: [["leg press"]] });
const BASE: Omit<SlotTrained, "did"> = {
  exercise: press,
  set: reps({ from: 8, to: 10 }),
  sets: 4,
  load: 50,
  place: {
    equipment: { "leg press": 1 },
    stacks: { "leg press": { unit: "kg", pins: [20, 30, 40, 43, 45, 47, 50, 53] } },
  },
  today: 0,
};
const next = (did: SlotTrained["did"], more: Partial<SlotTrained> = {}) => {
  const loaded = did.map(([on, said]) => [on, { load: kg(50), ...said }] as const);
  const last = did.at(-1)?.[0] ?? 0;
  return dosesFor(slotTrained({ ...BASE, did: loaded, today: last + 1, ...more }))[0]!.next;
};
const every = (days: number, ...done: readonly Partial<SetDone>[]) =>
  done.map((each, at) => [at * days, each] as const);
const asked = (patch: Patch | undefined) => {
  if (patch?.change !== "reps") throw new Error(String(patch?.change));
  return patch.dose;
};

describe("the number at which one session is enough to go back", () => {
  test.each([
    [12, 8],
    [8, 5],
    [6, 4],
    [5, 3],
    [3, 1],
    [2, 0],
    [1, 0],
  ])("%d asked: %d (our own table)", (floor, limit) => expect(fallBackLimit(floor, "reps")).toBe(limit));
  test("seconds: 30 % less", () => {
    expect([30, 10].map((floor) => fallBackLimit(floor, "hold"))).toEqual([21, 7]);
    expect(fallBackLimit(30, "metres")).toBe(21);
  });
});

published("iusca2021", "most weekly sets after a rise of 20 %", [
  ["worked", "strength check 34: from 10", () => weeklyCap(10), 12, 0],
  ["worked", "from 12, whole sets", () => weeklyCap(12), 14, 0],
  ["worked", "under the general minimum of ten, one more", () => weeklyCap(3), 4, 0],
]);

describe("less than was asked", () => {
  test("at the limit in the first set, once: one load back", () => {
    const { kind, patch, evidence } = next(every(3, setDone(9), setDone(5)));
    expect([kind, patch]).toMatchObject(["down", { change: "load", load: kg(47) }]);
    expect(evidence).toMatchObject([
      { code: "progress/under-floor", data: { floor: 8, limit: 5, done: 5, sessions: 1 } },
    ]);
  });

  test("under what was asked in two sessions running", () => {
    expect(next(every(3, setDone(7), setDone(7))).evidence).toMatchObject([{ data: { sessions: 2, done: 7 } }]);
  });

  test("its neighbours: once only, as asked, not in the record as a whole, and a load that is back already", () => {
    expect(next(every(3, setDone(8), setDone(7))).kind).toBe("stay");
    expect(next(every(3, setDone(7), setDone(8))).kind).toBe("stay");
    const strong = every(3, ...Array(8).fill(setDone(10, 4)), setDone(7, 3), setDone(7, 3));
    expect(next(strong).kind).toBe("stay");
    expect(next(every(3, setDone(5), setDone(5)), { load: 47 }).kind).toBe("stay");
  });

  test("with no easier load here, the nearest easier form that the slot offers", () => {
    const easier = madeUpExercise({ id: "easier-press", loadMeaning: "stack", needs: [["leg press"]] });
    const place = { ...BASE.place, stacks: { "leg press": { unit: "kg", pins: [50, 53] } } } as const;
    const did = every(3, setDone(5), setDone(5));
    expect(next(did, { place, offer: [easier] }).patch).toEqual({
      slot: "it",
      change: "exercise",
      exercise: "easier-press",
    });
    expect(next(did, { place }).kind).toBe("stay");
  });
});

describe("after time away", () => {
  const did = every(3, setDone(9), setDone(9));
  const back = (days: number, more: Partial<SlotTrained> = {}) => next(did, { today: 3 + days, ...more });

  test("13 days are no break; from 14 on half the sets, a lighter load that is here, one more in reserve", () => {
    expect(back(13).kind).toBe("stay");
    const { kind, patch, evidence } = back(14);
    expect(kind).toBe("down");
    expect(asked(patch).sets.map(({ load, reserve }) => [load, reserve])).toEqual(
      Array(2).fill([kg(45), { from: 3, to: 3 }]),
    );
    expect(evidence).toMatchObject([{ code: "progress/comeback", data: { days: 14, ill: false, rule: "gentle" } }]);
  });

  test("after illness a little less; what time away takes comes off besides, more over sixty", () => {
    const load = (days: number, more: Partial<SlotTrained> = {}) => asked(back(days, more).patch).sets[0]!.load!.value;
    expect(load(14, { sick: [10] })).toBe(40);
    expect(load(70)).toBe(43);
    expect(load(84, { person: { born: day("1950-01-01") } })).toBe(30);
    const codes = back(14, { sick: [10] }).evidence.map(({ code }) => code);
    expect(codes).toEqual(["progress/comeback", "progress/well-first"]);
  });

  test("the stricter rule stands beside it: at most half", () => {
    const [strict] = back(14).others;
    expect(asked(strict).sets.map(({ load }) => load)).toEqual(Array(2).fill(kg(20)));
  });

  test("a break that took no strength: one session done as asked, and the load before it; one that did: two", () => {
    const after = (away: number) =>
      [
        [0, setDone(9)],
        [away, { ...setDone(8), load: kg(45) }],
        [away + 3, { ...setDone(8), load: kg(45) }],
      ] as const;
    const { kind, patch, evidence } = next(after(20).slice(0, 2), { load: 45 });
    expect([kind, patch]).toMatchObject(["up", { change: "load", load: kg(50) }]);
    expect(evidence[0]).toMatchObject({ code: "progress/back-again", data: { load: kg(50) } });
    // Three weeks cost nothing up to sixty years (ogasawara2013); over sixty, or ill, two sessions are asked for.
    expect(next(after(22).slice(0, 2), { load: 45 }).kind).toBe("stay");
    expect(next(after(22), { load: 45 }).patch).toMatchObject({ load: kg(50) });
    const older = { load: 45, person: { born: day("1950-01-01") } } as const;
    expect(next(after(20).slice(0, 2), older).kind).toBe("stay");
    expect(next(after(20).slice(0, 2), { load: 45, sick: [10] }).kind).toBe("stay");
    const short = [after(20)[0], after(20)[1], [23, { ...setDone(6), load: kg(45) }]] as const;
    expect(next(short, { load: 45 }).kind).toBe("stay");
  });

  test("a second break before the load was back: what was lifted with all sets counts", () => {
    const light = { ...setDone(8), load: kg(45) };
    const input = slotTrained({
      ...BASE,
      did: [
        [0, { ...setDone(9), load: kg(50) }],
        [20, light],
        [40, light],
      ],
      load: 45,
      today: 41,
    });
    const half = input.log.map((session, at) =>
      at === 0
        ? session
        : { ...session, asked: { ...session.asked, dose: { sets: session.asked.dose.sets.slice(2) } } },
    );
    expect(dosesFor({ ...input, log: half })[0]!.next.patch).toMatchObject({ change: "load", load: kg(50) });
    expect(dosesFor(input)[0]!.next.kind).toBe("stay");
  });
});
