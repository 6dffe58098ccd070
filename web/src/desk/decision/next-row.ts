/**
 * The row that takes the focus when some were answered: the next open one behind the last of them, else the one before.
 *
 * @param rows names of all rows in the order of the page
 * @param open true for rows that still wait for an answer
 * @returns undefined when none is left
 */
export function nextRow(
  rows: readonly string[],
  answered: ReadonlySet<string>,
  open: (row: string) => boolean,
): string | undefined {
  const last = rows.findLastIndex((row) => answered.has(row));
  const waits = (row: string) => !answered.has(row) && open(row);
  return rows.slice(last + 1).find(waits) ?? rows.slice(0, Math.max(0, last)).findLast(waits);
}
