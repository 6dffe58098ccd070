import { easiestFirst, loadsFor, nearest } from "../loads/index.ts";
import { type Dose, type Exercise, type Place, printDose, type SetDose } from "../model/index.ts";
import { massOf } from "../units.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import { aboutDose, pathOfDose } from "./run/walk.ts";

type Data = Facts & { readonly exercise: string; readonly name: string; readonly place: string };

/** The dose with every load taken down to one that is here; undefined where one has none under it. */
function loadable(dose: Dose, exercise: Exercise, place: Place): Dose | undefined {
  const set = loadsFor(exercise, place);
  const sets = dose.sets.map((each): SetDose | undefined => {
    if (each.load === undefined) return each;
    const { chosen } = nearest(massOf(each.load), set, "down");
    return chosen === undefined ? undefined : { ...each, load: chosen };
  });
  return sets.every((each) => each !== undefined) ? { ...dose, sets } : undefined;
}

/**
 * A written load that cannot be made ready at the place: no such dumbbell or pin, or plates that do not come to it. The
 * plan takes the easier neighbour. Judged only where a place is given that lists what it has.
 *
 * The remedy writes the easier neighbour.
 */
export const loadNotHere: Check<"slot/load-not-here", Data> = {
  id: "slot/load-not-here",
  severity: "warn",
  sources: ["ours"],
  run({ doses, catalogue, place: room }) {
    if (room === undefined) return [];
    return doses.flatMap((place): readonly Found<Data>[] => {
      const { dose } = place;
      const exercise = catalogue.exercises.get(place.exercise);
      if (exercise === undefined) return [];
      const set = loadsFor(exercise, room);
      const here = easiestFirst(set).map(massOf);
      const away = dose.sets.find(({ load }) => load !== undefined && !here.includes(massOf(load)))?.load;
      if (away === undefined || here.length === 0) return [];
      const { down, up } = nearest(massOf(away), set, "down");
      const at = pathOfDose(place);
      const after = loadable(dose, exercise, room);
      return [
        {
          at,
          data: {
            ...aboutDose(place),
            exercise: exercise.id,
            name: exercise.name,
            place: room.name,
            asked: { ...away },
            down: down === undefined ? null : { ...down },
            up: up === undefined ? null : { ...up },
          },
          cures: () =>
            after === undefined
              ? []
              : [
                  {
                    id: "load-that-is-here",
                    data: { from: printDose(dose), to: printDose(after) },
                    changes: [{ op: "set", at, value: after }],
                  },
                ],
        },
      ];
    });
  },
};
