import type { ExerciseId, Plan, PlanSession, PlanSlot, SetDose, SlotKey } from "../model/index.ts";
import type { Load } from "../units.ts";
import type { Reading, RecordFold, SessionRecord, SetRecord } from "./record.ts";

/** An occurrence of a session in a plan. */
export interface Occurrence {
  /** phase/week/session */
  readonly id: string;
  readonly phase: string;
  readonly week: number;
  readonly light: boolean;
  readonly session: PlanSession;
}

/** @returns every session of a plan, in the order of phases, weeks and sessions */
export function occurrencesOf({ phases }: Plan): readonly Occurrence[] {
  return phases.flatMap(({ key: phase, weeks }) =>
    weeks.flatMap(({ week, light, sessions }) =>
      sessions.map((session) => ({ id: `${phase}/${week}/${session.key}`, phase, week, light, session })),
    ),
  );
}

/** @returns the slots of a session that are to be done, in order */
export function slotsIn(session: PlanSession): readonly PlanSlot[] {
  return session.blocks.flatMap(({ slots }) => slots);
}

/** @returns the runs of a session as slots of their own, with their levels */
export function runsIn({ conditioning }: PlanSession): readonly { readonly slot: PlanSlot; readonly level: number }[] {
  return conditioning.flatMap(({ exercise, dose, run }) =>
    run === undefined ? [] : [{ slot: { key: run.slot, exercise, dose, why: [], offer: [] }, level: run.level }],
  );
}

/** A recorded set beside what was asked of it. */
export interface DoneSet extends SetRecord {
  /** Undefined for a set that nobody asked for. */
  readonly asked?: SetDose;
  /** What was lifted: as said, or as asked where the load was left alone; undefined when neither tells, or without load. */
  readonly lifted?: Load;
}

/** One slot in one session that was recorded. */
export interface SlotSession {
  readonly session: string;
  readonly phase: string;
  readonly week: number;
  readonly light: boolean;
  /** Epoch milliseconds of the session's first event. */
  readonly at: number;
  readonly n: number;
  readonly asked: PlanSlot;
  readonly sets: readonly DoneSet[];
  readonly leftOut: readonly number[];
  /** The session ended before its time. */
  readonly endedEarly?: boolean;
}

/** @returns the load that a plan asks for in a set, 0 = first */
export function loadAsked({ load, loads }: PlanSlot, set: number): Load | undefined {
  return loads?.[set] ?? load;
}

/** Everything that was asked and recorded, slot by slot: the training log of one person. */
export type Log = readonly SlotSession[];

/**
 * Every slot of every session that has a record, beside what was asked of it: by the revision that was on the screen
 * where that is known, else by the one that stands.
 *
 * @param plan the revision that stands, if any does; its order is the log's
 * @param revisionOf an older revision by its id
 */
export function logOf(plan: Plan | undefined, record: RecordFold, revisionOf: (id: string) => Plan | undefined): Log {
  const byRevision = new Map<string, ReadonlyMap<string, Occurrence>>();
  const occurrenceIn = (revision: string, session: string) => {
    const known = byRevision.get(revision) ?? byId(revisionOf(revision) ?? plan);
    byRevision.set(revision, known);
    return known.get(session);
  };
  const order = new Map([...byId(plan).keys()].map((id, at) => [id, at]));
  const place = (session: string) => order.get(session) ?? order.size;
  return record.sessions
    .toSorted((a, b) => place(a.session) - place(b.session))
    .flatMap((session) => {
      const occurrence = occurrenceIn(session.plan, session.session);
      if (occurrence === undefined) return [];
      return slotsIn(occurrence.session).map((asked) => beside(occurrence, session, asked));
    });
}

function byId(plan: Plan | undefined): ReadonlyMap<string, Occurrence> {
  return new Map(plan === undefined ? [] : occurrencesOf(plan).map((occurrence) => [occurrence.id, occurrence]));
}

/** A log only ever grows, and every slot of a plan asks it. */
const KNOWN = new WeakMap<
  Log,
  {
    length: number;
    slots: Map<SlotKey, SlotSession[]>;
    exercises: Map<ExerciseId, SlotSession[]>;
  }
>();

function sorted(log: Log) {
  const known = KNOWN.get(log);
  if (known?.length === log.length) return known;
  const slots = new Map<SlotKey, SlotSession[]>();
  const exercises = new Map<ExerciseId, SlotSession[]>();
  const add = <Key>(map: Map<Key, SlotSession[]>, key: Key, session: SlotSession) => {
    const all = map.get(key);
    if (all === undefined) map.set(key, [session]);
    else all.push(session);
  };
  for (const session of log) {
    add(slots, session.asked.key, session);
    for (const id of new Set(session.sets.map(({ exercise }) => exercise)))
      add(exercises, id, { ...session, sets: session.sets.filter(({ exercise }) => exercise === id) });
  }
  for (const all of exercises.values()) all.sort((a, b) => a.n - b.n);
  const found = { length: log.length, slots, exercises };
  KNOWN.set(log, found);
  return found;
}

/** @returns the sessions of one slot, in the plan's order */
export function slotHistory(log: Log, slot: SlotKey): readonly SlotSession[] {
  return sorted(log).slots.get(slot) ?? [];
}

/** @returns everything recorded of one exercise, whatever slot it stood in, in the order in which it was recorded */
export function exerciseHistory(log: Log, exercise: ExerciseId): readonly SlotSession[] {
  return sorted(log).exercises.get(exercise) ?? [];
}

function beside(occurrence: Occurrence, session: SessionRecord, asked: PlanSlot): SlotSession {
  const done = session.slots.find(({ slot }) => slot === asked.key);
  return {
    session: occurrence.id,
    phase: occurrence.phase,
    week: occurrence.week,
    light: occurrence.light,
    at: session.at,
    n: session.n,
    asked,
    sets: (done?.sets ?? []).map((set) => {
      const dose = asked.dose.sets[set.set];
      const lifted = liftedIn(set, asked);
      return { ...set, ...(dose === undefined ? {} : { asked: dose }), ...(lifted === undefined ? {} : { lifted }) };
    }),
    leftOut: done?.leftOut ?? [],
    ...(session.ended?.early === true ? { endedEarly: true } : {}),
  };
}

/** A load that was left alone is the one that was asked, as long as the form is the one that was asked. */
function liftedIn(set: SetRecord, asked: PlanSlot): Load | undefined {
  if (set.load === "none") return undefined;
  return set.load ?? (set.exercise === asked.exercise ? loadAsked(asked, set.set) : undefined);
}

/** @returns the smaller side, or the whole; undefined where nothing was read, or one side only was */
export function leastOf(reading: Reading | undefined): number | undefined {
  if (reading === undefined) return undefined;
  if ("both" in reading) return reading.both;
  const { left, right } = reading as { readonly left?: number; readonly right?: number };
  return left === undefined || right === undefined ? undefined : Math.min(left, right);
}
