import { distance } from "../exercises/index.ts";
import { type Exercise, type LoadMeaning, MUSCLES } from "../model/index.ts";
import { canBeDoneAt } from "./cures/new-slot.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import type { Look } from "./run/look.ts";
import { aboutPlace, pathOf, type SlotPlace } from "./run/walk.ts";

type Data = Facts & { readonly exercise: string; readonly name: string; readonly place: string };

const UNLOADED: readonly LoadMeaning[] = ["body only", "height", "none", "band"];

/** At most so many other forms are offered. */
const FORMS_OFFERED = 2;

/** Forms of the same ladder that the place serves, the nearest first, the easier of two as near. */
function nearForms(look: Look, exercise: Exercise): readonly Exercise[] {
  const found = [...look.catalogue.exercises.values()].flatMap((other) => {
    const steps = canBeDoneAt(other, look.place) ? distance(look.catalogue, exercise.id, other.id) : undefined;
    return steps === undefined || other.coachOnly ? [] : [{ other, steps }];
  });
  return found
    .sort((a, b) => Math.abs(a.steps) - Math.abs(b.steps) || a.steps - b.steps)
    .map(({ other }) => other)
    .slice(0, FORMS_OFFERED);
}

/** How much two movements differ in what they train: the sum over the muscles of what one gives more than the other. */
function differenceIn(a: Exercise, b: Exercise): number {
  return MUSCLES.reduce((sum, muscle) => sum + Math.abs((a.muscles[muscle] ?? 0) - (b.muscles[muscle] ?? 0)), 0);
}

/**
 * Where no ladder leads to one: forms of the same pattern that drive the same muscles, those most alike first. Only forms
 * with a load, which can be set for anybody: how hard another one of body weight is, no ladder tells.
 */
function likeForms(look: Look, exercise: Exercise): readonly Exercise[] {
  const drives = (form: Exercise) => MUSCLES.filter((muscle) => form.muscles[muscle] === 1).join();
  return [...look.catalogue.exercises.values()]
    .filter((other) => other.pattern === exercise.pattern && other.amounts === exercise.amounts && !other.coachOnly)
    .filter((other) => !UNLOADED.includes(other.loadMeaning))
    .filter((other) => drives(other) === drives(exercise) && canBeDoneAt(other, look.place))
    .sort((a, b) => differenceIn(a, exercise) - differenceIn(b, exercise) || (a.id < b.id ? -1 : 1))
    .slice(0, FORMS_OFFERED);
}

function remediesFor(look: Look, exercise: Exercise): readonly Exercise[] {
  const near = nearForms(look, exercise);
  return near.length > 0 ? near : likeForms(look, exercise);
}

function foundAt(look: Look, place: SlotPlace): readonly Found<Data>[] {
  const room = look.place;
  const exercise = look.catalogue.exercises.get(place.slot.first);
  if (room === undefined || exercise === undefined || canBeDoneAt(exercise, room)) return [];
  const at = [...pathOf(place), "first"];
  const groups = exercise.needs.filter((group) => !group.some((thing) => (room.equipment[thing] ?? 0) > 0));
  return [
    {
      at,
      data: {
        ...aboutPlace(place),
        exercise: exercise.id,
        name: exercise.name,
        place: room.name,
        groups: groups.map((group) => [...group]),
      },
      cures: (): readonly Cure[] =>
        remediesFor(look, exercise).map(({ id, name }) => ({
          id: "take-near-name",
          data: { id, name },
          changes: [{ op: "set", at, value: id }],
        })),
    },
  ];
}

/**
 * A first choice that needs what the place does not have, so that nobody there gets it. Judged only where a place is
 * given.
 *
 * The remedy takes a near form of the same ladder that the place serves, or where there is none a loaded one of the same
 * pattern that drives the same muscles.
 */
export const notServedHere: Check<"slot/not-served-here", Data> = {
  id: "slot/not-served-here",
  severity: "warn",
  sources: ["ours"],
  run(look) {
    return look.place === undefined ? [] : look.slots.flatMap((place) => foundAt(look, place));
  },
};
