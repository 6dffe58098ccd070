import { trainingDays, weekDaysOf, weeksOf, windowsOf } from "../calendar/index.ts";
import type { Day } from "../day.ts";
import { type FitInput, type FitMemory, fitPhase } from "../fit/index.ts";
import type { Catalogue, Person, Phase, Place, Plan, PlanPhase, Programme, Reason } from "../model/index.ts";
import { clearanceOf, mayPrint } from "../offer/index.ts";
import { type Pins, planWeek } from "./plan-week.ts";
import { reason } from "./reasons.ts";

export interface PlanInput {
  readonly programme: Programme;
  readonly person: Person;
  readonly place: Place;
  readonly others: readonly Place[];
  readonly catalogue: Catalogue;
  /** First day of the plan. */
  readonly on: Day;
  /** What the plan is made from, as hashes: equal ones give equal bytes. */
  readonly made: Plan["made"];
  /** Content hash of the programme. */
  readonly programmeHash: string;
  /** How many sessions a week of each phase this person can do, where that is known already. */
  readonly perWeek?: readonly number[];
  /** What earlier plans left behind; it spares work and changes nothing. */
  readonly memory?: FitMemory;
}

/** Four weeks show a usual week even when one of them is spent away. */
const LOOK_AHEAD_WEEKS = 4;

/**
 * How many sessions a week this person can do: the days that their windows and the hours of the place leave, no more
 * than they want and no more than the phase has.
 *
 * @returns 0 when no day of a usual week has a window
 */
export function sessionsPerWeek(
  { person, place, others, on }: Pick<PlanInput, "person" | "place" | "others" | "on">,
  phase: Phase,
): number {
  const weekDays = weekDaysOf(person);
  const usual = { ...person, instead: [] };
  const windows = windowsOf(usual, place, on, weekDays * LOOK_AHEAD_WEEKS, others);
  const shortest = Math.min(person.minutes, ...phase.sessions.map((session) => session.minutes));
  const days = trainingDays(windows, weekDays, shortest);
  return Math.min(days, person.perWeek ?? days, phase.sessions.length);
}

function perWeekOf(input: Omit<PlanInput, "made">, index: number): number {
  return input.perWeek?.[index] ?? sessionsPerWeek(input, input.programme.phases[index]!);
}

/** A stretch of days, both ends included. */
export interface Days {
  readonly on: Day;
  readonly to: Day;
}

/** @returns the first and the last day of each phase, for a plan whose weeks have so many days */
export function daysOfPhases({
  programme,
  person,
  on,
}: Pick<PlanInput, "programme" | "person" | "on">): readonly Days[] {
  const weeks = weeksOf(
    person,
    on,
    programme.phases.reduce((sum, phase) => sum + phase.weeks, 0),
  );
  let week = 0;
  return programme.phases.map((phase) => {
    const { first } = weeks[week]!;
    week += phase.weeks;
    return { on: first, to: weeks[week - 1]!.last };
  });
}

/**
 * What fit is asked for one phase of the programme, 0 = first.
 *
 * @param days for which it is to be safe
 */
export function fitTask(input: Omit<PlanInput, "made">, index: number, days = daysOfPhases(input)[index]!): FitInput {
  const { programme, person, place, catalogue, memory } = input;
  const phase = programme.phases[index]!;
  const perWeek = Math.max(1, perWeekOf(input, index));
  const remembered = memory === undefined ? {} : { memory };
  return { programme, phase, person, place, catalogue, ...days, perWeek, ...remembered };
}

/**
 * One phase of a plan, solved and dosed, with the coach's decisions in it.
 *
 * @param lighter weeks that are light with lighter loads
 */
export function planPhase(task: FitInput, pins: Pins, lighter: ReadonlySet<number> = new Set()): PlanPhase {
  const { phase } = task;
  const fitted = fitPhase(task);
  const { must, want, bound, proven } = fitted.solution;
  return {
    key: phase.key,
    title: phase.title,
    score: { must, want, bound, proven },
    weeks: Array.from({ length: phase.weeks }, (_, week) => planWeek(task, fitted, week + 1, pins, lighter)),
  };
}

/**
 * A programme fitted to one person: every phase solved, dosed, loaded, with reasons.
 *
 * One choice serves a whole phase, so every limit and caution that stands on any of its days binds on all of them, and a
 * note says so where it does not stand on all. Only the first phase is firm; later ones are a
 * forecast from what is known today. Whether it may be printed is said in the notes and decided by the documents.
 *
 * @example
 * planFor({ programme, person, place, others: [], catalogue, on, made, programmeHash }).phases[0]?.score.proven
 */
export function planFor(input: PlanInput): Plan {
  const { programme, person } = input;
  const phases = programme.phases.map((_, index) => planPhase(fitTask(input, index), new Map()));
  return {
    id: `${person.id}/${programme.id}/${programme.version}`,
    person: person.id,
    programme: input.programmeHash,
    made: input.made,
    firmTo: { phase: programme.phases[0]!.key },
    notes: notesFor(input),
    phases,
  };
}

/**
 * What the coach must see before anything else: questions that are due, a person who cannot be given a sheet.
 *
 * @param phases days for which each phase is to be safe
 * @param on the day it is said
 */
export function notesFor(
  input: Omit<PlanInput, "made">,
  phases = daysOfPhases(input),
  on = input.on,
): readonly Reason[] {
  const { person, programme } = input;
  const print = mayPrint(person, on);
  const perWeek = Math.min(...programme.phases.map((_, index) => perWeekOf(input, index)));
  const most = Math.max(...programme.phases.map((phase) => phase.sessions.length));
  return [
    ...(print.ok ? [] : [print.reason]),
    ...clearanceOf(person, on).asks,
    ...phases.flatMap(({ on: first, to }) => clearanceOf(person, first, to).throughout),
    ...(perWeek === 0 ? [reason("plan/no-day", { minutes: person.minutes })] : []),
    ...(perWeek > 0 && perWeek < most ? [reason("plan/in-turn", { days: perWeek, sessions: most })] : []),
  ];
}
