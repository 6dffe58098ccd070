import type { Bounds } from "./bounds.ts";
import type { Entry, Side } from "./entry.ts";

/** What fills the screen beside the course of the session. */
export type Aside = "overview" | "hurt" | "told" | "easier" | "stop";

export interface Timer {
  readonly kind: "rest" | "hold";
  /** Whose hold. */
  readonly side?: Side;
  /** Epoch milliseconds by this phone's clock: counted from instants, so that sleep and a closed page do not stop it. */
  readonly from: number;
  /** Seconds asked for. */
  readonly seconds: number;
}

/** Everything on the screen that is not an event yet: what the thumb did, and where in the session it is. */
export interface Draft {
  readonly session: string;
  /** Key of a step of the course; undefined: the first that is not behind. */
  readonly at?: string;
  readonly aside?: Aside;
  /** By place. */
  readonly entries: Readonly<Record<string, Entry>>;
  /** By slot: limits of a newer bundle as they were when the movement was opened; later ones do not move it. */
  readonly bounds: Readonly<Record<string, Bounds & { readonly exercise: string }>>;
  /** Keys of steps that are behind without an event: warm-up, conditioning, what waits. */
  readonly passed: readonly string[];
  readonly hurt?: { readonly where?: string; readonly howMuch?: number };
  /** What was done about a pain that was just noted. */
  readonly told?: {
    readonly where: string;
    readonly howMuch: number;
    readonly swaps: readonly { readonly from: string; readonly to: string }[];
    readonly waits: readonly string[];
  };
  readonly timer?: Timer;
}

export function freshDraft(session: string): Draft {
  return { session, entries: {}, bounds: {}, passed: [] };
}
