import type { EventData, EventKind, EventOf, StaveEvent } from "@stave/core/model";
import { type Draft, freshDraft } from "../session/index.ts";
import { leaveSession } from "./leave.ts";
import { makeId } from "./made.ts";
import { atomically, type Kept } from "./open.ts";

/** What happened, before this phone gives it an id and a counter. */
export type Said = {
  readonly [Kind in EventKind]: {
    readonly kind: Kind;
    readonly data: EventData[Kind];
    readonly of: EventOf;
    readonly replaces?: string;
  };
}[EventKind];

export interface Change {
  /** Together or not at all. */
  readonly said: readonly Said[];
  readonly draft?: (draft: Draft) => Draft;
  /** The session that fills the screen from now on, or none. */
  readonly open?: string | "none";
  /** True when another tab has said it already; then no event is written. */
  readonly already?: (events: readonly StaveEvent[]) => boolean;
}

/**
 * Writes what happened, the counter and the draft in one transaction, and returns when the browser says that they are
 * on the disk. When the session is left, a bundle that waited is taken up in the same transaction.
 *
 * @param now epoch milliseconds by this phone's clock
 */
export async function record(kept: Kept, session: string, change: Change, now: number): Promise<void> {
  await atomically(kept, "strict", async ({ values, events, drafts }) => {
    const before = (await events.index("session").getAll(session)).map(({ event }) => event);
    if (change.said.length > 0 && change.already?.(before) !== true) {
      const device = await values.get("device");
      let n = (await values.get("counter")) ?? 0;
      for (const said of change.said) {
        const id = makeId(now);
        n++;
        // An event as data of any kind: a type with named fields is no index of fields to the compiler.
        const data = said.data as unknown as StaveEvent["data"];
        const event: StaveEvent = { v: 1, id, person: device!.person, device: device!.id, n, at: now, ...said, data };
        await events.add({ id, event, fate: "unsent", session });
      }
      await values.put(n, "counter");
    }
    if (change.draft !== undefined) {
      await drafts.put(change.draft((await drafts.get(session)) ?? freshDraft(session)));
    }
    if (change.open === "none") await leaveSession(values);
    else if (change.open !== undefined) await values.put(change.open, "open");
  });
}
