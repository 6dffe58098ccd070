import type { Block, Conditioning, Dose, Pattern, Phase, Programme, Session, Slot, WarmUp } from "../model/index.ts";

/** A slot for tests, its key that of its exercise unless said. */
export function madeUpSlot(first: string, pattern: Pattern, dose: Dose, more: Partial<Slot> = {}): Slot {
  return { slot: first, pattern, first, down: 1, up: 2, dose, way: "reps then load", ...more };
}

export function madeUpSession(
  key: string,
  minutes: number,
  work: readonly Block[],
  more: { readonly warmup?: readonly WarmUp[]; readonly conditioning?: readonly Conditioning[] } = {},
): Session {
  return { key, title: `Session ${key}`, minutes, work, ...more };
}

export function madeUpPhase(sessions: readonly Session[], more: Partial<Phase> = {}): Phase {
  return { key: "one", title: "One", weeks: 4, sessions, ...more };
}

/** A programme for tests: general, novice, in kg, of one phase unless said. */
export function madeUpProgramme(sessions: readonly Session[], more: Partial<Programme> = {}): Programme {
  return {
    stave: 1,
    id: "made-up",
    title: "Made up",
    version: 1,
    goal: "general",
    status: "novice",
    units: "kg",
    phases: [madeUpPhase(sessions)],
    ...more,
  };
}
