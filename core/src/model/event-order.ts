import type { StaveEvent } from "./event.ts";

/**
 * The total order of events: by counter, then device, then id, as code units. The device's clock orders nothing.
 *
 * @returns negative when `a` comes first
 */
export function compareEvents(a: StaveEvent, b: StaveEvent): number {
  return a.n - b.n || byCodeUnits(a.device, b.device) || byCodeUnits(a.id, b.id);
}

function byCodeUnits(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
