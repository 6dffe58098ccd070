import type { Candidate } from "../fit/index.ts";
import { nearest } from "../loads/index.ts";
import type { Json, Reason } from "../model/index.ts";
import { type Load, type Mass, massOf } from "../units.ts";
import { reason } from "./reasons.ts";
import type { SlotStart } from "./slot-start.ts";

/**
 * A slot's start with the load that the coach decided on. Where that load is not here, or a limit forbids it, the
 * hardest that is easier and allowed stands instead, and says so; where there is none, the load that stood before does.
 *
 * @param start what would be asked without a decision
 */
export function pinnedLoad(candidate: Candidate, start: SlotStart, load: Load): SlotStart {
  const { set, loads } = candidate.loadsLeft(load);
  const { chosen } = candidate.start.kind === "body" ? {} : nearest(massOf(load), set, "down");
  if (chosen === undefined)
    return { ...start, why: [...start.why, reason("plan/load-cannot-be", { load: plain(load) })] };
  const kept = massOf(chosen) === massOf(load);
  const why: Reason = kept
    ? reason("plan/load-decided", { load: plain(load) })
    : reason("plan/load-beaten", { load: plain(load), chosen: plain(chosen) });
  const stood = start.loads?.[0];
  const scaled = (each: Load) =>
    nearest(Math.round(massOf(each) * (massOf(chosen) / massOf(stood!))) as Mass, set, "down").chosen ?? loads[0]!;
  const others = start.loads === undefined || !(massOf(stood!) > 0) ? undefined : start.loads.map(scaled);
  return { load: chosen, ...(others === undefined ? {} : { loads: others }), why: [why] };
}

function plain({ value, unit }: Load): Json {
  return { value, unit };
}
