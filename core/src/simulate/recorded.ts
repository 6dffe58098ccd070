import type { Day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import type { DoneSet, SlotSession } from "../measures/index.ts";
import type { Dose, Exercise, PlanSlot } from "../model/index.ts";
import type { Load } from "../units.ts";
import type { Asked, Written } from "./lifter.ts";

/** What made-up people do: pressing on a machine whose stack has a pin at every step, so that nothing else has a say. */
export const MOVEMENT: Exercise = CATALOGUE.exercises.get("chest-press-machine")!;
/** Days from one session to the next. */
export const SESSION_DAYS = 3.5;
const DAY_MS = 86_400_000;
/** Noon of day 0. Any day would do. */
const START_MS = 20_000 * DAY_MS + DAY_MS / 2;
export const SLOT = "press";

/** @returns the instant of a day, counted from the first session, as a device would have written it */
export function instantOf(day: number): number {
  return START_MS + day * DAY_MS;
}

export function dayAt(instant: number): Day {
  return Math.floor(instant / DAY_MS) as Day;
}

function loadOf(kilograms: number): Load {
  return { value: kilograms, unit: "kg" };
}

export function doseOf({ reps, reserve, sets }: Omit<Asked, "loadKg">): Dose {
  const set = {
    amount: { kind: "reps", span: reps },
    eachSide: false,
    reserve: { from: reserve, to: reserve },
  } as const;
  return { sets: Array.from({ length: sets }, () => set), restS: 120 };
}

export function slotOf(asked: Asked, dose: Dose = doseOf(asked)): PlanSlot {
  return {
    key: SLOT,
    exercise: MOVEMENT.id,
    dose,
    load: loadOf(asked.loadKg),
    why: [],
    offer: [],
  };
}

/**
 * A session as it stands in somebody's record: what was written down beside what was asked. Sets that were not written
 * down are simply not there.
 *
 * @param number of the session, 0 = first
 * @param dose as it was decided, where it says more than what was asked
 */
export function recorded(
  number: number,
  day: number,
  asked: Asked,
  written: readonly Written[],
  dose?: Dose,
): SlotSession {
  const slot = slotOf(asked, dose);
  const sets = written.map(({ loadKg, reps, reserve }, set): DoneSet => {
    const load = loadOf(loadKg);
    return {
      set,
      exercise: MOVEMENT.id,
      reps: { both: reps },
      load,
      lifted: load,
      asked: slot.dose.sets[set]!,
      ...(reserve === undefined ? {} : { reserve }),
    };
  });
  return {
    session: `made-up/${number + 1}/a`,
    phase: "made-up",
    week: number + 1,
    light: false,
    at: instantOf(day),
    n: number + 1,
    asked: slot,
    sets,
    leftOut: [],
  };
}
