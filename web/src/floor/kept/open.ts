import type { Bundle, StaveEvent } from "@stave/core/model";
import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from "idb";
import type { Draft } from "../session/index.ts";

/** Who this phone is. Its token and its id were made here; the token leaves it only as proof. */
export interface Device {
  readonly id: string;
  readonly token: string;
  readonly person: string;
}

/** A bundle as it came, and the mark by which the server knows it. */
export interface KeptBundle {
  readonly etag: string;
  readonly bundle: Bundle;
}

/**
 * What became of an event: `unsent` waits; `sent` stands on the server; `conflict` and `refused` stand only here and
 * are shown; `theirs` came from another device of the person.
 */
export type Fate = "unsent" | "sent" | "conflict" | "refused" | "theirs";

export interface KeptEvent {
  readonly id: string;
  readonly event: StaveEvent;
  readonly fate: Fate;
  /** Occurrence that it is about; "" for none. */
  readonly session: string;
}

/** Single values by name. */
export interface Values {
  /** Set once a link was exchanged. */
  readonly device: Device;
  /** What this phone will be, once that link is exchanged. */
  readonly coming: Omit<Device, "person"> & { readonly link: string };
  /** The highest counter seen or given. */
  readonly counter: number;
  /** Up to where other devices' events were read. */
  readonly after: number;
  /** The session that fills the screen. */
  readonly open: string;
  /** The bundle that is in use, and one that waits for the end of the session. */
  readonly bundle: KeptBundle;
  readonly next: KeptBundle;
  /** True while somebody wants the timers to speak. */
  readonly aloud: boolean;
}

interface Schema extends DBSchema {
  values: { key: keyof Values; value: Values[keyof Values] };
  events: { key: string; value: KeptEvent; indexes: { fate: Fate; session: string } };
  drafts: { key: string; value: Draft };
}

export type Kept = IDBPDatabase<Schema>;
export const STORES = ["values", "events", "drafts"] as const;

/** Opens what this phone keeps. Another tab with an older page gives way. */
export function openKept(name = "stave-floor"): Promise<Kept> {
  return openDB<Schema>(name, 1, {
    upgrade(db) {
      db.createObjectStore("values");
      const events = db.createObjectStore("events", { keyPath: "id" });
      events.createIndex("fate", "fate");
      events.createIndex("session", "session");
      db.createObjectStore("drafts", { keyPath: "session" });
    },
    blocking(_was, _is, { target }) {
      (target as IDBDatabase).close();
    },
  });
}

/** Single values, each with its own type. */
export interface ValueStore {
  get<Name extends keyof Values>(name: Name): Promise<Values[Name] | undefined>;
  put<Name extends keyof Values>(value: Values[Name], name: Name): Promise<unknown>;
  delete(name: keyof Values): Promise<void>;
}

export type Stores = ReturnType<typeof storesOf>;

/** @returns the stores of a transaction over all of them */
function storesOf(all: IDBPTransaction<Schema, typeof STORES, "readwrite">) {
  return {
    values: all.objectStore("values") as unknown as ValueStore,
    events: all.objectStore("events"),
    drafts: all.objectStore("drafts"),
  };
}

/**
 * Writes all or nothing.
 *
 * @param durability `strict`: done when it is on the disk, so that a power cut cannot take it back; `relaxed`: done when
 * the browser has it, so that the page may go
 */
export async function atomically(
  kept: Kept,
  durability: "strict" | "relaxed",
  write: (stores: Stores) => Promise<unknown>,
): Promise<void> {
  const all = kept.transaction(STORES, "readwrite", { durability });
  try {
    await Promise.all([write(storesOf(all)), all.done]);
  } catch (error) {
    if (all.error === null) all.abort();
    await all.done.catch(() => undefined);
    throw error;
  }
}
