import fc from "fast-check";
import type { EventData, EventKind, EventOf, Patch, Proposal, StaveEvent } from "../model/index.ts";

/** An event for tests, by Ana on her phone; say only what the test is about. */
export function madeUpEvent<Kind extends EventKind>(
  id: string,
  n: number,
  kind: Kind,
  data: EventData[Kind],
  more: Partial<Pick<StaveEvent, "device" | "at" | "of" | "replaces" | "person">> = {},
): StaveEvent<Kind> {
  const event = { v: 1, id, person: "ana", device: "phone", n, at: n * 60_000, kind, data, ...more };
  return event as StaveEvent<Kind>;
}

const PATCHES: readonly Patch[] = [
  { slot: "squat", change: "load", load: { value: 14, unit: "kg" } },
  { slot: "squat", change: "pause" },
  { slot: "row", change: "resume" },
];

function proposal(name: string): Proposal {
  return {
    proposal: `proposal-${name}`,
    patch: PATCHES[0]!,
    evidence: [{ code: "x/y", data: { name } }],
    cut: { phone: 1 },
    engine: "1",
  };
}

const amount = fc.oneof(fc.nat(20), fc.constant("as asked" as const));
const said: fc.Arbitrary<{ kind: string; data: unknown; slot: boolean }> = fc.oneof(
  fc.record({
    kind: fc.constant("set-done"),
    slot: fc.constant(true),
    data: fc.record({
      exercise: fc.constantFrom("goblet-squat", "body-squat"),
      reps: fc.oneof(amount, fc.record({ left: amount, right: amount })),
      load: fc.constantFrom("as asked", "none", { value: 12, unit: "kg" }),
      reserve: fc.oneof(fc.nat(5), fc.constant("not said")),
    }),
  }),
  fc.record({ kind: fc.constant("set-left-out"), slot: fc.constant(true), data: fc.constant({}) }),
  fc.record({ kind: fc.constant("session-started"), slot: fc.constant(false), data: fc.constant({}) }),
  fc.record({
    kind: fc.constant("hurt"),
    slot: fc.boolean(),
    data: fc.record({ where: fc.constantFrom("knee", "elsewhere"), howMuch: fc.nat(10) }),
  }),
  fc.record({
    kind: fc.constant("swapped"),
    slot: fc.constant(true),
    data: fc.constant({ from: "goblet-squat", to: "body-squat", because: "easier" }),
  }),
  fc.record({ kind: fc.constant("session-ended"), slot: fc.constant(false), data: fc.record({ early: fc.boolean() }) }),
  fc.record({ kind: fc.constant("struck"), slot: fc.constant(false), data: fc.constant({}) }),
  fc.record({ kind: fc.constant("heart-rate"), slot: fc.boolean(), data: fc.constant({ beats: 99 }) }),
  fc.record({
    kind: fc.constantFrom("accepted", "refused"),
    slot: fc.constant(false),
    data: fc.constantFrom("a", "b").map((name) => ({ ...proposal(name), by: "Imke" })),
  }),
  fc.record({
    kind: fc.constant("pinned"),
    slot: fc.constant(false),
    data: fc.constantFrom(...PATCHES).map((patch) => ({ patch, by: "Imke" })),
  }),
  fc.record({
    kind: fc.constant("undone"),
    slot: fc.constant(false),
    data: fc.nat(29).map((at) => ({ decision: `event-${at}`, by: "Imke" })),
  }),
);

/** A history of up to 30 events of every kind by two devices, with corrections, rivals and counters that meet. */
export const histories: fc.Arbitrary<readonly StaveEvent[]> = fc
  .array(
    fc.record({
      said,
      n: fc.nat(12),
      device: fc.constantFrom("phone", "tablet"),
      session: fc.constantFrom("base/1/a", "base/1/b"),
      slotKey: fc.constantFrom("squat", "row"),
      set: fc.nat(2),
      replaces: fc.option(fc.nat(29), { nil: undefined, freq: 3 }),
    }),
    { maxLength: 30 },
  )
  .map((rows) =>
    rows.map(({ said: { kind, data, slot }, n, device, session, slotKey, set, replaces }, at): StaveEvent => {
      const of: EventOf = { plan: "plan-1", session, ...(slot ? { slot: slotKey, set } : {}) };
      const corrects = kind === "struck" || (replaces ?? 0) % 2 === 1;
      return {
        v: 1,
        id: `event-${at}`,
        person: "ana",
        device,
        n,
        at: n * 1000 + at,
        kind,
        of,
        ...(corrects && replaces !== undefined && replaces !== at ? { replaces: `event-${replaces}` } : {}),
        data: data as StaveEvent["data"],
      };
    }),
  );

/** The same events in another order. */
export function shuffled(events: readonly StaveEvent[], keys: Iterator<number>): readonly StaveEvent[] {
  return events
    .map((event) => ({ event, key: keys.next().value as number }))
    .sort((a, b) => a.key - b.key)
    .map(({ event }) => event);
}
