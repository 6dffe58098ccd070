import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { Caution, Exercise, Limit, Programme, Reason, Session } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpPlace,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
} from "../testing/index.ts";
import { build, type FitInput } from "./build.ts";
import { withEquipment, withMinutes, withoutCaution, withoutLimits } from "./changes.ts";
import { conflictOf } from "./conflict.ts";
import { leastMust } from "./search.ts";

const on = day("2027-03-01");
const form = (id: string, more: Partial<Exercise> = {}) => madeUpExercise({ id, ...more });
const slot = (key: string, first = key) => ({ ...madeUpSlot(first, "squat", sets(1, reps(10))), slot: key });

function input(
  sessions: readonly Session[],
  forms: readonly Exercise[],
  said: Partial<FitInput["person"]> = {},
  programme: Partial<Programme> = {},
): FitInput {
  const whole = madeUpProgramme(sessions, programme);
  return {
    programme: whole,
    phase: { ...whole.phases[0]!, weeks: 1 },
    person: madeUpPerson({ status: "intermediate", minutes: 60, ...said }),
    place: madeUpPlace({ name: "The room" }),
    catalogue: madeUpCatalogue(forms),
    on,
    perWeek: sessions.length,
  };
}
const plain = (rules: readonly Reason[] | undefined) =>
  rules
    ?.map(({ code, data }) => [code.replace("fit/rule-", ""), data["slot"] ?? data["session"]].join(" ").trim())
    .sort();
/** Whether every slot of the phase can be filled. */
const fits = (task: FitInput) => leastMust(build(task).task) === 0;
const without = (task: FitInput, key: string): FitInput => ({
  ...task,
  phase: {
    ...task.phase,
    sessions: task.phase.sessions.map((session) => ({
      ...session,
      work: session.work.filter((block) => !("slot" in block && block.slot === key)),
    })),
  },
});
const caution = (more: Partial<Caution>): Caution => ({
  from: day("2027-01-01"),
  recheck: day("2028-01-01"),
  who: "Dr Hale",
  ...more,
});
const limit: Limit = {
  kind: "movement",
  movement: "free",
  side: "both",
  from: day("2027-01-01"),
  to: day("2028-01-01"),
  who: "Dr Hale",
};

test("a slot that can be filled is in no conflict, nor one that does not exist", () => {
  const task = input([madeUpSession("s", 40, [slot("a")])], [form("a")]);
  expect(conflictOf(task, "a")).toBeUndefined();
  expect(conflictOf(task, "no-such")).toBeUndefined();
});

test("too little time for three slots: all three and the minutes; without any one of them the rest fits", () => {
  // 200 s to set up are 50 units of 5 s at the upper estimate: two of them fit into 10 min, three do not.
  const forms = ["a", "b", "c"].map((id) => form(id, { setupS: 200 }));
  const task = input([madeUpSession("s", 10, [slot("a"), slot("b"), slot("c")])], forms);
  expect(fits(task)).toBe(false);
  for (const key of ["a", "b", "c"])
    expect(plain(conflictOf(task, key))).toEqual(["fill a", "fill b", "fill c", "minutes s"]);
  for (const key of ["a", "b", "c"]) expect(fits(without(task, key)), key).toBe(true);
  expect(fits(withMinutes(task, 5))).toBe(true);
});

test("slots and sessions that have nothing to do with it are not in it", () => {
  const forms = [form("a", { setupS: 400 }), form("b", { setupS: 400 }), form("pull", { pattern: "horizontal pull" })];
  const pull = madeUpSlot("pull", "horizontal pull", sets(1, reps(10)));
  const sessions = [
    madeUpSession("s", 10, [slot("a"), slot("b"), pull]),
    madeUpSession("t", 10, [{ ...pull, slot: "d" }]),
  ];
  expect(plain(conflictOf(input(sessions, forms), "a"))).toEqual(["fill a", "fill b", "minutes s"]);
});

test("one form for two slots: both, and that no form comes twice", () => {
  const task = input([madeUpSession("s", 40, [slot("a"), slot("b", "a")])], [form("a")]);
  expect(plain(conflictOf(task, "b"))).toEqual(["fill a", "fill b", "once s"]);
  expect(fits(without(task, "a"))).toBe(true);
});

test("the place lacks what the only form needs: the place, by its name", () => {
  const task = input([madeUpSession("s", 40, [slot("a")])], [form("a", { needs: [["rack"]] })]);
  expect(conflictOf(task, "a")).toEqual([
    { code: "fit/rule-fill", data: { slot: "a" } },
    { code: "fit/rule-kit", data: { place: "The room" } },
  ]);
  expect(fits(withEquipment(task, "rack"))).toBe(true);
});

test("one form is out for want of kit, the other by a caution: both, and either would do", () => {
  const forms = [form("a", { needs: [["rack"]] }), form("b", { stress: { knee_deep: 3 } })];
  const cautions = [caution({ tag: "grip", ceiling: 0 }), caution({ tag: "knee_deep", ceiling: 1 })];
  const task = input([madeUpSession("s", 40, [slot("a")])], forms, { cautions });
  expect(conflictOf(task, "a")).toEqual([
    { code: "fit/rule-fill", data: { slot: "a" } },
    { code: "fit/rule-kit", data: { place: "The room" } },
    { code: "fit/rule-caution", data: { tag: "knee_deep", who: "Dr Hale" } },
  ]);
  expect([fits(withEquipment(task, "rack")), fits(withoutCaution(task, 1)), fits(withoutCaution(task, 0))]).toEqual([
    true,
    true,
    false,
  ]);
});

test("a limit, and what a person cannot do", () => {
  const forms = [form("free"), form("down", { stress: { floor: 3 } })];
  const task = input([madeUpSession("s", 40, [slot("free")])], forms, { limits: [limit], cannot: ["floor"] });
  expect(plain(conflictOf(task, "free"))).toEqual(["cannot", "fill free", "limit"]);
  expect(fits(withoutLimits(task, [limit]))).toBe(true);
});

test("what nobody may be given at all conflicts with the slot alone", () => {
  const task = input([madeUpSession("s", 40, [slot("a")])], [form("a", { coachOnly: true })]);
  expect(plain(conflictOf(task, "a"))).toEqual(["fill a"]);
});

describe("with a weekly band that must hold", () => {
  const chest = (id: string) => form(id, { muscles: { chest: 1 } });
  const rule = {
    weekly: { sets: { chest: { from: 0, to: 0 } }, must: ["chest"] },
  } as const satisfies Partial<Programme>;

  test("sessions bind one another: the band and the slot", () => {
    const sessions = [madeUpSession("s", 40, [slot("a")]), madeUpSession("t", 40, [slot("b")])];
    const task = input(sessions, [chest("a"), form("b")], {}, rule);
    expect(fits(task)).toBe(true);
    const only = input([madeUpSession("s", 40, [slot("a")])], [chest("a")], {}, rule);
    expect(plain(conflictOf(only, "a"))).toEqual(["band", "fill a"]);
    expect(conflictOf(only, "a")).toContainEqual({
      code: "fit/rule-band",
      data: { muscle: "chest", low: 0, high: 0 },
    });
  });
});
