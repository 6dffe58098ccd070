import type { Candidate } from "../fit/index.ts";
import { nearest } from "../loads/index.ts";
import { type Load, type Mass, massOf } from "../units.ts";
import type { SlotStart } from "./slot-start.ts";

/** A light week with lighter loads takes a tenth off. Source: rogerson2024 for load going down; the tenth is common practice. */
const SHARE_PERCENT = 90;

/** A slot's start at nine tenths of its loads, from those that are here; with help, a tenth more. What has none lighter stays. */
export function lighterLoads({ loadsLeft, exercise }: Candidate, start: SlotStart): SlotStart {
  const percent = exercise.loadMeaning === "assist" ? 200 - SHARE_PERCENT : SHARE_PERCENT;
  const lighter = (load: Load): Load => {
    const target = Math.round((massOf(load) * percent) / 100) as Mass;
    return nearest(target, loadsLeft(load).set, "down").chosen ?? load;
  };
  return {
    ...start,
    ...(start.load === undefined ? {} : { load: lighter(start.load) }),
    ...(start.loads === undefined ? {} : { loads: start.loads.map(lighter) }),
  };
}
