import { printDay } from "../day.ts";
import { heldPerHand, heldTotal, type LoadCap, loadsFor } from "../loads/index.ts";
import type { Dose, Exercise, Limit, Place, Reason } from "../model/index.ts";
import { asLoad, type Load, type Mass } from "../units.ts";
import { armUse } from "./body-use.ts";
import { massAllowed } from "./limits.ts";
import { reason } from "./reasons.ts";
import { covers } from "./written-orders.ts";

/** The most that may be held, exactly, in all and in one hand; or why nothing may. */
export interface UnderLimits {
  readonly cap: Pick<LoadCap, "total" | "hand">;
  readonly why: readonly Reason[];
}

type Way = "total" | "hand";

/**
 * What the written load limits of a day leave of a form: the mass that may be held, or why none may.
 *
 * A load that the coach wrote must be under the limit; else the lightest load of the place must. A load that nobody
 * knows (a machine's stack, a band, body mass borne by a limited hand) is not under any limit. A limit for one hand
 * does not touch a form that leaves that hand free or trains the other side only. A limit in all that names a side
 * counts what that hand holds.
 *
 * @param side the only side that is trained, where orders leave but one
 */
export function underLoadLimits(
  exercise: Exercise,
  dose: Dose,
  place: Place,
  limits: readonly Limit[],
  side: "left" | "right" | undefined,
): UnderLimits {
  const why: Reason[] = [];
  const cap: { total?: Mass; hand?: Mass } = {};
  for (const limit of limits.filter((each) => covers(each, exercise))) {
    const way: Way = limit.applies === "hand" || limit.side !== "both" ? "hand" : "total";
    if (way === "hand" && leavesHandFree(exercise, limit, side)) continue;
    const held = lightest(exercise, dose, place, way);
    const most = massAllowed(limit);
    if (held === undefined) why.push(reason("offer/load-unknown", limitData(limit)));
    else if (!(held <= most))
      why.push(reason("offer/over-limit", { ...limitData(limit), held: heldData(held, limit) }));
    else if (held > 0 || canBeLoaded(exercise)) cap[way] = Math.min(cap[way] ?? most, most) as Mass;
  }
  return { cap, why };
}

function leavesHandFree(exercise: Exercise, limit: Limit, side: "left" | "right" | undefined): boolean {
  const use = armUse(exercise);
  if (use === "none" || (side !== undefined && limit.side !== "both" && side !== limit.side)) return true;
  return (
    use === "either hand" && (limit.side !== "both" || exercise.loadMeaning === "stack" || exercise.mode === "cyclic")
  );
}

/** The mass held at the heaviest load that the coach wrote, else at the lightest of the place; undefined: not known. */
function lightest(exercise: Exercise, dose: Dose, place: Place, way: Way): Mass | undefined {
  const held = (load: Load | undefined) => (way === "total" ? heldTotal : heldPerHand)(exercise, load);
  const unloaded = held(undefined);
  if (unloaded !== undefined) return unloaded;
  const written = dose.sets.flatMap(({ load }) => (load === undefined ? [] : [load]));
  if (written.length > 0) {
    const each = written.map(held);
    return each.includes(undefined) ? undefined : (Math.max(...(each as Mass[])) as Mass);
  }
  const loads = loadsFor(exercise, place);
  // Where a place does not say what it has, the cap alone decides, once a load is chosen.
  return held(loads.kind === "masses" ? loads.loads[0] : { value: 0, unit: "kg" });
}

function canBeLoaded(exercise: Exercise): boolean {
  return heldTotal(exercise, undefined) === undefined;
}

function limitData({ atMost, applies, side, who, to }: Limit): Reason["data"] {
  return {
    ...(atMost === undefined ? {} : { atMost: { value: atMost.value, unit: atMost.unit } }),
    applies: applies ?? "total",
    side,
    who,
    to: printDay(to),
  };
}

function heldData(held: Mass, { atMost }: Limit): { readonly value: number; readonly unit: "kg" | "lb" } {
  const { value, unit } = asLoad(held, atMost?.unit ?? "kg");
  return { value, unit };
}
