import { TRUNK_DIRECTIONS } from "../measures/index.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import { phasePath } from "./run/walk.ts";

type Data = Facts & { readonly phase: string; readonly title: string; readonly directions: number };

/** Of the four ways to load the trunk, fewer than this are worth a word. Ours, no source. */
const ENOUGH = 2;

/**
 * How many of the four ways to load the trunk a phase trains, shown as a number: against arching, against turning,
 * against bending to the side, and turning itself. Said where the trunk is trained in fewer than two of them; a trunk
 * that is not trained at all is another check's matter.
 */
export const trunkDirections: Check<"week/trunk-directions", Data> = {
  id: "week/trunk-directions",
  severity: "note",
  sources: ["ours"],
  run(look) {
    return look.programme.phases.flatMap((phase, phaseAt): readonly Found<Data>[] => {
      const week = look.weeks[phaseAt]!.find(({ light }) => !light);
      if (week === undefined) return [];
      const { trunkDirections: trained } = week.balance();
      if (trained.length === 0 || trained.length >= ENOUGH) return [];
      const missing = TRUNK_DIRECTIONS.filter((direction) => !trained.includes(direction));
      const data = { phase: phase.key, title: phase.title, directions: trained.length, trained, missing };
      return [{ at: phasePath(phaseAt), data }];
    });
  },
};
