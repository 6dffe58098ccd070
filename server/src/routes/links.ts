import { hashOf, Limits, newToken, Refusal } from "../safeguard/index.ts";
import type { Handlers, Serving } from "./handlers.ts";

const DAY_MS = 86_400_000;
/** A link waits so long to be opened. Ours, no source. */
const LINK_DAYS = 7;

/** @returns a new way in for one person: the path with the token in its fragment, which no server is sent */
export async function newLink(
  store: Serving["store"],
  practice: string,
  person: string,
  now: number,
): Promise<{ readonly path: string; readonly expires: number }> {
  const token = newToken();
  const expires = now + LINK_DAYS * DAY_MS;
  await store.putLink(practice, { token: hashOf(token), person, expires });
  return { path: `/go/#${token}`, expires };
}

export function links({ store, clock }: Serving): Pick<Handlers, "exchange" | "link"> {
  const limits = new Limits({ burst: 60, aMinute: 60 });
  return {
    async exchange({ input: { link, token }, request }) {
      limits.take(request.ip, clock());
      const holder = await store.takeLink(hashOf(link), hashOf(token), clock());
      if (holder === undefined)
        throw new Refusal(403, "link/not-open", "This link is unknown, has expired or was opened on another phone");
      return { person: holder.person };
    },

    async link({ caller: { practice }, params: { id } }) {
      if ((await store.getDocument(practice, "person", id)) === undefined)
        throw new Refusal(404, "person/unknown", "There is nobody of that id");
      return await newLink(store, practice, id, clock());
    },
  };
}
