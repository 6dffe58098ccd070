import { runsIn, slotsIn } from "../measures/index.ts";
import type { PlanSession, Reason, SlotKey } from "../model/index.ts";

/** A session without some of its slots: they stand open, with the reason, and their lighter sets are gone. */
export function withoutSlots(session: PlanSession, out: ReadonlyMap<SlotKey, Reason>): PlanSession {
  const keys = [...slotsIn(session), ...runsIn(session).map(({ slot }) => slot)].map(({ key }) => key);
  const gone = keys.filter((key) => out.has(key));
  if (gone.length === 0) return session;
  const blocks = session.blocks.flatMap(({ kind, restS, slots }): PlanSession["blocks"] => {
    const kept = slots.filter(({ key }) => !out.has(key));
    if (kept.length === 0) return [];
    if (kept.length === slots.length || kept.length > 1)
      return [{ kind, slots: kept, ...(restS === undefined ? {} : { restS }) }];
    return [{ kind: "straight", slots: kept }];
  });
  return {
    ...session,
    warmup: session.warmup.filter((item) => item.for === undefined || !out.has(item.for)),
    blocks,
    conditioning: session.conditioning.filter(({ run }) => run === undefined || !out.has(run.slot)),
    open: [...session.open, ...gone.map((key) => ({ key, why: [out.get(key)!] }))],
  };
}
