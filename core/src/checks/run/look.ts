import {
  type AskedSession,
  askedWeek,
  type MuscleQuarters,
  type WeeklySets,
  weeklySets,
} from "../../measures/index.ts";
import type { Muscle } from "../../model/index.ts";
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

/** What checks look at, with what several of them need worked out once. */
export interface Look extends CheckInput {
  readonly slots: readonly SlotPlace[];
  readonly items: readonly ItemPlace[];
  /** Every dose of every slot. */
  readonly doses: readonly DosePlace[];
  /** The weeks of each phase. */
  readonly weeks: readonly (readonly AskedWeek[])[];
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
  return {
    ...input,
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
