import { type Exercise, type Lane, laneOf, slotsOf } from "../model/index.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import type { Look } from "./run/look.ts";
import { aboutPlace, pathOf, type SlotPlace, sessionPath } from "./run/walk.ts";

type Data = Facts & { readonly exercise: string; readonly name: string; readonly after: string };

/** Slow work of these lanes tires what jumps and fast lifts need; of those, what throws need. Ours, no source. */
const LEGS: readonly Lane[] = ["squat", "hinge", "single leg"];
const ARMS: readonly Lane[] = ["push", "pull"];

/** The lanes whose slow work should come after this movement; none for work that is not fast. */
function before({ pattern }: Exercise): readonly Lane[] {
  if (pattern === "jump") return LEGS;
  if (pattern === "throw") return ARMS;
  return pattern === "power lift" ? [...LEGS, ...ARMS] : [];
}

/** The first block that should come after this slot and comes before. */
function slowBefore(look: Look, { session, blockAt }: SlotPlace, lanes: readonly Lane[]) {
  for (const [index, block] of session.work.slice(0, blockAt).entries()) {
    for (const { first } of slotsOf(block)) {
      const exercise = look.catalogue.exercises.get(first);
      const lane = exercise === undefined ? undefined : laneOf(exercise.pattern);
      if (exercise?.mode === "dynamic" && lane !== undefined && lanes.includes(lane)) return { index, exercise };
    }
  }
  return undefined;
}

/** A straight slot done before the slow work; a pair or round is left to the coach. */
function moved(place: SlotPlace, to: number, data: Facts): readonly Cure[] {
  if (!("slot" in place.block)) return [];
  const work = [...sessionPath(place.phaseAt, place.sessionAt), "work"];
  return [
    {
      id: "do-first",
      data,
      changes: [
        { op: "remove", at: [...work, place.blockAt] },
        { op: "insert", at: [...work, to], value: place.block },
      ],
    },
  ];
}

/**
 * Jumps, throws and fast lifts after slow work that tires the same limbs: speed is learned fresh. The handbook's order is
 * power, then the great lifts, then the rest.
 *
 * The remedy moves the slot before the slow work.
 */
export const fastWorkLast: Check<"session/fast-work-last", Data> = {
  id: "session/fast-work-last",
  severity: "note",
  sources: ["haffTriplett2016", "acsm2009", "ours"],
  run(look) {
    return look.slots.flatMap((place): readonly Found<Data>[] => {
      const exercise = look.catalogue.exercises.get(place.slot.first);
      const slow = exercise === undefined ? undefined : slowBefore(look, place, before(exercise));
      if (exercise === undefined || slow === undefined) return [];
      const names = { name: exercise.name, after: slow.exercise.name };
      return [
        {
          at: pathOf(place),
          data: { ...aboutPlace(place), exercise: exercise.id, ...names },
          cures: () => moved(place, slow.index, names),
        },
      ];
    });
  },
};
