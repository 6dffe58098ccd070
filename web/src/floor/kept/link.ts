import { makeId, makeToken } from "./made.ts";
import { atomically, type Device, type Kept } from "./open.ts";

/**
 * The id and the token that this phone gives itself for a link, made once. They are kept before the link is exchanged, so
 * that asking again after a lost answer is the same question; another link gets others, since a token opens one.
 */
export async function comingDevice(kept: Kept, link: string, now: number): Promise<Omit<Device, "person">> {
  const fresh = { link, id: makeId(now), token: makeToken() };
  let coming = fresh;
  await atomically(kept, "strict", async ({ values }) => {
    const before = await values.get("coming");
    if (before?.link === link) coming = before;
    else await values.put(fresh, "coming");
  });
  return { id: coming.id, token: coming.token };
}

/** After the exchange: the phone is this person's. What was kept of another person goes, since it has been sent. */
export async function keepLinked(kept: Kept, device: Device): Promise<void> {
  await atomically(kept, "strict", async ({ values, events, drafts }) => {
    const before = await values.get("device");
    if (before !== undefined && before.person !== device.person) {
      await events.clear();
      await drafts.clear();
      for (const name of ["bundle", "next", "open", "after", "counter"] as const) await values.delete(name);
    }
    await values.delete("coming");
    await values.put(device, "device");
  });
}
