import { type AskedSession, askedWeek } from "../../measures/index.ts";
import type { CheckInput } from "./check.ts";
import { type JudgedWeek, judgedWeeks } from "./judged-weeks.ts";
import { type DosePlace, dosesOfSlots, type ItemPlace, itemPlaces, type SlotPlace, slotPlaces } from "./walk.ts";

/** A week that is judged, with what it asks for. */
export interface AskedWeek extends JudgedWeek {
  readonly sessions: readonly AskedSession[];
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

export function lookAt(input: CheckInput): Look {
  const { programme } = input;
  const slots = slotPlaces(programme);
  return {
    ...input,
    slots,
    items: itemPlaces(programme),
    doses: dosesOfSlots(slots),
    weeks: programme.phases.map((phase) =>
      judgedWeeks(phase).map((judged) => ({ ...judged, sessions: askedWeek(phase, judged.week) })),
    ),
  };
}
