import type { Priced, Scaled } from "./bound.ts";
import { rowPoints } from "./score.ts";
import type { FitTask } from "./task.ts";

/** Exact value of a choice on the one scale. */
export function worthOf(task: FitTask, scaled: Scaled, choice: readonly number[]): number {
  const sums = task.rows.map(() => 0);
  let worth = 0;
  for (const [index, o] of choice.entries()) {
    worth += scaled.value[index]![o]!;
    for (const [row, amount] of task.blocks[index]!.options[o]!.rows) sums[row]! += amount;
  }
  for (const [index, row] of task.rows.entries()) {
    worth -= rowPoints(row, sums[index]!) * (row.level === "must" ? scaled.weight : 1);
  }
  return worth;
}

/** Which exercises each option of each block uses, as numbers. */
export type Uses = readonly (readonly (readonly number[])[])[];

export function usesOf(task: FitTask): Uses {
  const numbers = new Map<string, number>();
  const numberOf = (id: string) => {
    const number = numbers.get(id) ?? numbers.size;
    numbers.set(id, number);
    return number;
  };
  return task.blocks.map((block) =>
    block.options.map((option) =>
      option.fillings.flatMap((filling) => (filling.exercise === undefined ? [] : [numberOf(filling.exercise)])),
    ),
  );
}

/**
 * A feasible plan from prices: block by block the option of best priced worth that is still allowed, given what is
 * taken and what the rest of the session can still add in the time left.
 *
 * @returns undefined when it runs into a dead end
 */
export function dealOut(task: FitTask, uses: Uses, dual: Priced): number[] | undefined {
  const choice: number[] = [];
  const left = [...task.capacity];
  const seen = task.capacity.map(() => new Set<number>());
  for (const [index, block] of task.blocks.entries()) {
    const taken = seen[block.session]!;
    const last = task.blocks[index + 1]?.session !== block.session;
    let best: number | undefined;
    let most = Number.NEGATIVE_INFINITY;
    for (const [o, option] of block.options.entries()) {
      const after = left[block.session]! - option.time;
      if (after < 0 || uses[index]![o]!.some((exercise) => taken.has(exercise))) continue;
      const worth = dual.reduced[index]![o]! + (last ? 0 : dual.rest[index + 1]![after]!);
      if (worth > most) {
        most = worth;
        best = o;
      }
    }
    if (best === undefined) return undefined;
    choice.push(best);
    left[block.session]! -= block.options[best]!.time;
    for (const exercise of uses[index]![best]!) taken.add(exercise);
  }
  return choice;
}

/** Changes one block at a time as long as that makes a feasible plan better; what it returns is feasible too. */
export function climb(task: FitTask, scaled: Scaled, uses: Uses, from: readonly number[]): number[] {
  const choice = [...from];
  const sums = task.rows.map(() => 0);
  const left = [...task.capacity];
  const count = task.capacity.map(() => new Map<number, number>());
  const put = (index: number, o: number, sign: 1 | -1) => {
    const block = task.blocks[index]!;
    for (const [row, amount] of block.options[o]!.rows) sums[row]! += sign * amount;
    left[block.session]! -= sign * block.options[o]!.time;
    const counts = count[block.session]!;
    for (const exercise of uses[index]![o]!) counts.set(exercise, (counts.get(exercise) ?? 0) + sign);
  };
  for (const [index, o] of choice.entries()) put(index, o, 1);
  const points = (r: number, sum: number) =>
    scaled.under[r]! * Math.max(0, task.rows[r]!.low - sum) + scaled.over[r]! * Math.max(0, sum - task.rows[r]!.high);
  /** What an option is worth on top of the rest: its own value, and what it changes in the rows that it touches. */
  const worthNow = (index: number, o: number) => {
    let worth = scaled.value[index]![o]!;
    for (const [r, amount] of task.blocks[index]!.options[o]!.rows)
      worth += points(r, sums[r]!) - points(r, sums[r]! + amount);
    return worth;
  };
  for (let better = true; better; ) {
    better = false;
    for (const [index, block] of task.blocks.entries()) {
      const before = choice[index]!;
      put(index, before, -1);
      let best = before;
      let most = worthNow(index, before);
      for (const [o, option] of block.options.entries()) {
        if (option.time > left[block.session]!) continue;
        const worth = worthNow(index, o);
        if (!(worth > most)) continue;
        if (uses[index]![o]!.some((exercise) => (count[block.session]!.get(exercise) ?? 0) > 0)) continue;
        most = worth;
        best = o;
      }
      put(index, best, 1);
      choice[index] = best;
      better ||= best !== before;
    }
  }
  return choice;
}
