import { addDays, type Day } from "../day.ts";
import { runsIn, slotsIn } from "../measures/index.ts";
import {
  type DelimitedProblem,
  type NumberCell,
  nameKey,
  type Problem,
  type Reason,
  type Row,
  readDelimited,
  readNumberColumn,
  type StaveEvent,
} from "../model/index.ts";
import { COLUMNS, type Columns, isColumn, readColumns } from "./columns.ts";
import { type DateCell, readDates } from "./dates.ts";
import { enterVisit, type HurtSaid, type VisitRow } from "./enter-visit.ts";
import { readNoteLines } from "./note-lines.ts";
import {
  readBecause,
  readEffort,
  readMinutes,
  readMorning,
  readOutside,
  readPressure,
  readTime,
} from "./read-cells.ts";
import type { RecordInput, RecordPerson } from "./record-input.ts";
import { RowNotes } from "./row-notes.ts";
import { Scribe } from "./scribe.ts";
import { straighten } from "./straighten.ts";
import { placeVisit, recordedDays } from "./visit.ts";
import { dayIn, movementIn, whoIn } from "./who-did-what.ts";

/** What became of one row. */
export interface RecordRow {
  readonly line: number;
  readonly person?: string;
  /** How many events it makes, and how many of it were there already. */
  readonly fresh: number;
  readonly known: number;
  /** What was read as what. */
  readonly repairs: readonly Reason[];
  /** What is asked; nothing of the row is taken until it is answered. */
  readonly problems: readonly Problem[];
}

export interface RecordsRead {
  readonly rows: readonly RecordRow[];
  /** About the headings. */
  readonly repairs: readonly Reason[];
  /** What is new, by person. */
  readonly events: ReadonlyMap<string, readonly StaveEvent[]>;
}

/** A row with whose it is and of which day. */
interface DatedRow extends VisitRow {
  readonly of: RecordPerson;
  readonly day: Day;
  readonly time: number | undefined;
}

const LONGEST_TITLE = 80;
/** Slots that are named beside one that is not there. Ours. */
const MOST_TOLD = 12;
const NOON = 720;
/** When a morning's answer was given, where the file does not say. */
const MORNING = 480;
const MINUTE_MS = 60_000;
/** The morning after is the next one; what is said a day later still tells it. Ours, as the next dose reads it. */
const NEXT_MORNING = 1;
const LATE_AFTER = 1;

/**
 * Reads a table of records: a line for each movement that somebody did on a day, or for what else happened. What does
 * not stand there as Stave would write it is listed with what it was read as; what can be read in two ways is asked,
 * and nothing of its line is taken. The same table read again gives nothing new.
 *
 * @param text a table with headings
 */
export function readRecords(
  text: string,
  input: RecordInput,
): { readonly ok: true; readonly value: RecordsRead } | { readonly ok: false; readonly problems: readonly Problem[] } {
  const { file } = input;
  const written = readDelimited(text, isColumn);
  const named = written.ok && written.heading.cells.some((cell) => isColumn(cell.text));
  const lines = named ? undefined : readNoteLines(text);
  const table = lines === undefined ? written : { ok: true as const, above: [], ...lines };
  const wrong = (
    code: DelimitedProblem | "record/heading-twice" | "record/no-heading",
    line: number,
    column: number,
  ): Problem => ({
    code,
    file,
    at: [],
    line,
    column,
  });
  if (!table.ok) return { ok: false, problems: [wrong(table.code, table.line, table.column)] };
  const columns = readColumns(table.heading);
  if (columns.twice.length > 0)
    return {
      ok: false,
      problems: columns.twice.map(({ cell }) => ({
        ...wrong("record/heading-twice", table.heading.line, cell.column),
        found: cell.text,
      })),
    };
  if (columns.at.size === 0)
    return {
      ok: false,
      problems: [{ ...wrong("record/no-heading", table.heading.line, 1), allowed: COLUMNS.join(", ") }],
    };
  const notes = table.rows.map((row) => new RowNotes(row, columns, file));
  const unit = input.options.unit ?? columns.unit;
  const told: RecordInput = { ...input, options: { ...input.options, ...(unit === undefined ? {} : { unit }) } };
  const dated = datedRows(straighten(notes, columns), told);
  const scribes = new Map(input.people.map((of) => [of, new Scribe(of, input.hash, input.options)]));
  for (const of of input.people) {
    const mine = dated.filter((row) => row.of === of);
    if (mine.length > 0) enterPerson(of, mine, told, scribes.get(of)!);
  }
  const entered = [...scribes].map(([of, scribe]) => ({ of, ...scribe.events() }));
  const whose = new Map(dated.map((row) => [row.notes, row.of.person.id]));
  return {
    ok: true,
    value: {
      repairs: [...titles(table.above), ...leftOut(columns)],
      rows: notes.map((row): RecordRow => {
        const { fresh, known } = entered.map(({ counts }) => counts.get(row)).find((count) => count) ?? {
          fresh: 0,
          known: 0,
        };
        const person = whose.get(row);
        const { line, repairs, problems } = row;
        return { line, ...(person === undefined ? {} : { person }), fresh, known, repairs, problems };
      }),
      events: new Map(
        entered.filter(({ events }) => events.length > 0).map(({ of, events }) => [of.person.id, events]),
      ),
    },
  };
}

function titles(above: readonly Row[]): readonly Reason[] {
  return above.map(({ cells }) => {
    const found = cells
      .map(({ text }) => text)
      .filter((text) => text !== "")
      .join(" ")
      .slice(0, LONGEST_TITLE);
    return { code: "record/title-left-out", data: { found } };
  });
}

function leftOut({ unknown }: Columns): readonly Reason[] {
  return unknown.map(({ cell, maybe }) => ({
    code: "record/column-left-out",
    data: { column: cell.text, found: cell.text, maybe },
  }));
}

function datedRows(notes: readonly RowNotes[], { people, catalogue, options }: RecordInput): readonly DatedRow[] {
  const days = readDates(
    notes.map((row) => row.text("day")),
    options.dates,
  );
  const births = readDates(
    notes.map((row) => row.text("born")),
    options.dates,
  );
  const loads = readNumberColumn(notes.map((row) => row.text("load"))).cells;
  return notes.flatMap((row, at): DatedRow[] => {
    const of = whoIn(row, people, births[at] as DateCell);
    const day = of && dayIn(row, days[at] as DateCell, of);
    const movement = movementIn(row, catalogue);
    const time = row.take("time", readTime(row.text("time")));
    if (of !== undefined && day !== undefined) readEnd(row, of, day, time);
    if (of === undefined || day === undefined || row.problems.length > 0) return [];
    const slot = row.text("slot");
    return [
      {
        notes: row,
        of,
        day,
        time,
        load: loads[at] as NumberCell,
        ...(movement === undefined ? {} : { movement }),
        ...(slot === "" ? {} : { slot }),
      },
    ];
  });
}

/** An end before the start is of the next day when the session was shorter than this. Ours, no source. */
const NIGHT_MINUTES = 360;

/** The minutes from start to end, by the clocks of the place: over midnight, and on nights on which they change. */
function readEnd(row: RowNotes, of: RecordPerson, day: Day, time: number | undefined): void {
  const end = row.take("end", readTime(row.text("end")));
  if (end === undefined) return;
  if (time === undefined) {
    row.ask("end", "record/end-alone");
    return;
  }
  const night = end < time;
  const minutes = (of.toInstant(night ? addDays(day, 1) : day, end) - of.toInstant(day, time)) / MINUTE_MS;
  const said = row.take("minutes", readMinutes(row.text("minutes")));
  if (minutes <= 0 || (night && minutes >= NIGHT_MINUTES)) row.ask("end", "record/end-before-start");
  else if (said !== undefined && said !== minutes) row.ask("end", "record/end-differs", { maybe: `${minutes}` });
  else if (said === undefined)
    row.put("minutes", `${minutes}`, { code: "record/lasted", data: { read: minutes, ...(night ? { night } : {}) } });
}

/** Everything that was said of one person, day by day. */
function enterPerson(of: RecordPerson, rows: readonly DatedRow[], input: RecordInput, scribe: Scribe): void {
  const hurts: HurtSaid[] = of.record.hurts.map(({ id, at }) => ({ id, day: of.dayOf(at) }));
  const machines = new Set(
    of.record.sessions.flatMap(({ slots }) =>
      slots.flatMap(({ sets }) => sets.flatMap(({ machine }) => machine ?? [])),
    ),
  );
  const recorded = recordedDays(of.record, of.dayOf);
  const times = of.record.sessions.map(({ session, at }) => ({ session, ...stretch(of, session, at) }));
  for (const visit of visitsOf(rows)) {
    const { day, text } = visit;
    const inside = visit.rows.filter((row) => !isAside(row, of, scribe));
    if (inside.length === 0) continue;
    const named = inside.flatMap(({ movement, slot }) =>
      movement === undefined && slot === undefined
        ? []
        : [{ ...(movement === undefined ? {} : { movement: movement.id }), ...(slot === undefined ? {} : { slot }) }],
    );
    const isKnownSlot = ({ slot }: DatedRow) => slot === undefined || of.plan.phases.length === 0 || hasSlot(of, slot);
    for (const row of inside.filter((each) => !isKnownSlot(each)))
      row.notes.ask("slot", "record/slot-gone", { allowed: slotsOf(of).slice(0, MOST_TOLD).join(", ") });
    const good = inside.filter(({ notes }) => notes.problems.length === 0);
    if (good.length === 0) continue;
    const place = placeVisit(of.days, recorded, { day, text, rows: named });
    if (place.kind !== "found") {
      for (const { notes } of good)
        if (place.kind === "none") notes.ask("session", "record/no-session");
        else notes.ask("session", "record/which-session", { maybe: place.maybe.join(", ") });
      continue;
    }
    const { planned } = place;
    const { id } = planned.occurrence;
    const at = of.toInstant(day, good.find(({ time }) => time !== undefined)?.time ?? planned.from);
    const other = times.find(
      ({ session, from, to }) => session !== id && from < at + minutesOf(planned) * MINUTE_MS && at < to,
    );
    if (other !== undefined) {
      for (const { notes } of good) notes.ask("time", "record/two-at-once", { maybe: other.session });
      continue;
    }
    times.push({ session: id, ...stretch(of, id, at) });
    if (planned.day !== day) {
      good[0]!.notes.repair("day", { code: "record/other-day", data: { read: id, planned: planned.day - day } });
    }
    const missed = good.filter((row) => isMissed(row));
    for (const { notes } of missed) {
      const because = notes.take("because", readBecause(notes.text("because") || notes.text("result")));
      scribe.write("missed", because === undefined ? {} : { because }, at, { plan: of.plan.id, session: id }, [notes]);
    }
    const { catalogue, options } = input;
    const done = good.filter((row) => !isMissed(row));
    hurts.push(...enterVisit({ of, planned, day, at, rows: done, catalogue, options, machines }, scribe));
  }
  for (const row of rows) enterMorning(row, hurts, scribe);
}

function hasSlot(of: RecordPerson, slot: string): boolean {
  return slotsOf(of).includes(slot);
}

/** The keys of all slots and runs of the plan, each once. */
function slotsOf({ days }: RecordPerson): readonly string[] {
  const slots = days.flatMap(({ occurrence: { session } }) => [
    ...slotsIn(session),
    ...runsIn(session).map((run) => run.slot),
  ]);
  return [...new Set(slots.map(({ key }) => key))];
}

function minutesOf({ occurrence }: { readonly occurrence: RecordPerson["days"][number]["occurrence"] }): number {
  return occurrence.session.minutes.high;
}

function stretch({ days }: RecordPerson, session: string, at: number) {
  const planned = days.find(({ occurrence }) => occurrence.id === session);
  return { from: at, to: at + (planned === undefined ? 0 : minutesOf(planned)) * MINUTE_MS };
}

interface Visit {
  readonly day: Day;
  readonly text: string;
  readonly rows: readonly DatedRow[];
}

/** Rows of one day and one session together; what names neither session nor movement joins the only session of its day. */
function visitsOf(rows: readonly DatedRow[]): readonly Visit[] {
  const visits = new Map<string, { day: Day; text: string; rows: DatedRow[] }>();
  for (const row of rows) {
    const text = row.notes.text("session");
    const key = `${row.day}/${nameKey(text)}`;
    const visit = visits.get(key) ?? { day: row.day, text, rows: [] };
    visits.set(key, visit);
    visit.rows.push(row);
  }
  for (const [key, visit] of [...visits]) {
    const others = [...visits.values()].filter((other) => other !== visit && other.day === visit.day);
    const joins =
      visit.text === "" && visit.rows.every(({ movement, slot }) => movement === undefined && slot === undefined);
    if (!joins || others.length !== 1) continue;
    others[0]!.rows.push(...visit.rows);
    visits.delete(key);
  }
  return [...visits.values()].sort((a, b) => a.day - b.day);
}

function isMissed({ movement, slot, notes }: DatedRow): boolean {
  const said = notes.text("result");
  return movement === undefined && slot === undefined && said !== "" && readBecause(said).ok;
}

/** Writes what belongs to no session. @returns whether that is all that the row says */
function isAside({ notes, day, time, movement, slot }: DatedRow, of: RecordPerson, scribe: Scribe): boolean {
  const at = of.toInstant(day, time ?? NOON);
  let said = false;
  const what = notes.take("outside", readOutside(notes.text("outside")));
  if (what !== undefined) {
    said = true;
    const minutes = notes.take("minutes", readMinutes(notes.text("minutes")));
    const effort = notes.take("effort", readEffort(notes.text("effort"))) ?? "not said";
    if (minutes === undefined && notes.text("minutes") === "") notes.ask("minutes", "record/minutes");
    const note = notes.text("note");
    if (minutes !== undefined)
      scribe.write("outside", { what, minutes, effort, ...(note === "" ? {} : { note }) }, at, undefined, [notes]);
  }
  const pressure = notes.take("pressure", readPressure(notes.text("pressure"), notes.text("when")));
  if (pressure !== undefined) scribe.write("pressure", pressure, at, undefined, [notes]);
  for (const about of ["medicines", "note"] as const) {
    const text = notes.text(about);
    if (text === "" || (about === "note" && what !== undefined)) continue;
    scribe.write("noted", { about: about === "note" ? "other" : about, text }, at, undefined, [notes]);
    said = true;
  }
  said ||= notes.text("pressure") !== "" || notes.text("morning") !== "";
  const working = movement !== undefined || slot !== undefined;
  return (
    said &&
    !working &&
    (what !== undefined ||
      ["result", "effort", "minutes", "ended"].every((each) => notes.text(each as "result") === ""))
  );
}

/** The answer about the latest pain before that morning. Late ones are kept, with how late. */
function enterMorning({ notes, day, time, of }: DatedRow, hurts: readonly HurtSaid[], scribe: Scribe): void {
  const howMuch = notes.take("morning", readMorning(notes.text("morning")));
  if (howMuch === undefined) return;
  const about = hurts
    .filter((hurt) => hurt.day < day)
    .sort((a, b) => a.day - b.day)
    .at(-1);
  if (about === undefined) {
    notes.ask("morning", "record/no-pain-before");
    return;
  }
  const late = day - about.day - NEXT_MORNING;
  if (late > LATE_AFTER) notes.repair("morning", { code: "record/morning-late", data: { days: late } });
  scribe.write("next-morning", { hurt: about.id, howMuch }, of.toInstant(day, time ?? MORNING), undefined, [notes]);
}
