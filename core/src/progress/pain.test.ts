import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { Caution, Exercise } from "../model/index.ts";
import { madeUpExercise, reps, type SlotTrained, setDone, slotTrained } from "../testing/index.ts";
import { painOn } from "./pain.ts";

const squat = madeUpExercise({ id: "squat", stress: { knee_deep: 2, sp_axial: 1 } });
const lunge = madeUpExercise({ id: "lunge", stress: { knee_deep: 1 } });
const extension = madeUpExercise({ id: "extension", stress: { knee_open: 1 } });
const press = madeUpExercise({ id: "press", stress: { elbow: 1 } });
const KNEE: Caution = { statement: "knee", from: day("2027-01-01"), recheck: day("2027-12-01"), who: "Dr Example" };

const hurtAt = (where: string, howMuch: number, more: Partial<SlotTrained> = {}) =>
  slotTrained({
    exercise: squat,
    set: reps(8),
    sets: 2,
    place: {},
    did: [[0, { ...setDone(8), load: "none" }]],
    hurts: { 0: { where, howMuch } },
    today: 1,
    harder: [lunge, extension, press],
    ...more,
  });
const on = (input: ReturnType<typeof hurtAt>, form: Exercise, slot = "it") => painOn(input, slot, form);
const codes = (input: ReturnType<typeof hurtAt>, form: Exercise) =>
  on(input, form, "other").map(({ evidence }) => evidence.map(({ code }) => code));

describe("how much it hurts", () => {
  test("2 of 10 lets everything go on; from 3 on a place that nobody watches waits", () => {
    expect(on(hurtAt("knee", 2), squat)).toEqual([]);
    expect(on(hurtAt("knee", 3), squat)).toMatchObject([{ waits: true, everything: false }]);
  });

  // Up to 5 of 10 is tolerated at a place under care: the pain monitoring model, silbernagel2007.
  test("a place that a caution watches may hurt up to 5", () => {
    const watched = { person: { cautions: [KNEE] } };
    const waits = (howMuch: number) => on(hurtAt("knee", howMuch, watched), squat).map((pain) => pain.waits);
    expect([2, 3, 5, 6].map(waits)).toEqual([[], [false], [false], [true]]);
    expect(on(hurtAt("elbow", 3, { ...watched, exercise: press, harder: [squat] }), press)).toMatchObject([
      { waits: true },
    ]);
  });

  test("what is said of it: where, how much, when and at what", () => {
    const [pain] = on(hurtAt("knee", 4), squat);
    expect(pain!.evidence).toEqual([
      {
        code: "progress/pain",
        data: { where: "knee", howMuch: 4, on: "2027-03-01", exercise: "squat", hurt: "hurt-0" },
      },
    ]);
  });
});

describe("on which forms it bears", () => {
  test("on the form itself, in whatever slot it stands; on others by the stress that they share with it", () => {
    const input = hurtAt("knee", 4);
    expect(codes(input, squat)).toEqual([["progress/pain"]]);
    expect(codes(input, lunge)).toEqual([["progress/pain", "progress/shares-stress"]]);
    expect(on(input, lunge)[0]!.evidence[1]!.data).toEqual({ exercise: "lunge", tags: ["knee_deep"] });
  });

  test("not on those that reach the place in another way, nor on those that do not reach it", () => {
    const input = hurtAt("knee", 4);
    expect(on(input, extension)).toEqual([]);
    expect(on(input, press)).toEqual([]);
  });

  test("where the form that hurt has no stress there, on all that reach the place", () => {
    const input = hurtAt("knee", 4, { exercise: press, harder: [squat, lunge, extension] });
    expect(codes(input, lunge)).toEqual([["progress/pain", "progress/shares-stress"]]);
    expect(codes(input, extension)).toHaveLength(1);
    expect(codes(input, press)).toEqual([["progress/pain"]]);
  });

  test("a place that no list knows bears on the form alone", () => {
    const input = hurtAt("somewhere", 3);
    expect(on(input, squat)).toMatchObject([{ waits: true }]);
    expect(on(input, lunge)).toEqual([]);
  });

  test("a pain of no session is one of its slot", () => {
    const input = hurtAt("knee", 4);
    const [hurt] = input.record.hurts;
    const { session: _, ...alone } = hurt!;
    const loose = { ...input, record: { ...input.record, hurts: [alone] } };
    expect(painOn(loose, "it", press)).toMatchObject([{ waits: true, evidence: [{ data: { exercise: null } }] }]);
    expect(painOn(loose, "other", press)).toEqual([]);
    expect(painOn(loose, "other", extension)).toHaveLength(1);
  });

  test("where another form was taken because it hurt, it was the first that hurt; another cause says nothing", () => {
    const input = hurtAt("knee", 4, { exercise: press, harder: [squat, lunge, extension] });
    const swapped = (because: "hurt" | "easier") => {
      const [session] = input.record.sessions;
      const slots = session!.slots.map((slot) => ({
        ...slot,
        swaps: [{ from: "squat", to: "press", because } as const],
      }));
      return { ...input, record: { ...input.record, sessions: [{ ...session!, slots }] } };
    };
    expect(on(swapped("hurt"), squat)[0]!.evidence[0]!.data["exercise"]).toBe("squat");
    expect(on(swapped("hurt"), extension)).toEqual([]);
    expect(on(swapped("easier"), squat)[0]!.evidence[0]!.data["exercise"]).toBe("press");
  });
});

describe("signs to stop", () => {
  test.each(["chest", "dizzy"])("%s bears on everything, from 1 on", (where) => {
    for (const form of [squat, press]) {
      const [pain] = on(hurtAt(where, 1), form, "other");
      expect(pain).toMatchObject({ waits: true, everything: true });
      expect(pain!.evidence.map(({ code }) => code)).toEqual(["progress/pain", "progress/stop-sign"]);
    }
    expect(on(hurtAt(where, 0), squat)).toEqual([]);
  });
});

test("what was done last in the slot is what hurt, else what was asked", () => {
  const input = hurtAt("knee", 4, { exercise: press, harder: [squat, lunge, extension] });
  const doing = (...forms: readonly string[]) => {
    const log = input.log.map((each) => ({
      ...each,
      sets: forms.map((exercise) => ({ ...each.sets[0]!, exercise })),
    }));
    return on({ ...input, log }, lunge, "other")[0]!.evidence[0]!.data["exercise"];
  };
  expect(doing("press", "lunge")).toBe("lunge");
  expect(doing("lunge", "lunge", "squat")).toBe("squat");
  expect(doing()).toBe("press");
});

test("a little stress is stress: what shares none of it goes on", () => {
  const input = hurtAt("knee", 4, { exercise: lunge, harder: [squat, extension, press] });
  expect(codes(input, squat)).toEqual([["progress/pain", "progress/shares-stress"]]);
  expect(codes(input, extension)).toEqual([]);
});
