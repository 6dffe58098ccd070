import type { Plan, StandingRule, StaveEvent } from "@stave/core/model";

/**
 * What became of one event: `stored` now; `known` with the same bytes already; `conflict`: its id stands with other
 * bytes, and those stay.
 */
export type Ack = "stored" | "known" | "conflict";

/** An event and where it stands among all that was received of its person: later ones have higher positions. */
export interface ReceivedEvent {
  readonly position: number;
  readonly event: StaveEvent;
}

export const DOCUMENT_KINDS = ["person", "place", "programme", "exercises"] as const;
export type DocumentKind = (typeof DOCUMENT_KINDS)[number];

export interface StoredDocument {
  readonly id: string;
  readonly text: string;
  /** sha256 of the text, in hex. */
  readonly hash: string;
}

export interface Revision {
  readonly id: string;
  readonly plan: Plan;
}

/** A way in for one person; only the hash of its token is kept. */
export interface Link {
  readonly token: string;
  readonly person: string;
  /** Epoch milliseconds; from then on it opens nothing. */
  readonly expires: number;
}

/** Whom a token stands for. */
export interface Holder {
  readonly practice: string;
  readonly person: string;
}

/** A coach's page that is signed in; only the hash of its token is kept. */
export interface Session {
  readonly token: string;
  /** Epoch milliseconds; from then on it opens nothing. */
  readonly expires: number;
}

/**
 * Where a practice's records are kept. Whatever a promise has confirmed is on the disk. Nothing of one practice can be
 * reached with the name of another.
 *
 * Names (practice, person, ids, hashes) are 1 to 200 characters without NUL; anything else is a RangeError before the
 * store is touched, and so is a value that JSON cannot hold. Instants are epoch milliseconds given by the caller.
 */
export interface Store {
  /**
   * Adds a batch in one transaction and tells for each event, in the order given, what became of it. Resending in
   * other batches or another order changes nothing. Two with one id in a batch: the first counts.
   *
   * @throws RangeError when an event is another person's
   */
  appendEvents(practice: string, person: string, events: readonly StaveEvent[]): Promise<readonly Ack[]>;
  /**
   * @param after the position up to which the caller has read; whatever is received later has a higher one, so that
   * reading on from it misses nothing
   * @returns events by position
   */
  eventsOf(practice: string, person: string, after?: number): Promise<readonly ReceivedEvent[]>;

  /**
   * Writes a document, over the earlier one of its id.
   *
   * @throws RangeError when the id of a programme is not the sha256 of its text: a published programme never changes
   */
  putDocument(practice: string, kind: DocumentKind, id: string, text: string): Promise<void>;
  getDocument(practice: string, kind: DocumentKind, id: string): Promise<StoredDocument | undefined>;
  /** @returns all of a kind, by id in the order of its bytes */
  listDocuments(practice: string, kind: DocumentKind): Promise<readonly StoredDocument[]>;

  /**
   * Makes a revision the person's latest. Its bytes never change: the same id with other bytes is a conflict. Putting
   * an earlier revision again goes back to it.
   */
  putRevision(practice: string, person: string, revision: Revision): Promise<"stored" | "conflict">;
  latestRevision(practice: string, person: string): Promise<Revision | undefined>;
  revision(practice: string, person: string, id: string): Promise<Revision | undefined>;

  /** Writes a version of a rule. Its bytes never change: the same version with other bytes is a conflict. */
  putRule(practice: string, rule: StandingRule): Promise<"stored" | "conflict">;
  /** @returns every version of every rule, by id, then by version */
  listRules(practice: string): Promise<readonly StandingRule[]>;

  putLink(practice: string, link: Link): Promise<void>;
  /**
   * Exchanges a link for a device token, once. The device makes its own token, so that asking again with the same one
   * after a lost answer succeeds, and any other device is refused.
   *
   * @param token hash of the link's token; it alone tells the practice
   * @param device hash of the device's token
   * @returns whose it is, or undefined for a link that is not there, has expired or was used by another device,
   * and for a device token that came in by another link
   */
  takeLink(token: string, device: string, now: number): Promise<Holder | undefined>;
  /** @returns whose device it is */
  deviceByToken(device: string): Promise<Holder | undefined>;

  /** Lets a session of the practice's owner begin; those that are over by `now` go. */
  putSession(practice: string, session: Session, now: number): Promise<void>;
  /**
   * @param token hash of the session's token; it alone tells the practice
   * @returns the practice, or undefined for a session that is not there or is over
   */
  sessionByToken(token: string, now: number): Promise<string | undefined>;

  close(): Promise<void>;
}
