import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { Decided } from "../measures/index.ts";
import type { Block } from "../model/index.ts";
import { madeUpExercise, reps, type SlotTrained, setDone, slotTrained } from "../testing/index.ts";
import { dosesFor, proposalsFor } from "./index.ts";
import { propose } from "./proposals-for.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const squat = madeUpExercise({ id: "squat", loadMeaning: "stack", needs: [["leg press"]], stress: { knee_deep: 1 } });
const form = (id: string, knee: boolean) => madeUpExercise({ id, stress: knee ? { knee_deep: 1 } : {} });
/** Passed by two in both sessions, so that the next load is earned. */
const trained = (more: Partial<SlotTrained> = {}) =>
  slotTrained({
    exercise: squat,
    set: reps({ from: 8, to: 10 }),
    sets: 2,
    load: 50,
    place: { equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins: [45, 50, 53] } } },
    did: [
      [0, { ...setDone(12), load: kg(50) }],
      [3, { ...setDone(12), load: kg(50) }],
    ],
    today: 4,
    ...more,
  });
const knee = (howMuch: number, session = 1) => ({ hurts: { [session]: { where: "knee", howMuch } } });
const codes = (reasons: readonly { readonly code: string }[]) => reasons.map(({ code }) => code);

describe("what waits for the coach", () => {
  test("an earned step: what, with what it rests, from which record and by which code", () => {
    const [item, ...more] = proposalsFor(trained());
    expect(more).toEqual([]);
    expect(item).toMatchObject({
      stop: false,
      slot: { key: "it" },
      title: { code: "progress/go-to-load", data: { from: kg(50), to: kg(53), percent: 6 } },
      proposal: { patch: { slot: "it", change: "load", load: kg(53) }, cut: { phone: 4 }, engine: "1" },
    });
    expect(item!.proposal.proposal).toMatch(/^proposal-.+/);
    expect(item).not.toHaveProperty("certainty");
  });

  test("the same evidence gives the same name; of another person, or on other evidence, it is another", () => {
    const name = (input: ReturnType<typeof trained>) => proposalsFor(input)[0]!.proposal.proposal;
    expect(name(trained())).toBe(name(trained({ today: 5 })));
    const input = trained();
    expect(name({ ...input, person: { ...input.person, id: "somebody-else" } })).not.toBe(name(input));
    const did = [
      [0, { ...setDone(12), load: kg(50) }],
      [3, { ...setDone(13), load: kg(50) }],
    ] as const;
    expect(name(trained({ did }))).not.toBe(name(input));
  });

  test("what was decided does not come again", () => {
    const input = trained();
    const [{ proposal }] = proposalsFor(input) as [ReturnType<typeof proposalsFor>[number]];
    const decided = (name: string): Decided => ({
      id: "word",
      n: 9,
      at: 0,
      by: "Imke",
      kind: "refused",
      proposal: { ...proposal, proposal: name },
      cut: input.record.cut,
    });
    const after = (name: string) => proposalsFor({ ...input, record: { ...input.record, decisions: [decided(name)] } });
    expect(after(proposal.proposal)).toEqual([]);
    expect(after("proposal-other")).toHaveLength(1);
  });

  test("only of the phase that runs", () => {
    const input = trained();
    expect(proposalsFor({ ...input, plan: { ...input.plan, firmTo: { phase: "later" } } })).toEqual([]);
  });

  test("nothing rises of a form that the person may not do", () => {
    const stressed = { ...squat, stress: { knee_deep: 3 } } as const;
    expect(proposalsFor(trained({ exercise: stressed }))).toHaveLength(1);
    expect(proposalsFor(trained({ exercise: stressed, person: { cannot: ["knee_deep"] } }))).toEqual([]);
  });
});

describe("where it hurts", () => {
  test("a pause comes in place of the step, with up to three forms that the pain does not bear on", () => {
    const offer = [form("a", false), form("b", true), form("c", false), form("d", false), form("e", false)];
    const [item, ...more] = proposalsFor(trained({ ...knee(4), offer }));
    expect(more).toEqual([]);
    expect(item).toMatchObject({ stop: true, title: { code: "progress/pause" }, refused: [] });
    expect(item!.proposal.patch).toEqual({ slot: "it", change: "pause" });
    expect(codes(item!.proposal.evidence)).toEqual(["progress/pain"]);
    expect(item!.others).toEqual(["a", "c", "d"].map((exercise) => ({ slot: "it", change: "exercise", exercise })));
  });

  test("a sign to stop pauses everything, and no other form is put beside it", () => {
    const hurts = { 1: { where: "chest", howMuch: 2 } };
    const [item] = proposalsFor(trained({ hurts, offer: [form("a", false)] }));
    expect(item).toMatchObject({
      stop: true,
      title: { code: "progress/pause-all", data: { where: "chest" } },
      others: [],
    });
  });

  test("what the way up says while it waits is nothing, with the pain beside it", () => {
    const [dose] = dosesFor(trained(knee(4)));
    expect(dose!.next).toMatchObject({ kind: "stay", refused: [{ code: "progress/pain" }] });
    expect(dose).toMatchObject({ way: "reps then load", slot: { key: "it" }, exercise: { id: "squat" } });
  });
});

describe("a pain that may go on", () => {
  const watched = {
    person: {
      cautions: [
        { tag: "knee_deep", ceiling: 2, from: day("2027-01-01"), recheck: day("2027-12-01"), who: "Dr Example" },
      ],
    },
  } as const;
  const next = (more: Partial<SlotTrained>) => dosesFor(trained({ ...watched, ...more }))[0]!.next;

  test("holds the load until the next morning is known, and says so", () => {
    const held = next(knee(3));
    expect([held.kind, codes(held.refused)]).toEqual(["stay", ["progress/pain", "progress/morning-unanswered"]]);
    expect(next({ ...knee(3), mornings: { 1: [3, 1] } }).kind).toBe("up");
  });

  test("before the sessions on which the step rests it holds nothing", () => {
    const did = [
      [0, { ...setDone(9), load: kg(50) }],
      [3, { ...setDone(12), load: kg(50) }],
      [6, { ...setDone(12), load: kg(50) }],
    ] as const;
    expect(next({ ...knee(3, 0), did, today: 7 }).kind).toBe("up");
    expect(next({ ...knee(3, 1), did, today: 7 }).kind).toBe("stay");
  });

  test("above the usual the morning after, the dose goes down, and what was earned is refused", () => {
    const down = next({ ...knee(3), mornings: { 1: [6, 1] } });
    expect(down).toMatchObject({ kind: "down", patch: { change: "load", load: kg(45) } });
    expect(codes(down.evidence)).toEqual(["progress/pain", "progress/morning-above"]);
    expect(codes(down.refused)).toContain("progress/two-for-two");
    expect(down.since).toBe(trained({ ...watched, ...knee(3) }).record.hurts[0]!.n);
  });

  test("where nothing is easier, it stays, and both are told", () => {
    const place = { equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins: [50, 53] } } } as const;
    const stays = next({ ...knee(3), mornings: { 1: [6, 1] }, place });
    expect(stays.kind).toBe("stay");
    expect(codes(stays.refused)).toEqual(expect.arrayContaining(["progress/two-for-two", "progress/morning-above"]));
  });

  test("where nothing was earned, a morning above takes the dose down all the same; an unknown one holds nothing", () => {
    const did = [
      [0, { ...setDone(9), load: kg(50) }],
      [3, { ...setDone(9), load: kg(50) }],
    ] as const;
    expect(next({ ...knee(3), did, mornings: { 1: [6, 1] } })).toMatchObject({ kind: "down", refused: [] });
    expect(next({ ...knee(3), did })).toMatchObject({ kind: "stay", refused: [] });
  });
});

test("a hold that the person may not do is not lengthened", () => {
  const plank = madeUpExercise({
    id: "plank",
    amounts: "hold",
    mode: "hold",
    hold: { from: 10, to: 60, step: 5 },
    stress: { wr_ext: 3 },
  });
  const held = (more: Partial<SlotTrained>) =>
    proposalsFor(
      trained({
        exercise: plank,
        set: { amount: { kind: "hold", span: { from: 20, to: 20 } }, eachSide: false },
        place: {},
        did: [0, 3].map((on) => [on, { reps: "as asked", holdS: 20, load: "none" }] as const),
        ...more,
      }),
    );
  expect(held({})).toHaveLength(1);
  expect(held({ person: { cannot: ["wr_ext"] } })).toEqual([]);
});

test("a sign to stop in a slot that is asked no more is spoken for by the next slot", () => {
  const input = trained({ hurts: { 1: { where: "chest", howMuch: 2 } } });
  const [hurt] = input.record.hurts;
  const of = (slot: string) => proposalsFor({ ...input, record: { ...input.record, hurts: [{ ...hurt!, slot }] } });
  expect(of("gone")).toMatchObject([{ stop: true, title: { code: "progress/pause-all" } }]);
  expect(of("it")).toHaveLength(1);
});

describe("a person to whom nothing may be handed", () => {
  test("gets nothing more, and it says why; less is asked all the same", () => {
    const { screening: _, ...bare } = trained().person;
    const next = dosesFor({ ...trained(), person: bare as typeof bare & ReturnType<typeof trained>["person"] })[0]!
      .next;
    expect([next.kind, codes(next.refused)]).toEqual(["stay", ["offer/no-screening"]]);
    const fell = trained({
      did: [
        [0, { ...setDone(9), load: kg(50) }],
        [3, { ...setDone(5), load: kg(50) }],
      ],
    });
    expect(dosesFor({ ...fell, person: bare as typeof fell.person })[0]!.next.kind).toBe("down");
  });
});

describe("how sure a step is", () => {
  test("stands beside it where the record tells, with the sessions behind it", () => {
    const did = [0, 3, 6, 9, 12, 15].map((on) => [on, { ...setDone(8, 3), load: kg(50) }] as const);
    const set = reps({ from: 6, to: 10 }, { reserve: { from: 0, to: 3 } });
    const place = { equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins: [50, 56] } } } as const;
    const [item] = proposalsFor(trained({ did, set, place, today: 16 }));
    expect(item!.certainty).toMatchObject({ sessions: 6 });
    expect(item!.certainty!.chance).toBeGreaterThanOrEqual(0.9);
    expect(item!.certainty!.chance).toBeLessThanOrEqual(1);
  });
});

describe("several pains at once", () => {
  const twice = { hurts: { 0: { where: "knee", howMuch: 4 }, 1: { where: "knee", howMuch: 5 } } };

  test("are one pause, with each of them as evidence", () => {
    const [item, ...more] = proposalsFor(trained(twice));
    expect(more).toEqual([]);
    expect(item!.proposal.evidence.map(({ data }) => data["howMuch"])).toEqual(expect.arrayContaining([4, 5]));
    expect(item!.stop).toBe(true);
  });

  test("a sign to stop among them pauses everything", () => {
    const hurts = { 0: { where: "knee", howMuch: 4 }, 1: { where: "chest", howMuch: 1 } };
    expect(proposalsFor(trained({ hurts }))[0]!.title).toEqual({
      code: "progress/pause-all",
      data: { where: "chest" },
    });
  });
});

test("a name is short and told by the patch as well as by the evidence", () => {
  const input = trained();
  const { proposal } = proposalsFor(input)[0]!;
  const hash = (text: string) => `${"0123456789".repeat(4)}${text.length}`;
  expect(propose({ ...input, hash }, proposal.patch, []).proposal).toBe("proposal-01234567890123456789012345678901");
  const name = (patch: typeof proposal.patch, days = 1) =>
    propose(input, patch, [{ code: "progress/comeback", data: { days, ill: false } }]).proposal;
  expect(name(proposal.patch, 1)).toBe(name(proposal.patch, 30));
  expect(name({ slot: "it", change: "pause" })).not.toBe(name(proposal.patch));
});

describe("a pain that may go on, at its edges", () => {
  const cautions = [
    { tag: "knee_deep", ceiling: 2, from: day("2027-01-01"), recheck: day("2027-12-01"), who: "Dr Example" },
  ] as const;
  const fell = [
    [0, { ...setDone(9), load: kg(50) }],
    [3, { ...setDone(5), load: kg(50) }],
  ] as const;

  test("a fall stays what it is, whatever the morning after says", () => {
    const next = dosesFor(trained({ person: { cautions }, ...knee(3), did: fell, mornings: { 1: [6, 1] } }))[0]!.next;
    expect(next.kind).toBe("down");
    expect(codes(next.evidence)).toEqual(["progress/under-floor"]);
  });

  test("at the first of the sessions on which a step rests it holds the step; a usual morning lets it go", () => {
    const next = (more: Partial<SlotTrained>) => dosesFor(trained({ person: { cautions }, ...more }))[0]!.next;
    const held = next(knee(3, 0));
    expect([held.kind, codes(held.refused)]).toEqual(["stay", ["progress/pain", "progress/morning-unanswered"]]);
    expect(held.refused[0]!.data).toMatchObject({ where: "knee", howMuch: 3 });
    expect(next({ ...knee(3, 0), mornings: { 0: [2, 1] } }).kind).toBe("up");
  });
});

test("a pause names the form, the engine and the record, and is the same on the next day", () => {
  const [item] = proposalsFor(trained(knee(4)));
  const [later] = proposalsFor(trained({ ...knee(4), today: 5 }));
  expect(item!.title).toEqual({ code: "progress/pause", data: { exercise: "squat", until: null } });
  expect(item!.proposal).toMatchObject({ engine: "1", cut: { phone: 5 } });
  expect(later!.proposal.proposal).toBe(item!.proposal.proposal);
  expect(item!.others).toEqual([]);
});

describe("a sign to stop, with several slots in the session", () => {
  const input = trained({ hurts: { 1: { where: "chest", howMuch: 2 } } });
  const plan = {
    ...input.plan,
    phases: input.plan.phases.map((phase) => ({
      ...phase,
      weeks: phase.weeks.map((week) => ({
        ...week,
        sessions: week.sessions.map((session) => ({
          ...session,
          blocks: session.blocks.map((block) => ({
            ...block,
            slots: block.slots.flatMap((slot) => [{ ...slot, key: "before" }, slot, { ...slot, key: "after" }]),
          })),
        })),
      })),
    })),
  };
  const programme = {
    ...input.programme,
    phases: input.programme.phases.map((phase) => ({
      ...phase,
      sessions: phase.sessions.map((session) => ({
        ...session,
        work: session.work.flatMap((block): Block[] =>
          "slot" in block ? [{ ...block, slot: "before" }, block, { ...block, slot: "after" }] : [block],
        ),
      })),
    })),
  };
  const [hurt] = input.record.hurts;
  const slotsThatSpeak = (slot: string) =>
    proposalsFor({ ...input, plan, programme, record: { ...input.record, hurts: [{ ...hurt!, slot }] } })
      .filter(({ stop }) => stop)
      .map(({ slot: { key }, title }) => [key, title.code]);

  test("one slot speaks for all: the one in which it came, else the next", () => {
    expect(slotsThatSpeak("it")).toEqual([["it", "progress/pause-all"]]);
    expect(slotsThatSpeak("after")).toEqual([["after", "progress/pause-all"]]);
    expect(slotsThatSpeak("gone")).toEqual([["before", "progress/pause-all"]]);
  });

  test("without it, only the slot that was trained has earned a step", () => {
    const steps = proposalsFor({ ...input, plan, programme, record: { ...input.record, hurts: [] } });
    expect(steps.map(({ slot, stop }) => [slot.key, stop])).toEqual([["it", false]]);
  });
});
