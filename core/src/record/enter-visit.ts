import type { Day } from "../day.ts";
import { loadAsked, runsIn } from "../measures/index.ts";
import {
  type Catalogue,
  type EventOf,
  type Exercise,
  type NumberCell,
  type PlanSlot,
  readWrittenResult,
  type SetDone,
} from "../model/index.ts";
import {
  readBecause,
  readEffort,
  readEnded,
  readMinutes,
  readPain,
  readReserves,
  readRunEnd,
  readSwapCause,
  readTechnique,
} from "./read-cells.ts";
import { readLoadsCell } from "./read-load.ts";
import { readAskedCell, readResultCell, type SetRead } from "./read-result.ts";
import type { RecordOptions, RecordPerson } from "./record-input.ts";
import type { RowNotes } from "./row-notes.ts";
import type { Scribe } from "./scribe.ts";
import { ask, repair, taken } from "./taken.ts";
import { type PlannedDay, slotFor } from "./visit.ts";

/** A row of a visit, with what was found of it so far. */
export interface VisitRow {
  readonly notes: RowNotes;
  readonly movement?: Exercise;
  readonly slot?: string;
  /** Its cell of loads, as read beside its column. */
  readonly load: NumberCell;
}

export interface VisitInput {
  readonly of: RecordPerson;
  readonly planned: PlannedDay;
  readonly day: Day;
  /** Epoch milliseconds at which it began. */
  readonly at: number;
  readonly rows: readonly VisitRow[];
  readonly catalogue: Catalogue;
  readonly options: RecordOptions;
  /** Machines that this person's record names; those that are named here are added. */
  readonly machines: Set<string>;
}

/** What hurt in a visit, by the id of its event. */
export interface HurtSaid {
  readonly id: string;
  readonly day: Day;
}

/** A set takes about so long; only the order of the instants matters. */
const SET_MS = 3 * 60_000;
const LONGEST = 200;

/** Sets of one slot while rows add to them: left and right may come from two rows. */
interface SetDraft {
  readonly exercise: string;
  readonly rows: RowNotes[];
  said: Omit<SetDone, "exercise" | "reps" | "holdS">;
  left?: SetRead;
  right?: SetRead;
  both?: SetRead;
}

/** Writes all rows of one session on one day. @returns what hurt */
export function enterVisit(input: VisitInput, scribe: Scribe): readonly HurtSaid[] {
  const { of, planned, at, rows } = input;
  const { occurrence } = planned;
  const session: EventOf = { plan: of.plan.id, session: occurrence.id };
  const working = rows.filter(({ movement, slot }) => movement !== undefined || slot !== undefined);
  const hurts: HurtSaid[] = [];
  const used = new Set<string>();
  const runs = runsIn(occurrence.session);
  const drafts = new Map<string, SetDraft[]>();
  const isStarted = of.record.sessions.some((one) => one.session === occurrence.id && one.started);
  if (working.length > 0 && (!isStarted || input.options.undo === true))
    scribe.write("session-started", {}, at, session, [working[0]!.notes]);
  for (const row of working) {
    const slot = slotFor(occurrence, { ...idOf(row), ...slotOf(row) }, used);
    if (slot === undefined) {
      row.notes.ask(
        row.slot === undefined ? "movement" : "slot",
        row.slot === undefined ? "record/not-in-session" : "record/slot-gone",
        {
          allowed: occurrence.session.blocks
            .flatMap(({ slots }) => slots.map(({ key, exercise }) => `${key} (${exercise})`))
            .concat(runs.map(({ slot: { key, exercise } }) => `${key} (${exercise})`))
            .join(", "),
        },
      );
      continue;
    }
    used.add(slot.key);
    const run = runs.find((each) => each.slot.key === slot.key);
    if (run === undefined) enterRow(input, row, slot, session, drafts, scribe);
    else enterRun(input, row, run, session, scribe);
    const hurt = row.notes.take("pain", readPain(row.notes.text("pain"), row.notes.text("where")));
    if (hurt !== undefined) {
      const set = Math.max(0, (drafts.get(slot.key)?.length ?? slot.dose.sets.length) - 1);
      const id = scribe.write("hurt", hurt, at + SET_MS, { ...session, slot: slot.key, set }, [row.notes]);
      hurts.push({ id, day: input.day });
    }
  }
  let clock = at;
  for (const [slot, sets] of drafts)
    for (const [set, draft] of sets.entries()) {
      clock += SET_MS;
      if (draft !== undefined) scribe.write("set-done", doneOf(draft), clock, { ...session, slot, set }, draft.rows);
    }
  enterWhole(input, session, clock, scribe);
  return hurts;
}

function idOf({ movement }: VisitRow) {
  return movement === undefined ? {} : { movement: movement.id };
}

function slotOf({ slot }: VisitRow) {
  return slot === undefined ? {} : { slot };
}

/** How a run of its level ended; one that was left out says nothing of the level. */
function enterRun(
  { at }: VisitInput,
  { notes }: VisitRow,
  { slot, level }: ReturnType<typeof runsIn>[number],
  session: EventOf,
  scribe: Scribe,
): void {
  const text = notes.text("result");
  if (text === "" && notes.text("pain") === "") notes.ask("result", "record/nothing-said");
  if (text === "" || readWrittenResult(text).kind === "not done") return;
  const end = notes.take("result", readRunEnd(text));
  if (end !== undefined) scribe.write("ran", { level, end }, at, { ...session, slot: slot.key }, [notes]);
}

/** One row of a movement: its sets, or that they were left out. */
function enterRow(
  { of, at, catalogue, options, machines }: VisitInput,
  row: VisitRow,
  slot: PlanSlot,
  session: EventOf,
  drafts: Map<string, SetDraft[]>,
  scribe: Scribe,
): void {
  const { notes } = row;
  const exercise = row.movement ?? catalogue.exercises.get(slot.exercise)!;
  const side = notes.take("side", sideIn(notes.text("side"), exercise));
  const text = notes.text("result");
  if (text === "") {
    if (notes.text("pain") === "") notes.ask("result", "record/nothing-said");
    return;
  }
  const result = notes.take("result", readResultCell(text, exercise, side, slot.dose.sets.length));
  if (result?.kind === "not done") {
    const because = notes.take("because", readBecause(notes.text("because"))) ?? result.because;
    for (const set of slot.dose.sets.keys())
      scribe.write("set-left-out", because === undefined ? {} : { because }, at, { ...session, slot: slot.key, set }, [
        notes,
      ]);
    return;
  }
  const machine = notes.text("machine");
  const loads = notes.take(
    "load",
    readLoadsCell(
      notes.text("load"),
      row.load,
      loadContext(of, exercise, slot, machine, options),
      result?.kind === "sets" ? result.sets.length : 1,
    ),
  );
  const reserves = notes.take("reserve", readReserves(notes.text("reserve"))) ?? [];
  const technique = notes.take("technique", readTechnique(notes.text("technique")));
  const asked = notes.text("asked") === "" ? undefined : notes.take("asked", readAskedCell(notes.text("asked")));
  const first = notes.take("set", setNumber(notes.text("set")));
  if (exercise.id !== slot.exercise) {
    const because = notes.take("because", readSwapCause(notes.text("because"))) ?? "not said";
    notes.repair("movement", { code: "record/instead", data: { read: exercise.id, from: slot.exercise } });
    scribe.write("swapped", { from: slot.exercise, to: exercise.id, because }, at, { ...session, slot: slot.key }, [
      notes,
    ]);
  }
  if (machine !== "" && !machines.has(machine)) {
    notes.repair("machine", { code: "record/new-machine", data: {} });
    machines.add(machine);
  }
  if (result === undefined || loads === undefined) return;
  const written = [asked === undefined ? "" : `${asked}:`, notes.text("load"), text]
    .filter((each) => each !== "")
    .join(" ");
  const sets = drafts.get(slot.key) ?? [];
  drafts.set(slot.key, sets);
  const start = first ?? nextOf(sets, side);
  for (const [i, set] of result.sets.entries()) {
    const reserve = reserves[Math.min(i, reserves.length - 1)];
    if (set.allOut && reserve === undefined && i === 0) notes.repair("result", repair("record/all-out", text));
    const draft: SetDraft = sets[start + i] ?? {
      exercise: exercise.id,
      rows: [],
      said: { load: "as asked", reserve: "not said" },
    };
    sets[start + i] = draft;
    const parts = side !== undefined ? [side] : result.eachSide ? (["left", "right"] as const) : (["both"] as const);
    if (parts.some((part) => draft[part] !== undefined)) notes.ask("set", "record/set-number");
    draft.rows.push(notes);
    for (const part of parts) draft[part] = set;
    draft.said = {
      ...loads[Math.min(i, loads.length - 1)]!,
      reserve: reserve ?? (set.allOut ? 0 : "not said"),
      ...(machine === "" ? {} : { machine }),
      ...(technique === undefined ? {} : { technique }),
      written: written.slice(0, LONGEST),
    };
  }
}

function nextOf(sets: readonly (SetDraft | undefined)[], side: "left" | "right" | undefined): number {
  const at = sets.findLastIndex((draft) => draft !== undefined && (side === undefined || draft[side] !== undefined));
  return at + 1;
}

function loadContext(
  of: RecordPerson,
  exercise: Exercise,
  slot: PlanSlot,
  machine: string,
  { unit, per }: RecordOptions,
) {
  const asked = exercise.id === slot.exercise ? loadAsked(slot, 0) : undefined;
  return {
    exercise,
    place: of.place,
    massKnown: of.person.mass !== undefined,
    ...(unit === undefined ? {} : { unit }),
    ...(per === undefined ? {} : { per }),
    ...(machine === "" ? {} : { machine }),
    ...(asked === undefined ? {} : { asked }),
  };
}

function sideIn(text: string, { eachSide }: Exercise) {
  const said = { l: "left", left: "left", links: "left", r: "right", right: "right", rechts: "right" } as const;
  if (text === "") return taken(undefined);
  const side = said[text.toLowerCase() as keyof typeof said];
  return side === undefined || !eachSide ? ask("record/side", { allowed: eachSide ? "left, right" : "" }) : taken(side);
}

/** @returns 0 = first */
function setNumber(text: string) {
  if (text === "") return taken(undefined);
  return /^([1-9]|1\d|20)$/.test(text) ? taken(Number(text) - 1) : ask("record/set-number", { allowed: "1 to 20" });
}

function doneOf({ exercise, said, both, left, right }: SetDraft): SetDone {
  const eachSide = left !== undefined || right !== undefined;
  const amount = (of: "reps" | "holdS") => {
    if (!eachSide) return both?.[of];
    const [one, other] = [left?.[of], right?.[of]];
    if (one === undefined && other === undefined) return undefined;
    return { ...(one === undefined ? {} : { left: one }), ...(other === undefined ? {} : { right: other }) };
  };
  const [reps, holdS] = [amount("reps"), amount("holdS")];
  return { exercise, ...(reps === undefined ? {} : { reps }), ...(holdS === undefined ? {} : { holdS }), ...said };
}

/** What is said of the whole session: its effort, and whether it ended early. */
function enterWhole({ rows, planned }: VisitInput, session: EventOf, at: number, scribe: Scribe): void {
  let isRated = false;
  for (const { notes, movement, slot } of rows) {
    if (notes.text("outside") !== "") continue;
    const effort = notes.take("effort", readEffort(notes.text("effort")));
    const minutes = notes.take("minutes", readMinutes(notes.text("minutes")));
    if (effort !== undefined && minutes === undefined && notes.text("minutes") === "")
      notes.ask("minutes", "record/minutes", { maybe: `${planned.occurrence.session.minutes.high}` });
    if (minutes !== undefined && !isRated) {
      scribe.write("rated", { effort: effort ?? "not said", minutes }, at, session, [notes]);
      isRated = true;
    }
    const early = notes.take("ended", readEnded(notes.text("ended")));
    if (early !== undefined) scribe.write("session-ended", { early }, at, session, [notes]);
    const said = effort !== undefined || minutes !== undefined || early !== undefined || notes.problems.length > 0;
    if (movement === undefined && slot === undefined && !said && notes.text("result") === "")
      notes.ask("result", "record/nothing-said");
  }
}
