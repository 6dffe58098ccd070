import { addDays, printDay } from "../day.ts";
import {
  isDirectSet,
  MUSCLE_BREAK_DAYS,
  type MusclePast,
  musclePast,
  occurrencesOf,
  recentSets,
  recentWeeks,
  slotsIn,
  weeklySets,
} from "../measures/index.ts";
import type { Dose, Exercise, Muscle, PlanSession, PlanSlot, Reason, SetDose } from "../model/index.ts";
import type { DoseState, NextDose } from "./dose-state.ts";
import type { ProgressInput } from "./progress-input.ts";
import { reason } from "./reasons.ts";
import { running } from "./trained.ts";

/** What a muscle that a slot drives may do while it is new or back, in its first two sessions. */
export interface MuscleCap {
  readonly muscle: Muscle;
  /** new: nothing of it in what is known · back: it was trained before the break. */
  readonly kind: "new" | "back";
  /** Days without it. */
  readonly days: number;
  /** Sessions since; 0 or 1. */
  readonly exposures: number;
  /** Mean weekly sets before; 0 for a new one. */
  readonly usual: number;
  /** Direct sets of the slot's session, or fractional sets of its week, that are asked, and the most of them. */
  readonly asked: number;
  readonly most: number;
}

/** Sessions of a muscle that are capped. Ours, no source: soreness after the second is far less. */
const CAPPED = 2;
/** Direct sets a session of a new muscle, in its first session and its second; and repetitions in reserve. Ours, no source. */
const NEW_SETS = [2, 3] as const;
const NEW_RESERVE = 3;
/** Days off after which half of the usual sets is enough, and the share before. Common practice, no source. */
const LONG_DAYS = 28;
const [HALF, TWO_THIRDS] = [1 / 2, 2 / 3];

/**
 * The muscles that a slot drives and that are new or back after two weeks and more, whoever the person is: a trained
 * person's muscle that nothing has used for long gets as sore as anybody's. Each is judged by itself, by what records and
 * the roster's weeks tell of it; where they tell of less than two weeks nothing is said.
 *
 * @param slot as it is asked next
 * @source practice, ours
 */
export function muscleCaps(input: ProgressInput, slot: PlanSlot, exercise: Exercise): readonly MuscleCap[] {
  const { log, catalogue, dayOf, today, person } = input;
  const next = nextWith(input, slot);
  const driven = (Object.keys(exercise.muscles) as Muscle[]).filter((muscle) => exercise.muscles[muscle] === 1);
  if (next === undefined) return [];
  return driven.flatMap((muscle): MuscleCap[] => {
    const past = musclePast(muscle, log, catalogue, dayOf, today, person.recent);
    const days = past?.exposures === 0 ? past.days : past?.daysBefore;
    if (past === undefined || days === undefined || past.exposures >= CAPPED || days < MUSCLE_BREAK_DAYS) return [];
    const usual = usualBefore(input, muscle, past);
    const { exposures } = past;
    if (usual === 0) {
      const asked = directIn(next.session, muscle, input);
      return [{ muscle, kind: "new", days, exposures, usual, asked, most: NEW_SETS[exposures as 0 | 1] }];
    }
    const asked = (weeklySets(next.week, catalogue).quarters[muscle] ?? 0) / 4;
    const most = usual * (days > LONG_DAYS ? HALF : TWO_THIRDS);
    return [{ muscle, kind: "back", days, exposures, usual, asked, most }];
  });
}

/** All muscles that a form drives, where each was trained twice or more since its last break and that is no break ago. */
export function musclesInUse(input: ProgressInput, exercise: Exercise): readonly Muscle[] {
  const { log, catalogue, dayOf, today, person } = input;
  const driven = (Object.keys(exercise.muscles) as Muscle[]).filter((muscle) => exercise.muscles[muscle] === 1);
  const all = driven.every((muscle) => {
    const past = musclePast(muscle, log, catalogue, dayOf, today, person.recent);
    return past !== undefined && past.exposures >= CAPPED;
  });
  return all ? driven : [];
}

/** The session and the week, not light, in which a slot comes next. */
function nextWith({ plan, record }: ProgressInput, slot: PlanSlot) {
  const recorded = new Set(record.sessions.map(({ session }) => session));
  const all = occurrencesOf(plan);
  const next = all.find(
    ({ id, light, session }) => !light && !recorded.has(id) && slotsIn(session).some(({ key }) => key === slot.key),
  );
  if (next === undefined) return undefined;
  const week = all.filter(({ phase, week }) => phase === next.phase && week === next.week);
  return { session: next.session, week: week.map(({ session }) => session) };
}

/** Mean weekly sets of a muscle over the last four weeks that were trained in before its break. */
function usualBefore(
  { log, catalogue, dayOf, today, person }: ProgressInput,
  muscle: Muscle,
  past: MusclePast,
): number {
  const back = past.exposures === 0 ? past.days : past.days + past.daysBefore!;
  const until = addDays(today, 1 - back);
  return recentSets(recentWeeks(log, catalogue, dayOf, until, person.recent), until)?.usual[muscle] ?? 0;
}

function directIn(session: PlanSession, muscle: Muscle, { catalogue }: ProgressInput): number {
  return slotsIn(session).reduce((sum, { exercise, dose }) => {
    const form = catalogue.exercises.get(exercise);
    if (form?.muscles[muscle] !== 1) return sum;
    return sum + dose.sets.filter((set) => isDirectSet(form, set)).length;
  }, 0);
}

/**
 * The first two doses of a slot whose muscles are new or back: so many sets that the session keeps a new muscle at two
 * and then three, and the week one that is back at two thirds of its usual sets, at half after more than four weeks; a
 * new one leaves three repetitions or more, one that is back one more. What only lowers begins with one set, since that
 * is what muscles lose first and what makes them sorest.
 *
 * @returns undefined where nothing is new or back, or no more than that is asked already
 * @source practice, hortobagyi1993, ours
 */
export function firstExposure(state: DoseState): NextDose | undefined {
  // Who did this very form twice without a break has had both first sessions, and nothing more has to be worked out.
  if (running(state, CAPPED) !== undefined) return undefined;
  const { slot, exercise, caps } = state;
  if (caps.length === 0) return undefined;
  const { dose } = slot;
  const isNew = caps.some(({ kind }) => kind === "new");
  const lowers = exercise.lowering && caps.some(({ exposures }) => exposures === 0);
  const share = Math.min(1, ...caps.map(({ most, asked }) => (asked > most ? most / asked : 1)));
  const count = lowers ? 1 : Math.max(1, Math.floor(dose.sets.length * share + 1e-9));
  const sets = dose.sets.slice(0, count).map((set) => (isNew ? leaving(set) : set));
  const same = count === dose.sets.length && sets.every((set, at) => set === dose.sets[at]);
  if (same) return undefined;
  const easier: Dose = { ...dose, sets: count < dose.sets.length && !isNew ? sets.map(oneMoreLeft) : sets };
  return {
    kind: "down",
    patch: { slot: slot.key, change: "reps", dose: easier, exercise: exercise.id },
    evidence: evidenceOf(state, lowers),
    refused: [],
    others: [],
  };
}

function evidenceOf({ exercise, caps, today }: DoseState, lowers: boolean): readonly Reason[] {
  const first = caps.map(({ muscle, kind, days, exposures, usual, most }) =>
    reason(kind === "new" ? "progress/muscle-new" : "progress/muscle-back", {
      muscle,
      days,
      // The same for as long as the break lasts, so that it is one matter; days are not.
      since: exposures === 0 ? printDay(addDays(today, -days)) : null,
      exposures,
      usual: Math.round(10 * usual) / 10,
      most: Math.round(10 * most) / 10,
    }),
  );
  return lowers ? [...first, reason("progress/lowering-first", { exercise: exercise.id })] : first;
}

/** Three repetitions or more left; what is no number of repetitions stays. */
function leaving(set: SetDose): SetDose {
  const { amount, reserve } = set;
  if (amount.kind !== "reps" && amount.kind !== "most") return set;
  if (reserve !== undefined && reserve.from >= NEW_RESERVE) return set;
  return { ...set, reserve: { from: NEW_RESERVE, to: Math.max(NEW_RESERVE, reserve?.to ?? 0) } };
}

function oneMoreLeft(set: SetDose): SetDose {
  const { amount, reserve } = set;
  if (amount.kind !== "reps" || reserve === undefined) return set;
  return { ...set, reserve: { from: reserve.from + 1, to: reserve.to + 1 } };
}
