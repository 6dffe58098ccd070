import { expect, test } from "vitest";
import { LANES, STATEMENTS, STRESS_TAGS } from "../model/index.ts";
import { STATEMENT_TABLE, type StatementRow, statementRow } from "./statements.ts";

/** The table as it is printed in the guide to the catalogue, section 5.3a: row, id, ceilings, dose limits, filters. */
const PRINTED = `
1 | pregnant | supine 1, pressor 1, balance 1, impact 1, abd_press 1, prone 1, head_down 1, head_quick 1, sp_flex 1 | load ≤ 70%; ≥ 3 left; no breath-hold; no lowering-only; holds ≤ 30 s | –
2 | postnatal | impact 0, abd_press 1, pressor 1, sp_flex 1, balance 2, head_quick 1 | load ≤ 60%; ≥ 4 left; no breath-hold; no lowering-only; holds ≤ 20 s | –
3 | pressure | pressor 1, head_down 1 | load ≤ 70%; ≥ 2 left; no breath-hold; lowering-only allowed; holds ≤ 20 s | –
4 | bone | sp_flex 0, sp_rot 1, sp_axial 2, sp_hold 2, impact 1, balance 2, head_quick 1, sp_ext 2, head_down 1 | load ≤ 75%; ≥ 2 left; no breath-hold; no lowering-only; holds ≤ 30 s | –
5 | back | sp_hold 1, sp_flex 1, sp_axial 1, sp_ext 1, sp_rot 1, abd_press 2 | load ≤ 70%; ≥ 3 left; no breath-hold; no lowering-only; holds ≤ 30 s | –
6 | shoulder | sh_overhead 1, sh_abd_er 0, sh_ir_elev 0, sh_ext 0 | load ≤ 70%; ≥ 3 left; breath free; no lowering-only; holds ≤ 30 s | –
7 | knee | knee_deep 1, knee_open 0, impact 1, kneel 0, ankle_df 1 | load ≤ 70%; ≥ 3 left; breath free; no lowering-only; holds ≤ 30 s | –
8 | wrist | wr_ext 0, grip 2 | load ≤ 75%; ≥ 2 left; breath free; lowering-only allowed; holds ≤ 60 s | –
9 | vertigo | head_quick 0, head_down 0, supine 1, prone 1, floor 1, balance 1, sp_axial 1, impact 1, sh_overhead 1 | load ≤ 75%; ≥ 2 left; no breath-hold; lowering-only allowed; holds ≤ 30 s | –
10 | eye | head_down 0, pressor 1 | load ≤ 65%; ≥ 3 left; no breath-hold; lowering-only allowed; holds ≤ 15 s | –
11 | hernia | abd_press 1, pressor 1, sp_flex 1, impact 1 | load ≤ 60%; ≥ 3 left; no breath-hold; lowering-only allowed; holds ≤ 20 s | –
12a | surgery-arm | sh_overhead 0, sh_abd_er 0, sh_ir_elev 0, sh_ext 0, elbow 0, wr_ext 0, grip 0, floor 1, impact 1, balance 1, sp_axial 1 | load ≤ 60%; ≥ 4 left; no breath-hold; lowering-only allowed; holds ≤ 20 s | lanes withheld: push, pull; no "arms used" entries
12b | surgery-leg | hip_deep 0, hip_spread 0, knee_deep 0, knee_open 0, kneel 0, ankle_df 0, impact 0, balance 0, floor 1 | load ≤ 60%; ≥ 4 left; no breath-hold; lowering-only allowed; holds ≤ 20 s | lanes withheld: squat, hinge, single leg; seated entries only
12c | surgery-trunk | sp_axial 0, sp_hold 0, sp_flex 0, sp_ext 0, sp_rot 0, abd_press 0, impact 1, balance 1, sh_ext 1, sh_abd_er 1, pressor 1, floor 1 | load ≤ 50%; ≥ 4 left; no breath-hold; lowering-only allowed; holds ≤ 10 s | lanes withheld: trunk, hinge
13 | hip | hip_deep 1, hip_spread 0, balance 1, impact 1 | load ≤ 70%; ≥ 3 left; breath free; no lowering-only; holds ≤ 30 s | –
14 | larger | floor 1, impact 1, prone 1, balance 2 | load no limit; ≥ 3 left; breath free; no lowering-only; holds ≤ 30 s | –
15 | flare | sh_overhead 1, sh_abd_er 1, sh_ir_elev 1, sh_ext 1, elbow 1, wr_ext 1, grip 1, sp_axial 1, sp_hold 1, sp_flex 1, sp_ext 1, sp_rot 1, hip_deep 1, hip_spread 1, knee_deep 1, knee_open 1, kneel 1, ankle_df 1, impact 1 | load ≤ 50%; ≥ 4 left; no breath-hold; no lowering-only; holds ≤ 10 s | –
16 | diabetes | pressor 1, head_down 0, impact 0, balance 1 | load ≤ 65%; ≥ 3 left; no breath-hold; lowering-only allowed; holds ≤ 20 s | –
17 | seated | sh_overhead 2, sh_ext 1, floor 1 | load ≤ 75%; ≥ 2 left; breath free; no lowering-only; holds ≤ 30 s | lanes withheld: squat, hinge, single leg; seated entries only
18 | young | none | load below 80%; ≥ 2 left; no breath-hold; lowering-only allowed; holds as 4.17 | –
`
  .trim()
  .split("\n");

/** Usual time to the next question, as printed in section 5.3c; a dash where only a clinician's date counts. */
const PRINTED_RECHECK =
  "1 4, 2 2, 3 6, 4 12, 5 2, 6 3, 7 3, 8 3, 9 2, 10 -, 11 4, 12a -, 12b -, 12c -, 13 -, 14 12, 15 1, 16 6, 17 12, 18 12";

function asPrinted(row: StatementRow): string {
  const ceilings = Object.entries(row.ceilings).map(([tag, grade]) => `${tag} ${grade}`);
  const { percent, reserve, holdS, noBreathHold, noLoweringOnly } = row.limits;
  const load = percent === undefined ? "no limit" : percent === 79 ? "below 80%" : `≤ ${percent}%`;
  const filters = [
    row.withheld.length > 0 ? `lanes withheld: ${row.withheld.join(", ")}` : "",
    row.seatedOnly ? "seated entries only" : "",
    row.noArms ? 'no "arms used" entries' : "",
  ].filter((filter) => filter !== "");
  return [
    row.row,
    row.id,
    ceilings.join(", ") || "none",
    [
      `load ${load}`,
      `≥ ${reserve} left`,
      noBreathHold ? "no breath-hold" : "breath free",
      noLoweringOnly ? "no lowering-only" : "lowering-only allowed",
      holdS === undefined ? "holds as 4.17" : `holds ≤ ${holdS} s`,
    ].join("; "),
    filters.join("; ") || "–",
  ].join(" | ");
}

for (const [index, line] of PRINTED.entries()) {
  test(`ours 5.3a, printed: row ${line.split(" | ", 2).join(" ")}`, () => {
    expect(asPrinted(STATEMENT_TABLE.rows[index]!)).toBe(line);
  });
}

test("ours 5.3c, printed: weeks to the next question", () => {
  const ours = STATEMENT_TABLE.rows.map((row) => `${row.row} ${row.recheckWeeks ?? "-"}`).join(", ");
  expect(ours).toBe(PRINTED_RECHECK);
});

test("the copy is complete: 20 rows, 124 ceilings whose grades sum to 98, every statement once", () => {
  expect(PRINTED.length).toBe(20);
  const grades = STATEMENT_TABLE.rows.flatMap((row) => Object.values(row.ceilings));
  expect(grades.length).toBe(124);
  expect(grades.reduce<number>((sum, grade) => sum + grade, 0)).toBe(98);
  expect(STATEMENT_TABLE.rows.map((row) => row.id).toSorted()).toEqual(STATEMENTS.toSorted());
  for (const id of STATEMENTS) expect(statementRow(id).id).toBe(id);
});

test("only tags and lanes that exist are named, and the table says that nobody has signed it", () => {
  for (const row of STATEMENT_TABLE.rows) {
    for (const tag of Object.keys(row.ceilings)) expect(STRESS_TAGS).toContain(tag);
    for (const lane of row.withheld) expect(LANES).toContain(lane);
  }
  expect(STATEMENT_TABLE.status).toBe("unsigned");
});

test("only the row of people in a wheelchair opens the entries done in one", () => {
  expect(STATEMENT_TABLE.rows.filter((row) => row.wheelchair).map((row) => row.id)).toEqual(["seated"]);
});
