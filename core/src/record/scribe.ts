import {
  canonicalJson,
  type EventData,
  type EventKind,
  type EventOf,
  highestCounter,
  type SetDone,
  type StaveEvent,
  standingEvents,
} from "../model/index.ts";
import type { RecordOptions, RecordPerson } from "./record-input.ts";
import type { RowNotes } from "./row-notes.ts";
import { shown } from "./taken.ts";
import { TakenBack } from "./taken-back.ts";

/** The device by which paper is recorded; no phone goes by it. */
export const PAPER_DEVICE = "stave-paper";

type Kind = Extract<
  EventKind,
  | "session-started"
  | "set-done"
  | "set-left-out"
  | "ran"
  | "hurt"
  | "swapped"
  | "session-ended"
  | "missed"
  | "rated"
  | "outside"
  | "next-morning"
  | "pressure"
  | "noted"
>;

interface Draft {
  readonly kind: Kind;
  readonly data: StaveEvent["data"];
  readonly at: number;
  readonly of: EventOf | undefined;
  /** The rows it was read from; nothing is written while something is asked about one of them. */
  readonly rows: readonly RowNotes[];
}

/** What a set says, without how it was written. */
function meaning(data: StaveEvent["data"]): string {
  const { written: _, ...said } = data as Partial<SetDone>;
  return canonicalJson(said);
}

/**
 * Writes the events of one person. Ids come from what is said, so that the same said again is known; a set that stands
 * with other words is asked about, or corrected where the coach said so.
 */
export class Scribe {
  readonly #of: RecordPerson;
  readonly #hash: (text: string) => string;
  readonly #correct: boolean;
  readonly #drafts: Draft[] = [];
  readonly #ids: ReadonlySet<string>;
  readonly #standing: ReadonlyMap<string, StaveEvent>;
  readonly #same = new Map<string, number>();
  readonly #undo: boolean;
  readonly #said: TakenBack;

  constructor(of: RecordPerson, hash: (text: string) => string, { correct, undo }: RecordOptions) {
    this.#of = of;
    this.#hash = hash;
    this.#correct = correct === true;
    this.#undo = undo === true;
    this.#said = new TakenBack(of.events);
    this.#ids = new Set(of.events.map(({ id }) => id));
    const sets = standingEvents(of.events).flatMap(({ event }) => {
      const place = placeOf(event.of);
      const said = event.kind === "set-done" || event.kind === "set-left-out";
      return place === undefined || !said ? [] : [[place, event] as const];
    });
    this.#standing = new Map(sets);
  }

  /** @returns the id that it has, or would have */
  write<K extends Kind>(
    kind: K,
    data: EventData[K],
    at: number,
    of: EventOf | undefined,
    rows: readonly RowNotes[],
  ): string {
    this.#drafts.push({ kind, data: data as StaveEvent["data"], at, of, rows });
    const { plan: _, ...where } = of ?? {};
    return this.#id(canonicalJson({ kind, data, where, day: this.#of.dayOf(at), rows: [] }));
  }

  /** What is new of all that was written; rows tell how much of each was known already. */
  events(): {
    readonly events: readonly StaveEvent[];
    readonly counts: ReadonlyMap<RowNotes, { fresh: number; known: number }>;
  } {
    const counts = new Map<RowNotes, { fresh: number; known: number }>();
    const fresh: StaveEvent[] = [];
    let n = highestCounter(this.#of.events);
    this.#same.clear();
    const gone = new Set<string>();
    // That a session began stands as long as anything else of it does.
    const beganLast = (one: Draft, other: Draft) =>
      Number(one.kind === "session-started") - Number(other.kind === "session-started");
    for (const draft of this.#undo ? this.#drafts.toSorted(beganLast) : this.#drafts) {
      const { kind, data, at, of, rows } = draft;
      const { plan: _, ...where } = of ?? {};
      const id = this.#id(canonicalJson({ kind, data, where, day: this.#of.dayOf(at), rows: [] }));
      if (this.#undo) {
        const stays = kind === "session-started" && this.#said.isMore(of!.session, gone);
        const back = stays ? undefined : this.#said.back(id);
        if (back?.kind === "struck") gone.add(id);
        const known = back === undefined ? "known" : "fresh";
        for (const row of rows) {
          const count = counts.get(row) ?? { fresh: 0, known: 0 };
          count[known]++;
          counts.set(row, count);
        }
        if (back === undefined) continue;
        n++;
        fresh.push({
          ...back,
          v: 1,
          id: this.#name(`undo\n${id}`),
          person: this.#of.person.id,
          device: PAPER_DEVICE,
          n,
          at,
        });
        continue;
      }
      const takenBack = this.#said.by(id);
      const isThere = this.#ids.has(id) && takenBack === undefined;
      const stands = isThere ? undefined : this.#othersWord(draft);
      if (rows.some(({ problems }) => problems.length > 0)) continue;
      const isKnown = isThere || stands === "same";
      for (const row of rows) {
        const count = counts.get(row) ?? { fresh: 0, known: 0 };
        count[isKnown ? "known" : "fresh"]++;
        counts.set(row, count);
      }
      if (isKnown) continue;
      n++;
      fresh.push({
        v: 1,
        id: takenBack === undefined ? id : this.#name(`again\n${takenBack}`),
        person: this.#of.person.id,
        device: PAPER_DEVICE,
        n,
        at,
        kind,
        ...(of === undefined ? {} : { of }),
        ...(takenBack === undefined ? {} : { replaces: takenBack }),
        ...(stands === undefined ? {} : { replaces: stands.id }),
        data,
      } as StaveEvent);
    }
    return { events: fresh, counts };
  }

  /** What stands of the same set: "same" where it says the same, the event where it is to be replaced. */
  #othersWord({ kind, data, of, rows }: Draft): StaveEvent | "same" | undefined {
    const place = kind === "set-done" || kind === "set-left-out" ? placeOf(of) : undefined;
    const stands = place === undefined ? undefined : this.#standing.get(place);
    if (stands === undefined) return undefined;
    if (stands.kind === kind && meaning(stands.data) === meaning(data)) return "same";
    const said = saying(stands);
    if (this.#correct) {
      rows[0]!.repairs.push(
        shown({ code: "record/corrected", data: { read: said } }, "result", rows[0]!.text("result")),
      );
      return stands;
    }
    rows[0]!.ask("result", "record/differs", { allowed: said });
    return undefined;
  }

  #id(text: string): string {
    const many = this.#same.get(text) ?? 0;
    this.#same.set(text, many + 1);
    return this.#name(`${many}\n${text}`);
  }

  #name(text: string): string {
    return `paper-${this.#hash(`${this.#of.person.id}\n${text}`).slice(0, 32)}`;
  }
}

function placeOf(of: EventOf | undefined): string | undefined {
  return of?.slot === undefined || of.set === undefined ? undefined : `${of.session}\n${of.slot}\n${of.set}`;
}

/** A set as it stands, short enough for a message. */
function saying({ kind, data }: StaveEvent): string {
  if (kind !== "set-done") return "left out";
  const { reps, holdS, load } = data as unknown as SetDone;
  const amount = reps ?? holdS ?? "as asked";
  const sides =
    typeof amount === "object" ? `${amount.left ?? "?"} left, ${amount.right ?? "?"} right` : String(amount);
  return typeof load === "string" ? sides : `${sides} with ${load.value} ${load.unit}`;
}
