import { atomically, type Kept, type Stores } from "./open.ts";

/** A session that nobody touched for so long is over, whether its end was said or not. Ours, no source. */
const FORGOTTEN_MS = 6 * 3_600_000;

/** No session fills the screen any more, and a bundle that waited for that is taken up. */
export async function leaveSession(values: Stores["values"]): Promise<void> {
  await values.delete("open");
  const next = await values.get("next");
  if (next === undefined) return;
  await values.put(next, "bundle");
  await values.delete("next");
}

/**
 * Leaves a session that was forgotten, at a cold start: it would hold a newer plan back for ever. Nothing is said of it,
 * and it can be gone on with while it is in the plan.
 */
export async function leaveForgotten(kept: Kept, now: number): Promise<void> {
  await atomically(kept, "strict", async ({ values, events }) => {
    const open = await values.get("open");
    if (open === undefined) return;
    const said = await events.index("session").getAll(open);
    const last = Math.max(...said.map(({ event }) => event.at));
    if (!(now - last < FORGOTTEN_MS)) await leaveSession(values);
  });
}
