import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compareEvents, mergeEvents, type SetDone, type StaveEvent } from "../model/index.ts";
import { histories, madeUpEvent, shuffled } from "../testing/index.ts";
import { foldRecord } from "./index.ts";

const OF = { plan: "plan-1", session: "base/1/a", slot: "squat", set: 0 };
const asAsked: SetDone = { exercise: "goblet-squat", reps: "as asked", load: "as asked", reserve: "not said" };
const set = (id: string, n: number, data: Partial<SetDone>, more: Parameters<typeof madeUpEvent>[4] = {}) =>
  madeUpEvent(id, n, "set-done", { ...asAsked, ...data }, { of: OF, ...more });
const setsOf = (...events: readonly StaveEvent[]) => foldRecord(events).sessions[0]?.slots[0]?.sets;
const patch = { slot: "squat", change: "load", load: { value: 14, unit: "kg" } } as const;
const proposal = { proposal: "proposal-1", patch, evidence: [], cut: {}, engine: "1" };

describe("beside the sets", () => {
  const session = { plan: "plan-1", session: "base/1/a" };
  const missed = madeUpEvent("a", 1, "missed", { because: "sick" }, { of: session });

  test("a session that did not happen is none, and is no longer missed once something of it was done", () => {
    expect(foldRecord([missed])).toMatchObject({ sessions: [], missed: [{ session: "base/1/a", data: missed.data }] });
    expect(foldRecord([missed, set("b", 2, {})])).toMatchObject({ missed: [], sessions: [{ session: "base/1/a" }] });
  });

  test("of two ratings of one session the later stands; work outside the plan adds up", () => {
    const rated = (id: string, n: number, effort: number) =>
      madeUpEvent(id, n, "rated", { effort, minutes: 50 }, { of: session });
    const swim = (id: string, n: number) =>
      madeUpEvent(id, n, "outside", { what: "sport", minutes: 40, effort: "not said" });
    const record = foldRecord([rated("b", 2, 8), rated("a", 1, 5), swim("c", 3), swim("d", 4)]);
    expect(record.ratings.map(({ data }) => data.effort)).toEqual([8]);
    expect(record.outside).toHaveLength(2);
  });

  test("what was said the morning after, of pressure and of medicines stands apart and makes no session", () => {
    const record = foldRecord([
      madeUpEvent("a", 1, "next-morning", { hurt: "hurt-001", howMuch: 5 }, { of: session }),
      madeUpEvent("b", 2, "pressure", { systolic: 128, diastolic: 76, when: "before" }, { of: session }),
      madeUpEvent("c", 3, "noted", { about: "medicines", text: "new tablets" }),
    ]);
    expect([record.sessions, record.mornings, record.pressures, record.notes].map((each) => each.length)).toEqual([
      0, 1, 1, 1,
    ]);
  });

  test("machine and technique stay with their set", () => {
    expect(setsOf(set("a", 1, { reps: 8, machine: "Row 2", technique: "lost", pulledBy: { setting: 7 } }))).toEqual([
      {
        set: 0,
        exercise: "goblet-squat",
        reps: { both: 8 },
        pulledBy: { setting: 7 },
        machine: "Row 2",
        technique: "lost",
      },
    ]);
  });
});

describe("sets", () => {
  test("what nobody touched is no reading", () => {
    expect(setsOf(set("a", 1, {}))).toEqual([{ set: 0, exercise: "goblet-squat" }]);
    expect(setsOf(set("a", 1, { reps: { left: "as asked", right: "as asked" } }))).toEqual([
      { set: 0, exercise: "goblet-squat" },
    ]);
  });

  test("what was touched is one, side by side", () => {
    const said = { reps: { left: 8, right: "as asked" }, load: { value: 12, unit: "kg" }, reserve: 0 } as const;
    expect(setsOf(set("a", 1, said))).toEqual([
      { set: 0, exercise: "goblet-squat", reps: { left: 8 }, load: { value: 12, unit: "kg" }, reserve: 0 },
    ]);
    expect(setsOf(set("a", 1, { reps: 0, load: "none" }))).toEqual([
      { set: 0, exercise: "goblet-squat", reps: { both: 0 }, load: "none" },
    ]);
  });

  test("a session typed in twice, on two phones, counts once: the later word stands", () => {
    expect(setsOf(set("a", 1, { reps: 8 }), set("b", 1, { reps: 9 }, { device: "tablet" }))).toEqual([
      { set: 0, exercise: "goblet-squat", reps: { both: 9 } },
    ]);
  });

  test("left out after all, and struck out", () => {
    const leftOut = madeUpEvent("b", 2, "set-left-out", {}, { of: OF });
    expect(foldRecord([set("a", 1, {}), leftOut]).sessions[0]!.slots[0]).toMatchObject({ sets: [], leftOut: [0] });
    const struck = madeUpEvent("c", 3, "struck", {}, { replaces: "a" });
    expect(foldRecord([set("a", 1, {}), struck]).sessions).toEqual([]);
  });

  test("a swap, pain, an early end", () => {
    const record = foldRecord([
      madeUpEvent("a", 1, "session-started", {}, { of: OF }),
      madeUpEvent("b", 2, "swapped", { from: "goblet-squat", to: "body-squat", because: "hurt" }, { of: OF }),
      madeUpEvent("c", 3, "hurt", { where: "knee", howMuch: 4 }, { of: OF }),
      madeUpEvent("d", 4, "session-ended", { early: true }, { of: { plan: "plan-1", session: "base/1/a" } }),
      madeUpEvent("e", 5, "hurt", { where: "knee", howMuch: 5 }),
    ]);
    expect(record.sessions[0]).toMatchObject({ started: true, ended: { early: true }, plan: "plan-1", n: 1 });
    expect(record.sessions[0]!.slots[0]!.swaps).toHaveLength(1);
    expect(record.hurts.map(({ session, slot, howMuch }) => [session, slot, howMuch])).toEqual([
      ["base/1/a", "squat", 4],
      [undefined, undefined, 5],
    ]);
    expect(record.cut).toEqual({ phone: 5 });
  });
});

describe("decisions", () => {
  const accepted = madeUpEvent("a", 1, "accepted", { ...proposal, by: "Imke" });
  const refused = madeUpEvent("b", 2, "refused", { ...proposal, by: "Imke" });
  const kinds = (...events: readonly StaveEvent[]) => foldRecord(events).decisions.map(({ kind }) => kind);

  test("the last word on a proposal stands; undone, the word before it", () => {
    expect(kinds(accepted)).toEqual(["accepted"]);
    expect(kinds(accepted, refused)).toEqual(["refused"]);
    const undone = madeUpEvent("c", 3, "undone", { decision: "b", by: "Imke" });
    expect(kinds(accepted, refused, undone)).toEqual(["accepted"]);
  });

  test("a change applies what was put instead, a refusal nothing", () => {
    const instead = { slot: "squat", change: "resume" } as const;
    const changed = madeUpEvent("c", 3, "changed", { ...proposal, by: "Imke", instead });
    expect(foldRecord([changed]).decisions[0]).toMatchObject({ patch: instead, proposal: { patch } });
    expect(foldRecord([refused]).decisions[0]).not.toHaveProperty("patch");
  });

  test("no correction by a phone reaches a decision", () => {
    const struck = madeUpEvent("c", 3, "struck", {}, { replaces: "a" });
    expect(kinds(accepted, struck)).toEqual(["accepted"]);
    expect(kinds(accepted, set("d", 4, {}, { replaces: "a" }))).toEqual(["accepted"]);
  });

  test("devices named like what every object has are devices", () => {
    const odd = madeUpEvent("c", 3, "session-ended", { early: false }, { device: "__proto__" });
    expect(Object.keys(foldRecord([odd, accepted]).cut).sort()).toEqual(["__proto__", "phone"]);
  });
});

/**
 * The fold told again, apart from the code: it looks at every event anew for every question and keeps no index. Only the
 * order of events is shared.
 */
function plainFold(events: readonly StaveEvent[]) {
  const decisions = ["accepted", "changed", "refused", "pinned", "undone"];
  const said = events.filter(({ kind }) => !decisions.includes(kind));
  const joined = (a: StaveEvent, b: StaveEvent) =>
    a.replaces === b.id || b.replaces === a.id || (a.replaces !== undefined && a.replaces === b.replaces);
  const groupOf = (event: StaveEvent) => {
    let group = [event];
    for (;;) {
      const more = said.filter((each) => !group.includes(each) && group.some((one) => joined(one, each)));
      if (more.length === 0) return group.sort(compareEvents);
      group = [...group, ...more];
    }
  };
  const stands = said.filter((event) => {
    const group = groupOf(event);
    const free = group.filter(({ id }) => group.every(({ replaces }) => replaces !== id));
    return (free.length > 0 ? free : group).at(-1) === event && event.kind !== "struck";
  });
  const firstOf = (event: StaveEvent) => groupOf(event)[0]!;
  const sets: Record<string, string> = {};
  for (const event of [...stands].sort(compareEvents)) {
    if (event.kind !== "set-done" && event.kind !== "set-left-out") continue;
    const { session, slot, set: number } = event.of!;
    sets[`${session} ${slot} ${number}`] = event.id;
  }
  const starts: Record<string, string> = {};
  for (const event of stands) {
    const { session } = event.of!;
    const rival = starts[session];
    const first = firstOf(event);
    if (rival === undefined || compareEvents(first, events.find(({ id }) => id === rival)!) < 0)
      starts[session] = first.id;
  }
  const taken = events
    .filter(({ kind }) => kind === "undone")
    .map(({ data }) => (data as { decision: string }).decision);
  const words = events
    .filter(({ id, kind }) => decisions.includes(kind) && kind !== "undone" && !taken.includes(id))
    .sort(compareEvents);
  const about = (event: StaveEvent) => (event.data as { proposal?: string }).proposal ?? event.id;
  const last = words.filter((event, at) => !words.slice(at + 1).some((later) => about(later) === about(event)));
  return {
    sets,
    starts,
    hurts: stands
      .filter(({ kind }) => kind === "hurt")
      .map((event) => firstOf(event).id)
      .sort(),
    decisions: last.map(({ id }) => id),
  };
}

/** The fold's answer in the terms of the plain one. */
function outline(events: readonly StaveEvent[]) {
  const { sessions, hurts, decisions } = foldRecord(events);
  const byId = new Map(events.map((event) => [event.id, event]));
  const done = sessions.flatMap(({ session, slots }) =>
    slots.flatMap(({ slot, sets, leftOut }) =>
      [...sets.map((one) => one.set), ...leftOut].map((one) => `${session} ${slot} ${one}`),
    ),
  );
  return {
    sets: done.sort(),
    starts: sessions.map(({ session, n, at }) => [session, n, at]).sort(),
    hurts: hurts.map(({ id }) => id).sort(),
    decisions: decisions.map(({ id }) => id),
    byId,
  };
}

test("a hundred random histories: piece by piece, shuffled, and told apart, all say the same", () => {
  fc.assert(
    fc.property(histories, fc.infiniteStream(fc.nat(1000)), (events, keys) => {
      const whole = foldRecord(events);
      const arrived = shuffled(events, keys);
      expect(foldRecord(arrived)).toEqual(whole);
      expect(foldRecord([...arrived, ...events.slice(0, 5)])).toEqual(whole);
      let known: readonly StaveEvent[] = [];
      for (const event of arrived) known = mergeEvents(known, [event]);
      expect(foldRecord(known)).toEqual(whole);

      const plain = plainFold(events);
      const { byId, ...said } = outline(events);
      expect(said).toEqual({
        sets: Object.keys(plain.sets).sort(),
        starts: Object.entries(plain.starts)
          .map(([session, id]) => [session, byId.get(id)!.n, byId.get(id)!.at])
          .sort(),
        hurts: plain.hurts,
        decisions: plain.decisions,
      });
      for (const [at, id] of Object.entries(plain.sets)) {
        const [session, slot, number] = at.split(" ");
        const record = whole.sessions.find((one) => one.session === session)!.slots.find((one) => one.slot === slot)!;
        const event = byId.get(id)!;
        const done = record.sets.find((one) => one.set === Number(number));
        if (event.kind === "set-left-out") expect(done).toBeUndefined();
        else expect(done!.exercise).toBe(event.data["exercise" as never]);
      }
    }),
    { numRuns: 100 },
  );
});

describe("a session as it was recorded", () => {
  const of = { plan: "plan-1", session: "base/1/a" };

  test("words on the whole session are no slot of it", () => {
    const end = madeUpEvent("b", 2, "session-ended", { early: false }, { of });
    const [session] = foldRecord([set("a", 1, {}), end]).sessions;
    expect(session!.slots.map(({ slot }) => slot)).toEqual(["squat"]);
    expect(session).toMatchObject({ started: false, ended: { early: false } });
  });

  test("of two ends the later stands", () => {
    const end = (id: string, n: number, early: boolean) => madeUpEvent(id, n, "session-ended", { early }, { of });
    expect(foldRecord([end("b", 2, false), end("a", 1, true)]).sessions[0]!.ended).toEqual({ early: false });
  });

  test("seconds of a hold are read as repetitions are, each side too", () => {
    const held = (said: SetDone["holdS"]) =>
      setsOf(set("a", 1, { reps: "as asked", ...(said === undefined ? {} : { holdS: said }) }))![0];
    expect(held(45)).toMatchObject({ holdS: { both: 45 } });
    expect(held({ left: 40, right: 45 })).toMatchObject({ holdS: { left: 40, right: 45 } });
    expect(held("as asked")).not.toHaveProperty("holdS");
    expect(held(undefined)).not.toHaveProperty("holdS");
  });

  test("sets stand in the order of their number, whatever the order in which they were done", () => {
    const third = set("a", 1, { reps: 7 }, { of: { ...OF, set: 2 } });
    expect(setsOf(third, set("b", 2, { reps: 8 }))?.map((one) => one.set)).toEqual([0, 2]);
  });

  test("a set that was left out and then done after all is done", () => {
    const leftOut = madeUpEvent("a", 1, "set-left-out", {}, { of: OF });
    expect(foldRecord([leftOut, set("b", 2, { reps: 8 })]).sessions[0]!.slots[0]).toMatchObject({
      sets: [{ set: 0, reps: { both: 8 } }],
      leftOut: [],
    });
  });

  test("slots and sessions stand in the order of their first words", () => {
    const row = { ...OF, slot: "row" };
    const other = { ...OF, session: "base/1/b" };
    const record = foldRecord([set("c", 3, {}, { of: other }), set("b", 2, {}), set("a", 1, {}, { of: row })]);
    expect(record.sessions.map(({ session }) => session)).toEqual(["base/1/a", "base/1/b"]);
    expect(record.sessions[0]!.slots.map(({ slot }) => slot)).toEqual(["row", "squat"]);
  });

  test("a pain keeps the set in which it came", () => {
    const hurt = madeUpEvent("a", 1, "hurt", { where: "knee", howMuch: 4 }, { of: { ...OF, set: 2 } });
    expect(foldRecord([hurt]).hurts).toEqual([
      {
        id: "a",
        session: "base/1/a",
        slot: "squat",
        set: 2,
        where: "knee",
        howMuch: 4,
        at: 60_000,
        n: 1,
        device: "phone",
      },
    ]);
    const plain = madeUpEvent("a", 1, "hurt", { where: "knee", howMuch: 4 });
    for (const name of ["session", "slot", "set"]) expect(foldRecord([plain]).hurts[0]).not.toHaveProperty(name);
  });

  test("the cut is the highest counter of each device, in whatever order they come", () => {
    const tablet = set("c", 7, {}, { device: "tablet" });
    expect(foldRecord([set("a", 5, {}), tablet, set("b", 3, {}, { of: { ...OF, set: 1 } })]).cut).toEqual({
      phone: 5,
      tablet: 7,
    });
  });

  test("a word without a session on missing or rating one says nothing of any", () => {
    const rated = madeUpEvent("a", 1, "rated", { effort: 5, minutes: 40 });
    expect(foldRecord([rated]).ratings).toEqual([]);
  });
});

test("a session told by two devices says by how many, and each of its sets counts once", () => {
  const of = { plan: "p", session: "base/1/a", slot: "squat", set: 0 };
  const data = { exercise: "goblet-squat", reps: 8, load: "as asked", reserve: "not said" } as const;
  const one = madeUpEvent("one-000000001", 1, "set-done", data, { of });
  const two = madeUpEvent("two-000000001", 1, "set-done", { ...data, reps: 9 }, { of, device: "second" });
  expect(foldRecord([one, two]).sessions).toMatchObject([{ devices: 2, slots: [{ sets: [{ reps: { both: 9 } }] }] }]);
  expect(foldRecord([one]).sessions[0]).not.toHaveProperty("devices");
});
