import { makeId, makeToken } from "./made.ts";
import { type Device, type Kept, STORES, storesOf } from "./open.ts";

/**
 * The phone's own id and token, made at the first call. They are kept before the link is exchanged, so that asking
 * again after a lost answer is the same question.
 */
export async function deviceOf(kept: Kept, now: number): Promise<Device> {
  const all = kept.transaction(STORES, "readwrite", { durability: "strict" });
  const { values } = storesOf(all);
  let device = await values.get("device");
  if (device === undefined) {
    device = { id: makeId(now), token: makeToken() };
    await values.put(device, "device");
  }
  await all.done;
  return device;
}

/** A device for a new link on a phone that has one already; it becomes the phone's once the link was exchanged. */
export function anotherDevice(now: number): Device {
  return { id: makeId(now), token: makeToken() };
}

/** After the exchange: the phone is this person's. What was kept of another person goes, since it has been sent. */
export async function keepLinked(kept: Kept, device: Device, person: string): Promise<void> {
  const all = kept.transaction(STORES, "readwrite", { durability: "strict" });
  const { values, events, drafts } = storesOf(all);
  const before = await values.get("device");
  if (before?.person !== undefined && before.person !== person) {
    await events.clear();
    await drafts.clear();
    for (const name of ["bundle", "next", "open", "after", "counter"] as const) await values.delete(name);
  }
  await values.put({ ...device, person }, "device");
  await all.done;
}
