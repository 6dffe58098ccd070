import type { Bundle, Reason } from "@stave/core/model";
import type { Load } from "@stave/core/units";
import { loadIndex } from "./entry.ts";

/** What a newer bundle says of one movement of a session that runs by an older one. */
export interface Bounds {
  /** The movement waits: paused, with the reason, or taken out of all that this person may do. */
  readonly waits?: Reason | "taken out";
  /** Loads that still exist for it; undefined when they are as before. */
  readonly loads?: readonly Load[];
}

function loadsOf(bundle: Bundle, exercise: string): readonly Load[] | undefined {
  return bundle.exercises.find(({ id }) => id === exercise)?.loads;
}

/**
 * Limits and pauses of a newer bundle, for one movement. The rest of it is taken up between sessions. A pause because of
 * a pain of this very session says nothing new: the session was solved again when it was noted.
 *
 * @param running the bundle that the session runs by
 * @param pains ids of the pains of this session
 */
export function boundsOf(
  running: Bundle,
  newer: Bundle,
  { slot, exercise, pains }: { readonly slot: string; readonly exercise: string; readonly pains: ReadonlySet<string> },
): Bounds {
  const isAnswered = ({ code, data }: Reason) => code === "progress/pain" && pains.has(String(data["hurt"]));
  const paused = newer.paused.find(({ slot: key, because }) => key === slot && !isAnswered(because));
  if (paused !== undefined) return { waits: paused.because };
  const loads = loadsOf(newer, exercise);
  if (loads === undefined) return { waits: "taken out" };
  const before = loadsOf(running, exercise) ?? [];
  const gone = before.some((load) => loadIndex(load, loads) < 0);
  return gone ? { loads } : {};
}

/** @returns the asked load, or the heaviest that exists below it where that one is gone */
export function boundLoad(asked: Load | undefined, loads: readonly Load[]): Load | undefined {
  if (asked === undefined || loadIndex(asked, loads) >= 0) return asked;
  return loads.findLast(({ value, unit }) => unit === asked.unit && value <= asked.value) ?? loads[0];
}
