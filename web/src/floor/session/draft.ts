import type { Entry } from "./entry.ts";

/** What fills the screen beside the course of the session. */
export type Aside = "overview" | "hurt" | "easier" | "ended";

export interface Timer {
  readonly kind: "rest" | "hold";
  /** Epoch milliseconds by this phone's clock: counted from instants, so that sleep and a closed page do not stop it. */
  readonly from: number;
  /** Seconds asked for. */
  readonly seconds: number;
}

/** Everything on the screen that is not an event yet: what the thumb did, and where in the session it is. */
export interface Draft {
  readonly session: string;
  /** Index in the course; undefined: the first that is not done. */
  readonly at?: number;
  readonly aside?: Aside;
  /** By place. */
  readonly entries: Readonly<Record<string, Entry>>;
  /** By slot: the bundle whose limits bind it, since it was first opened. */
  readonly under: Readonly<Record<string, string>>;
  /** Steps of the course that are behind without an event: warm-up and conditioning. */
  readonly passed: readonly string[];
  readonly hurt?: { readonly where?: string; readonly howMuch?: number };
  readonly timer?: Timer;
}

export function freshDraft(session: string): Draft {
  return { session, entries: {}, under: {}, passed: [] };
}
