import { type Draft, freshDraft } from "../session/index.ts";
import { atomically, type Kept, type Values } from "./open.ts";

/**
 * Changes what is on the screen but has not happened yet. The change is made on what is kept, so that two tabs do not
 * undo each other. It need not outlive a power cut, only the page.
 */
export async function touchDraft(kept: Kept, session: string, change: (draft: Draft) => Draft): Promise<void> {
  await atomically(kept, "relaxed", async ({ drafts }) =>
    drafts.put(change((await drafts.get(session)) ?? freshDraft(session))),
  );
}

/** Keeps whether the timers speak. */
export async function keepAloud(kept: Kept, aloud: Values["aloud"]): Promise<void> {
  await atomically(kept, "relaxed", ({ values }) => values.put(aloud, "aloud"));
}
