/** Runs to take the median of. */
export const RUNS = 5;

/** @returns milliseconds that the job took */
export async function timeOnce(job: () => unknown): Promise<number> {
  const before = performance.now();
  await job();
  return performance.now() - before;
}

/** @returns the value that so many per cent of all are not above */
export function percentile(values: readonly number[], percent: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor((sorted.length * percent) / 100))]!;
}

export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
}

/** @returns the median of several runs, in milliseconds, after one run that is not counted */
export async function medianTime(job: () => unknown, runs: number = RUNS): Promise<number> {
  await job();
  const times: number[] = [];
  for (let run = 0; run < runs; run++) times.push(await timeOnce(job));
  return median(times);
}

/** A fixed, seeded piece of work: numbers drawn, sorted and summed. One `unit` is what it takes on this machine now. */
export function unitJob(): number {
  let state = 20_270_111;
  const numbers = Array.from({ length: 200_000 }, () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  });
  numbers.sort((a, b) => a - b);
  return numbers.reduce((sum, value, index) => sum + value * (index % 7), 0);
}
