import { type FitTask, type Option, optionsOf, type Pick, type PlacedLine, type Row, type Score } from "./task.ts";

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

const BREACHES = [
  "fit/same-exercise-twice",
  "fit/station-taken",
  "fit/too-many-stations",
  "fit/session-too-long",
] as const;
export type Breach = (typeof BREACHES)[number];

/** @returns the first rule that a choice breaks and that nothing may break, or undefined */
export function breach(task: FitTask, choice: readonly Pick[]): Breach | undefined {
  for (const session of task.capacity.keys()) {
    const blocks = task.blocks.flatMap((block, index) =>
      block.session === session ? [{ block, pick: choice[index]!, options: optionsOf(block, choice[index]!) }] : [],
    );
    const options = blocks.flatMap((each) => each.options);
    const forms = options.flatMap(({ exercise }) => exercise ?? []);
    if (new Set(forms).size < forms.length) return "fit/same-exercise-twice";
    for (const { block, options: together } of blocks) {
      const taken = together.flatMap(({ stations }) => stations);
      for (const [station, count] of block.atOnce)
        if (taken.filter((each) => each === station).length > count) return "fit/station-taken";
    }
    const stations = new Set(options.flatMap((option) => option.stations));
    if (task.stations !== undefined && stations.size > task.stations) return "fit/too-many-stations";
    const between = blocks.reduce((sum, { block, pick }) => sum + block.ways[pick.way]!.time, 0);
    if (options.reduce((sum, { time }) => sum + time, between) > task.capacity[session]!) return "fit/session-too-long";
  }
  return undefined;
}

/**
 * The plain score of a choice, counted the slow and obvious way, with a line for each constraint that had a say.
 *
 * The search never calls it while searching; explanations and tests do, so that each is a check on the other.
 */
export function score(task: FitTask, choice: readonly Pick[]): Score & { readonly lines: readonly PlacedLine[] } {
  const chosen = task.blocks.flatMap((block, index) =>
    optionsOf(block, choice[index]!).map((option, step) => ({ option, slot: block.slots[step] })),
  );
  const lines = chosen.flatMap(({ option, slot }) =>
    option.lines.map((line): PlacedLine => (slot === undefined ? line : { ...line, slot })),
  );
  const sums = rowSums(
    task,
    chosen.map(({ option }) => option),
  );
  const rowLines = task.rows.flatMap((row, index): PlacedLine[] => {
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

/**
 * Of plans with equal points: the least sum of ranks, then block by block the earlier way and, step by step, the
 * earlier option.
 *
 * @returns true when the first stands before the second in this order
 */
export function comesFirst(task: FitTask, a: readonly Pick[], b: readonly Pick[]): boolean {
  const ranks = (choice: readonly Pick[]) =>
    task.blocks.reduce(
      (sum, block, index) => optionsOf(block, choice[index]!).reduce((total, { rank }) => total + rank, sum),
      0,
    );
  const flat = (choice: readonly Pick[]) => choice.flatMap(({ way, options }) => [way, ...options]);
  const [mine, theirs] = [flat(a), flat(b)];
  const [r, s] = [ranks(a), ranks(b)];
  if (r !== s) return r < s;
  const at = mine.findIndex((value, index) => value !== theirs[index]);
  return at >= 0 && mine[at]! < theirs[at]!;
}
