import { describe, expect, test } from "vitest";
import type { Decided } from "../measures/index.ts";
import type { Patch } from "../model/index.ts";
import { madeUpExercise, reps, type SlotTrained, setDone, sets, slotTrained } from "../testing/index.ts";
import type { DoseState } from "./dose-state.ts";
import { fullAgain, type Lowered, loweredIn } from "./full-again.ts";
import { dosesFor } from "./index.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const press = madeUpExercise({ id: "press", loadMeaning: "stack", needs: [["leg press"]] });
const asked = reps(8, { reserve: { from: 2, to: 2 }, percent: 70 });
const trained = (more: Partial<SlotTrained> = {}) =>
  slotTrained({
    exercise: press,
    set: asked,
    sets: 2,
    load: 40,
    place: { equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins: [40, 50] } } },
    did: [
      [0, { ...setDone(8), load: kg(40) }],
      [3, { ...setDone(8), load: kg(40) }],
    ],
    today: 4,
    ...more,
  });
/** Two sets are asked of the four that the programme asks, taken by a word said before everything that was recorded. */
const again = (lowered: Lowered | undefined, more: Partial<DoseState> = {}, of: Partial<SlotTrained> = {}) => {
  const { today, dayOf, exercise, slot, history, person } = dosesFor(trained(of))[0]!.state;
  return fullAgain({
    today,
    dayOf,
    exercise,
    slot,
    history,
    person,
    home: sets(4, asked),
    lowered,
    ...more,
  } as DoseState);
};
const setsOf = (next: ReturnType<typeof again>) => (next?.patch?.change === "reps" ? next.patch.dose.sets : undefined);

describe("sets come back after two sessions done as asked", () => {
  test("all of them after a comeback, with the load of now and without a share of the best", () => {
    const next = again({ why: "comeback", n: 0 });
    expect(setsOf(next)).toEqual(Array(4).fill({ ...reps(8, { reserve: { from: 2, to: 2 } }), load: kg(40) }));
    expect(next).toMatchObject({ kind: "up", since: 1, patch: { slot: "it", exercise: "press" } });
    expect(next!.evidence).toEqual([
      {
        code: "progress/full-again",
        data: {
          exercise: "press",
          from: 2,
          to: 4,
          why: "comeback",
          sessions: [{ on: "2027-03-01" }, { on: "2027-03-04" }],
        },
      },
    ]);
  });

  test("one more at a time after the first sessions of a muscle", () => {
    const next = again({ why: "first", n: 0 });
    expect(setsOf(next)).toHaveLength(3);
    expect(next!.evidence[0]!.data).toMatchObject({ from: 2, to: 3, why: "first" });
  });

  test("without a load they are as the programme asks them", () => {
    const { slot } = dosesFor(trained())[0]!.state;
    const { load: _, ...bare } = slot;
    expect(setsOf(again({ why: "comeback", n: 0 }, { slot: bare }))).toEqual(Array(4).fill(asked));
  });

  test("its neighbours: nothing lowered, one session, one of them before the word, one set short, a break", () => {
    expect(again(undefined)).toBeUndefined();
    const one = { did: [[0, { ...setDone(8), load: kg(40) }]] } as const;
    expect(again({ why: "first", n: 0 }, {}, one)).toBeUndefined();
    expect(again({ why: "first", n: 1 })).toBeUndefined();
    expect(again({ why: "first", n: 2 })).toBeUndefined();
    const short = {
      did: [
        [0, { ...setDone(8), load: kg(40) }],
        [3, { ...setDone(7), load: kg(40) }],
      ],
    } as const;
    expect(again({ why: "first", n: 0 }, {}, short)).toBeUndefined();
    expect(again({ why: "first", n: 0 }, {}, { today: 17 })).toBeUndefined();
    expect(again({ why: "first", n: 0 }, {}, { today: 16 })).toBeDefined();
  });
});

describe("why a dose that stands has fewer sets", () => {
  const { record, plan } = trained();
  const slot = plan.phases[0]!.weeks[0]!.sessions[0]!.blocks[0]!.slots[0]!;
  const word = (codes: readonly string[], more: Partial<Decided> = {}): Decided => {
    const patch: Patch = { slot: "it", change: "reps", dose: slot.dose, exercise: "press" };
    const evidence = codes.map((code) => ({ code, data: {} }));
    const proposal = { proposal: "p", patch, evidence, cut: {}, engine: "1" };
    return { id: "word", n: 7, at: 0, by: "Imke", kind: "accepted", patch, proposal, cut: {}, ...more };
  };
  const why = (decisions: readonly Decided[], home = sets(4, asked)) => loweredIn({ ...record, decisions }, slot, home);

  test("a comeback, or a muscle that is new or back, by the last word on the slot's dose, with its place", () => {
    expect(why([word(["progress/comeback"])])).toEqual({ why: "comeback", n: 7 });
    for (const code of ["progress/muscle-new", "progress/muscle-back", "progress/full-again"])
      expect(why([word([code])])).toEqual({ why: "first", n: 7 });
    expect(why([word(["progress/comeback"]), word(["progress/muscle-new"], { n: 8 })])).toEqual({ why: "first", n: 8 });
  });

  test("another reason, another slot, another change and no word at all are none", () => {
    expect(why([word(["progress/under-floor"])])).toBeUndefined();
    expect(why([])).toBeUndefined();
    expect(why([word(["progress/comeback"], { patch: { slot: "other", change: "resume" } })])).toBeUndefined();
    const load: Patch = { slot: "it", change: "load", load: kg(40) };
    expect(why([word(["progress/comeback"], { patch: load })])).toBeUndefined();
    const { patch: _, ...refused } = word(["progress/comeback"], { kind: "refused" });
    expect(why([refused])).toBeUndefined();
  });

  test("as many sets as the programme asks are none too few", () => {
    expect(why([word(["progress/comeback"])], sets(2, asked))).toBeUndefined();
    expect(why([word(["progress/comeback"])], sets(3, asked))).toBeDefined();
  });
});

describe("every set of both sessions counts", () => {
  const { history } = dosesFor(trained())[0]!.state;
  type Set = (typeof history)[number]["sets"][number];
  const changed = (session: number, set: number, more: Partial<Set>) =>
    history.map((each, at) =>
      at === session
        ? { ...each, sets: each.sets.map((one, index) => (index === set ? { ...one, ...more } : one)) }
        : each,
    );
  const comes = (of: typeof history) => again({ why: "first", n: 0 }, { history: of }) !== undefined;

  test("one set short in either session, first or last, is not as asked", () => {
    for (const session of [0, 1])
      for (const set of [0, 1]) {
        expect(comes(changed(session, set, { reps: { both: 7 } }))).toBe(false);
        expect(comes(changed(session, set, { reps: { both: 8 } }))).toBe(true);
      }
  });

  test("a set that is missing, and one of which nobody read anything, are not as asked either", () => {
    const without = history.map((each, at) => (at === 1 ? { ...each, sets: each.sets.slice(0, 1) } : each));
    expect(comes(without)).toBe(false);
    const most = { asked: { amount: { kind: "most" }, eachSide: false } } as const;
    const { reps: _, ...unread } = history[1]!.sets[1]!;
    const nobody = history.map((each, at) =>
      at === 1 ? { ...each, sets: [each.sets[0]!, { ...unread, ...most }] } : each,
    );
    expect(comes(nobody)).toBe(false);
    expect(comes(changed(1, 1, { ...most, reps: { both: 0 } }))).toBe(true);
  });

  test("it rests on the earlier of both sessions, whichever way they lie", () => {
    const [one, two] = history;
    expect(again({ why: "first", n: 0 })!.since).toBe(one!.n);
    const turned = [
      { ...one!, n: two!.n },
      { ...two!, n: one!.n },
    ];
    expect(again({ why: "first", n: 0 }, { history: turned })!.since).toBe(one!.n);
  });
});
