import { canonicalJson } from "./canonical-json.ts";
import type { StaveEvent } from "./event.ts";
import { compareEvents } from "./event-order.ts";

/**
 * All that several devices say, each event once, in order. Whatever the order and overlap of the lists, the answer is
 * the same. Should one id stand with two contents, which no honest device makes, the lesser spelling is kept.
 */
export function mergeEvents(...lists: readonly (readonly StaveEvent[])[]): readonly StaveEvent[] {
  const known = new Map<string, StaveEvent>();
  for (const event of lists.flat()) {
    const rival = known.get(event.id);
    if (rival === undefined || (rival !== event && canonicalJson(event) < canonicalJson(rival)))
      known.set(event.id, event);
  }
  return [...known.values()].sort(compareEvents);
}

/** @returns the highest counter among the events; 0 when there are none. A device counts on from above it */
export function highestCounter(events: readonly StaveEvent[]): number {
  return events.reduce((most, { n }) => Math.max(most, n), 0);
}
