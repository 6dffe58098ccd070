import { expect, test } from "vitest";
import { STATEMENTS } from "../model/index.ts";
import { STATEMENT_TABLE } from "../tables/index.ts";
import { cautionsPage } from "./cautions-page.ts";
import { cautionNotes } from "./en/cautions.ts";

test("the page has every row with its ceilings, limits, what to act on, whom to ask and when, and says it is unsigned", () => {
  const page = cautionsPage();
  expect(page).toContain("**unsigned**");
  expect(page).toContain("It diagnoses nothing");
  expect(page.match(/^## /gm)).toHaveLength(STATEMENT_TABLE.rows.length);
  for (const label of ["Highest grades:", "Every set:", "Act on:", "Ask:", "Asked again"])
    expect(page.split(label).length - 1, label).toBe(STATEMENT_TABLE.rows.length);
  expect(page).not.toMatch(/undefined|NaN/);
});

test("row 3 reads as printed in the guide, section 5.3: pressure 1, head down 1, 70 %, 2 left, 20 s, six weeks", () => {
  const page = cautionsPage();
  const row = page.slice(page.indexOf("## 3."), page.indexOf("## 4."));
  for (const part of [
    "1 and",
    "at most 70 % of today's best",
    "2 repetitions or more left",
    "holds up to 20 s",
    "no breath-holding",
    "after 6 weeks",
    "90 s of rest",
  ])
    expect(row).toContain(part);
  expect(row).not.toContain("lowering-only");
});

test("every statement has what to act on and whom to ask, as a part of a sentence", () => {
  expect(Object.keys(cautionNotes).sort()).toEqual([...STATEMENTS].sort());
  for (const { act, ask } of Object.values(cautionNotes)) {
    for (const words of [act, ask]) expect(words).toMatch(/^[a-z].*[^.]$/);
  }
});
