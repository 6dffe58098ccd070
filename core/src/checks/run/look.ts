import {
  type AskedSession,
  askedWeek,
  type Balance,
  balance,
  type MuscleQuarters,
  type WeeklySets,
  weeklySets,
} from "../../measures/index.ts";
import type { Catalogue, Dose, Exercise, Phase } from "../../model/index.ts";
import { type Clearance, clearanceOf, cutDose } from "../../offer/index.ts";
import type { CheckInput } from "./check.ts";
import { type JudgedWeek, judgedWeeks } from "./judged-weeks.ts";
import { type DosePlace, dosesOfSlots, type ItemPlace, itemPlaces, type SlotPlace, slotPlaces } from "./walk.ts";

/** A week that is judged, with what it asks for. */
export interface AskedWeek extends JudgedWeek {
  readonly sessions: readonly AskedSession[];
  readonly sets: WeeklySets;
  /** What each session gives to `sets`. */
  readonly bySession: () => readonly MuscleQuarters[];
  readonly balance: () => Balance;
}

/** What a person may do on the first day. */
export interface Health {
  readonly clearance: Clearance;
  /** A dose as the plan would cut it, worked out once for each. */
  readonly cut: (exercise: Exercise, dose: Dose) => ReturnType<typeof cutDose>;
}

/** What checks look at, with what several of them need worked out once. */
export interface Look extends CheckInput {
  readonly slots: readonly SlotPlace[];
  readonly items: readonly ItemPlace[];
  /** Every dose of every slot. */
  readonly doses: readonly DosePlace[];
  /** The weeks of each phase. */
  readonly weeks: readonly (readonly AskedWeek[])[];
  /** Only where a person and a first day are given. */
  readonly health?: Health;
}

function healthOf({ person, on }: CheckInput): Health | undefined {
  if (person === undefined || on === undefined) return undefined;
  const clearance = clearanceOf(person, on);
  // One dose stands in one slot and so belongs to one exercise.
  const known = new WeakMap<Dose, ReturnType<typeof cutDose>>();
  const cut = (exercise: Exercise, dose: Dose) => {
    const before = known.get(dose);
    if (before !== undefined) return before;
    const made = cutDose(exercise, dose, clearance, {});
    known.set(dose, made);
    return made;
  };
  return { clearance, cut };
}

/** What few weeks are asked for is worked out when it first is. */
function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

function askedWeeks(phase: Phase, catalogue: Catalogue): readonly AskedWeek[] {
  return judgedWeeks(phase).map((judged) => {
    const sessions = askedWeek(phase, judged.week);
    return {
      ...judged,
      sessions,
      sets: weeklySets(sessions, catalogue),
      bySession: once(() => sessions.map((session) => weeklySets([session], catalogue).quarters)),
      balance: once(() => balance(sessions, catalogue)),
    };
  });
}

export function lookAt(input: CheckInput): Look {
  const { programme } = input;
  const slots = slotPlaces(programme);
  const health = healthOf(input);
  return {
    ...input,
    ...(health === undefined ? {} : { health }),
    slots,
    items: itemPlaces(programme),
    doses: dosesOfSlots(slots),
    weeks: programme.phases.map((phase) => askedWeeks(phase, input.catalogue)),
  };
}
