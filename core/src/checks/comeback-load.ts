import type { Day } from "../day.ts";
import { recentSets } from "../measures/index.ts";
import { type Dose, type ExerciseId, type Person, printDose } from "../model/index.ts";
import { type Load, massOf } from "../units.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import { aboutDose, pathOfDose } from "./run/walk.ts";

type Data = Facts & { readonly exercise: string; readonly name: string };

/** Days off after which a load is a comeback, and its share of what was lifted before. Common practice, no source. */
const COMEBACK_DAYS = 14;
const SHARE_PERCENT = 90;

/** The heaviest load that the dose writes. */
function heaviest({ sets }: Dose): Load | undefined {
  return sets
    .flatMap(({ load }) => (load === undefined ? [] : [load]))
    .reduce<Load | undefined>(
      (most, load) => (most === undefined || massOf(load) > massOf(most) ? load : most),
      undefined,
    );
}

/** The last load of an exercise before a day. */
function lastLoad({ lifts }: Person, exercise: ExerciseId, on: Day): Load | undefined {
  return lifts
    .filter((lift) => lift.exercise === exercise && lift.load !== undefined && lift.on < on)
    .toSorted((a, b) => b.on - a.on)[0]?.load;
}

/** The dose with no load over the share, in half kilograms or pounds, since which loads are here is not known. */
function lighter(dose: Dose, before: Load): Dose {
  const sets = dose.sets.map((set) => {
    if (set.load === undefined || 100 * massOf(set.load) <= SHARE_PERCENT * massOf(before)) return set;
    const share = (SHARE_PERCENT * massOf(before)) / (100 * massOf(set.load));
    return { ...set, load: { ...set.load, value: Math.floor(2 * set.load.value * share) / 2 } };
  });
  return { ...dose, sets };
}

/**
 * A written load of the first week over about 90 % of what somebody last lifted, after two weeks off and more. Judged only
 * where their recent weeks are given, and a record of the exercise. Loads that the programme leaves to the plan are made
 * from the record there.
 *
 * The remedy writes nine tenths of what was lifted.
 */
export const comebackLoad: Check<"person/comeback-load", Data> = {
  id: "person/comeback-load",
  severity: "warn",
  sources: ["practice"],
  run({ doses, catalogue, person, on }) {
    if (person === undefined || on === undefined) return [];
    const recent = recentSets(person.recent ?? [], on);
    if (recent === undefined || recent.daysOff < COMEBACK_DAYS) return [];
    return doses.flatMap((place): readonly Found<Data>[] => {
      const { dose, exercise, of, change } = place;
      if (of.phaseAt !== 0 || change !== undefined) return [];
      const asked = heaviest(dose);
      const before = lastLoad(person, exercise, on);
      if (asked === undefined || before === undefined) return [];
      const percent = (100 * massOf(asked)) / massOf(before);
      if (percent <= SHARE_PERCENT) return [];
      const name = catalogue.exercises.get(exercise)?.name ?? exercise;
      const loads = { asked: { ...asked }, before: { ...before }, percent: Math.round(percent), most: SHARE_PERCENT };
      const at = pathOfDose(place);
      const after = lighter(dose, before);
      return [
        {
          at,
          data: { ...aboutDose(place), exercise, name, daysOff: recent.daysOff, ...loads },
          cures: () => [
            {
              id: "lighter-load",
              data: { from: printDose(dose), to: printDose(after) },
              changes: [{ op: "set", at, value: after }],
            },
          ],
        },
      ];
    });
  },
};
