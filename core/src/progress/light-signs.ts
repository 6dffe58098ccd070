import { type Capacity, capacityOf, type Forecast, forecast, forecastHold } from "../capacity/index.ts";
import { printDay } from "../day.ts";
import { type DoneSet, exerciseHistory, leastOf, type SlotSession } from "../measures/index.ts";
import type { Exercise, Person, Reason } from "../model/index.ts";
import { ENOUGH_SESSIONS, kgMoved } from "./likely.ts";
import type { ProgressInput } from "./progress-input.ts";
import { plain, reason } from "./reasons.ts";
import { BREAK_DAYS } from "./trained.ts";

/** Sessions running that must fall short, and movements in which they do. Ours: one bad day or one lift is no fatigue. */
const SESSIONS = 2;
const MOVEMENTS = 2;
/** Days of the last efforts, of those before, and fewest rated sessions of each. Ours, no source. */
const LAST_DAYS = 14;
const BEFORE_DAYS = 28;
const FEWEST_RATED = 3;
/** The mean effort of a session, 0 to 10, is up from so much on. Ours, no source. */
const EFFORT_UP = 1;

/** What speaks for tiredness. */
export interface LightSigns {
  /** Two movements or more fell, and nothing that was rated speaks against it. */
  readonly shows: boolean;
  readonly because: readonly Reason[];
}

/**
 * Whether tiredness shows: two movements or more whose first set lay under the 80 % interval of its own forecast in two
 * sessions running, and efforts that went up where they were rated. Sleep and soreness are in no record, so they decide
 * nothing, and that is said.
 *
 * @source ours
 */
export function lightSigns(input: ProgressInput): LightSigns {
  const falls = movements(input).flatMap((exercise) => fallOf(input, exercise) ?? []);
  if (falls.length < MOVEMENTS) return { shows: false, because: falls };
  const effort = effortOf(input);
  const missing = reason("progress/light-not-recorded");
  return { shows: effort.code !== "progress/effort-level", because: [...falls, effort, missing] };
}

function movements({ plan, log, catalogue }: ProgressInput): readonly Exercise[] {
  const phase = plan.firmTo.phase;
  const ids = new Set(
    log.filter((each) => each.phase === phase).flatMap(({ sets }) => sets.map((set) => set.exercise)),
  );
  return [...ids].flatMap((id) => catalogue.exercises.get(id) ?? []);
}

/** The last two sessions of a movement, where the first set of both was less than the record before made likely. */
function fallOf(input: ProgressInput, exercise: Exercise): Reason | undefined {
  const { log, person, dayOf, today } = input;
  const history = exerciseHistory(log, exercise.id).filter(({ light, endedEarly }) => !light && endedEarly !== true);
  const last = history.slice(-SESSIONS);
  const days = [...last.map(({ at }) => dayOf(at)), today];
  const running = days.every((day, at) => at === 0 || day - days[at - 1]! < BREAK_DAYS);
  // Who did what was asked is not tired, and nothing more has to be worked out.
  if (last.length < SESSIONS || !running || !last.every(isShort)) return undefined;
  const before = history.slice(0, -SESSIONS);
  const sessions = last.flatMap((session) => {
    const [first] = session.sets;
    const on = dayOf(session.at);
    const { capacity } = capacityOf(exercise, before, { person, on, dayOf });
    const done = leastOf(first?.holdS) ?? leastOf(first?.reps);
    const told = first === undefined ? undefined : expected(capacity, exercise, person, first);
    if (done === undefined || told?.carried !== undefined || !(told !== undefined && told.sessions >= ENOUGH_SESSIONS))
      return [];
    if (!(done < told.amount.low)) return [];
    return [{ on: printDay(on), done, low: Math.round(told.amount.low * 10) / 10, load: plain(first?.lifted) }];
  });
  if (sessions.length < SESSIONS) return undefined;
  const kind = last[0]!.sets[0]!.holdS === undefined ? "reps" : "hold";
  return reason("progress/fell-short", { exercise: exercise.id, kind, sessions });
}

/** What was to be expected of a first set with the reserve that was left, in the zone of what was asked. */
function expected(capacity: Capacity, exercise: Exercise, person: Person, set: DoneSet): Forecast | undefined {
  if (capacity.kind === "unknown") return undefined;
  if (set.holdS !== undefined) return forecastHold(capacity);
  const kg = kgMoved(exercise, person, set.lifted);
  const { asked, reserve = 0 } = set;
  if (kg === undefined || asked?.amount.kind !== "reps") return undefined;
  return forecast(capacity, { kg, reserve, reps: asked.amount.span.to + (asked.reserve?.from ?? 0) - reserve });
}

/** The first set was under what was asked, or left less in reserve. */
function isShort({ sets: [first] }: SlotSession): boolean {
  const { asked } = first ?? {};
  if (first?.set !== 0 || asked === undefined || asked.amount.kind === "most") return false;
  const done = leastOf(asked.amount.kind === "hold" ? first.holdS : first.reps);
  const under = done !== undefined && done < asked.amount.span.from;
  return under || (first.reserve !== undefined && asked.reserve !== undefined && first.reserve < asked.reserve.from);
}

/** Efforts of the last two weeks beside those of the four before. */
function effortOf({ record, dayOf, today }: ProgressInput): Reason {
  const dayIn = new Map(record.sessions.map(({ session, at }) => [session, dayOf(at)]));
  const rated = record.ratings.flatMap(({ session, data }) => {
    const day = dayIn.get(session ?? "");
    return day === undefined || typeof data.effort !== "number" ? [] : [{ ago: today - day, effort: data.effort }];
  });
  const last = rated.filter(({ ago }) => ago < LAST_DAYS).map(({ effort }) => effort);
  const before = rated
    .filter(({ ago }) => ago >= LAST_DAYS && ago < LAST_DAYS + BEFORE_DAYS)
    .map(({ effort }) => effort);
  const counts = { sessions: last.length, before: before.length, needed: FEWEST_RATED };
  if (last.length < FEWEST_RATED || before.length < FEWEST_RATED) return reason("progress/effort-unrated", counts);
  const [now, was] = [mean(last), mean(before)];
  return reason(now - was >= EFFORT_UP ? "progress/effort-up" : "progress/effort-level", { ...counts, now, was });
}

function mean(values: readonly number[]): number {
  return Math.round((10 * values.reduce((sum, each) => sum + each, 0)) / values.length) / 10;
}
