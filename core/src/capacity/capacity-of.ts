import { ageOn, type Day } from "../day.ts";
import { onScale } from "../loads/index.ts";
import { type DoneSet, leastOf, type SlotSession } from "../measures/index.ts";
import type { Exercise, Person, Reason, SetDose } from "../model/index.ts";
import { asLoad, inKg, kg, type Load } from "../units.ts";
import { type Capacity, type CapacityCode, capacity, onceOf } from "./capacity.ts";
import type { SetFact, Trainee } from "./set-fact.ts";

/** What can be lifted once, in the meaning of the exercise, with an 80 % interval; or what is missing. */
export type OnceShown =
  | {
      readonly kind: "known";
      readonly value: Load;
      readonly low: Load;
      readonly high: Load;
      /** How many sessions it rests on. */
      readonly sessions: number;
    }
  | { readonly kind: "unknown"; readonly missing: Reason };

/** The capacity of one exercise, and its figure for people to read. */
export interface ExerciseCapacity {
  readonly capacity: Capacity;
  readonly once: OnceShown;
}

/** Loads that are a mass on one scale, so that a figure for one can be read. */
const SCALES: readonly string[] = ["total", "per hand", "one implement", "stack"];

/** @returns of whom a capacity is, as far as it bears on it */
export function traineeOf({ status, born }: Person, on: Day): Trainee {
  return { status, age: ageOn(born, on) };
}

/**
 * What one person can do in one exercise on a day, from its history.
 *
 * Machine numbers belong to one machine: of several only the sets on the one used last count.
 *
 * @param history of this exercise, whatever slot it stood in
 * @source epley1985, kalman1960, ours
 */
export function capacityOf(
  exercise: Exercise,
  history: readonly SlotSession[],
  { person, on, dayOf }: { readonly person: Person; readonly on: Day; readonly dayOf: (at: number) => Day },
): ExerciseCapacity {
  const unknown = (code: CapacityCode): ExerciseCapacity => {
    const missing: Reason = { code, data: {} };
    return { capacity: { kind: "unknown", missing }, once: { kind: "unknown", missing } };
  };
  if (exercise.loadMeaning === "band") return unknown("capacity/no-scale");
  const withBody = exercise.loadMeaning === "assist" || exercise.loadMeaning === "added to body";
  if (withBody && (person.mass === undefined || exercise.bodyShare === undefined))
    return unknown("capacity/body-unknown");
  const found = capacity(factsOf(exercise, history, person, dayOf), on, traineeOf(person, on));
  if (found.kind === "unknown") return { capacity: found, once: { kind: "unknown", missing: found.missing } };
  if (!SCALES.includes(exercise.loadMeaning)) return { capacity: found, once: unknown("capacity/no-scale").once };
  const once = onceOf(found);
  if ("missing" in once) return { capacity: found, once: { kind: "unknown", missing: once.missing } };
  const unit = history.flatMap(({ sets }) => sets).findLast(({ lifted }) => lifted !== undefined)!.lifted!.unit;
  const said = (value: number) => asLoad(kg(value), unit);
  const { low, high, sessions } = once;
  return { capacity: found, once: { kind: "known", value: said(once.kg), low: said(low), high: said(high), sessions } };
}

/** @returns the sets of one exercise as facts; with body mass in it, on the scale of what is moved */
export function factsOf(
  exercise: Exercise,
  history: readonly SlotSession[],
  person: Person,
  dayOf: (at: number) => Day,
): readonly SetFact[] {
  const machine = history.flatMap(({ sets }) => sets).findLast((set) => set.exercise === exercise.id)?.machine;
  return history.flatMap(({ at, endedEarly, sets }) =>
    sets
      .filter((set) => set.exercise === exercise.id && (exercise.loadMeaning !== "stack" || set.machine === machine))
      .map((set) => factOf(set, dayOf(at), kgOf(exercise, person, set), endedEarly === true)),
  );
}

function factOf(set: DoneSet, day: Day, moved: number | undefined, endedEarly: boolean): SetFact {
  const [reps, holdS] = [leastOf(set.reps), leastOf(set.holdS)];
  const asked = askedOf(set.asked);
  return {
    day,
    set: set.set,
    ...(moved === undefined ? {} : { kg: moved }),
    ...(reps === undefined ? {} : { reps }),
    ...(holdS === undefined ? {} : { holdS }),
    ...(set.reserve === undefined ? {} : { reserve: set.reserve }),
    ...(asked === undefined ? {} : { asked }),
    ...(endedEarly ? { stoppedEarly: true } : {}),
  };
}

function askedOf(dose: SetDose | undefined): SetFact["asked"] {
  if (dose === undefined) return undefined;
  const { amount, reserve } = dose;
  if (amount.kind === "most") return "most";
  if (amount.kind !== "reps" && amount.kind !== "hold") return undefined;
  return { ...amount.span, ...(reserve === undefined ? {} : { reserve: reserve.from }) };
}

/** Per hand counts one hand, so that the figure is in the meaning of the exercise. The body alone is one and the same load. */
function kgOf(exercise: Exercise, person: Person, { lifted, load }: DoneSet): number | undefined {
  const { loadMeaning } = exercise;
  if (loadMeaning === "body only" || loadMeaning === "height" || loadMeaning === "none") return 1;
  const none = loadMeaning === "added to body" && load === "none" ? { value: 0, unit: "kg" as const } : undefined;
  const mass = onScale(exercise, person, lifted ?? none);
  if (mass === undefined || !(mass > 0)) return undefined;
  return inKg(mass) / (loadMeaning === "per hand" ? 2 : 1);
}
