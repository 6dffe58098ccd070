import { weeksOf } from "../calendar/index.ts";
import { capacityOf, type ExerciseCapacity } from "../capacity/index.ts";
import { exerciseHistory, foldRecord, type Log, logOf, type RecordFold } from "../measures/index.ts";
import type { Exercise, ExerciseId } from "../model/index.ts";
import {
  type LightWeekSaid,
  lightWaiting,
  lightWeek,
  type ProgressInput,
  proposalsFor,
  type Waiting,
} from "../progress/index.ts";
import { PAIN_RULES } from "../screen/index.ts";
import { type Watched, watch } from "../watch/index.ts";
import { type SessionDay, sessionDays } from "./session-days.ts";
import type { PlannedPerson } from "./situation.ts";

/** A person with all that pages ask of their record, computed once. */
export interface View {
  readonly person: PlannedPerson;
  readonly record: RecordFold;
  readonly log: Log;
  readonly progress: ProgressInput;
  readonly days: readonly SessionDay[];
  readonly waiting: readonly Waiting[];
  /** What is said of light weeks; where it is a proposal it waits among the others. */
  readonly light: LightWeekSaid;
  readonly capacity: (exercise: ExerciseId) => ExerciseCapacity | undefined;
  /** What the record tells beside the proposals; computed when it is asked for. */
  readonly watched: () => Watched;
}

/** A person with their plan does not change while it is known, and several pages ask the same of it. */
const seen = new WeakMap<PlannedPerson, View>();

export function viewOf(person: PlannedPerson): View {
  const known = seen.get(person);
  if (known !== undefined) return known;
  const record = foldRecord(person.events);
  const log = logOf(person.plan, record, person.revisionOf);
  const progress: ProgressInput = { ...person, record, log, edges: PAIN_RULES[0]! };
  const days = sessionDays(person);
  const weeks = { ...progress, days, spans: spansOf(person) };
  const light = lightWeek(weeks);
  let watched: Watched | undefined;
  const view: View = {
    person,
    record,
    log,
    progress,
    days,
    waiting: inOrder(proposalsFor(progress), lightWaiting(weeks, light)),
    light,
    capacity: capacities(person, log),
    watched: () => {
      watched ??= watch({ ...person, record, log, days });
      return watched;
    },
  };
  seen.set(person, view);
  return view;
}

/** Stops first, then what is for a whole week, then slot by slot. */
function inOrder(waiting: readonly Waiting[], week: Waiting | undefined): readonly Waiting[] {
  if (week === undefined) return waiting;
  return [...waiting.filter(({ stop }) => stop), week, ...waiting.filter(({ stop }) => !stop)];
}

function spansOf({ person, on, plan }: PlannedPerson) {
  return weeksOf(
    person,
    on,
    plan.phases.reduce((sum, { weeks }) => sum + weeks.length, 0),
  );
}

function capacities({ catalogue, today, person, dayOf }: PlannedPerson, log: Log): View["capacity"] {
  const known = new Map<ExerciseId, ExerciseCapacity>();
  return (id) => {
    const exercise: Exercise | undefined = catalogue.exercises.get(id);
    if (exercise === undefined) return undefined;
    const found = known.get(id) ?? capacityOf(exercise, exerciseHistory(log, id), { person, on: today, dayOf });
    known.set(id, found);
    return found;
  };
}
