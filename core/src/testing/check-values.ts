import { describe, expect, test } from "vitest";
import { SOURCES, type SourceId } from "../sources.ts";

/** How the value was read: in the source itself, in a restatement, or not looked up. */
export type CheckStatus = "VERIFIED" | "VERIFIED-2" | "MEMORY";
type Value = number | string | boolean;

/** One value of a row: whose it is, what is asked of the product, what must come out, and how near a number must be. */
export type CheckRow = readonly [
  row: number | string,
  status: CheckStatus,
  source: SourceId,
  what: string,
  got: () => Value | undefined,
  want: Value,
  within?: number,
];

/**
 * Holds the product to the rows of a sheet of published values; status, source and value stand in each test's name.
 *
 * @param most last row of the sheet's table: every row from 1 on must be there
 */
export function checkValues(sheet: string, most: number, rows: readonly CheckRow[]): void {
  describe(`check values, ${sheet}`, () => {
    for (const [row, status, source, what, got, want, within = 0] of rows) {
      test(`${sheet} ${row} (${status}), ${source}: ${what} = ${want}${within > 0 ? ` ± ${within}` : ""}`, () => {
        const value = got();
        const near = typeof value === "number" && typeof want === "number" && Math.abs(value - want) <= within;
        expect(near || value === want, `${SOURCES[source].cite}: want ${want}, got ${value}`).toBe(true);
      });
    }
    test(`${sheet}: every row from 1 to ${most} is held`, () => {
      const held = new Set(rows.map(([row]) => row));
      expect(Array.from({ length: most }, (_, at) => at + 1).filter((row) => !held.has(row))).toEqual([]);
    });
  });
}
