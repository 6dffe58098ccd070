import type { Changed } from "@stave/core/api";

/** Whether the server tells of changes. `since` is when it last did, epoch milliseconds. */
export type LiveState = { readonly lost: false } | { readonly lost: true; readonly since?: number };

const AGAIN_MS = 4000;

/** Listens to the server for as long as the page is open, and tells who changed. */
export class Live {
  #state: LiveState = { lost: false };
  #last: number | undefined;
  readonly #states = new Set<() => void>();
  readonly #changes = new Set<(person: string | undefined) => void>();

  constructor() {
    this.#listen();
  }

  readonly state = (): LiveState => this.#state;

  readonly onState = (heard: () => void): (() => void) => {
    this.#states.add(heard);
    return () => this.#states.delete(heard);
  };

  /** `heard` gets the person who changed, or undefined when anything may have. */
  readonly onChange = (heard: (person: string | undefined) => void): (() => void) => {
    this.#changes.add(heard);
    return () => this.#changes.delete(heard);
  };

  #set(state: LiveState): void {
    if (state.lost === this.#state.lost) return;
    this.#state = state;
    for (const heard of this.#states) heard();
  }

  #tell(person: string | undefined): void {
    for (const heard of this.#changes) heard(person);
  }

  #listen(): void {
    const source = new EventSource("/api/v1/stream");
    source.addEventListener("open", () => {
      const wasLost = this.#state.lost;
      this.#last = Date.now();
      this.#set({ lost: false });
      if (wasLost) this.#tell(undefined);
    });
    source.addEventListener("changed", (event) => {
      this.#last = Date.now();
      this.#tell(personIn(event.data));
    });
    source.addEventListener("error", () => {
      this.#set({ lost: true, ...(this.#last === undefined ? {} : { since: Date.now() }) });
      // A refusal ends an EventSource for good; only a lost connection is tried again by the browser.
      if (source.readyState === EventSource.CLOSED) setTimeout(() => this.#listen(), AGAIN_MS);
    });
  }
}

/** @returns undefined for what cannot be read: then anybody may have changed */
function personIn(data: unknown): string | undefined {
  try {
    const { person } = JSON.parse(String(data)) as Partial<Changed>;
    return typeof person === "string" ? person : undefined;
  } catch {
    return undefined;
  }
}
