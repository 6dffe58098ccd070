/** Tells those who listen that something of a person has changed. Nothing is kept: who was away asks again. */
export class Changes {
  readonly #listeners = new Map<string, Set<(person: string) => void>>();

  tell(practice: string, person: string): void {
    for (const heard of this.#listeners.get(practice) ?? []) heard(person);
  }

  /** @returns what ends the listening */
  listen(practice: string, heard: (person: string) => void): () => void {
    const all = this.#listeners.get(practice) ?? new Set();
    this.#listeners.set(practice, all.add(heard));
    return () => {
      all.delete(heard);
      if (all.size === 0) this.#listeners.delete(practice);
    };
  }
}
