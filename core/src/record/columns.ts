import { type Cell, nameKey, nearNames, type Row } from "../model/index.ts";
import type { MassUnit } from "../units.ts";

/** What a column of a record can hold. */
export const COLUMNS = [
  "day",
  "time",
  "end",
  "person",
  "born",
  "session",
  "slot",
  "movement",
  "set",
  "asked",
  "load",
  "per",
  "sets",
  "result",
  "side",
  "reserve",
  "machine",
  "technique",
  "pain",
  "where",
  "morning",
  "effort",
  "minutes",
  "outside",
  "pressure",
  "when",
  "ended",
  "because",
  "medicines",
  "note",
] as const;
export type Column = (typeof COLUMNS)[number];

/** Other headings that people write, in languages of many coaches. From memory, no source. */
const ALSO: Readonly<Record<string, Column>> = {
  date: "day",
  datum: "day",
  tag: "day",
  at: "time",
  zeit: "time",
  ...words("time", "start begin beginn von from inicio inizio début começo"),
  ...words("end", "until finish stop ende bis fin hasta fine slut koniec"),
  name: "person",
  client: "person",
  id: "person",
  geboren: "born",
  einheit: "session",
  exercise: "movement",
  lift: "movement",
  übung: "movement",
  satz: "set",
  weight: "load",
  kg: "load",
  lb: "load",
  lbs: "load",
  last: "load",
  gewicht: "load",
  reps: "result",
  done: "result",
  wdh: "result",
  rir: "reserve",
  "in reserve": "reserve",
  "next morning": "morning",
  "session effort": "effort",
  "session rpe": "effort",
  min: "minutes",
  "blood pressure": "pressure",
  why: "because",
  reason: "because",
  notes: "note",
  ...words("day", "jour fecha data dato datum päivä päivämäärä дата tanggal tarih"),
  ...words("person", "nom nombre nome naam namn navn imię klient kunde cliente athlete trainee имя"),
  ...words("movement", "exercice ejercicio esercizio exercício oefening övning øvelse ćwiczenie liike упражнение"),
  ...words("load", "charge poids peso carico carga vikt vekt vægt ciężar obciążenie paino вес"),
  ...words(
    "result",
    "répétitions rép reps. rep repeticiones ripetizioni repetições herhalingen repetitioner repetisjoner",
  ),
  ...words("result", "powtórzenia toistot wiederholungen повторения"),
  ...words("sets", "séries series serie sätze serier seter sett serie serii sarjat sæt подходы"),
  ...words(
    "note",
    "notas remarque remarques commentaire opmerking bemerkung anmerkung kommentar uwagi comment comments",
  ),
  ...words("minutes", "durée duración durata duração dauer duration"),
};

function words(column: Column, names: string): Readonly<Record<string, Column>> {
  return Object.fromEntries(names.split(" ").map((name) => [name, column]));
}

const UNIT_BEHIND = /^(.*?)(?: ?[([]| in | )(kg|lbs?)[)\]]?$/;

export interface Heading {
  readonly column: Column;
  readonly cell: Cell;
}

export interface Columns {
  readonly at: ReadonlyMap<Column, number>;
  /** Headings that nobody knows, and those near to them that are known. */
  readonly unknown: readonly { readonly cell: Cell; readonly maybe: readonly string[] }[];
  /** Two headings for one column. */
  readonly twice: readonly Heading[];
  /** The unit that the heading of the loads says. */
  readonly unit?: MassUnit;
}

/** What the headings of a table say; a unit may stand in brackets after a name: `load (kg)`. */
export function readColumns({ cells }: Row): Columns {
  const at = new Map<Column, number>();
  const unknown: { cell: Cell; maybe: readonly string[] }[] = [];
  const twice: Heading[] = [];
  let unit: MassUnit | undefined;
  for (const [index, cell] of cells.entries()) {
    const key = nameKey(cell.text);
    if (key === "") continue;
    const [, name = key, inBrackets] = UNIT_BEHIND.exec(key) ?? [];
    const column = (COLUMNS as readonly string[]).includes(name) ? (name as Column) : also(name);
    if (column === undefined) unknown.push({ cell, maybe: nearNames(name, [...COLUMNS, ...Object.keys(ALSO)]) });
    else if (at.has(column)) twice.push({ column, cell });
    else at.set(column, index);
    const said = inBrackets ?? (column === "load" ? name : undefined);
    if (column === "load" && (said === "kg" || said?.startsWith("lb"))) unit = said === "kg" ? "kg" : "lb";
  }
  const sets = at.get("sets");
  if (sets !== undefined && !at.has("result")) {
    at.set("result", sets);
    at.delete("sets");
  }
  return { at, unknown, twice, ...(unit === undefined ? {} : { unit }) };
}

/** Whether a heading names a column. */
export function isColumn(heading: string): boolean {
  const key = nameKey(heading);
  const [, name = key] = UNIT_BEHIND.exec(key) ?? [];
  return (COLUMNS as readonly string[]).includes(name) || also(name) !== undefined;
}

function also(name: string): Column | undefined {
  return Object.hasOwn(ALSO, name) ? ALSO[name] : undefined;
}
