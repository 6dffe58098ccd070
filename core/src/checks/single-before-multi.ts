import { type Exercise, MUSCLES, type Muscle, type Slot, slotsOf } from "../model/index.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import type { Look } from "./run/look.ts";
import { aboutPlace, pathOf, type SlotPlace, sessionPath } from "./run/walk.ts";

type Data = Facts & {
  readonly exercise: string;
  readonly name: string;
  readonly muscles: readonly Muscle[];
  readonly before: string;
};

function isSingleJoint({ pattern }: Exercise): boolean {
  return pattern === "upper isolation" || pattern === "lower isolation";
}

/** Muscles that both drive. */
function shared(a: Exercise, b: Exercise): readonly Muscle[] {
  return MUSCLES.filter((muscle) => a.muscles[muscle] === 1 && b.muscles[muscle] === 1);
}

/** The movements of several joints for the same muscle that come after a slot for one, in later blocks. */
function later(look: Look, place: SlotPlace, single: Exercise) {
  return place.session.work.flatMap((block, blockAt) => {
    if (blockAt <= place.blockAt) return [];
    return slotsOf(block).flatMap((slot: Slot) => {
      const exercise = look.catalogue.exercises.get(slot.first);
      if (exercise === undefined || isSingleJoint(exercise)) return [];
      const muscles = shared(single, exercise);
      return muscles.length > 0 ? [{ exercise, muscles, blockAt }] : [];
    });
  });
}

/** A straight slot done after the last of them; a pair or round is left to the coach. */
function moved(place: SlotPlace, after: number, data: Facts): readonly Cure[] {
  if (!("slot" in place.block)) return [];
  const work = [...sessionPath(place.phaseAt, place.sessionAt), "work"];
  return [
    {
      id: "do-later",
      data,
      changes: [
        { op: "remove", at: [...work, place.blockAt] },
        { op: "insert", at: [...work, after + 1], value: place.block },
      ],
    },
  ];
}

/**
 * A movement of one joint before a movement of several joints that the same muscle drives: the muscle is tired when the
 * greater load comes. The stand that advises the other order calls its own evidence weak, so this is a note.
 *
 * The remedy moves the slot behind the other.
 */
export const singleBeforeMulti: Check<"session/single-before-multi", Data> = {
  id: "session/single-before-multi",
  severity: "note",
  sources: ["acsm2009"],
  run(look) {
    return look.slots.flatMap((place): readonly Found<Data>[] => {
      const exercise = look.catalogue.exercises.get(place.slot.first);
      if (exercise === undefined || !isSingleJoint(exercise)) return [];
      const others = later(look, place, exercise);
      const last = others.at(-1);
      if (last === undefined) return [];
      const muscles = MUSCLES.filter((muscle) => others.some((other) => other.muscles.includes(muscle)));
      const names = { name: exercise.name, before: last.exercise.name };
      return [
        {
          at: pathOf(place),
          data: { ...aboutPlace(place), exercise: exercise.id, ...names, muscles },
          cures: () => moved(place, last.blockAt, names),
        },
      ];
    });
  },
};
