import { ladderOf } from "../exercises/index.ts";
import { type Exercise, type SetDose, type WayUp, wayUnsaid } from "../model/index.ts";
import type { Check, CheckInput, Facts, Found } from "./run/check.ts";
import { aboutPlace, pathOf } from "./run/walk.ts";

type Data = Facts & { readonly exercise: string; readonly name: string; readonly way: string };

/** Movements whose number is no load that could be raised. */
const NO_LOAD: readonly Exercise["loadMeaning"][] = ["body only", "height", "none"];

/** What each way raises, and so what the dose must ask in. */
const RAISES: Readonly<Partial<Record<WayUp, SetDose["amount"]["kind"]>>> = {
  reserve: "reps",
  "hold time": "hold",
  contacts: "contacts",
};

function cannot(way: WayUp, exercise: Exercise, first: SetDose, { catalogue }: CheckInput): boolean {
  if (way === "load") return NO_LOAD.includes(exercise.loadMeaning);
  if (way === "ladder") return ladderOf(catalogue, exercise.id) === undefined;
  const raised = RAISES[way];
  return raised !== undefined && raised !== first.amount.kind;
}

/**
 * A way up that the movement or its dose cannot take: load where there is none, seconds where repetitions are counted, a
 * ladder on which the movement does not stand. Nothing would ever be proposed for it.
 *
 * The remedy takes the usual way of the dose.
 */
export const wayCannot: Check<"slot/way-cannot", Data> = {
  id: "slot/way-cannot",
  severity: "warn",
  sources: ["ours"],
  run(look) {
    return look.slots.flatMap((place): readonly Found<Data>[] => {
      const { way, first, dose } = place.slot;
      const exercise = look.catalogue.exercises.get(first);
      const set = dose.sets[0];
      if (exercise === undefined || set === undefined || !cannot(way, exercise, set, look)) return [];
      const at = [...pathOf(place), "way"];
      const usual = wayUnsaid(dose);
      return [
        {
          at,
          data: { ...aboutPlace(place), exercise: exercise.id, name: exercise.name, way },
          cures: () => [
            { id: "usual-way", data: { name: exercise.name, way: usual }, changes: [{ op: "set", at, value: usual }] },
          ],
        },
      ];
    });
  },
};
