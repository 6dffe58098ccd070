import { foldRecord } from "@stave/core/measures";
import type { StaveEvent } from "@stave/core/model";
import { parse } from "csv-parse/sync";
import { expect, test } from "vitest";
import { logTable } from "./log-table.ts";

const wall = () => ({ day: "2027-01-12", time: "18:30" });
const at = Date.UTC(2027, 0, 12, 17, 30);
const event = (n: number, kind: string, data: object, of?: object) =>
  ({
    v: 1,
    id: `e${n}`,
    device: "phone",
    n,
    at: at + n,
    kind,
    data,
    ...(of === undefined ? {} : { of }),
  }) as unknown as StaveEvent;
const of = (set: number) => ({ plan: "p", session: "one/1/a", slot: "squat", set });
const rowsOf = (...events: readonly StaveEvent[]) =>
  parse(logTable({ record: foldRecord(events), wall }), { bom: true, columns: true }) as Record<string, string>[];

test("a set, its two sides, a hold, and one with nothing entered", () => {
  const rows = rowsOf(
    event(1, "set-done", { exercise: "goblet-squat", reps: 8, load: { value: 12.5, unit: "kg" }, reserve: 2 }, of(0)),
    event(
      2,
      "set-done",
      { exercise: "split-squat", reps: { left: 8, right: 6 }, load: "as asked", reserve: "not said" },
      of(1),
    ),
    event(3, "set-done", { exercise: "forearm-plank", holdS: 30, load: "none", reserve: "not said" }, of(2)),
    event(4, "set-done", { exercise: "goblet-squat", reps: "as asked", load: "as asked", reserve: "not said" }, of(3)),
  );
  expect(rows.map(({ movement, set, side, load, result }) => [movement, set, side, load, result])).toEqual([
    ["goblet-squat", "1", "", "12.5 kg", "8"],
    ["split-squat", "2", "left", "", "8"],
    ["split-squat", "2", "right", "", "6"],
    ["forearm-plank", "3", "", "BW", "30s"],
    ["goblet-squat", "4", "", "", "done"],
  ]);
});

test("words from outside begin no formula, a range is no date, and what was not said stays empty", () => {
  const rows = rowsOf(
    event(1, "noted", { about: "other", text: "=1+1" }),
    event(2, "pressure", { systolic: 128, diastolic: 76, when: "before" }),
    event(3, "outside", { what: "sport", minutes: 90, effort: "not said" }),
  );
  expect(rows[0]).toMatchObject({ note: "'=1+1", day: "2027-01-12" });
  expect(rows[1]).toMatchObject({ pressure: "128/76", when: "before" });
  expect(rows[2]).toMatchObject({ outside: "sport", minutes: "90", effort: "" });
});
