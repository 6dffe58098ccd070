import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../exercises/index.ts";
import { occurrencesOf, runsIn } from "../measures/index.ts";
import { highestCounter, type Plan, type Programme, printDose, type RunEnd, type StaveEvent } from "../model/index.ts";
import { runWalkDose } from "../tables/index.ts";
import { LOOP_PLACE, LOOP_PROGRAMME, madeUpEvent, madeUpSituation, noonOf } from "../testing/index.ts";
import { bundleFor, decide, morningFor, nextDoses, nextRevision, type PlannedPerson, personPage } from "./index.ts";

/** The loop's programme with one run in both of its sessions, at a level to begin with. */
function withRun(level: number, minutes = 60): Programme {
  const run = { slot: "run", runWalk: level, do: "run", effort: "steady", or: ["walk-brisk"] } as const;
  return {
    ...LOOP_PROGRAMME,
    phases: LOOP_PROGRAMME.phases.map((phase) => ({
      ...phase,
      sessions: phase.sessions.map((session) => ({ ...session, minutes, conditioning: [run] })),
    })),
  };
}

class Runner {
  events: readonly StaveEvent[] = [];
  readonly revisions = new Map<string, Plan>();
  readonly programme: Programme;
  readonly more: object;
  readonly #known = new Map<string, PlannedPerson>();

  constructor(programme: Programme, more: object = {}) {
    this.programme = programme;
    this.more = more;
  }

  at(daysOn: number): PlannedPerson {
    const known = `${daysOn} ${this.events.length}`;
    const found = this.#known.get(known) ?? this.#at(daysOn);
    this.#known.set(known, found);
    return found;
  }

  #at(daysOn: number): PlannedPerson {
    const base = madeUpSituation(CATALOGUE, this.events, daysOn);
    const situation = {
      ...base,
      programme: this.programme,
      place: { ...LOOP_PLACE, equipment: { ...LOOP_PLACE.equipment, "way to walk": 1 } },
      revisionOf: (id: string) => this.revisions.get(id),
      ...this.more,
    };
    const plan = nextRevision(situation);
    this.revisions.set(plan.id, plan);
    return { ...situation, plan };
  }

  runs(session: string, daysOn: number, end: RunEnd): this {
    const { plan } = this.at(daysOn);
    const occurrence = occurrencesOf(plan).find(({ id }) => id === session)!;
    const [run] = runsIn(occurrence.session);
    const n = highestCounter(this.events) + 1;
    const of = { plan: plan.id, session, slot: "run" };
    const event = madeUpEvent(`ran-${n}-000`, n, "ran", { level: run!.level, end }, { of, at: noonOf(daysOn) });
    this.events = [...this.events, event];
    return this;
  }

  waiting(daysOn: number) {
    return personPage(this.at(daysOn)).waiting.filter(({ slot }) => slot === "run");
  }

  says(kind: "accepted" | "refused", daysOn: number): this {
    const person = this.at(daysOn);
    const [item] = personPage(person).waiting.filter(({ slot }) => slot === "run");
    const word = decide(
      person,
      { id: `decision-${this.events.length}`, person: "ana", kind, proposal: item!.proposal.proposal },
      { by: "Imke", device: "stave-desk", at: noonOf(daysOn) },
    );
    if (!word.ok) throw new Error(word.why);
    this.events = [...this.events, word.event];
    return this;
  }

  level(daysOn: number): number | undefined {
    const { plan } = this.at(daysOn);
    return plan.phases[0]!.weeks[3]!.sessions[0]!.conditioning[0]?.run?.level;
  }
}

describe("the plan carries the level that the programme begins with", () => {
  test("its bouts, its walks, its name, and its minutes in those of the session", () => {
    const plain = new Runner(LOOP_PROGRAMME).at(0).plan.phases[0]!.weeks[0]!.sessions[0]!;
    const session = new Runner(withRun(2)).at(0).plan.phases[0]!.weeks[0]!.sessions[0]!;
    expect(session.conditioning).toMatchObject([{ exercise: "run", run: { slot: "run", level: 2 }, effort: "steady" }]);
    expect(printDose(session.conditioning[0]!.dose)).toBe("10 × 1 min, rest 60 s");
    // 10 × 60 s + 9 × 60 s, by hand: 19 min, a quarter more at the upper end.
    expect(session.minutes.high - plain.minutes.high).toBeGreaterThanOrEqual(19);
    expect(session.minutes.high).toBeLessThanOrEqual(60);
  });

  test("where the session has no room for all of it, half the bouts stay", () => {
    const [session] = new Runner(withRun(2, 40)).at(0).plan.phases[0]!.weeks[0]!.sessions;
    expect(session!.minutes.high).toBeLessThanOrEqual(40);
    expect(session!.conditioning[0]!.dose.sets).toHaveLength(5);
  });

  test("whoever may not land gets another form at a stretch, and no level", () => {
    const base = madeUpSituation(CATALOGUE);
    const caution = { tag: "impact", ceiling: 1, from: base.on, recheck: base.on + 200, who: "Dr Example" };
    const person = { ...base.person, cautions: [caution] };
    const [session] = new Runner(withRun(2), { person }).at(0).plan.phases[0]!.weeks[0]!.sessions;
    expect(session!.conditioning).toMatchObject([{ exercise: "walk-brisk" }]);
    expect(printDose(session!.conditioning[0]!.dose)).toBe("1 × 19 min");
    expect(session!.conditioning[0]!.run).toBeUndefined();
  });
});

describe("the next level by the records", () => {
  test("three good runs lead on once the coach has said so, in every session that has this run", () => {
    const ana = new Runner(withRun(2)).runs("base/1/a", 0, "done").runs("base/1/b", 3, "done");
    expect(ana.waiting(4)).toEqual([]);
    ana.runs("base/2/a", 7, "done");
    expect(ana.waiting(8)).toMatchObject([
      { proposal: { patch: { slot: "run", change: "run-walk", level: 3 } }, stop: false, exercise: { id: "run" } },
    ]);
    expect(ana.level(8)).toBe(2);
    ana.says("accepted", 8);
    expect(ana.level(8)).toBe(3);
    expect(ana.waiting(9)).toEqual([]);
    const { plan } = ana.at(9);
    expect(plan.phases[0]!.weeks[3]!.sessions.map(({ conditioning }) => printDose(conditioning[0]!.dose))).toEqual(
      Array(2).fill(printDose(runWalkDose(3))),
    );
    expect(morningFor([ana.at(8)], ana.at(8).today).decided).toHaveLength(1);
  });

  test("breath and legs change nothing and say so; one of them begins the count anew", () => {
    const ana = new Runner(withRun(2)).runs("base/1/a", 0, "done").runs("base/1/b", 3, "breath");
    ana.runs("base/2/a", 7, "done").runs("base/2/b", 10, "done");
    expect(ana.waiting(11)).toEqual([]);
    ana.runs("base/3/a", 14, "legs");
    const next = nextDoses(ana.at(15)).slots.find(({ slot }) => slot === "run");
    expect(next).toMatchObject({ way: "run-walk", kind: "stay", refused: [{ data: { end: "legs" } }] });
  });

  test("pain that grew stops: two levels back, or a pause; refused, it does not come again", () => {
    const ana = new Runner(withRun(4)).runs("base/1/a", 0, "pain");
    const [item] = ana.waiting(1);
    expect(item).toMatchObject({
      stop: true,
      proposal: { patch: { change: "run-walk", level: 2 } },
      others: [{ patch: { change: "pause" } }],
    });
    ana.says("refused", 1);
    expect(ana.waiting(1)).toEqual([]);
    const first = new Runner(withRun(1)).runs("base/1/a", 0, "pain");
    expect(first.waiting(1)).toMatchObject([{ stop: true, proposal: { patch: { slot: "run", change: "pause" } } }]);
    first.says("accepted", 1);
    const { plan } = first.at(1);
    expect(plan.phases[0]!.weeks[1]!.sessions[0]!.conditioning).toEqual([]);
    expect(plan.phases[0]!.weeks[1]!.sessions[0]!.open).toMatchObject([{ key: "run" }]);
  });

  test("a week away takes a level back, two weeks two; the proposal stays one and the same from day to day", () => {
    const ana = new Runner(withRun(4)).runs("base/1/a", 0, "done");
    expect(ana.waiting(6)).toEqual([]);
    expect(ana.waiting(7)).toMatchObject([{ proposal: { patch: { level: 3 } } }]);
    expect(ana.waiting(7)[0]!.proposal.proposal).toBe(ana.waiting(9)[0]!.proposal.proposal);
    expect(ana.waiting(14)).toMatchObject([{ proposal: { patch: { level: 2 } } }]);
  });

  test("a level for which the session has no room is not proposed, and the minutes that are missing are told", () => {
    // Level 7 takes 29 min where level 6 takes 27: 3 × 540 s + 2 × 60 s and 4 × 360 s + 3 × 60 s, by hand.
    const roomy = new Runner(withRun(6)).at(0).plan.phases[0]!.weeks[0]!.sessions[0]!.minutes.high;
    const ana = new Runner(withRun(6, roomy));
    expect(ana.at(0).plan.phases[0]!.weeks[0]!.sessions[0]!.conditioning[0]!.dose.sets).toHaveLength(4);
    ana.runs("base/1/a", 0, "done").runs("base/1/b", 3, "done").runs("base/2/a", 7, "done");
    expect(ana.waiting(8)).toEqual([]);
    const next = nextDoses(ana.at(8)).slots.find(({ slot }) => slot === "run")!;
    expect(next.refused).toMatchObject([{ code: "progress/runs-good" }, { code: "progress/run-no-room" }]);
  });

  test("a run takes levels, pauses and resumptions, and nothing else; a slot of the work takes no level", () => {
    const person = new Runner(withRun(2)).at(0);
    const say = (patch: object) =>
      decide(person, { id: "decision-1", person: "ana", kind: "pinned", patch } as never, {
        by: "Imke",
        device: "stave-desk",
        at: noonOf(0),
      }).ok;
    expect(say({ slot: "run", change: "run-walk", level: 5 })).toBe(true);
    expect(say({ slot: "run", change: "pause" })).toBe(true);
    expect(say({ slot: "run", change: "reps", dose: runWalkDose(1) })).toBe(false);
    expect(say({ slot: "squat", change: "run-walk", level: 5 })).toBe(false);
  });
});

test("the phone has the run with its level, and not while a knee waits", () => {
  const ana = new Runner(withRun(2));
  const shown = bundleFor(ana.at(0), "Imke").sessions[0]!.session.conditioning;
  expect(shown).toMatchObject([{ run: { slot: "run", level: 2 } }]);
  const person = ana.at(0);
  const of = { plan: person.plan.id, session: "base/1/a", slot: "run", set: 0 };
  ana.events = [madeUpEvent("hurt-000001", 1, "hurt", { where: "knee", howMuch: 7 }, { of, at: noonOf(0) })];
  const after = bundleFor(ana.at(1), "Imke");
  expect(after.sessions.flatMap(({ session }) => session.conditioning)).toEqual([]);
  expect(after.paused.map(({ slot }) => slot)).toContain("run");
});

test("after pain that grew the phone has no run before the coach has answered", () => {
  const ana = new Runner(withRun(4)).runs("base/1/a", 0, "pain");
  expect(bundleFor(ana.at(1), "Imke").sessions.flatMap(({ session }) => session.conditioning)).toEqual([]);
  ana.says("accepted", 1);
  expect(bundleFor(ana.at(1), "Imke").sessions[0]!.session.conditioning).toMatchObject([{ run: { level: 2 } }]);
});
