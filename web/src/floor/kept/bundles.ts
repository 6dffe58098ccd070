import { atomically, type Kept, type KeptBundle } from "./open.ts";

/**
 * Keeps a bundle that came. Between sessions it is in use at once; while one fills the screen it waits for the end, so
 * that nothing moves under the thumb. Records that the server has and that no session on the phone needs go.
 */
export async function keepBundle(kept: Kept, came: KeptBundle): Promise<void> {
  await atomically(kept, "strict", async ({ values, events, drafts }) => {
    await values.put(Math.max((await values.get("counter")) ?? 0, came.bundle.n), "counter");
    if ((await values.get("open")) !== undefined) await values.put(came, "next");
    else {
      await values.put(came, "bundle");
      await values.delete("next");
      const needed = new Set(came.bundle.sessions.map(({ id }) => id));
      for await (const cursor of events) {
        const { fate, session } = cursor.value;
        if ((fate === "sent" || fate === "theirs") && !needed.has(session)) await cursor.delete();
      }
      for await (const cursor of drafts) if (!needed.has(cursor.value.session)) await cursor.delete();
    }
  });
}
