import { explainPlacements, sessionsAWeek, type WaysOfWeek, waysOfWeek } from "@stave/core/calendar";
import { type Day, printDay, type Weekday } from "@stave/core/day";
import type { Dated } from "@stave/core/revise";
import { type Answer, failed, type Io } from "./answer.ts";
import { type Days, daysAsked, missedIn } from "./days.ts";
import { type PeopleOptions, type Planned, type Plans, readPlans, unserved } from "./plans.ts";
import { recutOf } from "./schedule-recut.ts";
import type { Asked } from "./schedule-wishes.ts";
import { scheduleWords } from "./schedule-words.ts";
import { placeOf } from "./world.ts";

export interface ScheduleOptions extends PeopleOptions, Asked {
  readonly weeks: number;
  readonly weekBegins: Weekday;
}

/** A person with their dates, what follows a miss, and how else the weeks could be. */
export interface Scheduled extends Days {
  readonly planned: Planned;
  /** Empty after a miss: what was announced stays. */
  readonly ways: readonly WaysOfWeek[];
}

function waysOf({ task, placed }: Dated): readonly WaysOfWeek[] {
  const weeks = [...new Set(task.sessions.map(({ week }) => week))];
  return weeks.map((week) => waysOfWeek(task, placed, week));
}

function dayed<T extends { readonly day: Day }>({ day, ...rest }: T): Omit<T, "day"> & { readonly day: string } {
  return { ...rest, day: printDay(day) };
}

function weekOf({ week, equal, others, elsewhere }: WaysOfWeek) {
  return {
    week: week + 1,
    equal,
    others: others.map(({ placements, dropped, more }) => ({ sessions: placements.map(dayed), dropped, more })),
    elsewhere: elsewhere.map(({ session, best }) => (best === undefined ? { session } : { ...dayed(best), session })),
  };
}

function resultOf({ planned, dated, missed, ways }: Scheduled, { roster }: Plans, options: ScheduleOptions) {
  const { task, placed } = missed ?? dated;
  const explained = explainPlacements(task, placed);
  const anew = missed === undefined ? recutOf(planned, dated) : undefined;
  return {
    person: planned.person.id,
    zone: placeOf(planned.person, roster).zone,
    ...(missed === undefined ? {} : { missed: missedIn(missed, options) }),
    sessions: explained.sessions.map(dayed),
    rows: explained.rows,
    notAsUsual: dated.notAsUsual,
    aWeek: sessionsAWeek(
      placed.placements.map(({ day }) => day),
      options.weekBegins,
    ),
    dropped: explained.dropped,
    points: placed.cost,
    parts: placed.parts,
    value: placed.value,
    bound: placed.bound,
    proven: placed.proven,
    equalPlans: placed.count,
    weeks: ways.map(weekOf),
    ...(anew === undefined ? {} : { recut: anew }),
  };
}

/** Places the sessions of plans on real days; or says what follows when one was missed. */
export async function schedule(paths: readonly string[], options: ScheduleOptions, io: Io): Promise<Answer> {
  const command = "schedule";
  const read = await readPlans(paths, options, io.today);
  if (!read.ok) return failed(command, read.problems);
  const plans = read.value;
  const scheduled: Scheduled[] = [];
  for (const planned of plans.plans) {
    const days = daysAsked(planned, plans, options.weeks, options);
    if (!days.ok) return failed(command, days.problems);
    const { dated, missed } = days.value;
    scheduled.push({ planned, ...days.value, ways: missed === undefined && !dated.afterMiss ? waysOf(dated) : [] });
  }
  return {
    command,
    result: scheduled.map((one) => resultOf(one, plans, options)),
    findings: [],
    problems: unserved(plans),
    words: `${scheduled.map((one) => scheduleWords(one, plans, options.weekBegins)).join("\n\n")}\n`,
  };
}
