import { readFileSync } from "node:fs";
import { day } from "@stave/core/day";
import { CATALOGUE } from "@stave/core/exercises";
import { printDose, readPlaces, readProgramme, readRoster } from "@stave/core/model";
import { sheetFor } from "@stave/core/report";
import { planFor } from "@stave/core/revise";
import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";
import { afterAll, expect, test } from "vitest";
import { Press } from "./press.ts";

const ROOM = "examples/ropewalk";
const on = day("2027-01-11");
const press = new Press("server/dist/typeset.js");
afterAll(() => press.close());

function got<T>(read: { ok: true; value: T } | { ok: false; problems: unknown }): T {
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

const places = got(readPlaces(readFileSync(`${ROOM}/places.yaml`, "utf8"), "places")).value;
const people = got(readRoster(readFileSync(`${ROOM}/people.yaml`, "utf8"), "people", places)).value;
const { programme } = got(readProgramme(readFileSync(`${ROOM}/harbour-steps.yaml`, "utf8"), "programme"));

function sheetOf(id: string, name?: string, paper: "a4" | "us-letter" = "a4") {
  const found = people.find((person) => person.id === id)!;
  const person = name === undefined ? found : { ...found, name };
  const place = places.find((each) => each.id === person.place)!;
  const made = { engine: "", catalogue: "", state: "", decisions: "" };
  const plan = planFor({ programme, programmeHash: "", person, place, others: places, catalogue: CATALOGUE, on, made });
  const answer = sheetFor({ plan, programme, person, place, catalogue: CATALOGUE, paper, on });
  return { plan, answer };
}

async function readBack(pdf: Uint8Array) {
  const document = await getDocument({ data: Uint8Array.from(pdf), useSystemFonts: false, verbosity: 0 }).promise;
  const pages = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const { items } = await page.getTextContent();
    const operators = await page.getOperatorList();
    const texts = items.flatMap((item) => ("str" in item ? [item] : []));
    pages.push({
      text: texts
        .map(({ str }) => str)
        .join(" ")
        .replace(/\s+/g, " "),
      inside: texts.every(
        ({ transform }) =>
          transform[4] >= 0 && transform[5] >= 0 && transform[4] <= page.view[2]! && transform[5] <= page.view[3]!,
      ),
      size: page.view.slice(2).map(Math.round),
      strokes: operators.fnArray.filter((fn) => fn === OPS.stroke || fn === OPS.closeStroke || fn === OPS.constructPath)
        .length,
      tags: JSON.stringify(await page.getStructTree()),
    });
  }
  return pages;
}

test("a sheet's text comes back: every movement, dose and load, and the stop line, inside the page", async () => {
  const { plan, answer } = sheetOf("dagny");
  if (!answer.ok) throw new Error(answer.reason.code);
  const pages = await readBack(await press.print("sheet.typ", answer.sheet));
  const sessions = plan.phases[0]!.weeks[0]!.sessions;
  expect(pages).toHaveLength(sessions.length);
  for (const [index, session] of sessions.entries()) {
    const { text, inside, size, tags } = pages[index]!;
    const letters = text.replace(/[\s-]/g, "");
    for (const slot of session.blocks.flatMap((block) => block.slots)) {
      expect(letters).toContain(CATALOGUE.exercises.get(slot.exercise)!.name.replace(/[\s-]/g, ""));
      expect(letters).toContain(printDose(slot.dose).replace(/[\s-]/g, ""));
    }
    expect(text).toContain("Stop and tell your coach");
    expect(inside).toBe(true);
    expect(size).toEqual([595, 842]);
    for (const tag of ["H1", "Table", "TH"]) expect(tags).toContain(`"${tag}"`);
  }
});

test("pencil boxes are drawn where the sheet asks for them, and nowhere else", async () => {
  const { answer } = sheetOf("dagny");
  if (!answer.ok) throw new Error(answer.reason.code);
  const { sheet } = answer;
  const count = async (boxes: boolean) => {
    const rows = (page: (typeof sheet.pages)[number]) =>
      page.rows.map((row) => ({
        ...row,
        cells: row.cells.map((cell) => (boxes ? { ...cell, split: false } : { ...cell, boxes: 0 })),
      }));
    const pages = sheet.pages.map((page) => ({ ...page, rows: rows(page) }));
    return (await readBack(await press.print("sheet.typ", { ...sheet, pages }))).reduce(
      (sum, { strokes }) => sum + strokes,
      0,
    );
  };
  const asked = sheet.pages
    .flatMap((page) => page.rows.flatMap((row) => row.cells))
    .reduce((sum, cell) => sum + cell.boxes, 0);
  const drawn = (await count(true)) - (await count(false));
  expect(asked).toBeGreaterThan(20);
  expect(drawn).toBeGreaterThan(0);
});

test("US Letter, and a name in marks of the typesetter, print as they are", async () => {
  const { answer } = sheetOf("dagny", '#let *x* $y$ \\ "q"', "us-letter");
  if (!answer.ok) throw new Error(answer.reason.code);
  const [page] = await readBack(await press.print("sheet.typ", answer.sheet));
  expect(page!.size).toEqual([612, 792]);
  expect(page!.text.replace(/\s/g, "")).toContain("#let*x*$y$");
});

test("a layout that cannot be set is an error, and the next document prints", async () => {
  await expect(press.print("none.typ", {})).rejects.toThrow(/Cannot typeset/);
  const { answer } = sheetOf("layan");
  if (!answer.ok) throw new Error(answer.reason.code);
  expect((await press.print("sheet.typ", answer.sheet)).length).toBeGreaterThan(10_000);
});

test("without an outcome that stands there is no sheet, and no sheet has a word about health", () => {
  expect(sheetOf("corvane").answer).toMatchObject({ ok: false, reason: { code: "offer/stop" } });
  expect(sheetOf("hesper").answer).toMatchObject({ ok: false, reason: { code: "offer/no-screening" } });
  for (const { id } of people.filter(({ programme: has }) => has === "harbour-steps")) {
    const { answer } = sheetOf(id);
    if (answer.ok)
      expect(JSON.stringify(answer.sheet)).not.toMatch(
        /osteopor|pregnan|blood pressure|glaucoma|pressor|sh_|sp_|caution|statement|paraplegia/i,
      );
  }
});
