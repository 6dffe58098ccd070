import { describe, expect, test } from "vitest";
import { canonicalJson } from "../model/index.ts";
import { eventsInput, MOST_EVENTS } from "./index.ts";

const ID = "01890a5d-ac96-774b-bcce-b302099a8057";
const SET = {
  v: 1,
  id: ID,
  person: "tobiah",
  device: "01890a5d-ac96-774b-bcce-b302099a8058",
  n: 3,
  at: 1_800_000_000_000,
  kind: "set-done",
  of: { plan: "p", session: "ground/1/a", slot: "ground-squat-a", set: 0 },
  data: { exercise: "goblet-squat", reps: 10, load: { value: 12, unit: "kg" }, reserve: "not said" },
};
const good = (event: unknown) => eventsInput.safeParse({ events: [event] }).success;
const said = (data: Record<string, unknown>) => good({ ...SET, data: { ...SET.data, ...data } });

describe("events from outside", () => {
  test("are taken as they are, to the byte", () => {
    expect(canonicalJson(eventsInput.parse({ events: [SET] }))).toBe(canonicalJson({ events: [SET] }));
  });

  test.each([
    ["sides apart", { reps: { left: 8, right: "as asked" } }],
    ["one side only", { reps: { left: 8 } }],
    ["untouched values", { reps: "as asked", load: "as asked" }],
    ["no load", { load: "none" }],
    ["half a repetition left", { reserve: 1.5 }],
  ])("a set with %s", (_, data) => expect(said(data)).toBe(true));

  test.each([
    ["a fraction of a repetition", { reps: 8.5 }],
    ["negative repetitions", { reps: -1 }],
    ["more repetitions than anybody does", { reps: 1001 }],
    ["a load without its unit", { load: 12 }],
    ["a load of stone", { load: { value: 12, unit: "st" } }],
    ["a load nobody lifts", { load: { value: 1001, unit: "kg" } }],
    ["a load that is no number", { load: { value: Number.NaN, unit: "kg" } }],
    ["a word that no version knows", { extra: 1 }],
  ])("not a set with %s", (_, data) => expect(said(data)).toBe(false));

  test("a set names its slot and its number", () => {
    expect(good({ ...SET, of: { plan: "p", session: "ground/1/a" } })).toBe(false);
    expect(good({ ...SET, of: undefined })).toBe(false);
  });

  const of = { plan: "p", session: "ground/1/a" };
  test.each([
    ["missed", { because: "sick" }],
    ["missed", {}],
    ["rated", { effort: 7, minutes: 50 }],
    ["rated", { effort: "not said", minutes: 50 }],
    ["outside", { what: "sport", minutes: 90, effort: 6 }],
    ["next-morning", { hurt: ID, howMuch: 5 }],
    ["pressure", { systolic: 128, diastolic: 76, when: "before", arm: "left" }],
    ["noted", { about: "medicines", text: "tablets changed" }],
    ["set-left-out", { because: "busy" }],
  ])("%s %j is taken", (kind, data) => {
    expect(good({ ...SET, kind, data, of: kind === "set-left-out" ? SET.of : of })).toBe(true);
  });

  test.each([
    ["a pressure typed the wrong way round (mo-08)", "pressure", { systolic: 88, diastolic: 150, when: "before" }],
    ["an effort over 10", "rated", { effort: 11, minutes: 50 }],
    ["a day of 25 hours", "outside", { what: "sport", minutes: 1500, effort: 6 }],
    ["a reason that is none", "missed", { because: "lazy" }],
  ])("%s is not", (_, kind, data) => expect(good({ ...SET, kind, data, of })).toBe(false));

  test("a rating and a miss name their session", () => {
    expect(good({ ...SET, kind: "rated", data: { effort: 7, minutes: 50 }, of: undefined })).toBe(false);
  });

  test("kinds that nobody knows yet are kept, within bounds", () => {
    const event = { ...SET, kind: "heart-rate", data: { beats: [99, 101], note: { deep: ["é"] } } };
    expect(eventsInput.parse({ events: [event] }).events[0]).toEqual(event);
    expect(good({ ...event, data: { long: "x".repeat(8000) } })).toBe(false);
    expect(good({ ...event, data: { zero: "\0" } })).toBe(false);
    expect(good({ ...event, kind: "Heart Rate" })).toBe(false);
  });

  test("a counter leaves room for all that is recorded and decided later", () => {
    expect(good({ ...SET, n: 998_999_999_999 })).toBe(true);
    expect(good({ ...SET, n: 1_000_000_000_000 })).toBe(false);
  });

  test("nesting that would overflow is refused, not fallen over", () => {
    const deep = JSON.parse(`${'{"a":'.repeat(50_000)}1${"}".repeat(50_000)}`);
    expect(good({ ...SET, kind: "heart-rate", data: deep })).toBe(false);
  });

  test.each(["accepted", "changed", "refused", "pinned", "undone"])("%s is a coach's word", (kind) => {
    expect(good({ ...SET, kind, data: {} })).toBe(false);
    const decision = { patch: { slot: "a", change: "resume" }, by: "Imke" };
    expect(good({ ...SET, kind: "pinned", data: decision })).toBe(false);
  });

  test("names of what every object has are no kinds", () => {
    expect(good({ ...SET, kind: "constructor", data: {} })).toBe(true);
    expect(good({ ...SET, kind: "__proto__", data: {} })).toBe(false);
  });

  test("ids, counters and instants are bounded", () => {
    expect(good({ ...SET, id: "a b" })).toBe(false);
    expect(good({ ...SET, n: -1 })).toBe(false);
    expect(good({ ...SET, n: Number.MAX_SAFE_INTEGER })).toBe(false);
    expect(good({ ...SET, at: 9e15 })).toBe(false);
    expect(good({ ...SET, person: "x".repeat(201) })).toBe(false);
    expect(good({ ...SET, replaces: ID })).toBe(false);
    expect(good({ ...SET, kind: "struck", data: {} })).toBe(false);
  });

  test("pain is 0 to 10, whole", () => {
    const hurt = (howMuch: number) => good({ ...SET, kind: "hurt", data: { where: "knee", howMuch } });
    expect([0, 10, 11, -1, 2.5].map(hurt)).toEqual([true, true, false, false, false]);
  });

  test("a batch has 1 to 100", () => {
    const batch = (count: number) => eventsInput.safeParse({ events: Array(count).fill(SET) }).success;
    expect([0, 1, MOST_EVENTS, MOST_EVENTS + 1].map(batch)).toEqual([false, true, true, false]);
  });
});

test("a run names its session and its name, a level that there is, and what ended it", () => {
  const of = { plan: "p", session: "ground/1/a", slot: "run" };
  const ran = (data: object, about: object = of) => good({ ...SET, kind: "ran", of: about, data });
  expect(ran({ level: 2, end: "breath" })).toBe(true);
  expect(ran({ level: 2, end: "breath" }, { plan: "p", session: "ground/1/a" })).toBe(false);
  for (const data of [{ level: 0, end: "done" }, { level: 10, end: "done" }, { level: 2, end: "tired" }, { level: 2 }])
    expect(ran(data)).toBe(false);
});

test("as a table is read, so a phone is: 500 repetitions at most, and 10 in reserve", () => {
  expect([said({ reps: 500 }), said({ reps: 501 }), said({ reps: 1000 })]).toEqual([true, false, false]);
  expect([said({ reserve: 10 }), said({ reserve: 11 }), said({ reserve: 12 })]).toEqual([true, false, false]);
});
