import { STRESS_TAGS } from "@stave/core/model";
import type { Sheet, SheetPage } from "@stave/core/report";
import { en } from "@stave/core/text";
import { afterAll, describe, expect, test } from "vitest";
import { demoSheet, PEOPLE } from "./demo-sheets.ts";
import { Press } from "./press.ts";
import { type Box, type PrintedPage, readBack } from "./read-back.ts";

const press = new Press();
afterAll(() => press.close());

/** 9 mm in points. */
const PENCIL = (9 / 25.4) * 72;
const NO_SHEET = ["corvane", "hesper"];
const SIZES = { a4: [595, 842], "us-letter": [612, 792] } as const;

function sheetOf(id: string, paper: Sheet["paper"] = "a4"): Sheet {
  const answer = demoSheet(id, paper);
  if (!answer.ok) throw new Error(answer.reason.code);
  return answer.sheet;
}

/** Lines of a page are broken anywhere, so blanks say nothing. */
function letters(text: string): string {
  return text.replace(/[\s\u200b]/g, "");
}

/** Everything that must be read on a page, in the order in which it is read. */
function asked(page: SheetPage): readonly string[] {
  return [
    page.title,
    ...page.right,
    ...page.weeks.flatMap(({ label, light, day }) => [label, light ?? "", day ?? ""]),
    ...page.rows.flatMap(({ above, name, dose, note, cells }) => [
      above ?? "",
      name,
      dose,
      note ?? "",
      ...cells.flatMap((cell) => [cell.dose ?? "", cell.load?.label ?? "", cell.load?.text ?? ""]),
    ]),
    page.open ?? "",
    ...page.foot.flat(),
    page.mark,
  ];
}

function expectInOrder(text: string, wanted: readonly string[]): void {
  let from = 0;
  for (const piece of wanted.map(letters)) {
    const at = text.indexOf(piece, from);
    expect(at, `${piece} after ${text.slice(Math.max(0, from - 30), from)}`).toBeGreaterThanOrEqual(from);
    from = at + piece.length;
  }
}

function expectInside({ size: [width, height], pieces, boxes, lines }: PrintedPage): void {
  for (const piece of [...pieces, ...boxes, ...lines]) {
    expect(piece.x).toBeGreaterThanOrEqual(0);
    expect(piece.y).toBeGreaterThanOrEqual(0);
    expect(piece.x + piece.width).toBeLessThanOrEqual(width);
    expect(piece.y + piece.height).toBeLessThanOrEqual(height);
  }
}

/** Whether a line parts a box in the middle. */
function isOver(line: Box, box: Box): boolean {
  return Math.abs(line.x - (box.x + box.width / 2)) < 0.1 && Math.abs(line.y - box.y) < 0.1;
}

function sum(page: SheetPage, of: (cell: SheetPage["rows"][number]["cells"][number]) => number): number {
  return page.rows.flatMap(({ cells }) => cells).reduce((total, cell) => total + of(cell), 0);
}

describe.each(["a4", "us-letter"] as const)("%s", (paper) => {
  test.each(PEOPLE.map(({ id }) => id).filter((id) => !NO_SHEET.includes(id)))(
    "%s: all that is asked is on the paper",
    async (id) => {
      const sheet = sheetOf(id, paper);
      const { pages, ...document } = await readBack(await press.print("sheet.typ", sheet));
      expect(document).toEqual({ title: sheet.title, language: "en", tagged: true, standard: "1", dated: false });
      expect(pages).toHaveLength(sheet.pages.length);
      for (const [index, page] of pages.entries()) {
        const data = sheet.pages[index]!;
        expectInOrder(letters(page.text), asked(data));
        expectInside(page);
        expect(page.size.map(Math.round)).toEqual(SIZES[paper]);
        expect(page.boxes).toHaveLength(sum(data, ({ boxes }) => boxes));
        for (const box of page.boxes) {
          expect(box.artifact).toBe(true);
          expect(box.height).toBeCloseTo(PENCIL, 2);
          expect(box.width).toBeGreaterThanOrEqual(PENCIL - 0.01);
        }
        const dashed = page.lines.filter(
          (line) =>
            line.width < 0.01 && Math.abs(line.height - PENCIL) < 0.01 && page.boxes.some((box) => isOver(line, box)),
        );
        expect(dashed).toHaveLength(sum(data, ({ boxes, split }) => (split ? boxes : 0)));
        expect(page.lines.every(({ artifact }) => artifact)).toBe(true);
        expect(page.roles.filter((role) => role === "H1")).toHaveLength(1);
        expect(page.roles.filter((role) => role === "Table")).toHaveLength(1);
        expect(page.roles.filter((role) => role === "TH")).toHaveLength(1 + data.weeks.length);
        expect(page.roles.filter((role) => role === "TR")).toHaveLength(1 + data.rows.length);
        expect(page.fonts.length).toBeGreaterThan(1);
        for (const font of page.fonts)
          expect(font).toMatchObject({ embedded: true, name: expect.stringMatching(/^[A-Z]{6}\+/) });
      }
    },
  );
});

test("the name that runs from right to left stands on its sheet", async () => {
  const sheet = sheetOf("layan");
  const [page] = (await readBack(await press.print("sheet.typ", sheet))).pages;
  expect(sheet.pages[0]!.left[0]).toBe("ليان الصفصافي");
  // It comes back letter by letter as it stands on paper.
  for (const letter of "ليانصفي") expect(page!.text).toContain(letter);
});

test("the same sheet has the same bytes", async () => {
  const sheet = sheetOf("dagny");
  const [first, second] = [await press.print("sheet.typ", sheet), await press.print("sheet.typ", sheet)];
  expect(Buffer.from(first).equals(second)).toBe(true);
});

test("who may not train yet has no sheet", () => {
  expect(demoSheet("corvane")).toEqual({ ok: false, reason: { code: "offer/stop", data: expect.anything() } });
  expect(demoSheet("hesper")).toEqual({ ok: false, reason: { code: "offer/no-screening", data: {} } });
});

/** Words that only health, its reasons and those who state it bring with them. */
const HEALTH =
  /pregnan|midwife|birth|osteopor|fracture|blood|glaucoma|hernia|vertigo|dizz|surger|arthrit|insulin|diabet|paraplegi|injur|doctor|physio|consent|ordered|\blimit|\bgrade|caution|clearance|statement|moderate|vigorous/i;

test.each(PEOPLE.filter(({ id }) => !NO_SHEET.includes(id)))(
  "$id: the sheet says nothing of health, nor who stated it",
  (person) => {
    const said = JSON.stringify(sheetOf(person.id).pages).toLowerCase();
    const stated = [
      ...Object.values(en.words.statements),
      ...Object.values(en.words.tags),
      ...STRESS_TAGS.filter((tag) => tag.includes("_")),
    ];
    const own = [
      person.screening?.by,
      person.screening?.outcome,
      person.screening?.agreed?.who,
      ...person.cautions.map(({ who }) => who),
      ...person.limits.map(({ who }) => who),
      person.note,
      String(person.mass?.load.value),
    ];
    for (const words of [...stated, ...own.filter((each) => each !== undefined && each.length > 3)])
      expect(said).not.toContain(words!.toLowerCase());
    expect(said).not.toMatch(HEALTH);
  },
);
