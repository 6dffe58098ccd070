import type { Balance } from "../measures/index.ts";
import { inSets, type Quarters } from "../units.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import { phasePath } from "./run/walk.ts";

type Opposites = "push and pull" | "knee and hip";
type Data = Facts & { readonly phase: string; readonly title: string; readonly side: Opposites };

/** One of two opposites with over so many times the sets of the other is worth a word. Ours, no source. */
const TIMES = 2;

const PAIRS: readonly (readonly [side: Opposites, one: keyof Balance, other: keyof Balance])[] = [
  ["push and pull", "push", "pull"],
  ["knee and hip", "squatAndSingleLeg", "hingeAndBridge"],
];

/**
 * Opposite movements of which one has over twice the weekly sets of the other. Equal sets are custom and no trial was
 * found, so the numbers are shown and nothing is called a fault. An opposite that is missing is another check's matter.
 */
export const unequalOpposites: Check<"week/unequal-opposites", Data> = {
  id: "week/unequal-opposites",
  severity: "note",
  sources: ["practice", "ours"],
  run(look) {
    return look.programme.phases.flatMap((phase, phaseAt) => {
      const week = look.weeks[phaseAt]!.find(({ light }) => !light);
      // With an exercise that nobody knows the count is short on one of the sides.
      if (week === undefined || week.sets.unknown.length > 0) return [];
      const numbers = week.balance();
      return PAIRS.flatMap(([side, one, other]): readonly Found<Data>[] => {
        const [a, b] = [numbers[one] as Quarters, numbers[other] as Quarters];
        if (Math.min(a, b) === 0 || Math.max(a, b) <= TIMES * Math.min(a, b)) return [];
        const data = { phase: phase.key, title: phase.title, side, one: inSets(a), other: inSets(b) };
        return [{ at: phasePath(phaseAt), data }];
      });
    });
  },
};
