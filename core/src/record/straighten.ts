import type { Column, Columns } from "./columns.ts";
import type { RowNotes } from "./row-notes.ts";
import { repair } from "./taken.ts";

/** Rows of sums under a table, in the first cell that says something. */
const SUMS = /^(?:(?:sub|grand )?totals?|sum|summe|gesamt|average|mean|schnitt|totale|totaal|suma|somme)\b:?/i;
const NUMBER = String.raw`(\d{1,4}(?:[.,]\d{1,2})?)`;
const UNIT = String.raw`\s?(kgs?|lbs?|#)`;
/** One part of a result with its load: 3x10@60, 10@60, 60kg x 10, 10 x 60 kg. */
const PARTS: readonly (readonly [RegExp, readonly ("sets" | "reps" | "load" | "unit")[]])[] = [
  [
    new RegExp(String.raw`^(\d{1,2}) ?[x×] ?(\d{1,3}) ?[x×@] ?${NUMBER}(?:${UNIT})?$`, "i"),
    ["sets", "reps", "load", "unit"],
  ],
  [new RegExp(String.raw`^(\d{1,3}) ?@ ?${NUMBER}(?:${UNIT})?$`, "i"), ["reps", "load", "unit"]],
  [new RegExp(String.raw`^${NUMBER}${UNIT} ?[x×] ?(\d{1,3})$`, "i"), ["load", "unit", "reps"]],
  [new RegExp(String.raw`^(\d{1,3}) ?[x×] ?${NUMBER}${UNIT}$`, "i"), ["reps", "load", "unit"]],
];
const MOST_SETS = 20;
const WORKING: readonly Column[] = ["movement", "slot", "result"];

/**
 * Puts rows as a table for people's eyes has them into rows that stand alone, each change shown: a day or a name that
 * was written once for several lines (merged cells) goes down, a number of sets beside repetitions becomes 3x10, a
 * load written into the result goes to the loads, and sums at the end are left out.
 *
 * @returns the rows without sums
 */
export function straighten(rows: readonly RowNotes[], { at }: Columns): readonly RowNotes[] {
  const above = new Map<Column, string>();
  return rows.filter((row) => {
    const first = row.firstText();
    if (SUMS.test(first)) {
      row.leaveOut(repair("record/sum-left-out", first));
      return false;
    }
    const works = WORKING.some((column) => row.text(column) !== "");
    for (const column of ["person", "day"] as const) {
      const text = row.text(column);
      const before = above.get(column);
      if (text !== "") {
        if (column === "person" && text !== before) above.delete("day");
        above.set(column, text);
      } else if (works && before !== undefined && at.has(column)) {
        row.put(column, before, repair("record/from-above", before));
      }
    }
    if (at.has("sets") && at.has("result")) joinSets(row);
    if (row.text("load") === "") partLoad(row);
    return true;
  });
}

function joinSets(row: RowNotes): void {
  const [sets, reps] = [row.text("sets"), row.text("result")];
  if (/^\d{1,2}$/.test(sets) && Number(sets) > 1 && /^\d{1,3}(?: ?(?:e|ea|each|s|sec))?$/i.test(reps))
    row.put("result", `${sets}x${reps}`, repair("record/sets-joined", `${sets}x${reps}`));
}

function partLoad(row: RowNotes): void {
  const text = row.text("result");
  const parts = partsOf(text);
  if (parts === undefined) return;
  const sets = parts.flatMap(({ sets, ...set }) => Array.from({ length: sets }, () => set));
  if (sets.length > MOST_SETS) return;
  const loads =
    [...new Set(sets.map(({ load }) => load))].length === 1 ? sets[0]!.load : sets.map(({ load }) => load).join("/");
  const result = sets.map(({ reps }) => reps).join("/");
  row.put("load", loads);
  row.put("result", result, repair("record/load-parted", `${loads}: ${result}`));
}

/** @returns the parts of a result that name their loads; a comma between figures may part them or be decimal */
export function partsOf(text: string) {
  for (const between of [/ ?(?:[;/+&]|,(?!\d)) ?/, / ?[,;/+&] ?/]) {
    const parts = text.split(between).map(partOf);
    if (parts.every((part) => part !== undefined)) return parts;
  }
  return undefined;
}

/** @returns sets, repetitions and load of one part of a result that names its load; undefined for any other */
function partOf(text: string): { readonly sets: number; readonly reps: string; readonly load: string } | undefined {
  for (const [form, names] of PARTS) {
    const match = form.exec(text);
    if (match === null) continue;
    const said = Object.fromEntries(names.map((name, i) => [name, match[i + 1] ?? ""]));
    const unit = said["unit"] === "" ? "" : ` ${said["unit"]}`;
    return { sets: Number(said["sets"] ?? 1), reps: said["reps"]!, load: `${said["load"]}${unit}` };
  }
  return undefined;
}
