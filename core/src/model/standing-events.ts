import type { StaveEvent } from "./event.ts";
import { compareEvents } from "./event-order.ts";
import { mergeEvents } from "./merge-events.ts";

/** What is said now of something that happened once. */
export interface Standing {
  /** The word that stands: the event itself, or the correction that won. Never a `struck`. */
  readonly event: StaveEvent;
  /** What was said first; the same as `event` where nothing was corrected. */
  readonly first: StaveEvent;
}

/**
 * What stands once all corrections are taken in. A correction may itself be corrected; of rival corrections the highest
 * in order wins; an event struck out stands no more. A correction whose event has not come yet stands in its place.
 *
 * @param events of one person, in any order, some perhaps twice
 * @returns in the order in which the things were first said
 */
export function standingEvents(events: readonly StaveEvent[]): readonly Standing[] {
  const merged = mergeEvents(events);
  const origins = originsOf(merged);
  const groups = new Map<string, StaveEvent[]>();
  for (const event of merged) {
    const origin = origins.get(event.id)!;
    const group = groups.get(origin);
    if (group === undefined) groups.set(origin, [event]);
    else group.push(event);
  }
  return [...groups.values()]
    .map((group) => ({ event: winnerOf(group), first: group[0]! }))
    .filter(({ event }) => event.kind !== "struck")
    .sort((a, b) => compareEvents(a.first, b.first));
}

/**
 * For each event the id at the end of its chain of corrections, known or not yet. Events that replace one another in a
 * ring, which no honest device makes, have the least of their ids for origin.
 */
function originsOf(events: readonly StaveEvent[]): ReadonlyMap<string, string> {
  const byId = new Map(events.map((event) => [event.id, event]));
  const origins = new Map<string, string>();
  for (const event of events) {
    const path: string[] = [];
    const onPath = new Set<string>();
    let id = event.id;
    while (!origins.has(id) && !onPath.has(id)) {
      path.push(id);
      onPath.add(id);
      const next = byId.get(id)?.replaces;
      if (next === undefined) break;
      id = next;
    }
    const ring = onPath.has(id) && id !== path.at(-1) ? path.slice(path.indexOf(id)) : [id];
    const origin = origins.get(id) ?? [...ring].sort()[0]!;
    for (const each of path) origins.set(each, origin);
  }
  return origins;
}

/** @param group in order; the highest that nothing of the group replaces, whatever the counters say */
function winnerOf(group: readonly StaveEvent[]): StaveEvent {
  const replaced = new Set(group.map((event) => event.replaces));
  return group.findLast((event) => !replaced.has(event.id)) ?? group.at(-1)!;
}
