import { describe, expect, test } from "vitest";
import { addDays, type Day, day, printDay } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { foldRecord, logOf, occurrencesOf } from "../measures/index.ts";
import type { Person, StaveEvent } from "../model/index.ts";
import { nextRevision } from "../revise/index.ts";
import {
  LOOP_PERSON,
  LOOP_PROGRAMME,
  madeUpEvent,
  madeUpSituation,
  noonOf,
  PLAN_START,
  recordedSession,
} from "../testing/index.ts";
import { trendOf, type WatchInput, watch } from "./index.ts";

/** A plan of sixteen weeks, so that there is a past to look back on. */
const PROGRAMME = { ...LOOP_PROGRAMME, phases: LOOP_PROGRAMME.phases.map((phase) => ({ ...phase, weeks: 16 })) };
const SITUATION = { ...madeUpSituation(CATALOGUE), programme: PROGRAMME };
const PLAN = nextRevision(SITUATION);
/** Session a on Mondays, b on Thursdays. */
const DAYS = occurrencesOf(PLAN).map((occurrence) => ({
  occurrence,
  day: addDays(PLAN_START, 7 * (occurrence.week - 1) + (occurrence.session.key === "a" ? 0 : 3)),
}));
const dayOf = (at: number) => Math.floor(at / 86_400_000) as Day;

function input(daysOn: number, events: readonly StaveEvent[], more: Partial<Person> = {}): WatchInput {
  const record = foldRecord(events);
  const log = logOf(PLAN, record, () => undefined);
  const today = addDays(PLAN_START, daysOn);
  return {
    person: { ...LOOP_PERSON, ...more },
    catalogue: CATALOGUE,
    record,
    log,
    days: DAYS,
    on: PLAN_START,
    today,
    dayOf,
  };
}
const notes = (daysOn: number, events: readonly StaveEvent[], more: Partial<Person> = {}) =>
  watch(input(daysOn, events, more)).notes.map(({ code }) => code);
const kg = (value: number) => ({ value, unit: "kg" }) as const;
/** Squats of so many weeks, so heavy in each, two in reserve at five repetitions. */
const squats = (loads: readonly number[]) =>
  loads.flatMap((load, week) =>
    recordedSession(PLAN, `base/${week + 1}/a`, week * 100, noonOf(7 * week), {
      squat: Array.from({ length: 3 }, () => ({ reps: 5, reserve: 2, load: kg(load) })),
    }),
  );

describe("silent or away", () => {
  const first = recordedSession(PLAN, "base/1/a", 0, noonOf(0));
  test("a week without a record and two sessions planned in it", () => {
    expect(notes(7, first)).not.toContain("watch/silent");
    expect(watch(input(11, first)).notes).toContainEqual({ code: "watch/silent", data: { days: 11, sessions: 3 } });
  });
  test("never begun is silent from the first day on", () => {
    expect(notes(6, [])).not.toContain("watch/silent");
    expect(notes(8, [])).toContain("watch/silent");
  });
  test("away is no silence", () => {
    const away = { from: addDays(PLAN_START, 2), to: addDays(PLAN_START, 20) };
    expect(watch(input(11, first, { away: [away] })).notes).toEqual([
      { code: "watch/away", data: { until: printDay(away.to) } },
    ]);
  });
  test("sick was said: a reason and no silence", () => {
    const of = { plan: PLAN.id, session: "base/2/a" };
    const sick = madeUpEvent("sick", 999, "missed", { because: "sick" }, { of, at: noonOf(7) });
    expect(watch(input(9, [...first, sick])).notes).toContainEqual({
      code: "watch/missed",
      data: { because: "sick", on: printDay(addDays(PLAN_START, 7)), session: "base/2/a" },
    });
    expect(notes(9, [...first, sick])).not.toContain("watch/silent");
  });
});

describe("the mornings after", () => {
  const before = squats([40]);
  const hurt = madeUpEvent("hurt-one", 500, "hurt", { where: "knee", howMuch: 4 }, { at: noonOf(7) });
  const said = (days: number, howMuch: number) =>
    madeUpEvent("said-one", 501, "next-morning", { hurt: "hurt-one", howMuch }, { at: noonOf(7 + days) });
  test("nobody has asked yet; for three days", () => {
    expect(notes(8, [...before, hurt])).toContain("watch/ask-morning");
    expect(notes(7, [...before, hurt])).not.toContain("watch/ask-morning");
    expect(notes(11, [...before, hurt])).not.toContain("watch/ask-morning");
  });
  test("4 in the session and 5 the next morning calls for a look; less does not", () => {
    expect(notes(8, [...before, hurt, said(1, 5)])).toContain("watch/morning-worse");
    expect(notes(8, [...before, hurt, said(1, 3)])).not.toContain("watch/morning-worse");
  });
  test("an answer three days late does not tell how that morning was", () => {
    expect(watch(input(11, [...before, hurt, said(4, 1)])).notes).toContainEqual({
      code: "watch/morning-late",
      data: { where: "knee", on: printDay(addDays(PLAN_START, 7)), days: 3, now: 1 },
    });
  });
  test("after the first session signs are asked for on two days", () => {
    expect([0, 1, 2, 3].map((on) => notes(on, before).includes("watch/ask-after-first"))).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });
});

describe("gain, fall and no change, told from noise by the interval", () => {
  const squat = (loads: readonly number[]) => trendOf(input(7 * loads.length, squats(loads)), "back-squat");
  const ramp = (from: number, to: number) => Array.from({ length: 14 }, (_, week) => from + ((to - from) * week) / 13);
  test("a long way up is a gain, a long way down a fall", () => {
    expect(squat(ramp(40, 80))).toMatchObject({ kind: "gain" });
    expect(squat(ramp(80, 50))).toMatchObject({ kind: "fall" });
  });
  test("the same for long is level, and its interval holds 0", () => {
    const found = squat(ramp(60, 60));
    if (found === undefined || found.kind === "unknown") throw new Error("a figure is known");
    expect(["level", "unclear"]).toContain(found.kind);
    expect(found.low).toBeLessThanOrEqual(0);
    expect(found.high).toBeGreaterThanOrEqual(0);
  });
  test("without a figure from then nobody can tell", () => {
    expect(squat([60, 60, 60])).toMatchObject({ kind: "unknown" });
  });
  test("a fall calls for a look; a gain stands among the figures", () => {
    const fell = watch(input(98, squats(ramp(80, 50))));
    expect(fell.notes.map(({ code }) => code)).toContain("watch/fall");
    const rose = watch(input(98, squats(ramp(40, 80))));
    expect(rose.figures.map(({ code }) => code)).toContain("watch/gain");
  });
});

describe("too much too soon (iusca2021: 20 %, and three sets more; ours)", () => {
  const week = (at: number, sets: number) =>
    recordedSession(PLAN, `base/${at + 1}/a`, at * 100, noonOf(7 * at), {
      squat: Array.from({ length: sets }, () => ({ reps: 5, reserve: 2 })),
      row: [],
    });
  const codes = (last: number, before: readonly number[] = [4, 4, 4, 4]) =>
    watch(
      input(7 * (before.length + 1), [
        ...before.flatMap((sets, at) => (sets === 0 ? [] : week(at, sets))),
        ...week(before.length, last),
      ]),
    )
      .notes.filter(({ code }) => code === "watch/much-more")
      .map(({ data }) => data);
  test("three sets more than four a week is told, two are not", () => {
    expect(codes(7)).toContainEqual({ muscle: "front thigh", sets: 7, mean: 4, weeks: 4 });
    expect(codes(6)).toEqual([]);
  });
  test("a week away does not make a return too much; one week alone tells nothing", () => {
    expect(codes(4, [4, 4, 0, 0])).toEqual([]);
    expect(codes(12, [4])).toEqual([]);
  });
});

test("adherence, load with its days that nobody rated", () => {
  const { figures } = watch(input(7, squats([60])));
  expect(figures).toContainEqual({ code: "watch/load-unrated", data: { days: [printDay(day("2027-03-01"))] } });
  expect(figures[0]).toMatchObject({ code: "watch/adherence", data: { asked: 2, done: 1, early: 0, days: 7 } });
});

test("a note is told for seven days", () => {
  const note = madeUpEvent("note-one", 700, "noted", { about: "other", text: "13 stands" }, { at: noonOf(1) });
  const told = (on: number) => notes(on, [note]).includes("watch/noted");
  expect([told(2), told(8), told(9)]).toEqual([true, true, false]);
});

test("ot-03 (open case): sets under a clock of 2001 count in their place, in the order of their counter, and the day is asked", () => {
  const lost = recordedSession(PLAN, "base/1/a", 0, Date.UTC(2001, 0, 1, 12));
  const { notes: told } = watch(input(3, lost));
  expect(told).toContainEqual({ code: "watch/clock", data: { session: "base/1/a", on: "2001-01-01" } });
  expect(foldRecord(lost).sessions[0]!.slots.flatMap(({ sets }) => sets).length).toBeGreaterThan(4);
  expect(notes(3, recordedSession(PLAN, "base/1/a", 0, noonOf(0)))).not.toContain("watch/clock");
});
