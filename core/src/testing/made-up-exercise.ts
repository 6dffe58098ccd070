import type { Catalogue, Dose, Exercise, Ladder, SetDose, Span } from "../model/index.ts";

const FAULT = { see: "it is not as shown", why: "it is new", fix: "show it again" };

/** An exercise for tests: say only what the test is about. Plain, two-legged, counted in repetitions, no time at all. */
export function madeUpExercise(said: Partial<Exercise> & Pick<Exercise, "id">): Exercise {
  return {
    name: said.id,
    synonyms: [],
    pattern: "squat",
    limb: "two legs",
    plane: "sagittal",
    position: "standing",
    mode: "dynamic",
    hands: "none",
    amounts: "reps",
    eachSide: false,
    muscles: {},
    needs: [],
    loadMeaning: "body only",
    need: { conditions: [] },
    stress: {},
    fixed: false,
    coachOnly: false,
    armsUsed: false,
    seated: false,
    lowering: false,
    secondsPerRep: 0,
    switchS: 0,
    setupS: 0,
    changeS: 0,
    moveS: 0,
    setUp: "stand",
    move: "move",
    cues: ["one", "two", "three"],
    faults: [FAULT, FAULT, FAULT],
    sources: ["ours"],
    ...said,
  };
}

/** @returns a catalogue of these exercises alone */
export function madeUpCatalogue(exercises: readonly Exercise[], ladders: readonly Ladder[] = []): Catalogue {
  return { exercises: new Map(exercises.map((each) => [each.id, each])), ladders };
}

function spanOf(value: number | Span): Span {
  return typeof value === "number" ? { from: value, to: value } : value;
}

/** @example sets(3, reps(8), { restS: 120 }) */
export function sets(count: number, set: SetDose, rest: Omit<Dose, "sets"> = {}): Dose {
  return { sets: Array.from({ length: count }, () => set), ...rest };
}

export function reps(value: number | Span, more: Partial<SetDose> = {}): SetDose {
  return { amount: { kind: "reps", span: spanOf(value) }, eachSide: false, ...more };
}

export function hold(value: number | Span, more: Partial<SetDose> = {}): SetDose {
  return { amount: { kind: "hold", span: spanOf(value) }, eachSide: false, ...more };
}

export function timeOf(value: number | Span, more: Partial<SetDose> = {}): SetDose {
  return { amount: { kind: "time", span: spanOf(value) }, eachSide: false, ...more };
}
