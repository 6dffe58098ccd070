import { describe, expect, test } from "vitest";
import { madeUpCatalogue, madeUpExercise } from "../testing/index.ts";
import { CATALOGUE } from "./catalogue.ts";
import { cataloguePage } from "./page.ts";

const PAGE = cataloguePage(CATALOGUE);

describe("the catalogue as a page", () => {
  test("has every entry once with its own heading, cues and faults", () => {
    const headings = PAGE.split("\n").filter((line) => line.startsWith("### "));
    const entries = headings.filter((line) => !line.startsWith("### Lane: ") && !line.startsWith("### Ladder: "));
    expect(entries.length).toBe(CATALOGUE.exercises.size);
    expect(new Set(headings).size).toBe(headings.length);
    for (const { id, cues, faults } of CATALOGUE.exercises.values()) {
      expect(PAGE).toContain(`\`${id}\``);
      expect(PAGE).toContain(cues.join(" · "));
      for (const { see, why, fix } of faults) expect(PAGE).toContain(`| ${see} | ${why} | ${fix} |`);
    }
  });

  test("lists every exercise in exactly one lane", () => {
    const lanes = PAGE.slice(PAGE.indexOf("## Lanes"), PAGE.indexOf("## Ladders"));
    const listed = lanes.split("\n").filter((line) => line.startsWith("- "));
    expect(listed.length).toBe(CATALOGUE.exercises.size);
    expect(lanes).toMatch(/### Lane: squat\n\n- Sit-to-stand, high seat \(`sit-to-stand-high`\), squat/);
    expect(lanes).toMatch(/### Lane: other\n[^#]*`leg-extension`/);
  });

  test("has every step of every ladder with the criterion of its next form", () => {
    const rows = PAGE.split("\n").filter((line) => /^\| `[^`]+` \| `[^`]+` \|/.test(line));
    expect(rows.length).toBe(CATALOGUE.ladders.flatMap(({ steps }) => steps).length);
    expect(rows).toContain(
      "| `double-dumbbell-front-squat` | `back-squat` | main | 3 × 8 of double-dumbbell-front-squat; those goblet squats were with 30% of body mass; has been taught how to leave the bar on the safeties; safeties are set |",
    );
  });

  test("says that nobody has signed the grades, and when to stop", () => {
    expect(PAGE).toMatch(/unsigned/);
    expect(PAGE).toMatch(/chest pressure, faintness, unusual breathlessness/);
  });

  test("leaves out what an entry has not, and shows signs of Markdown as themselves", () => {
    const odd = madeUpExercise({
      id: "odd",
      name: "A|b *c*",
      synonyms: [],
      need: { count: { of: "x", holdS: 20, sets: 3 }, conditions: [] },
    });
    const page = cataloguePage(madeUpCatalogue([odd]));
    expect(page).toContain("### A\\|b \\*c\\*\n");
    expect(page).toContain("- Entry criterion: 3 × 20 s of x\n");
    expect(page).not.toMatch(/Also called|Hold:|Marked|undefined|NaN/);
  });

  test("is the same page for the same catalogue", () => {
    expect(cataloguePage(CATALOGUE)).toBe(PAGE);
    expect(PAGE).not.toMatch(/undefined|NaN|\[object/);
  });
});
