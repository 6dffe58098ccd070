import type { Person, Plan, Programme } from "@stave/core/model";
import { parse } from "csv-parse/sync";
import { expect, test } from "vitest";
import { type RosterLine, rosterTable } from "./roster-table.ts";

function line(said: Partial<RosterLine> & { readonly name?: string } = {}): RosterLine {
  const slots = [{ key: "s" }, { key: "t" }];
  const sessions = [
    { blocks: [{ slots }], open: [{ key: "u" }], minutes: { low: 30, high: 41 } },
    { blocks: [{ slots: slots.slice(1) }], open: [], minutes: { low: 25, high: 38 } },
  ];
  const phase = { key: "one", score: { must: 2, want: -35, bound: -35, proven: true }, weeks: [{ sessions }] };
  const forecast = { key: "two", score: { must: 0, want: 7, bound: 9, proven: false }, weeks: [{ sessions: [] }] };
  return {
    person: { id: "dagny", name: said.name ?? "Dagny Thistlemere" } as Person,
    programme: { title: "Harbour steps" } as Programme,
    plan: { firmTo: { phase: "one" }, phases: [phase, forecast] } as unknown as Plan,
    perWeek: 2,
    ...said,
  };
}

function rowsOf(lines: readonly RosterLine[]): Record<string, string>[] {
  return parse(rosterTable(lines), { bom: true, columns: true }) as Record<string, string>[];
}

test("a row a person, from the firm phase", () => {
  expect(rowsOf([line()])).toEqual([
    {
      person: "dagny",
      name: "Dagny Thistlemere",
      programme: "Harbour steps",
      sessions_a_week: "2",
      minutes_low: "25",
      minutes_high: "41",
      slots: "4",
      open_slots: "1",
      must_points: "2",
      want_points: "-35",
      proven: "yes",
      sheet: "yes",
      why_no_sheet: "",
    },
  ]);
});

test("who has no sheet has a reason, which is text", () => {
  expect(rowsOf([line({ noSheet: "0 screening outcomes on record." })])[0]).toMatchObject({
    sheet: "no",
    why_no_sheet: "0 screening outcomes on record.",
  });
  expect(rowsOf([line({ noSheet: "=HYPERLINK(1)" })])[0]!["why_no_sheet"]).toBe("'=HYPERLINK(1)");
});

test("a hostile name is text, and points below 0 stay numbers", () => {
  const [row] = rowsOf([line({ name: '=cmd|"/c calc"!A1' })]);
  expect(row).toMatchObject({ name: `'=cmd|"/c calc"!A1`, want_points: "-35" });
});

test("nobody is a table with a head", () => expect(rosterTable([])).toMatch(/^\ufeffperson,name,.*why_no_sheet\r\n$/));
