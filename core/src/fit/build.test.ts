import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { Person, Programme, Session } from "../model/index.ts";
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
  timeOf,
} from "../testing/index.ts";
import { build } from "./build.ts";

const squat = madeUpExercise({ id: "squat" });
const row = madeUpExercise({ id: "row", pattern: "horizontal pull" });
const walk = madeUpExercise({ id: "walk", pattern: "locomotion", amounts: "time", setupS: 30, moveS: 10 });
const bike = madeUpExercise({ ...walk, id: "bike", needs: [["cycle"]] });
const three = sets(3, reps(10));
const squats = madeUpSlot("squat", "squat", three);
const rows = madeUpSlot("row", "horizontal pull", three);

function built(
  sessions: readonly Session[],
  said: { readonly person?: Partial<Person>; readonly programme?: Partial<Programme>; readonly stations?: number } = {},
) {
  const programme = madeUpProgramme(sessions, said.programme);
  return build({
    programme,
    phase: { ...programme.phases[0]!, weeks: 1 },
    person: madeUpPerson({ status: "intermediate", minutes: 60, ...said.person }),
    place: madeUpPlace(),
    catalogue: madeUpCatalogue([squat, row, walk, bike]),
    on: day("2027-03-01"),
    perWeek: sessions.length,
    ...(said.stations === undefined ? {} : { stations: said.stations }),
  });
}

describe("the task of a phase", () => {
  test("has the blocks of every session in their order, then its conditioning", () => {
    const conditioning = [{ do: "walk", dose: sets(1, timeOf(600)), effort: "easy" } as const];
    const { task } = built([
      madeUpSession("a", 40, [squats, { pair: [rows, { ...squats, slot: "again" }], restS: 60 }], { conditioning }),
      madeUpSession("b", 40, [{ ...rows, slot: "row-b" }]),
    ]);
    expect(task.blocks.map(({ session, slots }) => [session, slots])).toEqual([
      [0, ["squat"]],
      [0, ["row", "again"]],
      [0, []],
      [1, ["row-b"]],
    ]);
    expect(task.rows).toHaveLength(22);
    expect(task.stations).toBeUndefined();
    expect(built([madeUpSession("a", 40, [squats])], { stations: 2 }).task.stations).toBe(2);
  });

  test("gives each session the shorter of its minutes and the person's, less the warm-up, in units of 5 s", () => {
    const sessions = [madeUpSession("a", 40, [squats]), madeUpSession("b", 80, [rows])];
    expect(built(sessions).task.capacity).toEqual([480, 720]);
    expect(built(sessions, { person: { minutes: 30 } }).task.capacity).toEqual([360, 360]);
    const warmup = [{ do: "walk", dose: sets(1, timeOf(300)) }];
    // 30 s + 300 s, and a quarter more: 412.5 s.
    expect(built([madeUpSession("a", 40, [squats], { warmup })]).task.capacity).toEqual([480 - 83]);
  });

  test("never gives a session less than no time", () => {
    const warmup = [{ do: "walk", dose: sets(1, timeOf(3600)) }];
    expect(built([madeUpSession("a", 20, [squats], { warmup })]).task.capacity).toEqual([0]);
  });

  test("counts only the first block of a session as begun without a walk", () => {
    const far = { ...squat, moveS: 40 };
    const programme = madeUpProgramme([madeUpSession("a", 40, [squats, { ...squats, slot: "again" }])]);
    const { task } = build({
      programme,
      phase: { ...programme.phases[0]!, weeks: 1 },
      person: madeUpPerson({ status: "intermediate" }),
      place: madeUpPlace(),
      catalogue: madeUpCatalogue([far]),
      on: day("2027-03-01"),
      perWeek: 1,
    });
    const [first, second] = task.blocks.map(({ ways }) => ways[0]!.steps[0]![0]!.time);
    expect(second! - first!).toBe(10);
  });

  test("takes the sets that the coach pinned", () => {
    const pins = [{ slot: "squat", sets: 2 }];
    const { task } = built([madeUpSession("a", 40, [squats, rows])], { person: { pins } });
    const counts = task.blocks.map(({ ways }) => [...new Set(ways[0]!.steps[0]!.map((option) => option.sets))]);
    expect(counts).toEqual([
      [2, 0],
      [3, 2, 1, 4, 0],
    ]);
  });
});

describe("conditioning", () => {
  const asked = (seconds: number) => ({ do: "walk", dose: sets(1, timeOf(seconds)), effort: "steady" }) as const;

  test("may be given whole, halved for 30 points or left out for 60, with the time that each takes", () => {
    const { task } = built([madeUpSession("a", 40, [], { conditioning: [asked(600)] })]);
    expect(task.blocks[0]!.ways).toHaveLength(1);
    const [options] = task.blocks[0]!.ways[0]!.steps;
    // 30 + 600 + 10 s, and a quarter more; 30 + 300 + 10 s, and a quarter more.
    expect(options!.map(({ want, time, must, rank }) => [want, time, must, rank])).toEqual([
      [0, 160, 0, 0],
      [-30, 85, 0, 1],
      [-60, 0, 0, 2],
    ]);
    expect(options!.map(({ lines }) => lines)).toEqual([
      [],
      [{ id: "fit/conditioning-cut", level: "want", points: -30, data: { part: "half", exercise: "walk" } }],
      [{ id: "fit/conditioning-cut", level: "want", points: -60, data: { part: "none", exercise: "walk" } }],
    ]);
  });

  test("that nobody may do here is not in the task", () => {
    const conditioning = [{ do: "squat", dose: sets(1, timeOf(600)), effort: "easy" } as const];
    const { task, sessions } = built([
      madeUpSession("a", 40, [squats], { conditioning: [...conditioning, { ...asked(60), do: "no-such" }] }),
    ]);
    expect(sessions[0]!.conditioning.map(({ item }) => item.exercise.id)).toEqual(["squat"]);
    expect(task.blocks).toHaveLength(2);
  });

  test("keeps the effort that the coach asks for", () => {
    const { sessions } = built([madeUpSession("a", 40, [], { conditioning: [asked(600)] })]);
    expect(sessions[0]!.conditioning[0]!.effort).toBe("steady");
  });
});
