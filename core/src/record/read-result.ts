import {
  type Exercise,
  type NotDone,
  printRangeCell,
  readRangeCell,
  readWrittenResult,
  type Untouched,
  type WrittenSet,
} from "../model/index.ts";
import { ask, type Repair, repair, type Taken, taken } from "./taken.ts";

/** So many repetitions are a slip until somebody says that they are meant; more than MOST nobody does. Ours. */
const MANY = 100;
const MOST = 500;

/** Words and marks for what was done with nothing entered. */
const DONE =
  /^(?:done|ok|okay|yes|completed?|as (?:planned|asked|written)|[✓✔☑]️?|ja|oui|s[ií]|hecho|fait|erledigt|gedaan)$/iu;

/** One set as it was done; left and right are put together later. */
export interface SetRead {
  readonly reps?: number | Untouched;
  readonly holdS?: number | Untouched;
  readonly allOut: boolean;
}

export type ResultRead =
  | { readonly kind: "sets"; readonly sets: readonly SetRead[]; readonly eachSide: boolean }
  | { readonly kind: "not done"; readonly because?: NotDone };

/**
 * What a cell of results says of a movement. A number is seconds where the movement is held, and of each side where it
 * has sides; both are shown. `!` at its end says that so many repetitions are meant.
 */
export function readResultCell(
  text: string,
  exercise: Exercise,
  side: "left" | "right" | undefined,
  askedSets = 1,
): Taken<ResultRead> {
  const meant = text.endsWith("!");
  const said = meant ? text.slice(0, -1).trim() : text;
  const read = readWrittenResult(said);
  if (DONE.test(said)) return doneAsAsked(said, exercise, side, askedSets);
  if (read.kind === "not done") return taken(read);
  if (read.kind === "unknown") return whyNot(said);
  if (read.sets.some(({ reps }) => reps !== undefined && reps > MANY) && !meant)
    return ask("record/so-many", { maybe: `${said}!` });
  if (read.eachSide && (!exercise.eachSide || side !== undefined)) return ask("record/not-sided");
  const held = exercise.amounts === "hold" || exercise.amounts === "time";
  if (!held && read.sets.some(({ holdS }) => holdS !== undefined))
    return ask("record/amount", { allowed: exercise.amounts });
  const repairs: Repair[] = [];
  if (held && read.sets.some(({ reps }) => reps !== undefined)) repairs.push(repair("record/as-seconds", said));
  const eachSide = exercise.eachSide && side === undefined;
  if (eachSide && !read.eachSide) repairs.push(repair("record/each-side", said));
  return taken({ kind: "sets", sets: read.sets.map((set) => setOf(set, held)), eachSide }, ...repairs);
}

/** Done, with nothing entered: kept as what nobody touched, which is no reading. */
function doneAsAsked(
  said: string,
  { amounts, eachSide }: Exercise,
  side: "left" | "right" | undefined,
  askedSets: number,
): Taken<ResultRead> {
  const held = amounts === "hold" || amounts === "time";
  const set: SetRead = { ...(held ? { holdS: "as asked" } : { reps: "as asked" }), allOut: false };
  const sets = Array.from({ length: askedSets }, () => set);
  return taken({ kind: "sets", sets, eachSide: eachSide && side === undefined }, repair("record/done-as-asked", said));
}

function setOf({ reps, holdS, most }: WrittenSet, held: boolean): SetRead {
  const amount = reps ?? holdS!;
  return { ...(held ? { holdS: amount } : { reps: amount }), allOut: most === true };
}

/** What stands there instead of what was done. */
function whyNot(text: string): Taken<never> {
  const range = readRangeCell(text);
  if (range.kind === "range" && range.turned) {
    const { from, to } = range;
    return ask("record/turned", { maybe: from === to ? `${from}/${to}` : `${from}/${to} or ${to}/${from}` });
  }
  if (range.kind === "range" && range.from < range.to)
    return ask("record/range-done", { maybe: `${range.from}, or ${range.from}/${range.to}` });
  const digits = /^\d+$/.test(text) ? Number(text) : Number.NaN;
  return digits > MOST
    ? ask("record/too-many", { allowed: `0 to ${MOST}` })
    : ask("record/result", { allowed: "10/10/8, 3x10, 30s, 8e, AMRAP 14, -, sick" });
}

/** A range that was asked, as it stood beside what was done: also where a spreadsheet made a date of it. */
export function readAskedCell(text: string): Taken<string> {
  const range = readRangeCell(text);
  if (range.kind === "other") return ask("record/asked", { allowed: "8 to 12" });
  const said = printRangeCell(range.from, range.to);
  return range.turned ? taken(said, repair("record/range-read", said)) : taken(said);
}
