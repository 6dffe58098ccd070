import { describe, expect, test } from "vitest";
import { bundleOutput, morningOutput, personOutput } from "../api/index.ts";
import { addDays } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { occurrencesOf, slotsIn } from "../measures/index.ts";
import { highestCounter, type Plan, type StaveEvent } from "../model/index.ts";
import { madeUpEvent, madeUpSituation, noonOf, PLAN_START, recordedSession, type Said } from "../testing/index.ts";
import { bundleFor, decide, morningFor, nextRevision, type PlannedPerson, personLine, personPage } from "./index.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
/** Days of sessions a (Mondays) and b (Thursdays) of each week. */
const DAYS = { a: 0, b: 3 } as const;
const dayOf = (session: string) => (Number(session.split("/")[1]) - 1) * 7 + DAYS[session.at(-1) as "a" | "b"];

/** A person who records sessions with the plan that stands, and whose coach decides. */
class Life {
  events: readonly StaveEvent[] = [];
  readonly revisions = new Map<string, Plan>();
  today = 0;

  at(daysOn = this.today): PlannedPerson {
    const situation = {
      ...madeUpSituation(CATALOGUE, this.events, daysOn),
      revisionOf: (id: string) => this.revisions.get(id),
    };
    const plan = nextRevision(situation);
    this.revisions.set(plan.id, plan);
    return { ...situation, plan };
  }

  does(session: string, said: Readonly<Record<string, Said>> = {}): this {
    this.today = dayOf(session);
    const { plan } = this.at();
    const n = highestCounter(this.events);
    this.events = [...this.events, ...recordedSession(plan, session, n, noonOf(this.today), said)];
    this.today += 1;
    return this;
  }

  hurts(session: string, slot: string, where: string, howMuch: number): this {
    const of = { plan: this.at().plan.id, session, slot, set: 0 };
    const n = highestCounter(this.events) + 1;
    const hurt = madeUpEvent(`hurt-${n}-000`, n, "hurt", { where, howMuch }, { of, at: noonOf(this.today - 1) });
    this.events = [...this.events, hurt];
    return this;
  }

  items() {
    return personPage(this.at()).waiting;
  }

  says(kind: "accepted" | "refused", slot: string): string {
    const item = this.items().find((one) => one.slot === slot)!;
    const id = `decision-${this.events.length}`;
    const word = decide(
      this.at(),
      { id, person: "ana", kind, proposal: item.proposal.proposal },
      { by: "Imke", device: "stave-desk", at: noonOf(this.today) },
    );
    if (!word.ok) throw new Error(word.why);
    this.events = [...this.events, word.event];
    return id;
  }

  slot(key: string) {
    const slots = occurrencesOf(this.at().plan).flatMap(({ session }) => slotsIn(session));
    return slots.find((slot) => slot.key === key);
  }
}

const top = (reps: number): Said => [{}, {}, { reps }];

describe("a set becomes the next dose", () => {
  const life = new Life()
    .does("base/1/a", { squat: top(10) })
    .does("base/1/b")
    .does("base/2/a", { squat: top(10) });

  test("two over the goal twice: a proposal with its evidence", () => {
    const [item, ...others] = life.items();
    expect(others).toEqual([]);
    expect(item).toMatchObject({
      slot: "squat",
      stop: false,
      title: {
        code: "progress/go-to-load",
        data: { exercise: "back-squat", from: kg(60), to: kg(62.5), percent: 4.2 },
      },
    });
    expect(item!.proposal.patch).toEqual({ slot: "squat", change: "load", load: kg(62.5), exercise: "back-squat" });
    expect(item!.proposal.evidence.map(({ code }) => code)).toEqual(["progress/two-for-two", "progress/step-fine"]);
    expect(item!.past.map(({ strokes }) => strokes.at(-1)!.done)).toEqual([{ both: 10 }, { both: 10 }]);
    expect(item!.next).toHaveLength(3);
  });

  test("nothing reaches the person before the coach's yes; then the next bundle has it, and the proposal is gone", () => {
    const lived = new Life();
    lived.events = life.events;
    lived.today = life.today;
    for (const plan of life.revisions.values()) lived.revisions.set(plan.id, plan);
    expect(lived.slot("squat")!.load).toEqual(kg(60));
    const before = bundleFor(lived.at(), "call");
    const decision = lived.says("accepted", "squat");
    expect(lived.items()).toEqual([]);
    expect(lived.slot("squat")!.load).toEqual(kg(62.5));
    const bundle = bundleFor(lived.at(), "call");
    expect(bundle.plan).not.toBe(before.plan);
    expect(bundle.n).toBe(before.n + 1);
    const [next] = bundle.sessions.filter(({ id }) => id === "base/3/a");
    expect(next!.session.blocks[0]!.slots[0]!.load).toEqual(kg(62.5));

    const undo = decide(
      lived.at(),
      { id: "undo-00001", person: "ana", kind: "undone", decision },
      { by: "Imke", device: "stave-desk", at: 0 },
    );
    lived.events = [...lived.events, (undo as { event: StaveEvent }).event];
    expect(lived.at().plan.id).toBe(before.plan);
    expect(lived.items()).toHaveLength(1);
  });

  test("refused, it does not come again on the same evidence; with another session it does", () => {
    const lived = new Life()
      .does("base/1/a", { squat: top(10) })
      .does("base/1/b")
      .does("base/2/a", { squat: top(10) });
    const first = lived.items()[0]!.proposal.proposal;
    lived.says("refused", "squat");
    expect(lived.items()).toEqual([]);
    lived.does("base/2/b");
    expect(lived.items()).toEqual([]);
    lived.does("base/3/a", { squat: top(11) });
    expect(lived.items().map(({ slot }) => slot)).toEqual(["squat"]);
    expect(lived.items()[0]!.proposal.proposal).not.toBe(first);
  });

  test("the same evidence gives the same proposal, whatever else was recorded and in whatever order", () => {
    const id = life.items()[0]!.proposal.proposal;
    const later = new Life();
    later.events = life.events.toReversed();
    for (const plan of life.revisions.values()) later.revisions.set(plan.id, plan);
    later.today = life.today;
    expect(later.items()[0]!.proposal.proposal).toBe(id);
    later.does("base/2/b");
    expect(later.items()[0]!.proposal.proposal).toBe(id);
  });

  test("a late record of the old load makes no accepted step undone, and none twice", () => {
    const lived = new Life()
      .does("base/1/a", { squat: top(10) })
      .does("base/1/b")
      .does("base/2/a", { squat: top(10) });
    const old = lived.at().plan;
    lived.says("accepted", "squat");
    const plan = lived.at().plan;
    const late = recordedSession(old, "base/3/a", 5, noonOf(14), { squat: top(12) });
    lived.events = [...lived.events, ...late.map((event) => ({ ...event, device: "old-phone" }))];
    lived.today = 15;
    expect(lived.at().plan).toEqual(plan);
    expect(lived.items()).toEqual([]);
  });
});

test("four weeks of bare done raise nothing", () => {
  const life = new Life();
  for (const week of [1, 2, 3, 4])
    for (const key of ["a", "b"]) {
      life.does(`base/${week}/${key}`);
      expect(life.items()).toEqual([]);
    }
  expect(personPage(life.at()).slots.map(({ missing }) => missing?.code)).toEqual(
    Array(4).fill("capacity/reps-unsaid"),
  );
});

describe("pain", () => {
  const life = new Life().does("base/1/a").hurts("base/1/a", "squat", "knee", 6);

  test("pauses every movement that shares the stress, at once and on top of the list", () => {
    expect(life.items().map(({ slot, stop }) => [slot, stop])).toEqual([
      ["goblet", true],
      ["squat", true],
    ]);
    const bundle = bundleFor(life.at(), "call");
    expect(bundle.paused.map(({ slot }) => slot).sort()).toEqual(["goblet", "squat"]);
    const asked = bundle.sessions.flatMap(({ session }) => slotsIn(session).map(({ key }) => key));
    expect(new Set(asked)).toEqual(new Set(["row", "press"]));
  });

  test("taken, the plan has it; taken up again by the coach, the slot is back", () => {
    const lived = new Life().does("base/1/a").hurts("base/1/a", "squat", "knee", 6);
    lived.says("accepted", "squat");
    expect(lived.slot("squat")).toBeUndefined();
    expect(lived.items().map(({ slot }) => slot)).toEqual(["goblet"]);
    const word = decide(
      lived.at(),
      { id: "resume-0001", person: "ana", kind: "pinned", patch: { slot: "squat", change: "resume" } },
      { by: "Imke", device: "stave-desk", at: noonOf(2) },
    );
    lived.events = [...lived.events, (word as { event: StaveEvent }).event];
    expect(lived.slot("squat")).toBeDefined();
    expect(bundleFor(lived.at(), "call").paused.map(({ slot }) => slot)).toEqual(["goblet"]);
  });

  test("is of the form that made way because of it, not of the easier one that came after", () => {
    const lived = new Life().does("base/1/a").hurts("base/1/a", "squat", "knee", 6);
    const { plan } = lived.at();
    const from = occurrencesOf(plan)
      .flatMap(({ session }) => slotsIn(session))
      .find(({ key }) => key === "squat")!;
    const to = "body-squat";
    const of = { plan: plan.id, session: "base/1/a", slot: "squat" };
    const n = highestCounter(lived.events);
    const at = noonOf(0);
    const swapped = madeUpEvent(
      "swapped-0001",
      n + 1,
      "swapped",
      { from: from.exercise, to, because: "hurt" },
      { of, at },
    );
    const done = madeUpEvent(
      "after-swap-1",
      n + 2,
      "set-done",
      { exercise: to, reps: 8, load: "as asked", reserve: "not said" },
      { of: { ...of, set: 3 }, at },
    );
    lived.events = [...lived.events, swapped, done];
    const evidence = lived.items().find(({ slot }) => slot === "squat")!.proposal.evidence;
    expect(evidence.find(({ code }) => code === "progress/pain")?.data["exercise"]).toBe(from.exercise);
    lived.events = lived.events.filter((event) => event !== swapped);
    const without = lived.items().flatMap(({ proposal }) => proposal.evidence);
    expect(without.find(({ code }) => code === "progress/pain")?.data["exercise"]).toBe(to);
  });

  test("refused by the coach, the slot goes on; the next pain asks again", () => {
    const lived = new Life().does("base/1/a").hurts("base/1/a", "squat", "knee", 6);
    lived.says("refused", "squat");
    expect(lived.items().map(({ slot }) => slot)).toEqual(["goblet"]);
    lived.hurts("base/1/a", "squat", "knee", 4);
    expect(lived.items().map(({ slot }) => slot)).toContain("squat");
  });

  test("a pain that was noted before the coach's word, and came after it, still asks", () => {
    const lived = new Life().does("base/1/a").hurts("base/1/a", "squat", "knee", 6);
    lived.says("refused", "squat");
    const of = { plan: lived.at().plan.id, session: "base/1/a", slot: "squat" };
    const late = madeUpEvent(
      "late-hurt-1",
      2,
      "hurt",
      { where: "knee", howMuch: 7 },
      { of, device: "old-phone", at: noonOf(0) },
    );
    lived.events = [...lived.events, late];
    expect(lived.items().map(({ slot }) => slot)).toContain("squat");
  });

  test("free to go on with up to 2 of 10; from 3 on no step up either, where a caution watches the place", () => {
    expect(new Life().does("base/1/a").hurts("base/1/a", "squat", "knee", 2).items()).toEqual([]);
    const raised = new Life()
      .does("base/1/a", { squat: top(10) })
      .does("base/1/b")
      .does("base/2/a", { squat: top(10) });
    const watched = (howMuch: number) => {
      const lived = new Life();
      lived.events = raised.events;
      lived.today = raised.today;
      for (const plan of raised.revisions.values()) lived.revisions.set(plan.id, plan);
      lived.hurts("base/2/a", "squat", "knee", howMuch);
      const caution = {
        tag: "knee_deep" as const,
        ceiling: 3 as const,
        from: PLAN_START,
        recheck: addDays(PLAN_START, 90),
        who: "Lise",
      };
      const planned = lived.at();
      const person = { ...planned.person, cautions: [caution] };
      return personPage({ ...planned, person }).waiting.map(({ slot, stop }) => [slot, stop]);
    };
    expect(watched(2)).toEqual([["squat", false]]);
    expect(watched(4)).toEqual([]);
    expect(watched(6).filter(([, stop]) => stop)).not.toEqual([]);
  });

  test("a session with a movement that waits is given with the minutes that are left", () => {
    const lived = new Life().does("base/1/a");
    const minutes = () =>
      bundleFor(lived.at(), "call").sessions.reduce((sum, { session }) => sum + session.minutes.high, 0);
    const before = minutes();
    expect(lived.hurts("base/1/a", "squat", "knee", 6) && minutes()).toBeLessThan(before);
  });

  test("a sign to stop pauses everything, and one word of the coach is for all of it", () => {
    const lived = new Life().does("base/1/a").hurts("base/1/a", "row", "dizzy", 3);
    const given = () => bundleFor(lived.at(), "call");
    const paused = () => new Set(given().paused.map(({ slot }) => slot));
    const isStopped = () => [given().sessions.length, given().withheld?.code];
    expect(paused()).toEqual(new Set(["squat", "row", "press", "goblet"]));
    expect(isStopped()).toEqual([0, "progress/stop-sign"]);
    expect(lived.items().map(({ slot, title }) => [slot, title.code])).toEqual([["row", "progress/pause-all"]]);
    lived.says("accepted", "row");
    expect(lived.items()).toEqual([]);
    expect(paused()).toEqual(new Set(["squat", "row", "press", "goblet"]));
    expect(isStopped()).toEqual([0, "progress/stop-sign"]);
    const word = decide(
      lived.at(),
      { id: "resume-0001", person: "ana", kind: "pinned", patch: { slot: "row", change: "resume" } },
      { by: "Imke", device: "stave-desk", at: noonOf(2) },
    );
    lived.events = [...lived.events, (word as { event: StaveEvent }).event];
    expect(paused()).toEqual(new Set());
    expect(isStopped()).toEqual([expect.any(Number), undefined]);
    expect(given().sessions).not.toEqual([]);
  });
});

describe("pages", () => {
  const life = new Life()
    .does("base/1/a", { squat: top(10) })
    .does("base/1/b")
    .does("base/2/a", { squat: top(10) });
  const planned = life.at();

  test("are what the contract says", () => {
    expect(() => bundleOutput.parse(JSON.parse(JSON.stringify(bundleFor(planned, "call"))))).not.toThrow();
    expect(() => personOutput.parse(JSON.parse(JSON.stringify(personPage(planned))))).not.toThrow();
    expect(() => morningOutput.parse(JSON.parse(JSON.stringify(morningFor([planned], planned.today))))).not.toThrow();
  });

  test("a line says the last record, the next session and what waits", () => {
    expect(personLine(planned)).toEqual({
      id: "ana",
      name: "Ana",
      programme: "Made up",
      last: "2027-03-08",
      next: { day: "2027-03-11", from: 1080, title: "Session b" },
      waiting: 1,
    });
  });

  test("a morning is by today's hours, stops on top, decisions of the day below", () => {
    const other = new Life().does("base/1/a").hurts("base/1/a", "squat", "knee", 6).at(10);
    const early = { ...other, person: { ...other.person, id: "bea", name: "Bea" } };
    const quiet = new Life().at(9);
    const today = addDays(PLAN_START, 10);
    const list = morningFor([{ ...life.at(10) }, early, { ...quiet, person: { ...quiet.person, id: "cy" } }], today);
    expect(list.people.map(({ person, today: comes }) => [person.id, comes?.from])).toEqual([
      ["bea", 1080],
      ["ana", 1080],
      ["cy", 1080],
    ]);
    expect(list.decided).toEqual([]);
  });

  test("without a screening outcome that stands nothing goes to the phone, and it says why", () => {
    const { screening: _, ...unscreened } = planned.person;
    const bundle = bundleFor({ ...planned, person: unscreened }, "call");
    expect(bundle.sessions).toEqual([]);
    expect(bundle.withheld?.code).toBe("offer/no-screening");
    expect(bundleFor(planned, "call").withheld).toBeUndefined();
  });
});

describe("a coach's word", () => {
  const life = new Life()
    .does("base/1/a", { squat: top(10) })
    .does("base/1/b")
    .does("base/2/a", { squat: top(10) });
  const planned = life.at();
  const proposal = life.items()[0]!.proposal.proposal;
  const speaker = { by: "Imke", device: "stave-desk", at: 7 };
  const accepted = { id: "decision-1", person: "ana", kind: "accepted", proposal } as const;

  test("is an event above everything that was known", () => {
    const word = decide(planned, accepted, speaker);
    expect(word).toMatchObject({ ok: true, event: { n: highestCounter(life.events) + 1, at: 7, kind: "accepted" } });
  });

  test("asked again gives the event that is there; another word by its id is refused", () => {
    const { event } = decide(planned, accepted, speaker) as { event: StaveEvent };
    const after = { ...planned, events: [...planned.events, event] };
    expect(decide(after, accepted, { ...speaker, at: 9 })).toEqual({ ok: true, event });
    expect(decide(after, { ...accepted, kind: "refused" }, speaker)).toEqual({ ok: false, why: "taken" });
    expect(decide(after, { ...accepted, id: "decision-2" }, speaker)).toEqual({ ok: false, why: "stale" });
  });

  test("on what is not there is refused", () => {
    const word = (input: Parameters<typeof decide>[1]) => decide(planned, input, speaker);
    const base = { id: "decision-3", person: "ana" };
    expect(word({ ...base, kind: "accepted", proposal: "proposal-x" })).toEqual({ ok: false, why: "stale" });
    expect(word({ ...base, kind: "undone", decision: "decision-x" })).toEqual({ ok: false, why: "unknown" });
    const patch = { slot: "gone", change: "resume" } as const;
    expect(word({ ...base, kind: "pinned", patch })).toEqual({ ok: false, why: "unknown" });
    expect(word({ ...base, kind: "changed", proposal, instead: patch })).toEqual({ ok: false, why: "unknown" });
  });
});
