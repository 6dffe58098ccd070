import {
  ASIDE_KINDS,
  type Cut,
  compareEvents,
  DECISION_KINDS,
  type DecisionKind,
  type EventData,
  type EventKind,
  mergeEvents,
  type SetDone,
  type SlotKey,
  type Standing,
  type StaveEvent,
  standingEvents,
} from "../model/index.ts";
import type {
  Decided,
  HurtRecord,
  Reading,
  RecordFold,
  RunRecord,
  Said,
  SessionRecord,
  SetRecord,
  SlotRecord,
} from "./record.ts";

function is<Kind extends EventKind>(event: StaveEvent, kind: Kind): event is StaveEvent<Kind> {
  return event.kind === kind;
}

/**
 * What a person's events say, taken together. The same events in any order, cut into any pieces, some of them twice,
 * give the same answer.
 *
 * A set that was recorded twice, as by two phones, counts once: the later word stands. Kinds that are not known are
 * passed over. A decision is only ever taken back by `undone`, never by a correction.
 *
 * @param events of one person, in any order
 */
export function foldRecord(events: readonly StaveEvent[]): RecordFold {
  const merged = mergeEvents(events);
  const isDecision = ({ kind }: StaveEvent) => (DECISION_KINDS as readonly string[]).includes(kind);
  const standing = standingEvents(merged.filter((event) => !isDecision(event)));
  const sessions = sessionsOf(standing);
  const done = new Set(sessions.map(({ session }) => session));
  return {
    sessions,
    hurts: standing.flatMap(hurtOf),
    runs: runsOf(standing),
    missed: lastOfEach(saidOf(standing, "missed")).filter(({ session }) => !done.has(session!)),
    ratings: lastOfEach(saidOf(standing, "rated")),
    outside: saidOf(standing, "outside"),
    mornings: saidOf(standing, "next-morning"),
    pressures: saidOf(standing, "pressure"),
    notes: saidOf(standing, "noted"),
    decisions: decisionsOf(merged.filter(isDecision)),
    cut: cutOf(merged),
  };
}

/** The highest counter of every device. */
function cutOf(events: readonly StaveEvent[]): Cut {
  const cut = new Map<string, number>();
  for (const { device, n } of events) cut.set(device, Math.max(cut.get(device) ?? 0, n));
  return Object.fromEntries(cut);
}

function sessionsOf(standing: readonly Standing[]): readonly SessionRecord[] {
  const bySession = new Map<string, Standing[]>();
  for (const one of standing) {
    const session = one.event.of?.session;
    if (session === undefined || ASIDE_KINDS.has(one.event.kind)) continue;
    const known = bySession.get(session);
    if (known === undefined) bySession.set(session, [one]);
    else known.push(one);
  }
  return [...bySession].map(([session, words]): SessionRecord => {
    const { first } = words[0]!;
    const devices = new Set(words.flatMap(({ event }) => (is(event, "set-done") ? event.device : []))).size;
    const ends = words.map(({ event }) => event).filter((event) => is(event, "session-ended"));
    const ended = ends.sort(compareEvents).at(-1);
    return {
      session,
      plan: first.of?.plan ?? "",
      at: first.at,
      n: first.n,
      ...(devices > 1 ? { devices } : {}),
      started: words.some(({ event }) => event.kind === "session-started"),
      ...(ended === undefined ? {} : { ended: { early: ended.data.early } }),
      slots: slotsOf(words),
    };
  });
}

function slotsOf(words: readonly Standing[]): readonly SlotRecord[] {
  const bySlot = new Map<SlotKey, StaveEvent[]>();
  for (const { event } of words) {
    const slot = event.of?.slot;
    if (slot === undefined) continue;
    const known = bySlot.get(slot);
    if (known === undefined) bySlot.set(slot, [event]);
    else known.push(event);
  }
  return [...bySlot].map(([slot, events]): SlotRecord => {
    const last = new Map<number, StaveEvent>();
    for (const event of [...events].sort(compareEvents)) {
      if ((is(event, "set-done") || is(event, "set-left-out")) && event.of?.set !== undefined)
        last.set(event.of.set, event);
    }
    const inOrder = [...last].sort(([a], [b]) => a - b);
    return {
      slot,
      sets: inOrder.flatMap(([set, event]) => (is(event, "set-done") ? [setOf(set, event.data)] : [])),
      leftOut: inOrder.flatMap(([set, event]) => (is(event, "set-left-out") ? [set] : [])),
      swaps: events.filter((event) => is(event, "swapped")).map(({ data }) => data),
    };
  });
}

function setOf(
  set: number,
  { exercise, reps, holdS, load, pulledBy, reserve, machine, technique }: SetDone,
): SetRecord {
  const [readReps, readHold] = [readingOf(reps), readingOf(holdS)];
  return {
    set,
    exercise,
    ...(readReps === undefined ? {} : { reps: readReps }),
    ...(readHold === undefined ? {} : { holdS: readHold }),
    ...(load === "as asked" ? {} : { load }),
    ...(pulledBy === undefined ? {} : { pulledBy }),
    ...(reserve === "not said" ? {} : { reserve }),
    ...(machine === undefined ? {} : { machine }),
    ...(technique === undefined ? {} : { technique }),
  };
}

/** @returns undefined when nobody touched the value */
function readingOf(said: SetDone["reps"]): Reading | undefined {
  if (said === undefined || said === "as asked") return undefined;
  if (typeof said === "number") return { both: said };
  const { left, right } = said;
  const read = {
    ...(typeof left === "number" ? { left } : {}),
    ...(typeof right === "number" ? { right } : {}),
  };
  return Object.keys(read).length === 0 ? undefined : read;
}

type SaidKind = "missed" | "rated" | "outside" | "next-morning" | "pressure" | "noted";

function saidOf<Kind extends SaidKind>(standing: readonly Standing[], kind: Kind): readonly Said<Kind>[] {
  return standing.flatMap(({ event, first }): Said<Kind>[] => {
    if (!is(event, kind)) return [];
    const session = event.of?.session;
    return [
      {
        id: first.id,
        ...(session === undefined ? {} : { session }),
        at: first.at,
        n: first.n,
        device: first.device,
        data: event.data as EventData[Kind],
      },
    ];
  });
}

/** @param said in order; @returns the last word on each session that is named */
function lastOfEach<Kind extends SaidKind>(said: readonly Said<Kind>[]): readonly Said<Kind>[] {
  const last = new Map(said.map((one) => [one.session, one]));
  return said.filter((one) => one.session !== undefined && last.get(one.session) === one);
}

/** @param standing in order */
function runsOf(standing: readonly Standing[]): readonly RunRecord[] {
  const runs = new Map<string, RunRecord>();
  for (const { event, first } of standing) {
    const { session, slot } = event.of ?? {};
    if (!is(event, "ran") || session === undefined || slot === undefined) continue;
    runs.set(`${session}\n${slot}`, { session, slot, ...event.data, at: first.at, n: first.n });
  }
  return [...runs.values()].sort((a, b) => a.n - b.n);
}

function hurtOf({ event, first }: Standing): readonly HurtRecord[] {
  if (!is(event, "hurt")) return [];
  const { of, data } = event;
  return [
    {
      id: first.id,
      ...(of === undefined ? {} : { session: of.session }),
      ...(of?.slot === undefined ? {} : { slot: of.slot }),
      ...(of?.set === undefined ? {} : { set: of.set }),
      where: data.where,
      howMuch: data.howMuch,
      at: first.at,
      n: first.n,
      device: first.device,
    },
  ];
}

/** @param events decisions, in order */
function decisionsOf(events: readonly StaveEvent[]): readonly Decided[] {
  const undone = new Set(events.filter((event) => is(event, "undone")).map(({ data }) => data.decision));
  const standing = events.filter((event) => !is(event, "undone") && !undone.has(event.id)).map(decidedOf);
  const lastOn = new Map(standing.map((one) => [one.proposal?.proposal ?? one.id, one]));
  return standing.filter((one) => lastOn.get(one.proposal?.proposal ?? one.id) === one);
}

function decidedOf(event: StaveEvent): Decided {
  const { id, n, at } = event;
  const kind = event.kind as Exclude<DecisionKind, "undone">;
  if (is(event, "pinned")) {
    const { by, patch, cut = {} } = event.data;
    return { id, n, at, by, kind, patch, cut };
  }
  const { by, ...said } = (event as StaveEvent<"accepted">).data;
  const { proposal, patch, evidence, cut, engine } = said;
  const answered = { id, n, at, by, kind, cut, proposal: { proposal, patch, evidence, cut, engine } };
  if (is(event, "changed")) return { ...answered, patch: event.data.instead };
  return kind === "accepted" ? { ...answered, patch } : answered;
}
