import { describe, expect, test } from "vitest";
import { type Pattern, type Slot, slotsOf } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  timeOf,
} from "../testing/index.ts";
import { overItsMinutes } from "./over-its-minutes.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";

describe("cp-05 a 45-minute session of six exercises, 4 sets of 40 s each, rest 120 s, 2 min to change and set up", () => {
  // Ten repetitions of 4 s are a set of 40 s. Each exercise has a muscle of its own, so none competes with another.
  const kinds: readonly (readonly [Pattern, string])[] = [
    ["squat", "front thigh"],
    ["horizontal push", "chest"],
    ["hinge", "back thigh"],
    ["horizontal pull", "mid back"],
    ["anti-extension", "front trunk"],
    ["vertical push", "side shoulder"],
  ];
  const easy = madeUpExercise({ id: "easy", pattern: "locomotion", mode: "cyclic", amounts: "time" });
  const catalogue = madeUpCatalogue([
    easy,
    ...kinds.map(([pattern, muscle]) =>
      madeUpExercise({
        id: muscle.replace(" ", "-"),
        pattern,
        muscles: { [muscle]: 1 },
        secondsPerRep: 4,
        setupS: 120,
      }),
    ),
  ]);
  const dose = sets(4, reps(10), { restS: 120 });
  const work = kinds.map(([pattern, muscle]): Slot => madeUpSlot(muscle.replace(" ", "-"), pattern, dose));
  const programme = (minutes: number, slots = work) =>
    madeUpProgramme([madeUpSession("a", minutes, slots, { warmup: [{ do: "easy", dose: sets(1, timeOf(480)) }] })]);
  const found = (minutes: number, slots = work) =>
    overItsMinutes.run(lookAt({ programme: programme(minutes, slots), catalogue }));

  test("takes 72 minutes: warm-up 8, work 16, rest 36, changes 12; it stops", () => {
    expect(found(45)).toMatchObject([
      {
        severity: "stop",
        data: { typicalS: 72 * 60, parts: { warmUp: 480, work: 960, rest: 2160, setUp: 720 } },
      },
    ]);
  });

  const cuts = (found(45)[0]!.cures?.() ?? []).filter(({ id }) => id === "shorten");

  test("3 sets and 90 s of rest are 50 minutes; pairs of movements that do not compete go under 45", () => {
    const minutes = cuts.map(({ data }) => ({
      pairs: (data["pairs"] as readonly unknown[]).length,
      typical: Number(data["typicalS"]) / 60,
    }));
    expect(minutes).toContainEqual({ pairs: 0, typical: 50 });
    const paired = minutes.filter(({ pairs }) => pairs === 3);
    expect(Math.min(...paired.map(({ typical }) => typical))).toBeLessThan(45);
  });

  test("every cut that is offered keeps all six movements", () => {
    expect(cuts.length).toBeGreaterThan(2);
    for (const { changes } of cuts) {
      const left = changed(programme(45), changes).phases[0]!.sessions[0]!.work.flatMap(slotsOf);
      expect(left.map(({ pattern }) => pattern).sort()).toEqual(kinds.map(([pattern]) => pattern).sort());
    }
  });

  test("neighbour: with 90 minutes for it, or with two exercises, nothing is found", () => {
    expect(found(90)).toEqual([]);
    expect(found(45, work.slice(0, 2))).toEqual([]);
  });
});
