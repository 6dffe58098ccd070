import { type Day, printDay } from "../day.ts";
import type { Occurrence } from "../measures/index.ts";
import type { ExerciseId, Patch, Reason, SlotKey, WayUp } from "../model/index.ts";
import {
  type Certainty,
  dosesFor,
  type LightWeekSaid,
  type NextDose,
  runsNext,
  type TellingSet,
  tellsMost,
  titleOf,
} from "../progress/index.ts";
import { carriedInto } from "./carried-into.ts";
import type { PlannedPerson } from "./situation.ts";
import { type View, viewOf } from "./view-of.ts";

/** What the way up of one slot says now. */
export interface SlotNext {
  readonly slot: SlotKey;
  readonly exercise: ExerciseId;
  readonly way: WayUp | "run-walk";
  readonly kind: NextDose["kind"];
  /** What is proposed, as a reason to be said, and as a change. */
  readonly title?: Reason;
  readonly patch?: Patch;
  readonly evidence: readonly Reason[];
  readonly certainty?: Certainty;
  /** What is carried from another form, where too little is known of this one. */
  readonly carried?: Reason;
  readonly refused: readonly Reason[];
  readonly others: readonly { readonly patch: Patch; readonly title: Reason }[];
}

/** What is said of light weeks. */
export interface LightNext {
  readonly kind: LightWeekSaid["kind"];
  readonly title?: Reason;
  readonly patch?: Patch;
  readonly evidence: readonly Reason[];
  readonly refused: readonly Reason[];
  readonly others: readonly { readonly patch: Patch; readonly title: Reason }[];
}

/** The next doses of one person, and which sets of the next session tell most. */
export interface NextDoses {
  readonly day: string;
  readonly slots: readonly SlotNext[];
  readonly light: LightNext;
  /** What calls for a look, as in the morning list. */
  readonly notes: readonly Reason[];
  readonly session?: {
    readonly day: string;
    readonly id: string;
    readonly title: string;
    readonly tells: readonly TellingSet[];
  };
}

/** @returns the next dose of every slot of the phase that runs, in the order in which the slots come */
export function nextDoses(person: PlannedPerson): NextDoses {
  const view = viewOf(person);
  const runs = runsNext(view.progress).map((run) => ({ ...run, way: "run-walk" as const }));
  const slots = [...dosesFor(view.progress), ...runs].map(({ slot, exercise, way, next }): SlotNext => {
    const titled = (patch: Patch) => titleOf(patch, slot, exercise, person.person);
    const { kind, patch, evidence, certainty, refused, others } = next;
    const carried = carriedInto(view, exercise.id);
    return {
      slot: slot.key,
      exercise: exercise.id,
      way,
      kind,
      ...(patch === undefined ? {} : { patch, title: titled(patch) }),
      evidence,
      ...(certainty === undefined ? {} : { certainty }),
      ...(carried === undefined ? {} : { carried }),
      refused,
      others: others.map((each) => ({ patch: each, title: titled(each) })),
    };
  });
  const recorded = new Set(view.record.sessions.map(({ session }) => session));
  const next = view.days.find(({ occurrence, day }) => day >= person.today && !recorded.has(occurrence.id));
  return {
    day: printDay(person.today),
    slots,
    light: lightOf(view),
    notes: view.watched().notes,
    ...(next === undefined
      ? {}
      : { session: { ...sessionOf(next), tells: tellsMost(view.progress, next.occurrence.session) } }),
  };
}

function lightOf({ light: { slot: _, ...said }, person }: View): LightNext {
  const titled = (patch: Patch) => titleOf(patch, undefined, undefined, person.person);
  const { patch, others } = said;
  return {
    ...said,
    ...(patch === undefined ? {} : { title: titled(patch) }),
    others: others.map((each) => ({ patch: each, title: titled(each) })),
  };
}

function sessionOf({ occurrence, day }: { readonly occurrence: Occurrence; readonly day: Day }) {
  return { day: printDay(day), id: occurrence.id, title: occurrence.session.title };
}
