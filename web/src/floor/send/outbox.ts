import { type Fate, type Kept, keepFates, unsentEvents } from "../kept/index.ts";
import { type Outcome, outcomeOf, sendEvents } from "./ask.ts";

/** Most events of one batch, by the contract. */
const MOST = 100;
/** The server has read the batch and will never take it as it is. */
const REFUSED = new Set([400, 413, 422]);

/**
 * Sends all that waits, oldest first. What the server confirms is noted one by one; what it gave no word on is sent
 * again. A batch that is refused is halved until the one event that is at fault stands alone; that one is kept and
 * shown, and holds nothing else up.
 *
 * @param changed called whenever something was noted
 */
export async function emptyOutbox(kept: Kept, token: string, changed: () => Promise<void>): Promise<Outcome> {
  for (let size = MOST; ; ) {
    const batch = (await unsentEvents(kept)).slice(0, size);
    if (batch.length === 0) return "done";
    const answer = await sendEvents(token, { events: batch });
    if (answer.ok) {
      const ours = new Set(batch.map(({ id }) => id));
      const fates = answer.body.acks
        .filter(({ id }) => ours.has(id))
        .map(({ id, ack }) => [id, ack === "conflict" ? "conflict" : "sent"] as const);
      if (fates.length === 0) return "try again";
      await keepFates(kept, new Map<string, Fate>(fates));
      size = MOST;
    } else if (answer.status !== "nothing" && REFUSED.has(answer.status)) {
      if (batch.length > 1) {
        size = Math.floor(batch.length / 2);
        continue;
      }
      await keepFates(kept, new Map([[batch[0]!.id, "refused"]]));
      size = MOST;
    } else return outcomeOf(answer);
    await changed();
  }
}
