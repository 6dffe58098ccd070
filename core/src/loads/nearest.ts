import { type Load, type Mass, massOf } from "../units.ts";
import { easiestFirst, type LoadSet } from "./load-set.ts";

/** The loads on either side of a wanted one. Both are the load itself when it exists. */
export interface Nearest {
  /** The hardest that is not harder than wanted: on a machine that helps, the least help that is no less than wanted. */
  readonly down?: Load;
  /** The easiest that is not easier than wanted. */
  readonly up?: Load;
  readonly chosen?: Load;
}

/**
 * The loads that exist around a wanted one, and which of them to take.
 *
 * @param target wanted, in the meaning of the set: per hand, total, or what the pin says
 * @param allow "down" takes the easier neighbour, never more than wanted; "either" the closer one, and the easier of two
 * equally close
 * @returns neighbours that exist; nothing chosen when none is allowed; empty for bands and none
 * @source ours
 * @example
 * nearest(kg(55), { kind: "masses", loads: [fifty, sixty] }, "down") //=> { down: fifty, up: sixty, chosen: fifty }
 */
export function nearest(target: Mass, set: LoadSet, allow: "down" | "either"): Nearest {
  const sign = set.kind === "stack" && set.help ? -1 : 1;
  const harder = (load: Load) => sign * (massOf(load) - target);
  const loads = easiestFirst(set);
  const down = loads.findLast((load) => harder(load) <= 0);
  const up = loads.find((load) => harder(load) >= 0);
  const upIsCloser = up !== undefined && (down === undefined || harder(up) < -harder(down));
  const chosen = allow === "either" && upIsCloser ? up : down;
  return {
    ...(down === undefined ? {} : { down }),
    ...(up === undefined ? {} : { up }),
    ...(chosen === undefined ? {} : { chosen }),
  };
}
