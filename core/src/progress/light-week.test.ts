import { describe, expect, test } from "vitest";
import { addDays } from "../day.ts";
import { type Decided, occurrencesOf } from "../measures/index.ts";
import type { Away, Patch } from "../model/index.ts";
import { madeUpExercise, reps, SLOT_START, setDone, slotTrained } from "../testing/index.ts";
import { LEAST_APART, LIGHT_RULES } from "./light-rules.ts";
import { lightWeek } from "./light-week.ts";

const squat = madeUpExercise({ id: "squat" });
interface Told {
  /** Weeks, 1 = first, of which the session was done, on its first day. */
  readonly done: readonly number[];
  readonly light?: readonly number[];
  /** Days after the start. */
  readonly today: number;
  readonly away?: readonly (readonly [from: number, to: number])[];
  readonly weeks?: number;
  readonly decisions?: readonly Decided[];
}
/** A plan of one session a week on Mondays, twelve weeks unless said. */
const said = ({ done, light = [], today, away = [], weeks: count = 12, decisions = [] }: Told) => {
  const input = slotTrained({
    exercise: squat,
    set: reps(8),
    sets: 2,
    place: {},
    did: Array.from({ length: Math.max(0, ...done) }, (_, at) => [7 * at, { ...setDone(8), load: "none" }] as const),
    today,
    person: {
      away: away.map(([from, to]): Away => ({ from: addDays(SLOT_START, from), to: addDays(SLOT_START, to) })),
    },
  });
  const [phase] = input.plan.phases;
  const weeks = phase!.weeks.slice(0, count).map((week) => ({ ...week, light: light.includes(week.week) }));
  const plan = { ...input.plan, phases: [{ ...phase!, weeks }] };
  const sessions = input.record.sessions.filter(({ session }) => done.includes(Number(session.split("/")[1])));
  return lightWeek({
    ...input,
    plan,
    record: { ...input.record, sessions, decisions },
    spans: weeks.map((_, at) => ({ first: addDays(SLOT_START, 7 * at), last: addDays(SLOT_START, 7 * at + 6) })),
    days: occurrencesOf(plan).map((occurrence, at) => ({ occurrence, day: addDays(SLOT_START, 7 * at) })),
  });
};
const upTo = (week: number) => Array.from({ length: week }, (_, at) => at + 1);
const codes = (reasons: readonly { readonly code: string }[]) => reasons.map(({ code }) => code);

// A light one every 5.6 ± 2.3 weeks: rogerson2024. So after five hard ones; eight are mean and SD.
test("the rules are the published figures: five hard weeks, at most eight, three apart", () => {
  expect(LIGHT_RULES.map(({ hardWeeks }) => hardWeeks)).toEqual([5, 8]);
  expect([Math.floor(5.6), Math.round(5.6 + 2.3), Math.floor(5.6 - 2.3)]).toEqual([5, 8, LEAST_APART]);
});

describe("by the calendar", () => {
  test("after five hard weeks the sixth is light, lighter loads beside it, and it says that nobody measured it", () => {
    const light = said({ done: upTo(5), today: 35 });
    expect(light).toMatchObject({
      kind: "light",
      patch: { slot: "it", change: "light week", week: "base/6" },
      others: [{ change: "light week", week: "base/6", lighter: true }],
      slot: { key: "it" },
    });
    expect(codes(light.evidence)).toEqual([
      "progress/hard-weeks",
      "progress/light-rule",
      "progress/light-not-measured",
    ]);
    expect(light.evidence[0]!.data).toEqual({ week: "base/6", weeks: 5, ended: null, on: null });
    expect(light.evidence[1]!.data).toEqual({ rule: "every sixth week", weeks: 5, other: "when it shows", most: 8 });
  });

  test("after four it is none yet", () => {
    expect(said({ done: upTo(4), today: 28 })).toMatchObject({ kind: "none", evidence: [{ data: { weeks: 4 } }, {}] });
  });

  test("a week that has begun is not made light: the one after it is", () => {
    expect(said({ done: upTo(6), today: 36 }).patch).toMatchObject({ week: "base/7" });
    expect(said({ done: upTo(5), today: 36 })).toMatchObject({
      evidence: [{ data: { week: "base/7", weeks: 0, ended: "runs" } }],
    });
  });

  test("the last week is not made light, nor anything after the plan", () => {
    expect(codes(said({ done: upTo(5), today: 35, weeks: 6 }).evidence)).toEqual(["progress/light-no-week"]);
    expect(said({ done: upTo(5), today: 35, weeks: 7 }).kind).toBe("light");
    expect(codes(said({ done: upTo(5), today: 100 }).evidence)).toEqual(["progress/light-no-week"]);
  });

  test("without a record nothing is known", () => {
    expect(said({ done: [], today: 35 })).toEqual({
      kind: "unknown",
      evidence: [{ code: "progress/light-no-record", data: {} }],
      refused: [],
      others: [],
    });
  });
});

describe("what is a light week already", () => {
  test("one that the plan has ends the run, and the next one is told as planned", () => {
    const after = said({ done: upTo(6), light: [2], today: 42 });
    expect(after).toMatchObject({
      kind: "none",
      evidence: [{ data: { weeks: 4, ended: "light", on: "2027-03-08" } }, {}],
    });
    const planned = said({ done: upTo(5), light: [6], today: 35 });
    expect([planned.kind, codes(planned.evidence)]).toEqual([
      "none",
      ["progress/hard-weeks", "progress/light-planned"],
    ]);
  });

  test("one that comes soon enough waits for it; later than eight hard weeks is too late", () => {
    const soon = said({ done: upTo(5), light: [8], today: 35 });
    expect([soon.kind, codes(soon.refused)]).toEqual(["none", ["progress/light-planned"]]);
    expect(soon.refused[0]!.data).toEqual({ week: "base/8" });
    expect(said({ done: upTo(5), light: [9], today: 35 }).kind).toBe("none");
    expect(said({ done: upTo(5), light: [10], today: 35 }).kind).toBe("light");
  });

  test("a week of which less than half was done was none of hard training", () => {
    const gap = said({ done: [1, 2, 4, 5, 6], today: 42 });
    expect(gap).toMatchObject({
      kind: "none",
      evidence: [{ data: { weeks: 3, ended: "nothing recorded", on: "2027-03-15" } }, {}],
    });
  });

  test("a week away is one: five days of it are, four are not", () => {
    expect(said({ done: upTo(4), away: [[28, 32]], today: 35 })).toMatchObject({
      kind: "none",
      evidence: [{ data: { weeks: 0, ended: "away" } }],
    });
    expect(said({ done: upTo(5), away: [[29, 32]], today: 35 }).kind).toBe("light");
    const next = said({ done: upTo(5), away: [[35, 41]], today: 35 });
    expect([next.kind, codes(next.evidence)]).toEqual(["none", ["progress/hard-weeks", "progress/week-off"]]);
  });

  test("a coach's no in this run holds until eight", () => {
    const patch: Patch = { slot: "it", change: "light week", week: "base/5" };
    const no: Decided = {
      id: "no",
      n: 99,
      at: 0,
      by: "Imke",
      kind: "refused",
      proposal: { proposal: "p", patch, evidence: [], cut: {}, engine: "1" },
      cut: {},
    };
    const refused = said({ done: upTo(6), today: 42, decisions: [no] });
    expect([refused.kind, codes(refused.refused)]).toEqual(["none", ["progress/light-refused"]]);
    expect(refused.refused[0]!.data).toEqual({ most: 8 });
    expect(said({ done: upTo(8), today: 56, decisions: [no] }).kind).toBe("light");
    expect(said({ done: upTo(6), today: 42, decisions: [{ ...no, kind: "accepted" }] }).kind).toBe("light");
  });
});

describe("a light week near a week off", () => {
  test("comes after the next five hard weeks, or is a full one", () => {
    const move = said({ done: upTo(3), light: [6], away: [[21, 27]], today: 28 });
    expect(move).toMatchObject({
      kind: "move",
      patch: { slot: "it", change: "light week", week: "base/10", instead: "base/6" },
      others: [{ change: "full week", week: "base/6" }],
    });
    expect(codes(move.evidence)).toEqual(["progress/week-off", "progress/light-near-rest"]);
    expect(move.evidence[0]!.data).toEqual({ week: "base/4", because: "away", on: "2027-03-22" });
    expect(move.evidence[1]!.data).toEqual({ light: "base/6", apart: 3 });
  });

  test("is a full one where no week is left for it, or another rest stands there", () => {
    const short = said({ done: upTo(3), light: [6], away: [[21, 27]], today: 28, weeks: 10 });
    expect(short).toMatchObject({ kind: "full", patch: { change: "full week", week: "base/6" }, others: [] });
    const taken = said({ done: upTo(3), light: [6, 9], away: [[21, 27]], today: 28 });
    expect(taken.kind).toBe("full");
  });

  test("three weeks apart are near, four are not", () => {
    expect(said({ done: upTo(3), light: [7], away: [[21, 27]], today: 28 }).kind).toBe("move");
    expect(said({ done: upTo(3), light: [8], away: [[21, 27]], today: 28 }).kind).toBe("none");
  });

  test("weeks before anything was done are no rest", () => {
    expect(said({ done: [3], light: [4], today: 21 }).kind).toBe("none");
  });
});
