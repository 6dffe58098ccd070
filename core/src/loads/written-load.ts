import type { Reason } from "../model/index.ts";
import { type Load, massOf } from "../units.ts";
import { easiestFirst, type LoadSet } from "./load-set.ts";
import { nearest } from "./nearest.ts";
import { plain, reason } from "./reasons.ts";
import type { StartingLoad } from "./starting-load.ts";

/**
 * The load that a coach wrote, where it exists and no limit forbids it; else the easier neighbour, and both are said.
 *
 * @param listed what the place has
 * @param left what limits leave of it; at least one load
 * @source ours
 * @example
 * writtenLoad({ value: 14, unit: "kg" }, bars, bars) //=> { kind: "too heavy", lightest: 15 kg, … }
 */
export function writtenLoad(written: Load, listed: LoadSet, left: LoadSet): StartingLoad {
  const { chosen } = nearest(massOf(written), left, "down");
  if (chosen === undefined) {
    const lightest = easiestFirst(left)[0]!;
    const data = { lightest: plain(lightest), aim: plain(written) };
    return { kind: "too heavy", lightest, because: reason("loads/lightest-too-heavy", data) };
  }
  return { kind: "load", load: chosen, evidence: evidenceOf(written, chosen, listed) };
}

function evidenceOf(written: Load, chosen: Load, listed: LoadSet): Reason {
  if (listed.kind === "none") return reason("loads/written-not-listed", { load: plain(written) });
  if (massOf(chosen) === massOf(written)) return reason("loads/as-written", { load: plain(chosen) });
  const free = nearest(massOf(written), listed, "down");
  return free.chosen !== undefined && massOf(free.chosen) === massOf(chosen)
    ? reason("loads/written-not-here", { asked: plain(written), down: plain(free.down), up: plain(free.up) })
    : reason("loads/written-over-limit", { asked: plain(written), chosen: plain(chosen) });
}
