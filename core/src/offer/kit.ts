import { type Day, parseDay } from "../day.ts";
import type { Equipment, Exercise, Outage, Place, Reason } from "../model/index.ts";
import { reason } from "./reasons.ts";

/** An outage with a day that is no date counts: what may be broken is not offered. */
function isOut(outage: Outage, on: Day): boolean {
  const from = parseDay(outage.from);
  const to = parseDay(outage.to);
  return !(from !== undefined && on < from) && !(to !== undefined && on > to);
}

/**
 * What a form needs and cannot have in a place on a day; empty when all is there.
 *
 * All groups are needed, any one thing of each. Where a group fails only because of an outage, the outage is named.
 *
 * @param ownWheelchair the person comes in one, so the place need not have it
 */
export function missingKit(exercise: Exercise, place: Place, on: Day, ownWheelchair: boolean): readonly Reason[] {
  const here = (what: Equipment) => (place.equipment[what] ?? 0) > 0 || (ownWheelchair && what === "wheelchair");
  const out = (place.outages ?? []).filter((outage) => isOut(outage, on));
  const works = (what: Equipment) => here(what) && !out.some((outage) => outage.what === what);

  const failing = exercise.needs.filter((group) => !group.some(works));
  const absent = failing.filter((group) => !group.some(here));
  const broken = failing.filter((group) => group.some(here));
  const outages = out.filter(({ what }) => broken.some((group) => group.includes(what)));
  return [
    ...(absent.length === 0 ? [] : [reason("offer/equipment", { groups: absent })]),
    ...(broken.length === 0
      ? []
      : [
          reason("offer/out-of-order", {
            groups: broken,
            out: outages.map(({ what, from, to }) => ({ what, from, to })),
          }),
        ]),
  ];
}
