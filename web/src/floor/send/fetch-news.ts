import { type AllKept, type Kept, keepBundle, keepTheirs } from "../kept/index.ts";
import { askBundle, askEvents, type Outcome, outcomeOf } from "./ask.ts";

/** Reads on in what the person's other devices said, to the end. */
export async function fetchTheirs(kept: Kept, token: string, after: number): Promise<Outcome> {
  for (let from = after; ; ) {
    const answer = await askEvents(token, from);
    if (!answer.ok) return outcomeOf(answer);
    if (answer.body.after <= from) return "done";
    await keepTheirs(kept, answer.body.events, answer.body.after);
    from = answer.body.after;
  }
}

/** Fetches what is new: first what the person's other devices said, then the bundle. */
export async function fetchNews(
  kept: Kept,
  { device, bundle, next, after }: Pick<AllKept, "device" | "bundle" | "next" | "after">,
): Promise<Outcome> {
  const { token, person } = device!;
  const theirs = await fetchTheirs(kept, token, after);
  if (theirs !== "done") return theirs;
  const answer = await askBundle(token, (next ?? bundle)?.etag);
  if (answer.ok && answer.body.v === 1 && answer.body.person.id === person) {
    await keepBundle(kept, { etag: answer.etag, bundle: answer.body });
  }
  return answer.ok || answer.status === 304 ? "done" : outcomeOf(answer);
}
