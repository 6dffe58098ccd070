import type { RecordCode } from "../../record/index.ts";
import { type Data, dataIn, MISSING, numberIn, said } from "../facts.ts";
import type { Say } from "../names.ts";
import { plural } from "./number.ts";
import { loadIn, printDate } from "./units.ts";

function cell(data: Data): string {
  return `“${said(data, "found")}”`;
}

function loadRead(data: Data): string {
  return loadIn({ read: dataIn(data, "read") ?? null }, "read") ?? MISSING;
}

/** A cell of a record, as it was read. */
export const recordReasons: Readonly<Record<RecordCode, Say>> = {
  "record/date-read": (data) => `${cell(data)} read as ${printDate(said(data, "read"))}.`,
  "record/range-read": (data) =>
    `${cell(data)} was a range before a spreadsheet made a date of it: ${said(data, "read")}.`,
  "record/as-seconds": (data) => `${cell(data)} read as seconds, since this is held.`,
  "record/each-side": (data) => `${cell(data)} read as so much on each side.`,
  "record/all-out": (data) => `${cell(data)} was to the last that went: 0 in reserve.`,
  "record/halved": (data) => `${cell(data)} is both together: ${loadRead(data)} in each hand.`,
  "record/as-added": (data) => `${cell(data)} read as ${loadRead(data)} on top of body mass.`,
  "record/as-help": (data) => `${cell(data)} read as ${loadRead(data)} of help.`,
  "record/with-bar": (data) => `${cell(data)} read as plates on each side of the only bar here: ${loadRead(data)}.`,
  "record/from-above": (data) => `Nothing stands here; ${said(data, "read")} from the line above.`,
  "record/sets-joined": (data) => `Sets and repetitions of two columns: ${said(data, "read")}.`,
  "record/load-parted": (data) => `${cell(data)} parted into load and repetitions: ${said(data, "read")}.`,
  "record/sum-left-out": (data) => `${cell(data)} begins a line of sums, which is left out.`,
  "record/title-left-out": (data) => `${cell(data)} stands above the headings and is left out.`,
  "record/lasted": (data) =>
    `${plural(numberIn(data, "read"), "minute", "minutes")} from start to end${data["night"] === true ? ", which is of the next day; the session is of the day on which it began" : ""}.`,
  "record/done-as-asked": (data) => `${cell(data)} with no number: every set kept as asked, and no load rises by it.`,
  "record/only-bar": (data) => `${cell(data)} read as the only bar here: ${loadRead(data)}.`,
  "record/mass-missing": (data) =>
    `${cell(data)} is kept as it stands; body mass is missing, so nobody can say what was moved in all.`,
  "record/movement-read": (data, names) => `${cell(data)} read as ${names.exercise(said(data, "read"))}.`,
  "record/name-read": (data) => `${cell(data)} read as ${said(data, "read")}.`,
  "record/other-day": (data, names) => {
    const days = numberIn(data, "planned");
    const apart = `${plural(Math.abs(days), "day", "days")} ${days > 0 ? "before" : "after"} its planned day`;
    return `Taken for ${names.session(said(data, "read"))}, ${apart}.`;
  },
  "record/instead": (data, names) =>
    `${names.exercise(said(data, "read"))} in the place of ${names.exercise(said(data, "from"))}; each keeps a record of its own.`,
  "record/new-machine": (data) => `${cell(data)} is new: its numbers begin anew and compare with no other machine.`,
  "record/place-in-words": (data) =>
    `“${said(data, "read")}” is none of the places whose stresses are known: noted, and no other movement waits because of it.`,
  "record/morning-late": (data) =>
    `Said ${plural(numberIn(data, "days"), "day", "days")} after that morning: kept, and it does not tell how the morning was.`,
  "record/column-left-out": (data) => `The column ${cell(data)} is not known and is left out.`,
  "record/corrected": (data) => `${said(data, "read")} stood there; ${cell(data)} replaces it.`,
};
