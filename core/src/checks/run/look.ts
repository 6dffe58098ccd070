import {
  type AskedSession,
  askedWeek,
  type MuscleQuarters,
  type WeeklySets,
  weeklySets,
} from "../../measures/index.ts";
import type { Dose, Exercise, Muscle } from "../../model/index.ts";
import { type Clearance, clearanceOf, cutDose } from "../../offer/index.ts";
import type { Quarters } from "../../units.ts";
import type { CheckInput } from "./check.ts";
import { type JudgedWeek, judgedWeeks } from "./judged-weeks.ts";
import { type DosePlace, dosesOfSlots, type ItemPlace, itemPlaces, type SlotPlace, slotPlaces } from "./walk.ts";

/** A week that is judged, with what it asks for. */
export interface AskedWeek extends JudgedWeek {
  readonly sessions: readonly AskedSession[];
  readonly sets: WeeklySets;
  /** What each session gives to `sets`. */
  readonly bySession: readonly MuscleQuarters[];
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

function sumOf(sessions: readonly WeeklySets[]): WeeklySets {
  const sum: Partial<Record<Muscle, Quarters>> = {};
  for (const { quarters } of sessions) {
    for (const name in quarters) {
      const muscle = name as Muscle;
      sum[muscle] = ((sum[muscle] ?? 0) + quarters[muscle]!) as Quarters;
    }
  }
  return { quarters: sum, unknown: sessions.flatMap(({ unknown }) => unknown) };
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
    weeks: programme.phases.map((phase) =>
      judgedWeeks(phase).map((judged) => {
        const sessions = askedWeek(phase, judged.week);
        const each = sessions.map((session) => weeklySets([session], input.catalogue));
        return { ...judged, sessions, sets: sumOf(each), bySession: each.map(({ quarters }) => quarters) };
      }),
    ),
  };
}
