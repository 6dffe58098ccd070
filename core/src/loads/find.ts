import type { FindLoad, Json, Person } from "../model/index.ts";
import type { Load } from "../units.ts";
import { easiestFirst, type LoadSet } from "./load-set.ts";
import { type LoadCode, plain, reason } from "./reasons.ts";

/**
 * A load that must be found in training: where to begin and why.
 *
 * @param from where to begin; by default the lightest load here for a novice, and for others nothing is said
 * @source ours
 * @example
 * find(novice, set, "loads/nothing-known") // begin at the lightest dumbbell
 */
export function find(
  person: Person,
  set: LoadSet,
  code: LoadCode,
  data: Readonly<Record<string, Json>> = {},
  from: Load | undefined = person.status === "novice" ? easiestFirst(set)[0] : undefined,
): FindLoad & { readonly kind: "find" } {
  const because = reason(code, { ...data, from: plain(from) });
  return { kind: "find", because, ...(from === undefined ? {} : { from }) };
}
