import { LOAD_STEP } from "../equations/index.ts";
import { easiestFirst, loadsFor } from "../loads/index.ts";
import type { WayUp } from "../model/index.ts";
import { massOf } from "../units.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import { aboutPlace, pathOf } from "./run/walk.ts";

type Data = Facts & { readonly exercise: string; readonly name: string; readonly place: string };

const BY_LOAD: readonly WayUp[] = ["load", "reps then load", "reserve"];

/**
 * A slot that is to go up by load where the place has no heavier one: a single load, or the written one is the heaviest;
 * or where the next is more than the usual tenth above the written one. Judged only where a place is given that lists
 * what it has. Help is left out: what a step of it adds depends on the body.
 */
export const noNextLoad: Check<"slot/no-next-load", Data> = {
  id: "slot/no-next-load",
  severity: "note",
  sources: [LOAD_STEP.source, "ours"],
  run({ slots, catalogue, place: room }) {
    if (room === undefined) return [];
    return slots.flatMap((place): readonly Found<Data>[] => {
      const { first, way, dose } = place.slot;
      const exercise = catalogue.exercises.get(first);
      if (exercise === undefined || exercise.loadMeaning === "assist" || !BY_LOAD.includes(way)) return [];
      const here = easiestFirst(loadsFor(exercise, room));
      const written = dose.sets.find(({ load }) => load !== undefined)?.load;
      const from = written ?? (here.length === 1 ? here[0] : undefined);
      if (from === undefined || here.length === 0) return [];
      const next = here.find((load) => massOf(load) > massOf(from));
      const percent = next === undefined ? undefined : (100 * (massOf(next) - massOf(from))) / massOf(from);
      if (percent !== undefined && percent <= LOAD_STEP.percent.to + 1e-9) return [];
      return [
        {
          at: [...pathOf(place), "first"],
          data: {
            ...aboutPlace(place),
            exercise: exercise.id,
            name: exercise.name,
            place: room.name,
            from: { ...from },
            next: next === undefined ? null : { ...next },
            ...(percent === undefined ? {} : { percent: Math.round(percent) }),
          },
        },
      ];
    });
  },
};
