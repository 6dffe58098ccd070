import { type AskedSession, sessionSeconds } from "../measures/index.ts";
import type { Catalogue, PlanSession } from "../model/index.ts";

/** How long a session of a plan takes as it stands, in whole minutes: the lower end rounded down, the upper one up. */
export function minutesOf(session: AskedSession, { exercises }: Catalogue): PlanSession["minutes"] {
  const { low, high } = sessionSeconds(session, (id) => exercises.get(id));
  return { low: Math.floor(low / 60), high: Math.ceil(high / 60) };
}
