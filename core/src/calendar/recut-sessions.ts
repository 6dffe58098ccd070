import { type AskedSession, directSets, sessionSeconds } from "../measures/index.ts";
import { type Catalogue, laneOf, type Muscle } from "../model/index.ts";
import type { RecutSession, RecutSlot } from "./recut.ts";

/**
 * One week's sessions in the shape that `recut` deals: a block goes as one, with the lighter sets that lead up to its
 * slots. Its key is that of its first slot; slots without a key are counted, from 1.
 *
 * @returns sessions whose parts add up to their typical length
 */
export function recutSessions(
  sessions: readonly (AskedSession & { readonly key: string })[],
  catalogue: Catalogue,
): readonly RecutSession[] {
  const secondsOf = (session: AskedSession) => sessionSeconds(session, (id) => catalogue.exercises.get(id)).typical;
  return sessions.map((session) => {
    const slots = session.blocks.map((block, index): RecutSlot => {
      const keys = block.slots.flatMap(({ key }) => key ?? []);
      const own: AskedSession = {
        warmup: session.warmup.filter((item) => item.for !== undefined && keys.includes(item.for)),
        blocks: [block],
        conditioning: [],
      };
      const hard: Partial<Record<Muscle, number>> = {};
      for (const [muscle, { near }] of directSets(own, catalogue)) if (near > 0) hard[muscle] = near;
      const first = block.slots[0] && catalogue.exercises.get(block.slots[0].exercise);
      return {
        key: keys[0] ?? `${session.key}/${index + 1}`,
        hard,
        seconds: secondsOf(own) + (first?.moveS ?? 0),
        lane: first ? (laneOf(first.pattern) ?? first.pattern) : "unknown",
      };
    });
    return {
      key: session.key,
      fixedS: secondsOf(session) - slots.reduce((sum, slot) => sum + slot.seconds, 0),
      slots,
    };
  });
}
