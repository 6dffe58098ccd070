import type { PersonOutput } from "../api/index.ts";
import { addDays, type Day, printDay } from "../day.ts";
import {
  adherence,
  foldRecord,
  type PressureSeries,
  pressureSeries,
  type RecordFold,
  type SetRecord,
} from "../measures/index.ts";
import { type Json, nameOnSheet, type Reason, type Stroke } from "../model/index.ts";
import { mayPrint } from "../offer/index.ts";
import { type PlannedPerson, personPage, sessionDays } from "../revise/index.ts";
import { drawStrokes, PRINTED, svgOf } from "../sign/index.ts";
import { en, type Messages, namesFrom, sayReason } from "../text/index.ts";
import { drawPressure } from "./pressure-picture.ts";
import type { Report, ReportKind, ReportPart } from "./report-types.ts";

export interface ReportInput {
  readonly person: PlannedPerson;
  readonly kind: ReportKind;
  readonly paper: Report["paper"];
  /** Who wrote it. */
  readonly coach: string;
}

export type ReportAnswer =
  | { readonly ok: true; readonly report: Report }
  | { readonly ok: false; readonly reason: Reason };

/** Sessions drawn in a strip, movements in a report, and lines of its tables, so that it stays short. */
const MOST_SESSIONS = 8;
const MOST_MOVEMENTS = { person: 8, clinician: 0, coach: 24 };
const MOST_ROWS = 8;
const STRIP_HEIGHT = 36;
/** An answer so many days after the next morning still tells it. Ours, as the next dose reads it. */
const LATE_AFTER = 1;

/**
 * What a record tells one of three readers: the person, a clinician in one page, the coach.
 *
 * The person's own report is withheld where no screening outcome stands, as every print for a person is. A clinician
 * gets what bears on health and training and nothing else, observations apart from estimates, and no claim of a cause.
 */
export function reportFor({ person, kind, paper, coach }: ReportInput, words: Messages = en): ReportAnswer {
  if (kind === "person") {
    const print = mayPrint(person.person, person.today);
    if (!print.ok) return { ok: false, reason: print.reason };
  }
  const page = personPage(person);
  const record = foldRecord(person.events);
  const { name: full, born } = person.person;
  const name = kind === "person" ? nameOnSheet(person.person) : full;
  const say = words.report;
  const date = words.sheet.shortDay;
  const all: Facts = { person, page, record, words, kind };
  const parts: Readonly<Record<ReportKind, () => readonly ReportPart[]>> = {
    person: () => [donePart(all), movementsPart(all)],
    clinician: () => [
      trainingPart(all),
      painPart(all),
      ...pressureParts(all),
      limitsPart(all),
      part(say.observed, say.observedLines),
    ],
    coach: () => [notesPart(all), figuresPart(all), movementsPart(all), painPart(all), decisionsPart(all)],
  };
  return {
    ok: true,
    report: {
      kind,
      lang: "en",
      paper,
      title: say.titles[kind](name),
      name,
      about: [
        person.programme.title,
        say.days(date(printDay(person.on)), date(printDay(person.today))),
        ...(kind === "clinician" ? [say.born(printDay(born))] : []),
        say.by(coach),
      ],
      parts: parts[kind](),
      foot: kind === "clinician" ? [say.caution] : [say.legend, say.caution],
    },
  };
}

interface Facts {
  readonly person: PlannedPerson;
  readonly page: PersonOutput;
  readonly record: RecordFold;
  readonly words: Messages;
  readonly kind: ReportKind;
}

function part(heading: string, lines: readonly string[], more: Partial<ReportPart> = {}): ReportPart {
  return { heading, lines, strips: [], picture: null, table: null, ...more };
}

function sayAll({ words, person }: Facts, reasons: readonly Reason[]): readonly string[] {
  const names = namesFrom(person.catalogue);
  return reasons.map((reason) => sayReason(reason, names, words));
}

/** All that was asked since the first day, and what of it was done. */
function askedSince({ person, record }: Facts): readonly Reason[] {
  const { on, today } = person;
  const { sets, missed, ...counts } = adherence(sessionDays(person), record, on, today);
  if (counts.asked === 0) return [];
  const data = { ...counts, setsAsked: sets.asked, setsDone: sets.done, missed: missed as Json, days: today - on };
  return [{ code: "watch/adherence", data }];
}

function donePart(facts: Facts): ReportPart {
  return part(facts.words.report.done, sayAll(facts, askedSince(facts)));
}

function notesPart(facts: Facts): ReportPart {
  const { calls, nothingCalls } = facts.words.report;
  const said = sayAll(facts, [...facts.page.waiting.map(({ title }) => title), ...facts.page.notes]);
  return part(calls, said.length === 0 ? [nothingCalls] : said);
}

function figuresPart(facts: Facts): ReportPart {
  const said = sayAll(facts, [...askedSince(facts), ...facts.page.figures]);
  return part(facts.words.report.figures, [...new Set(said)]);
}

/** Everything that was recorded of one movement, whatever slots it stood in. */
interface Movement {
  readonly name: string;
  readonly slots: readonly string[];
  /** Oldest first. */
  readonly past: PersonOutput["slots"][number]["past"];
  readonly capacity?: PersonOutput["slots"][number]["capacity"];
}

/** @returns movements with a record, the one done last first */
function movementsOf({ page, person }: Facts): readonly Movement[] {
  const names = namesFrom(person.catalogue);
  const found = new Map<string, Movement>();
  for (const { slot, past, capacity } of page.slots) {
    if (past.length === 0) continue;
    const exercise = exerciseIn(page, slot) ?? slot;
    const known = found.get(exercise);
    found.set(exercise, {
      name: names.exercise(exercise),
      slots: [...(known?.slots ?? []), slot],
      past: [...(known?.past ?? []), ...past].sort((one, other) => (one.day < other.day ? -1 : 1)),
      ...(capacity === undefined ? {} : { capacity }),
    });
  }
  const last = ({ past }: Movement) => past.at(-1)!.day;
  return [...found.values()].sort((one, other) => (last(one) > last(other) ? -1 : last(one) < last(other) ? 1 : 0));
}

function movementsPart(facts: Facts): ReportPart {
  const shown = movementsOf(facts).slice(0, MOST_MOVEMENTS[facts.kind]);
  return part(facts.words.report.movements, [], { strips: shown.map((movement) => stripOf(facts, movement)) });
}

function stripOf({ person, record, words }: Facts, { name, slots, past, capacity }: Movement) {
  const shown = past.slice(-MOST_SESSIONS);
  const drawing = drawStrokes(
    shown.map(({ strokes }) => strokes),
    { height: STRIP_HEIGHT, scale: "all" },
  );
  const say = words.report;
  const sets = (day: string, strokes: readonly Stroke[]) =>
    say.session(
      words.sheet.shortDay(day),
      strokes.map((one) => doneOf(one, words)).join("/"),
      loadOn(record, slots, day, person, words),
    );
  const [first, last] = [past[0]!, past.at(-1)!];
  const told = say.firstAndLast(sets(first.day, first.strokes), sets(last.day, last.strokes));
  const { load } = words.print;
  const lifts =
    capacity === undefined
      ? []
      : [say.once(load(capacity.value), load(capacity.low), load(capacity.high), capacity.sessions)];
  return {
    name,
    words: [told, ...lifts].join(" "),
    svg: svgOf(drawing, PRINTED),
    label: `${name}, ${say.strip(shown.length)}`,
  };
}

function exerciseIn({ plan }: PersonOutput, slot: string): string | undefined {
  return plan.phases
    .flatMap(({ weeks }) =>
      weeks.flatMap(({ sessions }) => sessions.flatMap(({ blocks }) => blocks.flatMap((one) => one.slots))),
    )
    .find(({ key }) => key === slot)?.exercise;
}

/** @example doneOf(stroke) //=> "10", "8+7" for two sides, "–" for a set that was left out */
function doneOf({ state, done, hold }: Stroke, words: Messages): string {
  if (state === "missed") return "–";
  const unit = hold ? " s" : "";
  if (done === undefined) return words.report.unsaid;
  if ("left" in done || "right" in done) {
    const { left, right } = done as { readonly left?: number; readonly right?: number };
    return left === undefined && right === undefined ? words.report.unsaid : `${left ?? "?"}+${right ?? "?"}${unit}`;
  }
  const { both } = done as { readonly both?: number };
  return both === undefined ? words.report.unsaid : `${both}${unit}`;
}

/** The load of the first set in one of some slots on a day, as it was entered. */
function loadOn(
  { sessions }: RecordFold,
  among: readonly string[],
  on: string,
  person: PlannedPerson,
  words: Messages,
): string | undefined {
  const sets = sessions
    .filter(({ at }) => printDay(person.dayOf(at)) === on)
    .flatMap(({ slots }) =>
      slots.filter((each) => among.includes(each.slot)).flatMap((each): readonly SetRecord[] => each.sets),
    );
  const load = sets.find((set) => typeof set.load === "object")?.load;
  return typeof load === "object" ? words.print.load(load) : undefined;
}

function trainingPart(facts: Facts): ReportPart {
  const { page, person, words } = facts;
  const names = namesFrom(person.catalogue);
  const planned = [...new Set(page.slots.flatMap(({ slot }) => exerciseIn(page, slot) ?? []))].map((id) =>
    names.exercise(id),
  );
  return part(words.report.training, [...sayAll(facts, askedSince(facts)), words.report.planned(planned)]);
}

function painPart({ record, person, words, kind }: Facts): ReportPart {
  const say = words.report;
  const most = kind === "clinician" ? MOST_ROWS : 2 * MOST_ROWS;
  const rows = record.hurts.slice(-most).map((hurt) => {
    const on = person.dayOf(hurt.at);
    const answer = record.mornings.filter(({ data }) => data.hurt === hurt.id).at(-1);
    const late = answer === undefined ? 0 : person.dayOf(answer.at) - addDays(on, 1);
    const morning =
      answer === undefined
        ? say.notAsked
        : late > LATE_AFTER
          ? say.late(answer.data.howMuch, late)
          : String(answer.data.howMuch);
    return [words.sheet.shortDay(printDay(on)), hurt.where, String(hurt.howMuch), morning];
  });
  return rows.length === 0
    ? part(say.pain, [say.noPain])
    : part(say.pain, [], { table: { columns: say.painColumns, rows } });
}

function pressureParts(facts: Facts): readonly ReportPart[] {
  return pressureSeries(facts.record, facts.person.dayOf).map((series) => pressurePart(facts, series));
}

function pressurePart({ record, person, words }: Facts, { when, readings, means }: PressureSeries): ReportPart {
  const say = words.report;
  const day = (on: Day) => words.sheet.shortDay(printDay(on));
  const changes = record.notes.filter(({ data }) => data.about === "medicines");
  const shown = readings.slice(-MOST_ROWS);
  const drawing = drawPressure(
    readings,
    changes.map(({ at }) => person.dayOf(at)),
    say.medicinesMark,
  );
  return part(
    say.pressure[when],
    [
      means === undefined ? say.fewReadings(readings.length) : say.means(means.first, means.last),
      ...changes.map(({ at, data }) => say.medicines(day(person.dayOf(at)), data.text)),
      ...(shown.length < readings.length ? [say.shown(shown.length, readings.length)] : []),
    ],
    {
      picture: {
        svg: svgOf(drawing, PRINTED),
        label: say.pressurePicture(readings.length, day(readings[0]!.day), day(readings.at(-1)!.day)),
      },
      table: {
        columns: say.pressureColumns,
        rows: shown.map(({ day: on, systolic, diastolic }) => [day(on), String(systolic), String(diastolic)]),
      },
    },
  );
}

function limitsPart({ person, words }: Facts): ReportPart {
  const say = words.report;
  const limits = person.person.limits.filter(({ lifted }) => lifted === undefined);
  const lines = limits.slice(0, MOST_ROWS).map(({ kind, atMost, part: of, side, movement, who, from, to }) => {
    const what = [
      say.limitKinds[kind],
      ...(atMost === undefined ? [] : [words.print.load(atMost)]),
      ...(of === undefined ? [] : [of]),
      ...(side === "both" ? [] : [side]),
      ...(movement === undefined ? [] : [namesFrom(person.catalogue).exercise(movement)]),
    ].join(" ");
    return say.limit(what, who, printDay(from), printDay(to));
  });
  return part(say.limits, lines.length === 0 ? [say.noLimits] : lines);
}

function decisionsPart(facts: Facts): ReportPart {
  const { page, person, words } = facts;
  const say = words.report;
  const rows = page.decided
    .slice(0, 2 * MOST_ROWS)
    .map(({ at, title, by }) => [words.sheet.shortDay(printDay(person.dayOf(at))), sayAll(facts, [title])[0]!, by]);
  return rows.length === 0
    ? part(say.decisions, [say.noDecisions])
    : part(say.decisions, [], { table: { columns: say.decisionColumns, rows } });
}
