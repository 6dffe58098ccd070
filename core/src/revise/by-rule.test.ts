import { describe, expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { foldRecord, logOf } from "../measures/index.ts";
import {
  highestCounter,
  type Person,
  type Plan,
  rulesInForce,
  type StandingRule,
  type StaveEvent,
} from "../model/index.ts";
import { LOOP_PERSON, madeUpEvent, madeUpSituation, noonOf, PLAN_START, recordedSession } from "../testing/index.ts";
import { ruleLeaves } from "../watch/index.ts";
import { leftBy } from "./by-rule.ts";
import { decide, nextRevision, personPage, RULE_DEVICE, wordsByRule } from "./index.ts";
import { sessionDays } from "./session-days.ts";
import { viewOf } from "./view-of.ts";

const RULE: StandingRule = {
  id: "small-steps",
  version: 1,
  by: "Imke",
  at: 0,
  takes: ["load", "reps"],
  leastChance: 0.5,
  leastSessions: 3,
  mostPercent: 10,
};
const kg = (value: number) => ({ value, unit: "kg" }) as const;

/** Three weeks in which the squat passes its goal by far, as the plan that stands asks it. */
function trained(more: Partial<Person> = {}) {
  const revisions = new Map<string, Plan>();
  let events: readonly StaveEvent[] = [];
  const at = (daysOn: number) => {
    const facts = madeUpSituation(CATALOGUE, events, daysOn);
    const situation = { ...facts, person: { ...facts.person, ...more }, revisionOf: (id: string) => revisions.get(id) };
    const plan = nextRevision(situation);
    revisions.set(plan.id, plan);
    return { ...situation, plan };
  };
  for (const week of [1, 2, 3]) {
    const { plan } = at(7 * (week - 1));
    const sets = Array.from({ length: 3 }, () => ({ reps: 10, reserve: 3, load: kg(60) }));
    const said = recordedSession(plan, `base/${week}/a`, highestCounter(events), noonOf(7 * (week - 1)), {
      squat: sets,
    });
    events = [...events, ...said];
  }
  const add = (event: StaveEvent) => {
    events = [...events, event];
  };
  return { at, add };
}

describe("a rule speaks", () => {
  const life = trained();
  const person = life.at(15);
  const squat = viewOf(person).waiting.find(({ slot }) => slot.key === "squat")!;

  test("on what is sure enough, in its own name, and once", () => {
    expect(squat.certainty).toBeDefined();
    const words = wordsByRule(person, [RULE], noonOf(15));
    const word = words.find(({ data }) => data.patch.slot === "squat")!;
    expect(word).toMatchObject({
      kind: "accepted",
      device: RULE_DEVICE,
      data: { by: "rule small-steps, version 1, by Imke" },
    });
    expect(wordsByRule(person, [RULE], noonOf(15))).toEqual(words);
    for (const each of words) life.add(each);
    const after = life.at(15);
    expect(personPage(after, [RULE]).decided.map(({ by }) => by)).toContain("rule small-steps, version 1, by Imke");
    expect(wordsByRule(after, [RULE], noonOf(15)).filter(({ data }) => data.patch.slot === "squat")).toEqual([]);
  });

  test("what the coach takes back stays taken back", () => {
    const word = wordsByRule(person, [RULE], noonOf(15)).find(({ data }) => data.patch.slot === "squat")!;
    const now = life.at(15);
    const undone = decide(
      now,
      { id: "undo-rule-word", person: "ana", kind: "undone", decision: word.id },
      { by: "Imke", device: "stave-desk", at: noonOf(15) },
    );
    if (!undone.ok) throw new Error(undone.why);
    life.add(undone.event);
    const then = life.at(15);
    expect(viewOf(then).waiting.some(({ slot }) => slot.key === "squat")).toBe(true);
    expect(wordsByRule(then, [RULE], noonOf(15)).filter(({ data }) => data.patch.slot === "squat")).toEqual([]);
  });

  test("not when nothing is in force; the morning says why it left something", () => {
    expect(wordsByRule(person, [], 0)).toEqual([]);
    const over = { ...RULE, version: 2, takes: [] };
    expect(rulesInForce([RULE, over])).toEqual([]);
    expect(leftBy(viewOf(person), squat, [{ ...RULE, leastSessions: 50 }]).map(({ code }) => code)).toEqual([
      "rule/few-sessions",
    ]);
    expect(leftBy(viewOf(person), squat, [{ ...RULE, takes: ["load"], mostPercent: 1 }]).length).toBeGreaterThan(0);
  });
});

describe("what no rule may touch, each with its reason", () => {
  const base = trained();
  const of = (more: Partial<Person>, events: readonly StaveEvent[] = [], daysOn = 15) => {
    const person = base.at(daysOn);
    const all = [...person.events, ...events];
    const record = foldRecord(all);
    const who = { ...person.person, ...more };
    const input = {
      ...person,
      person: who,
      record,
      log: logOf(person.plan, record, person.revisionOf),
      days: sessionDays(person),
    };
    const waiting = viewOf(person).waiting.find(({ slot }) => slot.key === "squat")!;
    const { slot, exercise } = waiting;
    const one = {
      patch: { slot: "squat", change: "load", load: kg(62.5) } as const,
      stop: false,
      slot: { ...slot, load: kg(60) },
      exercise,
      certainty: { chance: 0.9, sessions: 9 },
    };
    return (change: Partial<typeof one> = {}, rule: StandingRule = RULE) =>
      ruleLeaves(rule, { ...one, ...change }, input).map(({ code }) => code);
  };
  const limit = {
    kind: "load",
    atMost: kg(80),
    side: "both",
    from: day("2027-03-01"),
    to: day("2027-06-01"),
    who: "Dr O",
  } as const;
  const caution = {
    statement: "pregnant",
    from: day("2027-03-01"),
    recheck: day("2027-04-01"),
    who: "midwife",
  } as const;
  const hurt = madeUpEvent("hurt-now", 900, "hurt", { where: "knee", howMuch: 2 }, { at: noonOf(10) });
  const sick = madeUpEvent(
    "sick-now",
    901,
    "missed",
    { because: "sick" },
    { of: { plan: "p", session: "base/2/b" }, at: noonOf(10) },
  );

  test("nothing speaks against it", () => expect(of({})()).toEqual([]));
  test.each<[string, Partial<Person>, readonly StaveEvent[], number, string]>([
    ["a limit", { limits: [limit] }, [], 15, "rule/limit"],
    ["pregnancy", { cautions: [caution] }, [], 15, "rule/pregnancy"],
    ["a minor", { born: addDays(PLAN_START, -17 * 365) }, [], 15, "rule/minor"],
    [
      "a screening that asks for a doctor",
      { screening: { ...LOOP_PERSON.screening!, outcome: "ask a doctor first" } },
      [],
      15,
      "rule/clearance",
    ],
    ["pain within two weeks", {}, [hurt], 15, "rule/pain"],
    ["an illness within two weeks", {}, [sick], 15, "rule/comeback"],
    ["a break that still lasts", {}, [], 40, "rule/comeback"],
  ])("%s", (_, more, events, daysOn, code) => expect(of(more, events, daysOn)()).toContain(code));

  test("a stop, another form, less, a pause", () => {
    const rule = of({});
    expect(rule({ stop: true })).toContain("rule/stop");
    expect(
      rule({ patch: { slot: "squat", change: "load", load: kg(62.5), exercise: "front-squat" } as never }),
    ).toContain("rule/new-form");
    expect(rule({ patch: { slot: "squat", change: "load", load: kg(57.5) } })).toContain("rule/other-change");
    expect(rule({ patch: { slot: "squat", change: "pause" } as never })).toContain("rule/other-change");
  });
  test("the first two sessions", () => {
    const [first] = [madeUpSituation(CATALOGUE, [], 2)];
    const plan = nextRevision(first);
    const events = recordedSession(plan, "base/1/a", 0, noonOf(0));
    const record = foldRecord(events);
    const input = { ...first, plan, record, log: logOf(plan, record, () => undefined), days: [] };
    const slot = plan.phases[0]!.weeks[0]!.sessions[0]!.blocks[0]!.slots[0]!;
    const one = {
      patch: { slot: "squat", change: "load", load: kg(62.5) } as const,
      stop: false,
      slot: { ...slot, load: kg(60) },
      exercise: CATALOGUE.exercises.get(slot.exercise)!,
      certainty: { chance: 1, sessions: 9 },
    };
    expect(ruleLeaves(RULE, one, input).map(({ code }) => code)).toEqual(["rule/first-sessions", "rule/new-form"]);
  });
  test("a step over its share, a chance too low or not known, too few sessions", () => {
    const rule = of({});
    expect(rule({ patch: { slot: "squat", change: "load", load: kg(67.5) } })).toEqual(["rule/step"]);
    expect(rule({ certainty: { chance: 0.4, sessions: 9 } })).toEqual(["rule/chance"]);
    expect(rule({ certainty: { chance: 0.9, sessions: 2 } })).toEqual(["rule/few-sessions"]);
    expect(rule({ certainty: undefined as never })).toEqual(["rule/chance", "rule/few-sessions"]);
    expect(rule({}, { ...RULE, takes: ["reps"] })).toEqual(["rule/other-change"]);
  });
});
