import { ageOn } from "../day.ts";
import { type Dose, printDose, type SetDose } from "../model/index.ts";
import { statementRow } from "../tables/index.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import { aboutDose, pathOfDose } from "./run/walk.ts";

type Data = Facts & { readonly exercise: string; readonly name: string; readonly side: "share" | "limit" };

/** Years of age from which the rules of adults hold. */
const ADULT = 18;
/** Share of the 1RM while somebody young learns. Source: lloyd2014. */
const MOST_LEARNING = 60;
/** Share of the 1RM and repetitions left, once they have learned. Source: ours, from the table of cautions. */
const { percent: MOST_LEARNED = 79, reserve: LEFT = 2 } = statementRow("young").limits;

/** A set that ends with less than two left, or goes on for as long as it can. */
function isToTheLimit({ amount, reserve }: SetDose): boolean {
  return (amount.kind === "most" && reserve === undefined) || (reserve !== undefined && reserve.from < LEFT);
}

/** The dose within what young people are given; as many as possible is left to the coach. */
function eased(dose: Dose, most: number): Dose {
  const sets = dose.sets.map((set): SetDose => {
    const lighter = set.percent !== undefined && set.percent > most ? { ...set, percent: most } : set;
    if (lighter.reserve === undefined || lighter.reserve.from >= LEFT) return lighter;
    return { ...lighter, reserve: { from: LEFT, to: Math.max(LEFT, lighter.reserve.to) } };
  });
  return { ...dose, sets };
}

/**
 * A dose for a person under 18 over 60 % of the 1RM while they are new to it, over 79 % afterwards, or with fewer than
 * two repetitions left. Nobody young needs a test of the maximum. Judged only where a person and a day are given.
 *
 * The remedy lowers the share and leaves two.
 */
export const tooHeavyWhenYoung: Check<"person/too-heavy-when-young", Data> = {
  id: "person/too-heavy-when-young",
  severity: "warn",
  sources: ["lloyd2014", "ours"],
  run({ doses, catalogue, person, on }) {
    if (person === undefined || on === undefined || ageOn(person.born, on) >= ADULT) return [];
    const most = person.status === "novice" ? MOST_LEARNING : MOST_LEARNED;
    return doses.flatMap((place): readonly Found<Data>[] => {
      const { dose, exercise } = place;
      const percent = Math.max(...dose.sets.map((set) => set.percent ?? 0));
      if (!(percent > most) && !dose.sets.some(isToTheLimit)) return [];
      const at = pathOfDose(place);
      const after = eased(dose, most);
      const name = catalogue.exercises.get(exercise)?.name ?? exercise;
      const side = percent > most ? "share" : "limit";
      const mended = !after.sets.some(isToTheLimit);
      return [
        {
          at,
          data: { ...aboutDose(place), exercise, name, side, percent, most, left: LEFT, age: ageOn(person.born, on) },
          cures: () => [
            ...(mended
              ? [
                  {
                    id: "within-limits",
                    data: { from: printDose(dose), to: printDose(after) },
                    changes: [{ op: "set", at, value: after } as const],
                  },
                ]
              : []),
          ],
        },
      ];
    });
  },
};
