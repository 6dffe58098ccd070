import type { Reading, RecordFold, SetRecord } from "@stave/core/measures";
import { asText } from "./as-text.ts";
import { writeTable } from "./write-table.ts";

/** Headings that reading a table of records knows. */
const COLUMNS = [
  "day",
  "time",
  "session",
  "slot",
  "movement",
  "set",
  "side",
  "load",
  "result",
  "in reserve",
  "machine",
  "technique",
  "pain",
  "where",
  "morning",
  "effort",
  "minutes",
  "ended",
  "because",
  "outside",
  "pressure",
  "when",
  "medicines",
  "note",
] as const;
type Cells = Readonly<Partial<Record<(typeof COLUMNS)[number], string | number>>>;

export interface LogInput {
  readonly record: RecordFold;
  /** Day and wall time of an instant where the person trains: 2027-01-12 and 18:30. */
  readonly wall: (at: number) => { readonly day: string; readonly time: string };
}

/**
 * A person's record as a table that can be read in again: a line for each set, and one for everything else that was
 * said. What nobody entered stays empty; words from outside cannot begin a formula.
 */
export function logTable({ record, wall }: LogInput): string {
  const rows: { readonly at: number; readonly cells: Cells }[] = [];
  const add = (at: number, cells: Cells) => rows.push({ at, cells: { ...wall(at), ...cells } });
  for (const { session, at, slots, ended } of record.sessions) {
    for (const { slot, sets, leftOut } of slots) {
      for (const set of sets) for (const cells of cellsOf(set)) add(at, { session, slot, ...cells });
      if (sets.length === 0 && leftOut.length > 0) add(at, { session, slot, result: "-" });
    }
    const rated = record.ratings.find((each) => each.session === session)?.data;
    if (rated !== undefined || ended !== undefined) {
      const effort = rated === undefined || rated.effort === "not said" ? "" : rated.effort;
      const whole = ended === undefined ? {} : { ended: ended.early ? "early" : "done" };
      add(at, { session, effort, ...(rated === undefined ? {} : { minutes: rated.minutes }), ...whole });
    }
  }
  for (const { session, at, data } of record.missed)
    add(at, { ...(session === undefined ? {} : { session }), result: data.because ?? "-" });
  for (const { at, session, slot, where, howMuch } of record.hurts)
    add(at, {
      ...(session === undefined ? {} : { session }),
      ...(slot === undefined ? {} : { slot }),
      pain: howMuch,
      where: asText(where),
    });
  for (const { at, data } of record.mornings) add(at, { morning: data.howMuch });
  for (const { at, data } of record.outside) {
    const effort = data.effort === "not said" ? "" : data.effort;
    add(at, { outside: data.what, minutes: data.minutes, effort, note: asText(data.note ?? "") });
  }
  for (const { at, data } of record.pressures)
    add(at, { pressure: `${data.systolic}/${data.diastolic}`, when: data.when });
  for (const { at, data } of record.notes)
    add(at, data.about === "medicines" ? { medicines: asText(data.text) } : { note: asText(data.text) });
  const inOrder = rows.sort((a, b) => a.at - b.at);
  return writeTable(
    COLUMNS,
    inOrder.map(({ cells }) => COLUMNS.map((column) => cells[column] ?? "")),
  );
}

function loadOf({ load, pulledBy }: SetRecord): string {
  if (load === undefined) return "";
  if (load !== "none") return `${load.value} ${load.unit}`;
  if (pulledBy === undefined) return "BW";
  return "band" in pulledBy ? `band ${pulledBy.band}` : `plate ${pulledBy.setting}`;
}

/** A set, or its two sides. */
function cellsOf(set: SetRecord): readonly Cells[] {
  const held = set.holdS !== undefined;
  const reading: Reading = set.holdS ?? set.reps ?? {};
  const { reserve, machine, technique } = set;
  const shared: Cells = {
    movement: set.exercise,
    set: set.set + 1,
    load: loadOf(set),
    ...(reserve === undefined ? {} : { "in reserve": reserve }),
    ...(machine === undefined ? {} : { machine: asText(machine) }),
    ...(technique === undefined ? {} : { technique }),
  };
  const said = (amount: number | undefined) => (amount === undefined ? "done" : held ? `${amount}s` : String(amount));
  if ("left" in reading || "right" in reading)
    return (["left", "right"] as const).flatMap((side) => {
      const amount = (reading as { left?: number; right?: number })[side];
      return amount === undefined ? [] : [{ ...shared, side, result: said(amount) }];
    });
  return [{ ...shared, result: said((reading as { both?: number }).both) }];
}
