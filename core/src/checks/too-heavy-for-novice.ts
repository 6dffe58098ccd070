import { printDose } from "../model/index.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import { aboutDose, pathOfDose } from "./run/walk.ts";

type Data = Facts & { readonly exercise: string; readonly name: string; readonly percent: number };

/** Share of the 1RM that is not for novices: the handbook's strength loads begin here. Source: haffTriplett2016, ours. */
const TOO_HEAVY = 85;
/** The upper end of what the stand advises to novices and intermediates. Source: acsm2009. */
const ADVISED = 70;

/**
 * A load for people with years of training in a programme for novices. The sources disagree on what makes novices
 * strong (85 % and more in the handbook, 60–70 % in the stand); the milder one is taken.
 *
 * The remedy lowers the share to what is advised.
 */
export const tooHeavyForNovice: Check<"dose/too-heavy-for-novice", Data> = {
  id: "dose/too-heavy-for-novice",
  severity: "warn",
  sources: ["acsm2009", "haffTriplett2016", "ours"],
  run({ doses, catalogue, programme, person }) {
    if ((person?.status ?? programme.status) !== "novice") return [];
    return doses.flatMap((place): readonly Found<Data>[] => {
      const { dose, exercise } = place;
      const percent = Math.max(...dose.sets.map((set) => set.percent ?? 0));
      if (percent < TOO_HEAVY) return [];
      const at = pathOfDose(place);
      const lighter = dose.sets.map((set) => ((set.percent ?? 0) >= TOO_HEAVY ? { ...set, percent: ADVISED } : set));
      const after = { ...dose, sets: lighter };
      const name = catalogue.exercises.get(exercise)?.name ?? exercise;
      return [
        {
          at,
          data: { ...aboutDose(place), exercise, name, percent, most: TOO_HEAVY, advised: ADVISED },
          cures: () => [
            {
              id: "share-for-novices",
              data: { from: printDose(dose), to: printDose(after) },
              changes: [{ op: "set", at, value: after }],
            },
          ],
        },
      ];
    });
  },
};
