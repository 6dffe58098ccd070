import type { StaveEvent } from "@stave/core/model";

/** A set of a made-up person, the same for the same number. */
export function sampleEvent(n: number, person = "ana", more: Partial<StaveEvent> = {}): StaveEvent {
  return {
    v: 1,
    id: `019aaaaa-0000-7000-8000-${String(n).padStart(12, "0")}`,
    person,
    device: "phone-of-hers",
    n,
    at: 1_795_000_000_000 + n * 90_000,
    kind: "set-done",
    of: { plan: "plan-1", session: "base/1/a", slot: "squat", set: n % 4 },
    data: { exercise: "goblet-squat", reps: 8 + (n % 3), load: "as asked", reserve: "not said" },
    ...more,
  };
}

export function sampleEvents(from: number, to: number, person = "ana"): StaveEvent[] {
  return Array.from({ length: to - from }, (_, i) => sampleEvent(from + i, person));
}
