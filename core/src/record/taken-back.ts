import { type StaveEvent, standingEvents } from "../model/index.ts";

/** What of a record can be taken back, and what was. */
export class TakenBack {
  readonly #byId: ReadonlyMap<string, StaveEvent>;
  /** By the id of the word that stands. */
  readonly #standing: ReadonlyMap<string, StaveEvent>;
  /** The last word on what stands no more, by its first. */
  readonly #struck: ReadonlyMap<string, string>;

  /** @param events of one person */
  constructor(events: readonly StaveEvent[]) {
    this.#byId = new Map(events.map((event) => [event.id, event]));
    const standing = standingEvents(events);
    this.#standing = new Map(standing.map(({ event }) => [event.id, event]));
    const first = new Set(standing.map((one) => this.#firstOf(one.first.id)));
    this.#struck = new Map(
      events.flatMap((event) => {
        const origin = this.#firstOf(event.id);
        return event.kind === "struck" && !first.has(origin) ? [[origin, event.id] as const] : [];
      }),
    );
  }

  /**
   * The word that takes an event back: nothing in its place, or what it had corrected.
   *
   * @returns undefined where it is not there, stands no more, or was corrected since
   */
  back(id: string): Pick<StaveEvent, "kind" | "of" | "replaces" | "data"> | undefined {
    const event = this.#standing.get(id);
    if (event === undefined) return undefined;
    const before = event.replaces === undefined ? undefined : this.#byId.get(event.replaces);
    const { kind, data } = before === undefined || before.kind === "struck" ? STRUCK : before;
    return { kind, ...(event.of === undefined ? {} : { of: event.of }), replaces: id, data };
  }

  /** @returns whether anything of a session stands beside its beginning and what is gone */
  isMore(session: string, gone: ReadonlySet<string>): boolean {
    return [...this.#standing.values()].some(
      ({ id, kind, of }) => of?.session === session && kind !== "session-started" && !gone.has(id),
    );
  }

  /** @returns the id of the word by which an event was taken back; undefined while it stands */
  by(id: string): string | undefined {
    return this.#byId.has(id) ? this.#struck.get(this.#firstOf(id)) : undefined;
  }

  /** Back along the corrections; a ring, which no honest device makes, ends where it began. */
  #firstOf(id: string): string {
    const seen = new Set<string>();
    let now = id;
    for (;;) {
      seen.add(now);
      const before = this.#byId.get(now)?.replaces;
      if (before === undefined || seen.has(before)) return now;
      now = before;
    }
  }
}

const STRUCK = { kind: "struck", data: {} } as const;
