/** A made-up sheet, for tests of the layout alone. */
import type { Sheet, SheetCell, SheetPage, SheetRow } from "@stave/core/report";

export function trialCell(said: Partial<SheetCell> = {}): SheetCell {
  return { dose: null, load: { label: "load", text: "2 × 12.5 kg" }, boxes: 3, split: false, ...said };
}

export function trialRow(said: Partial<SheetRow> = {}): SheetRow {
  const dose = "3 × 8–10, rest 90 s, 2 in reserve";
  const cells = [1, 2, 3, 4].map(() => trialCell());
  return {
    name: "Half-kneeling one-arm cable press",
    dose,
    note: "Reach for the far wall",
    turn: "alone",
    above: null,
    cells,
    ...said,
  };
}

export function trialPage(said: Partial<SheetPage> = {}): SheetPage {
  return {
    title: "Session A",
    left: ["Dagny T.", "Trial, weeks 1 to 4", "Hall"],
    right: ["39–44 min", "screened 2 Feb 2027, until 2 Aug 2027"],
    weeks: [1, 2, 3, 4].map((week) => ({ label: `Week ${week}`, light: week === 4 ? "light" : null, day: null })),
    rows: [trialRow()],
    open: null,
    foot: [["Stop and tell your coach", "at chest pain."]],
    mark: "dagny/trial/1 · a",
    ...said,
  };
}

export function trialSheet(pages: readonly SheetPage[], paper: Sheet["paper"] = "a4"): Sheet {
  return { lang: "en", paper, title: "Training sheet", words: { movement: "Movement", date: "date" }, pages };
}
