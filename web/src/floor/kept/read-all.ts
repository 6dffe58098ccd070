import type { Draft } from "../session/index.ts";
import { type Device, type Kept, type KeptBundle, type KeptEvent, STORES, type ValueStore } from "./open.ts";

/** Everything that this phone keeps, as it stood at one moment. */
export interface AllKept {
  readonly device?: Device;
  readonly bundle?: KeptBundle;
  readonly next?: KeptBundle;
  readonly open?: string;
  readonly aloud: boolean;
  /** Up to where other devices' events were read. */
  readonly after: number;
  readonly events: readonly KeptEvent[];
  readonly drafts: ReadonlyMap<string, Draft>;
}

export async function readAll(kept: Kept): Promise<AllKept> {
  const all = kept.transaction(STORES, "readonly");
  const values = all.objectStore("values") as unknown as ValueStore;
  const [device, bundle, next, open, aloud, after, events, drafts] = await Promise.all([
    values.get("device"),
    values.get("bundle"),
    values.get("next"),
    values.get("open"),
    values.get("aloud"),
    values.get("after"),
    all.objectStore("events").getAll(),
    all.objectStore("drafts").getAll(),
    all.done,
  ]);
  return {
    ...(device === undefined ? {} : { device }),
    ...(bundle === undefined ? {} : { bundle }),
    ...(next === undefined ? {} : { next }),
    ...(open === undefined ? {} : { open }),
    aloud: aloud === true,
    after: after ?? 0,
    events,
    drafts: new Map(drafts.map((draft) => [draft.session, draft])),
  };
}
