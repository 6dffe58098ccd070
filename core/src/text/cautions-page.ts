import { SOURCES } from "../sources.ts";
import { STATEMENT_TABLE, type StatementRow } from "../tables/index.ts";
import { cautionNotes, standingLine } from "./en/cautions.ts";
import { listed } from "./en/number.ts";
import { en, type Messages } from "./en.ts";

function limitsOf({ limits }: StatementRow): string {
  const { percent, reserve, holdS, noBreathHold, noLoweringOnly } = limits;
  return listed([
    ...(percent === undefined ? [] : [`at most ${percent} % of today's best`]),
    ...(reserve === undefined ? [] : [`${reserve} repetitions or more left`]),
    ...(holdS === undefined ? [] : [`holds up to ${holdS} s`]),
    ...(noBreathHold ? ["no breath-holding"] : []),
    ...(noLoweringOnly ? ["no lowering-only sets"] : []),
  ]);
}

function filtersOf({ withheld, seatedOnly, noArms }: StatementRow, words: Messages): readonly string[] {
  return [
    ...(withheld.length > 0
      ? [`Withheld until limits are written: ${listed(withheld.map((lane) => words.words.lanes[lane]))}.`]
      : []),
    ...(seatedOnly ? ["Only what is done seated."] : []),
    ...(noArms ? ["Nothing in which an arm carries or moves load."] : []),
  ];
}

/**
 * The table of cautions as a page to read and to sign: what each statement caps, what it limits, what to act on, whom to
 * ask, and when it is asked again.
 *
 * @returns Markdown, the same for the same table
 */
export function cautionsPage(words: Messages = en): string {
  const { rows, source, status } = STATEMENT_TABLE;
  const sections = rows.map((row) => {
    const { act, ask } = cautionNotes[row.id];
    const ceilings = Object.entries(row.ceilings).map(
      ([tag, grade]) => `${words.words.tags[tag as keyof typeof words.words.tags]} ${grade}`,
    );
    const again =
      row.recheckWeeks === undefined
        ? "Asked again on the clinician's date; without one it stays."
        : `Asked again after ${words.print.plural(row.recheckWeeks, "week", "weeks")}, or on the clinician's date.`;
    return [
      `## ${row.row}. ${words.words.statements[row.id]} (\`${row.id}\`)`,
      `Highest grades: ${ceilings.length === 0 ? "none capped" : listed(ceilings)}.`,
      `Every set: ${limitsOf(row)}.`,
      ...filtersOf(row, words),
      `Act on: ${act}.`,
      `Ask: ${ask}.`,
      again,
    ].join("\n\n");
  });
  const head = [
    "# Cautions",
    standingLine,
    `${rows.length} rows of our own making (${SOURCES[source].cite}); status: **${status}**. A grade over the highest is never offered, one on it is offered and watched. What is set aside is not deleted, and no ceiling is bought by points. Of several statements the lowest ceiling, the lowest load and hold and the most in reserve hold. On its day a row asks and stays: it never lifts by itself. This page is made from the table itself.`,
  ];
  return `${[...head, ...sections].join("\n\n")}\n`;
}
