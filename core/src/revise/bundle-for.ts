import type { Bundle } from "../model/index.ts";
import type { PlannedPerson } from "./situation.ts";

/**
 * All that a phone needs to run the next sessions with no network.
 *
 * @param call whom to call when a message has not been sent
 */
export function bundleFor(_person: PlannedPerson, _call: string): Bundle {
  throw new Error("bundleFor is being written");
}
