/** What a command that stays running asks of the machine. */
export interface Machine {
  /** Epoch milliseconds. */
  readonly clock: () => number;
  /** STAVE_DATABASE: a postgres:// address, or the path of a SQLite file. */
  readonly database: string | undefined;
  /** Resolves when the program is asked to end. */
  readonly asked: () => Promise<void>;
}

export const THIS_MACHINE: Machine = {
  clock: Date.now,
  database: process.env["STAVE_DATABASE"],
  asked: () =>
    new Promise((resolve) => {
      // Once each: asked a second time, the program ends at once.
      for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => resolve());
    }),
};

/** @returns the day by the clock and zone of this machine, YYYY-MM-DD */
export function todayAt(at: number): string {
  const now = new Date(at);
  const two = (value: number) => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
