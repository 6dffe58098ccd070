import type { StaveEvent } from "@stave/core/model";
import { atomically, type Fate, type Kept, type KeptEvent } from "./open.ts";

/** @returns what waits to be sent, in the order in which it was said */
export async function unsentEvents(kept: Kept): Promise<readonly StaveEvent[]> {
  const waiting = await kept.getAllFromIndex("events", "fate", "unsent");
  return waiting.map(({ event }) => event).sort((a, b) => a.n - b.n);
}

/** Notes what became of events, by id. An id that is not here is passed over. */
export async function keepFates(kept: Kept, fates: ReadonlyMap<string, Fate>): Promise<void> {
  await atomically(kept, "strict", async ({ events }) => {
    for (const [id, fate] of fates) {
      const one = await events.get(id);
      if (one !== undefined) await events.put({ ...one, fate });
    }
  });
}

/** Keeps what other devices of this person said, and counts on from above it. */
export async function keepTheirs(kept: Kept, theirs: readonly StaveEvent[], after: number): Promise<void> {
  await atomically(kept, "strict", async ({ values, events }) => {
    let counter = (await values.get("counter")) ?? 0;
    for (const event of theirs) {
      counter = Math.max(counter, event.n);
      if ((await events.get(event.id)) === undefined) {
        await events.add({ id: event.id, event, fate: "theirs", session: event.of?.session ?? "" } satisfies KeptEvent);
      }
    }
    await values.put(counter, "counter");
    await values.put(after, "after");
  });
}
