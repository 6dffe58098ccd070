import { type Draft, freshDraft } from "../session/index.ts";
import { type Kept, STORES, storesOf, type Values } from "./open.ts";

/**
 * Changes what is on the screen but has not happened yet. The change is made on what is kept, so that two tabs do not
 * undo each other. It need not outlive a power cut, only the page.
 */
export async function touchDraft(kept: Kept, session: string, change: (draft: Draft) => Draft): Promise<void> {
  const writing = kept.transaction("drafts", "readwrite", { durability: "relaxed" });
  await writing.store.put(change((await writing.store.get(session)) ?? freshDraft(session)));
  await writing.done;
}

/** Keeps whether the timers speak. */
export async function keepAloud(kept: Kept, aloud: Values["aloud"]): Promise<void> {
  const all = kept.transaction(STORES, "readwrite", { durability: "relaxed" });
  await storesOf(all).values.put(aloud, "aloud");
  await all.done;
}
