import type { StaveEvent } from "@stave/core/model";
import { type Fate, type Kept, type KeptEvent, STORES, storesOf } from "./open.ts";

/** @returns what waits to be sent, in the order in which it was said */
export async function unsentEvents(kept: Kept): Promise<readonly StaveEvent[]> {
  const waiting = await kept.getAllFromIndex("events", "fate", "unsent");
  return waiting.map(({ event }) => event).sort((a, b) => a.n - b.n);
}

/** Notes what became of events, by id. An id that is not here is passed over. */
export async function keepFates(kept: Kept, fates: ReadonlyMap<string, Fate>): Promise<void> {
  const change = kept.transaction("events", "readwrite", { durability: "strict" });
  for (const [id, fate] of fates) {
    const one = await change.store.get(id);
    if (one !== undefined) await change.store.put({ ...one, fate });
  }
  await change.done;
}

/** Keeps what other devices of this person said, and counts on from above it. */
export async function keepTheirs(kept: Kept, theirs: readonly StaveEvent[], after: number): Promise<void> {
  const all = kept.transaction(STORES, "readwrite", { durability: "strict" });
  const { values, events } = storesOf(all);
  let counter = (await values.get("counter")) ?? 0;
  for (const event of theirs) {
    counter = Math.max(counter, event.n);
    if ((await events.get(event.id)) === undefined) {
      await events.add({ id: event.id, event, fate: "theirs", session: event.of?.session ?? "" } satisfies KeptEvent);
    }
  }
  await values.put(counter, "counter");
  await values.put(after, "after");
  await all.done;
}
