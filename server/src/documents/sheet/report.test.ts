import type { Report } from "@stave/core/report";
import { drawStrokes, PRINTED, svgOf } from "@stave/core/sign";
import { afterAll, expect, test } from "vitest";
import { Press } from "./press.ts";
import { readBack } from "./read-back.ts";

const press = new Press();
afterAll(() => press.close());

const stroke = {
  state: "done",
  asked: { from: 8, to: 10 },
  hold: false,
  done: { both: 9 },
  share: 0.6,
  hurt: false,
} as const;
const svg = svgOf(
  drawStrokes(
    Array.from({ length: 8 }, () => [stroke, stroke, { ...stroke, hurt: true }]),
    { height: 36, scale: "all" },
  ),
  PRINTED,
);
const strip = (name: string) => ({
  name,
  words: "First Mon 1 Mar: 9/9/9.",
  svg,
  label: `${name}, the last 8 sessions`,
});
const BARE = { lines: [], strips: [], picture: null, table: null };

function made(name: string, movements = 2): Report {
  return {
    kind: "clinician",
    lang: "en",
    paper: "a4",
    title: `${name}: training report for a clinician`,
    name,
    about: ["Harbour steps", "Mon 1 Mar to Fri 2 Apr"],
    parts: [
      { ...BARE, heading: "Training", lines: ["7 of 8 sessions in 28 days."] },
      {
        ...BARE,
        heading: "Movement by movement",
        strips: Array.from({ length: movements }, (_, at) => strip(`Row ${at}`)),
      },
      {
        ...BARE,
        heading: "Blood pressure before sessions, sitting, mmHg",
        picture: { svg, label: "8 readings" },
        table: {
          columns: ["Day", "Upper", "Lower"],
          rows: Array.from({ length: 8 }, () => ["Mon 1 Mar", "128", "76"]),
        },
      },
    ],
    foot: ["Stop at chest pain."],
  };
}
const printed = async (report: Report) => await readBack(await press.print("report.typ", report));

test("a report is PDF/UA with its headings, tables and pictures that are told, every font inside it, no date of its own", async () => {
  const { pages, standard, tagged, language, title, dated } = await printed(made("Ana"));
  expect({ standard, tagged, language, title, dated }).toEqual({
    standard: "1",
    tagged: true,
    language: "en",
    title: "Ana: training report for a clinician",
    dated: false,
  });
  expect(pages).toHaveLength(1);
  const [{ roles, text, fonts }] = pages as [(typeof pages)[number]];
  const count = (role: string) => roles.filter((each) => each === role).length;
  expect([count("H1"), count("H2"), count("Figure"), count("Table")]).toEqual([1, 3, 3, 1]);
  expect(text).toContain("7 of 8 sessions in 28 days.");
  expect(text).toContain("128");
  expect(fonts.every(({ embedded }) => embedded)).toBe(true);
});

test.each(["نور حداد", "王小明", "#eval(1)", "*bold* <label> $x$"])(
  "a name is text, in any script: %s",
  async (name) => {
    const { pages } = await printed(made(name));
    const letters = (words: string) => words.replace(/[\s\u200b]/g, "");
    const [first] = pages;
    expect([...letters(name)].every((letter) => first!.text.includes(letter))).toBe(true);
    expect(first!.roles).not.toContain("Link");
  },
);

test("many movements run on over pages; a strip is never cut and nothing leaves the page", async () => {
  const { pages } = await printed(made("Ana", 40));
  expect(pages.length).toBeGreaterThan(1);
  for (const { size, pieces } of pages)
    for (const { x, y, width } of pieces) {
      expect(x).toBeGreaterThan(0);
      expect(x + width).toBeLessThan(size[0]);
      expect(y).toBeGreaterThan(0);
    }
});
