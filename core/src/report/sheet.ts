import { type Day, printDay } from "../day.ts";
import {
  type Catalogue,
  type Exercise,
  type Person,
  type Place,
  type Plan,
  type PlanSession,
  type PlanSlot,
  type Programme,
  printDose,
  printSeconds,
  type Reason,
  slotsOf,
} from "../model/index.ts";
import { mayPrint } from "../offer/index.ts";
import { en, type Messages, printDate, printLoad } from "../text/index.ts";
import type { MassUnit } from "../units.ts";
import { type LoadLine, loadLine } from "./load-line.ts";
import { nameOnSheet } from "./who.ts";

/** Most weeks side by side on one page. */
const MOST_COLUMNS = 4;

export interface SheetCell {
  /** Only where it is not the dose of the first column. */
  readonly dose: string | null;
  readonly load: LoadLine | null;
  readonly boxes: number;
  /** Whether a box is parted for left and right. */
  readonly split: boolean;
}

export interface SheetRow {
  readonly name: string;
  readonly dose: string;
  readonly note: string | null;
  /** Where the row stands in a pair or round. */
  readonly turn: "alone" | "first" | "middle" | "last";
  readonly cells: readonly SheetCell[];
}

export interface SheetPage {
  readonly title: string;
  readonly left: string;
  readonly right: string;
  readonly movement: string;
  readonly weeks: readonly { readonly label: string; readonly date: string }[];
  readonly rows: readonly SheetRow[];
  readonly foot: readonly (readonly [head: string, text: string])[];
}

/** A person's sheet as data; the layout only draws it. */
export interface Sheet {
  readonly lang: string;
  readonly paper: "a4" | "us-letter";
  readonly title: string;
  readonly words: { readonly load: string };
  readonly pages: readonly SheetPage[];
}

export interface SheetInput {
  readonly plan: Plan;
  readonly programme: Programme;
  readonly person: Person;
  readonly place: Place;
  readonly catalogue: Catalogue;
  readonly paper: Sheet["paper"];
  readonly on: Day;
}

export type SheetAnswer =
  | { readonly ok: true; readonly sheet: Sheet }
  | { readonly ok: false; readonly reason: Reason };

/** One session in the weeks that stand side by side; a week without it has no column entry. */
interface Column {
  readonly week: number;
  readonly light: boolean;
  readonly session: PlanSession;
}

function exerciseOf(catalogue: Catalogue, id: string): Exercise {
  const exercise = catalogue.exercises.get(id);
  if (exercise === undefined) throw new Error(`A plan has ${id}, which the catalogue does not know`);
  return exercise;
}

function slotIn(session: PlanSession, key: string): PlanSlot | undefined {
  return session.blocks.flatMap((block) => block.slots).find((slot) => slot.key === key);
}

function cellOf(
  exercise: Exercise,
  slot: PlanSlot | undefined,
  first: string,
  units: MassUnit,
  words: Messages,
): SheetCell {
  if (slot === undefined) return { dose: null, load: null, boxes: 0, split: false };
  const dose = printDose(slot.dose);
  return {
    dose: dose === first ? null : dose,
    load: loadLine(exercise, slot, units, words),
    boxes: slot.dose.sets.length,
    split: slot.side === undefined && slot.dose.sets.some((set) => set.eachSide),
  };
}

function workRows(
  columns: readonly Column[],
  catalogue: Catalogue,
  units: MassUnit,
  words: Messages,
): readonly SheetRow[] {
  return columns[0]!.session.blocks.flatMap(({ kind, restS, slots }) =>
    slots.map((slot, index): SheetRow => {
      const exercise = exerciseOf(catalogue, slot.exercise);
      const first = printDose(slot.dose);
      const alone = kind === "straight";
      const inTurn =
        alone || index > 0
          ? []
          : [restS === undefined ? words.sheet.inTurn : words.sheet.firstThen(printSeconds(restS))];
      const side = slot.side === undefined ? [] : [words.sheet.oneSide(slot.side)];
      return {
        name: exercise.name,
        dose: [first, ...side, ...inTurn].join("; "),
        note: exercise.cues[0],
        turn: alone ? "alone" : index === 0 ? "first" : index === slots.length - 1 ? "last" : "middle",
        cells: columns.map(({ session }) => cellOf(exercise, slotIn(session, slot.key), first, units, words)),
      };
    }),
  );
}

function plainRow(name: string, dose: string, note: string | null, columns: readonly Column[]): SheetRow {
  const empty: SheetCell = { dose: null, load: null, boxes: 0, split: false };
  return { name, dose, note, turn: "alone", cells: columns.map(() => empty) };
}

/** Easy work first, then a line for the lighter sets that lead up to a movement. */
function warmUpRows(columns: readonly Column[], catalogue: Catalogue, words: Messages): readonly SheetRow[] {
  const { warmup } = columns[0]!.session;
  const easy = warmup.filter((item) => item.for === undefined);
  const leads = new Map<string, typeof warmup>();
  for (const item of warmup)
    if (item.for !== undefined) leads.set(item.exercise, [...(leads.get(item.exercise) ?? []), item]);
  const lines = [...leads].map(([id, items]) => {
    const { name } = exerciseOf(catalogue, id);
    const loads = items.flatMap((item) => (item.load === undefined ? [] : [printLoad(item.load)]));
    const sets = items.reduce((sum, item) => sum + item.dose.sets.length, 0);
    return loads.length > 0
      ? words.sheet.lighter(words.print.listed(loads), name)
      : words.sheet.lighterUnsaid(sets, name);
  });
  if (easy.length === 0 && lines.length === 0) return [];
  const easyText = easy
    .map((item) => `${exerciseOf(catalogue, item.exercise).name}, ${printDose(item.dose)}`)
    .join("; ");
  return [plainRow(words.sheet.warmUp, easyText, [words.sheet.efforts.easy, ...lines].join(" "), columns)];
}

function openRows(columns: readonly Column[], programme: Programme, words: Messages): readonly SheetRow[] {
  const sessions = programme.phases.flatMap((phase) => phase.sessions);
  const slots = sessions.flatMap(({ work }) => work.flatMap(slotsOf));
  return columns[0]!.session.open.map(({ key }) => {
    const pattern = slots.find(({ slot }) => slot === key)?.pattern;
    const name = pattern === undefined ? key : words.words.patterns[pattern];
    return plainRow(words.sheet.openName(name), words.sheet.open, null, columns);
  });
}

function pageOf(input: SheetInput, columns: readonly Column[], words: Messages): SheetPage {
  const { person, place, programme, catalogue } = input;
  const { session } = columns[0]!;
  const minutes = {
    low: Math.min(...columns.map((each) => each.session.minutes.low)),
    high: Math.max(...columns.map((each) => each.session.minutes.high)),
  };
  const conditioning = session.conditioning.map((item) =>
    plainRow(
      exerciseOf(catalogue, item.exercise).name,
      printDose(item.dose),
      words.sheet.efforts[item.effort],
      columns,
    ),
  );
  const screened =
    person.screening === undefined ? [] : [words.sheet.screened(printDate(printDay(person.screening.on)))];
  const { stop, write, first } = words.sheet;
  return {
    title: words.sheet.session(session.title),
    left: [
      nameOnSheet(person.name),
      `${programme.title}, ${words.sheet.weeks(columns[0]!.week, columns.at(-1)!.week)}`,
      place.name,
    ].join(" · "),
    right: [words.sheet.minutes(minutes.low, minutes.high), ...screened].join(" · "),
    movement: words.sheet.movement,
    weeks: columns.map(({ week, light }) => ({ label: words.sheet.week(week, light), date: words.sheet.date })),
    rows: [
      ...warmUpRows(columns, catalogue, words),
      ...workRows(columns, catalogue, person.units, words),
      ...openRows(columns, programme, words),
      ...conditioning,
    ],
    foot: [stop, write, first].map(({ head, text }) => [head, text] as const),
  };
}

/**
 * A person's sheet for the firm phase of their plan: a page per session, up to four weeks side by side, boxes for a
 * pencil.
 *
 * It holds no reason, statement, limit or grade: it lies about in a room. Without a dated screening outcome that stands
 * there is no sheet.
 *
 * @example
 * sheetFor({ plan, programme, person, place, catalogue, paper: "a4", on }) //=> { ok: true, sheet }
 */
export function sheetFor(input: SheetInput, words: Messages = en): SheetAnswer {
  const { plan, programme, person, on, paper } = input;
  const print = mayPrint(person, on);
  if (!print.ok) return { ok: false, reason: print.reason };
  const phase = plan.phases.find(({ key }) => key === plan.firmTo.phase)!;
  const keys = phase.weeks[0]!.sessions.map(({ key }) => key);
  const pages = keys.flatMap((key) => {
    const columns = phase.weeks.map(({ week, light, sessions }) => ({
      week,
      light,
      session: sessions.find((each) => each.key === key)!,
    }));
    const parts = Array.from({ length: Math.ceil(columns.length / MOST_COLUMNS) }, (_, part) =>
      columns.slice(part * MOST_COLUMNS, (part + 1) * MOST_COLUMNS),
    );
    return parts.map((part) => pageOf(input, part, words));
  });
  const title = words.sheet.documentTitle(nameOnSheet(person.name), programme.title);
  return { ok: true, sheet: { lang: "en", paper, title, words: { load: words.sheet.load }, pages } };
}
