import type { FitTask, Line, Option, Row, Score } from "./task.ts";

/** Points that a weekly sum costs outside its band; 0 inside. */
export function rowPoints(row: Row, amount: number): number {
  return row.underPoints * Math.max(0, row.low - amount) + row.overPoints * Math.max(0, amount - row.high);
}

/** Sum of every row over the chosen options. */
function rowSums(task: FitTask, chosen: readonly Option[]): number[] {
  const sums = task.rows.map(() => 0);
  for (const option of chosen) for (const [row, amount] of option.rows) sums[row]! += amount;
  return sums;
}

/** @returns the first rule that a choice breaks and that nothing may break, or undefined */
export function breach(task: FitTask, choice: readonly number[]): string | undefined {
  const used = task.capacity.map(() => 0);
  const seen = task.capacity.map(() => new Set<string>());
  for (const [index, block] of task.blocks.entries()) {
    const option = block.options[choice[index]!]!;
    used[block.session]! += option.time;
    for (const { exercise } of option.fillings) {
      if (exercise === undefined) continue;
      if (seen[block.session]!.has(exercise)) return "fit/same-exercise-twice";
      seen[block.session]!.add(exercise);
    }
  }
  return used.some((time, session) => time > task.capacity[session]!) ? "fit/session-too-long" : undefined;
}

/**
 * The plain score of a choice, counted the slow and obvious way, with a line for each constraint that had a say.
 *
 * The search never calls it while searching; explanations and tests do, so that each is a check on the other.
 */
export function score(task: FitTask, choice: readonly number[]): Score & { readonly lines: readonly Line[] } {
  const chosen = task.blocks.map((block, index) => block.options[choice[index]!]!);
  const lines = chosen.flatMap((option) => option.lines);
  const sums = rowSums(task, chosen);
  const rowLines = task.rows.flatMap((row, index): Line[] => {
    const points = rowPoints(row, sums[index]!);
    if (points === 0) return [];
    const data = { row: row.id, amount: sums[index]!, low: row.low, high: row.high };
    return [
      { id: row.muscle === undefined ? "fit/balance" : "fit/weekly-sets", level: row.level, points: -points, data },
    ];
  });
  const all = [...lines, ...rowLines];
  const sum = (level: "must" | "want") =>
    all.reduce((total, line) => (line.level === level ? total + line.points : total), 0);
  return { must: 0 - sum("must"), want: sum("want"), lines: all };
}

/** @returns true when the first is strictly the better score */
export function better(a: Score, b: Score): boolean {
  return a.must !== b.must ? a.must < b.must : a.want > b.want;
}
