import { stringify } from "csv-stringify/sync";

export type Value = string | number | boolean;

/**
 * A table for spreadsheets and scripts: RFC 4180, a point for decimals, UTF-8 with a byte order mark, since without it
 * common spreadsheets read every name outside ASCII wrongly, and readers of CSV know to pass over it. Yes and no are
 * written as words.
 *
 * @source rfc4180
 */
export function writeTable(columns: readonly string[], rows: readonly (readonly Value[])[]): string {
  return stringify([columns, ...rows], {
    bom: true,
    record_delimiter: "windows",
    cast: { boolean: (value) => (value ? "yes" : "no") },
  });
}
