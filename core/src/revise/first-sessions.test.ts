import { describe, expect, test } from "vitest";
import { addDays } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { occurrencesOf, slotsIn } from "../measures/index.ts";
import { highestCounter, type Muscle, type Person, type Plan, type StaveEvent } from "../model/index.ts";
import { LOOP_PERSON, LOOP_PROGRAMME, madeUpSituation, noonOf, PLAN_START, recordedSession } from "../testing/index.ts";
import { decide, morningFor, nextDoses, nextRevision, type PlannedPerson, personPage } from "./index.ts";

const PROGRAMME = { ...LOOP_PROGRAMME, phases: [{ ...LOOP_PROGRAMME.phases[0]!, weeks: 10 }] };
/** Four weeks of these sets, the last of them over so many days before the plan. */
const used = (off: number, sets: Partial<Record<Muscle, number>>) =>
  [1, 2, 3, 4].map((back) => ({ week: addDays(PLAN_START, -off - 7 * back), sets }));
const LEGS = { "front thigh": 12, buttocks: 12 };
const WHOLE = { ...LEGS, lats: 8, "mid back": 8, "front shoulder": 8 };

class Life {
  events: readonly StaveEvent[] = [];
  readonly revisions = new Map<string, Plan>();
  readonly #person: Partial<Person>;
  constructor(person: Partial<Person>) {
    this.#person = person;
  }

  at(today: number): PlannedPerson {
    const person = { ...LOOP_PERSON, ...this.#person };
    const revisionOf = (id: string) => this.revisions.get(id);
    const situation = { ...madeUpSituation(CATALOGUE, this.events, today), programme: PROGRAMME, person, revisionOf };
    const plan = nextRevision(situation);
    this.revisions.set(plan.id, plan);
    return { ...situation, plan };
  }

  does(session: string, on: number): this {
    const { plan } = this.at(on);
    this.events = [
      ...this.events,
      ...recordedSession(plan, session, highestCounter(this.events), noonOf(on), asked(plan, session)),
    ];
    return this;
  }

  accepts(slot: string, today: number): this {
    const person = this.at(today);
    const { proposal } = personPage(person).waiting.find((one) => one.slot === slot)!.proposal;
    const input = { id: `accepted-${this.events.length}`, person: "ana", kind: "accepted" as const, proposal };
    const word = decide(person, input, { by: "Imke", device: "stave-desk", at: noonOf(today) });
    this.events = [...this.events, (word as { event: StaveEvent }).event];
    return this;
  }

  next(slot: string, today: number) {
    return nextDoses(this.at(today)).slots.find((one) => one.slot === slot)!;
  }

  slot(key: string, today: number) {
    return occurrencesOf(this.at(today).plan)
      .flatMap(({ session }) => slotsIn(session))
      .find((slot) => slot.key === key)!;
  }
}

/** The bottom of every range, entered. */
function asked(plan: Plan, session: string) {
  const slots = slotsIn(occurrencesOf(plan).find(({ id }) => id === session)!.session);
  return Object.fromEntries(
    slots.map(({ key, dose }) => [
      key,
      dose.sets.map(({ amount }) => ({ reps: amount.kind === "reps" ? amount.span.from : 0, reserve: 2 })),
    ]),
  );
}

const sets = (slot: ReturnType<Life["next"]>) => (slot.patch?.change === "reps" ? slot.patch.dose.sets : undefined);
const codes = (slot: ReturnType<Life["next"]>) => slot.evidence.map(({ code }) => code);

// Half to two thirds after 2–3 weeks off: common practice, no source. Two sets of a new muscle: ours, as in session/first-dose.
describe("a muscle that is new, in a person who trains", () => {
  test("an intermediate whose weeks were legs alone: two sets of rows and presses, three in reserve; squats as they are", () => {
    const life = new Life({ status: "intermediate", recent: used(0, LEGS) });
    for (const slot of ["row", "press"]) {
      const next = life.next(slot, 0);
      expect(next.kind).toBe("down");
      expect(sets(next)!.map(({ reserve }) => reserve?.from)).toEqual([3, 3]);
      expect(new Set(codes(next))).toEqual(new Set(["progress/muscle-new"]));
    }
    expect([life.next("squat", 0).kind, life.next("goblet", 0).kind]).toEqual(["stay", "stay"]);
  });

  test("its neighbours: muscles that were trained of late, a person of whom nothing is known, and weeks that are too few", () => {
    expect(new Life({ recent: used(0, WHOLE) }).next("row", 0).kind).toBe("stay");
    expect(new Life({}).next("row", 0).kind).toBe("stay");
    expect(new Life({ recent: used(0, LEGS).slice(0, 1) }).next("row", 0).kind).toBe("stay");
  });

  test("three sets in the second session, then one more at a time up to what the programme asks", () => {
    const life = new Life({ recent: used(0, LEGS) }).accepts("row", 0);
    expect(life.slot("row", 0).dose.sets).toHaveLength(2);
    life.does("base/1/a", 0);
    expect(life.next("row", 1).kind).toBe("stay");
    life.does("base/2/a", 7);
    const again = life.next("row", 8);
    expect(again).toMatchObject({
      kind: "up",
      evidence: [{ code: "progress/full-again", data: { from: 2, to: 3, why: "first" } }],
    });
    life.accepts("row", 8);
    expect(life.slot("row", 8).dose.sets.map(({ reserve }) => reserve)).toEqual(
      [2, 2, 2].map((from) => ({ from, to: from })),
    );
  });

  test("what was refused does not come again because another day has gone by; another break is another matter", () => {
    const life = new Life({ recent: used(0, LEGS) });
    const waits = (today: number) => personPage(life.at(today)).waiting.some(({ slot }) => slot === "row");
    const person = life.at(0);
    const { proposal } = personPage(person).waiting.find((one) => one.slot === "row")!.proposal;
    const input = { id: "refused-0001", person: "ana", kind: "refused" as const, proposal };
    const word = decide(person, input, { by: "Imke", device: "stave-desk", at: noonOf(0) });
    expect([waits(0), waits(1)]).toEqual([true, true]);
    life.events = [...life.events, (word as { event: StaveEvent }).event];
    expect([waits(0), waits(1), waits(5)]).toEqual([false, false, false]);
    // Half the sets of squats and rows, then three weeks without: back, and asked anew.
    life.does("base/1/a", 0).does("base/2/a", 7);
    expect(waits(29)).toBe(true);
  });

  test("the day after, the muscles are asked about", () => {
    const life = new Life({ recent: used(0, LEGS) }).does("base/1/a", 0).does("base/1/b", 3).does("base/2/a", 7);
    const notes = (today: number) =>
      morningFor([life.at(today)], addDays(PLAN_START, today)).people.flatMap((row) => row.notes);
    const asks = (today: number) => notes(today).filter(({ code }) => code === "watch/ask-after-new");
    // The press comes for the first time on day 3; the row comes again on day 7.
    expect(asks(4)).toEqual([{ code: "watch/ask-after-new", data: { on: "2027-03-04", muscles: ["front shoulder"] } }]);
    expect(asks(8)).toEqual([]);
  });
});

describe("a muscle that is back", () => {
  test("three weeks off rows and presses alone, from three sets a week: two of them, one more in reserve", () => {
    const weeks = [...used(21, { lats: 3, "mid back": 3, "front shoulder": 9 }), ...used(0, LEGS).slice(0, 3)];
    const life = new Life({ recent: weeks });
    const row = life.next("row", 0);
    expect(codes(row)).toEqual(["progress/muscle-back", "progress/muscle-back"]);
    expect(row.evidence[0]!.data).toMatchObject({ muscle: "lats", days: 22, usual: 3, most: 2 });
    expect(sets(row)!.map(({ reserve }) => reserve?.from)).toEqual([3, 3]);
    // Nine sets a week before leave six, and the week asks for four.
    expect(life.next("press", 0).kind).toBe("stay");
  });

  test("half after more than four weeks", () => {
    const weeks = [...used(35, { lats: 4, "mid back": 4 }), ...used(0, LEGS).slice(0, 3)];
    const row = new Life({ recent: weeks }).next("row", 0);
    expect(row.evidence[0]!.data).toMatchObject({ usual: 4, most: 2, days: 36 });
    // Four sets are asked, and half of the usual four a week is two.
    expect(sets(row)).toHaveLength(2);
  });
});

describe("back to a form whose muscles were trained by others", () => {
  const life = () => new Life({}).does("base/1/a", 0).does("base/1/b", 3).does("base/2/b", 10).does("base/3/b", 17);

  test("the load goes down and the sets stay", () => {
    const squat = life().next("squat", 18);
    expect(codes(squat)).toEqual(["progress/comeback", "progress/muscles-used"]);
    expect(sets(squat)).toHaveLength(3);
    expect(sets(squat)![0]!.load).toEqual({ value: 52.5, unit: "kg" });
  });

  test("its neighbour: a row whose muscles nothing else used begins with half the sets", () => {
    const row = life().next("row", 18);
    expect(codes(row)).toEqual(["progress/comeback"]);
    expect(sets(row)).toHaveLength(2);
  });

  test("after two sessions done as asked with half the sets, all of them come back, at the load of now at least", () => {
    const back = life().accepts("row", 18).does("base/4/a", 21).does("base/5/a", 28);
    const next = back.next("row", 29);
    expect(next.kind).toBe("up");
    back.accepts("row", 29);
    expect(back.slot("row", 29).dose.sets).toHaveLength(3);
    expect(back.next("row", 29).kind).toBe("stay");
  });
});

describe("what is carried into a form of which too little is known", () => {
  test("stands beside what is missing and is no figure of the form; what is known carries nothing into itself", () => {
    const life = new Life({}).does("base/1/b", 3).does("base/2/b", 10);
    const page = personPage(life.at(11));
    const slots = new Map(page.slots.map((slot) => [slot.slot, slot]));
    expect(slots.get("press")?.capacity).toBeDefined();
    expect(slots.get("press")?.carried).toBeUndefined();
    // A squat on the back is not carried from one that hands hold in front.
    expect(slots.get("squat")?.carried).toBeUndefined();
    const squats = new Life({}).does("base/1/a", 0).does("base/2/a", 7);
    expect(nextDoses(squats.at(8)).slots.every(({ carried }) => carried === undefined)).toBe(true);
  });

  test("a press with dumbbells after two sessions with a bar", () => {
    const life = new Life({}).does("base/1/b", 3).does("base/2/b", 10);
    const person = life.at(11);
    const swapped = {
      id: "pinned-0001",
      person: "ana",
      kind: "pinned" as const,
      patch: { slot: "press", change: "exercise" as const, exercise: "dumbbell-press-standing" },
    };
    const word = decide(person, swapped, { by: "Imke", device: "stave-desk", at: noonOf(11) });
    life.events = [...life.events, (word as { event: StaveEvent }).event];
    const next = life.next("press", 11);
    expect(next.exercise).toBe("dumbbell-press-standing");
    expect(next.carried).toMatchObject({
      code: "capacity/carried-from",
      data: { exercise: "barbell-overhead-press", by: "tool", sessions: 2 },
    });
    const page = personPage(life.at(11)).slots.find(({ slot }) => slot === "press")!;
    expect(page).toMatchObject({ missing: { code: "capacity/not-recorded" }, carried: next.carried });
    expect(page.capacity).toBeUndefined();
  });
});
