import { wayUnsaid } from "../model/index.ts";
import type { Change } from "./run/change.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import { pathOf, phasePath } from "./run/walk.ts";

type Data = Facts & { readonly phase: string; readonly title: string; readonly weeks: number };

/** A phase shorter than this may stay as it is. Ours, no source. */
const LEAST_WEEKS = 4;

/**
 * A phase of four weeks or more in which nothing goes up: no slot has a way up, and no dose changes.
 *
 * The remedy lets every slot go up in the usual way of its dose.
 */
export const nothingGoesUp: Check<"phase/nothing-goes-up", Data> = {
  id: "phase/nothing-goes-up",
  severity: "warn",
  sources: ["acsm2009", "ours"],
  run(look) {
    return look.programme.phases.flatMap((phase, phaseAt): readonly Found<Data>[] => {
      const places = look.slots.filter((place) => place.phaseAt === phaseAt);
      const stays = places.every(({ slot }) => slot.way === "stay" && slot.changes === undefined);
      if (phase.weeks < LEAST_WEEKS || places.length === 0 || !stays) return [];
      const able = places.filter(({ slot }) => wayUnsaid(slot.dose) !== "stay");
      const changes = able.map((place): Change => {
        return { op: "set", at: [...pathOf(place), "way"], value: wayUnsaid(place.slot.dose) };
      });
      const data = { phase: phase.key, title: phase.title, weeks: phase.weeks, slots: places.length };
      const cures = () => (able.length === 0 ? [] : [{ id: "go-up", data: { slots: able.length }, changes }]);
      return [{ at: phasePath(phaseAt), data, cures }];
    });
  },
};
