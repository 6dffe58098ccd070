import type { Day } from "../day.ts";
import { distance } from "../exercises/index.ts";
import { effortAtHeaviest, type LoadsLeft, loadsLeft, type StartingLoad, startingLoad } from "../loads/index.ts";
import {
  areNeighbours,
  type Catalogue,
  type Dose,
  doseInWeek,
  type Exercise,
  type ExerciseId,
  MUSCLES,
  type Person,
  type Phase,
  type Place,
  type Reason,
  type Slot,
  type SlotKey,
  type StressTag,
} from "../model/index.ts";
import { type Admission, type Admit, admitter } from "../offer/index.ts";
import type { Load } from "../units.ts";
import { doseFor, takesLoad } from "./dose-for.ts";
import { reason } from "./reasons.ts";
import type { Line } from "./task.ts";
import { hardenDose } from "./too-light.ts";
import { wantLines } from "./wants.ts";

/** For whom, where, when, from what. */
export interface FitContext {
  readonly phase: Phase;
  readonly person: Person;
  readonly place: Place;
  readonly catalogue: Catalogue;
  /** First day of the phase. */
  readonly on: Day;
  /** Its last day; `on` when left out. */
  readonly to?: Day;
  /** The form that each slot had when it was fitted last. */
  readonly last?: ReadonlyMap<SlotKey, ExerciseId>;
}

/** A form that may stand in a slot, with its dose in every week of the phase. */
export interface Candidate {
  readonly exercise: Exercise;
  /** Week 1 first, as asked of this person before any change of sets or light week. */
  readonly doses: readonly Dose[];
  readonly watch: readonly StressTag[];
  readonly side?: "left" | "right";
  readonly notes: readonly Reason[];
  readonly start: StartingLoad;
  /** Nothing here makes the asked repetitions hard, so its doses are long slow sets instead. */
  readonly tooLight: boolean;
  /** With what another dose of this form begins: of another week, or of one set. */
  readonly startOf: (dose: Dose) => StartingLoad;
  /** The loads here that no limit forbids; of a place that lists none, the wanted one. */
  readonly loadsLeft: (wanted?: Load) => LoadsLeft;
  readonly want: number;
  readonly lines: readonly Line[];
}

export interface SetAside {
  readonly exercise: ExerciseId;
  readonly why: readonly Reason[];
}

/** Every form that was thought of for a slot: those that may, best first, and those set aside, with all reasons. */
export interface SlotChoices {
  readonly slot: Slot;
  readonly candidates: readonly Candidate[];
  readonly aside: readonly SetAside[];
  readonly pinned?: { readonly exercise: ExerciseId; readonly kept: boolean; readonly why: readonly Reason[] };
}

/** @returns the door of offer for this person and place on the days of the phase; a form that the coach chose by hand meets only limits */
export function admitFor({ person, place, catalogue, on, to = on }: FitContext, byHand = false): Admit {
  return admitter({ person, place, catalogue, on, to, byHand });
}

/** A slot for one joint is about its muscle: another form of the same pattern must train one of those it is for. */
function sharesMuscle(slot: Slot, exercise: Exercise, first: Exercise | undefined): boolean {
  if (slot.pattern !== "upper isolation" && slot.pattern !== "lower isolation") return true;
  const wanted = slot.muscles ?? (first === undefined ? [] : MUSCLES.filter((muscle) => first.muscles[muscle] === 1));
  return wanted.length === 0 || wanted.some((muscle) => exercise.muscles[muscle] !== undefined);
}

function thinkable(slot: Slot, exercise: Exercise, first: Exercise | undefined): boolean {
  return (
    exercise.id === slot.first ||
    (exercise.pattern === slot.pattern && sharesMuscle(slot, exercise, first)) ||
    exercise.alsoCounts === slot.pattern ||
    areNeighbours(exercise.pattern, slot.pattern)
  );
}

/** @returns the forms that may be thought of for a slot, whoever it is for */
export function formsFor(slot: Slot, catalogue: Catalogue): readonly Exercise[] {
  const first = catalogue.exercises.get(slot.first);
  return [...catalogue.exercises.values()].filter((exercise) => thinkable(slot, exercise, first));
}

/** One admission for all weeks: whatever one week's dose forbids is forbidden for the phase. Weeks that ask the same share one. */
function admitAllWeeks(
  admit: Admit,
  exercise: Exercise,
  asked: readonly Dose[],
): Admission & { readonly doses?: readonly Dose[] } {
  const byDose = new Map<Dose, Admission>();
  for (const dose of asked) {
    if (byDose.has(dose)) continue;
    const admission = admit(exercise, doseFor(exercise, dose));
    if (!admission.ok) return admission;
    byDose.set(dose, admission);
  }
  const passed = asked.flatMap((dose) => {
    const admission = byDose.get(dose);
    return admission?.ok ? [admission] : [];
  });
  const first = passed[0];
  if (first === undefined) return { ok: false, why: [] };
  return {
    ...first,
    watch: [...new Set(passed.flatMap((admission) => admission.watch))].sort(),
    doses: passed.map((admission) => admission.dose),
  };
}

/** Of equal points, what is on record comes first, then what takes a load that can grow, then the name. */
function byWant(person: Person): (a: Candidate, b: Candidate) => number {
  const onRecord = ({ exercise }: Candidate) => (person.lifts.some((lift) => lift.exercise === exercise.id) ? 0 : 1);
  const loadable = ({ exercise }: Candidate) => (takesLoad(exercise) ? 0 : 1);
  return (a, b) =>
    b.want - a.want ||
    onRecord(a) - onRecord(b) ||
    loadable(a) - loadable(b) ||
    (a.exercise.id < b.exercise.id ? -1 : 1);
}

/** Repetitions over those asked from which a form without load counts as too light. Ours, no source. */
const TOO_MANY = 5;

/**
 * Whether the body alone is too light for the asked repetitions: so many could be done of this form, or of a harder one
 * on its ladder, as far as the person's records tell.
 */
function bodyTooLight(context: FitContext, exercise: Exercise, dose: Dose): boolean {
  const asked = dose.sets[0];
  if (asked?.amount.kind !== "reps") return false;
  const enough = asked.amount.span.to + (asked.reserve?.from ?? 0) + TOO_MANY;
  const harder = new Set(
    context.person.lifts
      .filter(({ load }) => load === undefined)
      .map((lift) => lift.exercise)
      .filter((id) => (distance(context.catalogue, exercise.id, id) ?? -1) >= 0),
  );
  return [exercise.id, ...harder].some((id) => {
    const form = context.catalogue.exercises.get(id);
    const effort = form === undefined ? undefined : effortAtHeaviest({ ...context, exercise: form });
    return effort !== undefined && effort.least >= enough;
  });
}

/** Weeks that had one dose between them still do. */
function hardened(doses: readonly Dose[]): readonly Dose[] {
  const hard = new Map(doses.map((dose) => [dose, dose]));
  for (const dose of hard.keys()) hard.set(dose, hardenDose(dose));
  return doses.map((dose) => hard.get(dose)!);
}

/** One form for one slot: a candidate, or set aside. */
function consider(context: FitContext, admit: Admit, slot: Slot, exercise: Exercise): Candidate | SetAside {
  const { phase, person, place, catalogue, on } = context;
  const asked = Array.from({ length: phase.weeks }, (_, index) => doseInWeek(slot, index + 1));
  const admission = admitAllWeeks(admit, exercise, asked);
  if (!admission.ok)
    return {
      exercise: exercise.id,
      get why() {
        return admission.why;
      },
    };
  const doses = admission.doses ?? [];
  const { cap } = admission;
  const startOf = (dose: Dose) => startingLoad({ exercise, dose, person, place, on, catalogue, cap });
  const start = startOf(doses[0]!);
  if (start.kind === "none under the cap" || start.kind === "too heavy")
    return { exercise: exercise.id, why: [start.because] };
  const tooLight = start.kind === "too light" || (start.kind === "body" && bodyTooLight(context, exercise, doses[0]!));
  const kept = context.last?.get(slot.slot) === exercise.id;
  const lines = wantLines({ slot, exercise, person, catalogue, watch: admission.watch, tooLight, kept });
  return {
    exercise,
    doses: tooLight ? hardened(doses) : doses,
    watch: admission.watch,
    ...(admission.side === undefined ? {} : { side: admission.side }),
    notes: admission.notes,
    start,
    startOf,
    loadsLeft: (wanted) => loadsLeft({ exercise, person, place, on, cap }, wanted),
    tooLight,
    want: lines.reduce((sum, line) => sum + line.points, 0),
    lines,
  };
}

/** Collects, for one slot, every form of its pattern or a neighbour, admitted or set aside. */
export function choicesFor(context: FitContext, admit: Admit, slot: Slot): SlotChoices {
  const candidates: Candidate[] = [];
  const aside: SetAside[] = [];
  for (const exercise of formsFor(slot, context.catalogue)) {
    const found = consider(context, admit, slot, exercise);
    if ("why" in found) aside.push(found);
    else candidates.push(found);
  }
  candidates.sort(byWant(context.person));
  aside.sort((a, b) => (a.exercise < b.exercise ? -1 : 1));
  return pinned(context, { slot, candidates, aside });
}

function pinOf(person: Person, slot: SlotKey): ExerciseId | undefined {
  return person.pins.find((pin) => pin.slot === slot && pin.exercise !== undefined)?.exercise;
}

/** The coach's hand wins over every want; only what may never be beats it, and says so. */
function pinned(context: FitContext, choices: SlotChoices): SlotChoices {
  const id = pinOf(context.person, choices.slot.slot);
  const exercise = id === undefined ? undefined : context.catalogue.exercises.get(id);
  if (id === undefined) return choices;
  if (exercise === undefined)
    return {
      ...choices,
      pinned: { exercise: id, kept: false, why: [reason("fit/unknown-exercise", { exercise: id })] },
    };
  const found = consider(context, admitFor(context, true), choices.slot, exercise);
  return "why" in found
    ? { ...choices, pinned: { exercise: id, kept: false, why: found.why } }
    : { ...choices, candidates: [found], pinned: { exercise: id, kept: true, why: [] } };
}
