/** Runs jobs of one key one after another, in the order in which they were given; those of other keys go on beside them. */
export class InTurn {
  readonly #last = new Map<string, Promise<unknown>>();

  async run<T>(key: string, job: () => Promise<T>): Promise<T> {
    const before = this.#last.get(key) ?? Promise.resolve();
    const mine = before.then(job, job);
    const settled = mine.catch(() => undefined);
    this.#last.set(key, settled);
    try {
      return await mine;
    } finally {
      if (this.#last.get(key) === settled) this.#last.delete(key);
    }
  }
}
