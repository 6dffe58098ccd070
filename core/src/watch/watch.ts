import { addDays, printDay } from "../day.ts";
import { adherence, loadWeeks, slotsIn } from "../measures/index.ts";
import type { ExerciseId, Json, Reason } from "../model/index.ts";
import { mornings } from "./mornings.ts";
import { muchMore } from "./much-more.ts";
import { reason } from "./reasons.ts";
import { silence } from "./silence.ts";
import { TREND_WEEKS, type Trend, trendOf } from "./trend.ts";
import type { WatchInput } from "./watch-input.ts";

/** Days over which what was done is held against what was asked, and weeks of load beside the last. Ours. */
const ASKED_DAYS = 28;
const LOAD_WEEKS = 4;
/** For so many days a note is told. Ours. */
const NOTED_DAYS = 7;

/** What one person's record tells: what calls for a look, and the figures beside it. No risk is claimed by any of it. */
export interface Watched {
  readonly notes: readonly Reason[];
  readonly figures: readonly Reason[];
}

/** @returns everything that the record tells on a day, stops aside: those are proposals */
export function watch(input: WatchInput): Watched {
  const trends = movements(input).flatMap((id): readonly (readonly [ExerciseId, Trend])[] => {
    const trend = trendOf(input, id);
    return trend === undefined ? [] : [[id, trend]];
  });
  const said = trends.flatMap(([id, trend]) => trendReason(id, trend));
  const counts = { known: said.length, of: trends.length, weeks: TREND_WEEKS };
  const known = trends.length === 0 ? [] : [reason("watch/trends-known", counts)];
  const calls = ({ code }: Reason) => code === "watch/fall" || code === "watch/level";
  return {
    notes: [
      ...silence(input),
      ...mornings(input),
      ...noted(input),
      ...twice(input),
      ...clocks(input),
      ...muchMore(input).map((each) => reason("watch/much-more", { ...each })),
      ...said.filter(calls),
    ],
    figures: [...asked(input), ...load(input), ...said.filter((each) => !calls(each)), ...known],
  };
}

/** The movements that were recorded in the last weeks and that the plan asks for, each once, in the plan's order. */
function movements({ days, log, dayOf, today }: WatchInput): readonly ExerciseId[] {
  const since = addDays(today, -7 * TREND_WEEKS);
  const recorded = new Set(
    log.flatMap(({ at, sets }) => (dayOf(at) >= since ? sets.map(({ exercise }) => exercise) : [])),
  );
  const planned = days.flatMap(({ occurrence }) => slotsIn(occurrence.session).map(({ exercise }) => exercise));
  return [...new Set(planned)].filter((id) => recorded.has(id));
}

function trendReason(exercise: ExerciseId, trend: Trend): readonly Reason[] {
  if (trend.kind === "unknown") return [];
  const { kind, percent, low, high, sessions } = trend;
  return [reason(`watch/${kind}`, { exercise, percent, low, high, sessions, weeks: TREND_WEEKS })];
}

/** What was written down in the last days. */
function noted({ record, dayOf, today }: WatchInput): readonly Reason[] {
  return record.notes
    .filter(({ at }) => today - dayOf(at) <= NOTED_DAYS)
    .map(({ at, data }) => reason("watch/noted", { on: printDay(dayOf(at)), about: data.about, text: data.text }));
}

/** Sessions of the last days that several devices told: each set counts once, and the coach may ask which is right. */
function twice({ record, dayOf, today }: WatchInput): readonly Reason[] {
  return record.sessions.flatMap(({ at, devices }) =>
    devices === undefined || today - dayOf(at) > NOTED_DAYS
      ? []
      : [reason("watch/two-devices", { on: printDay(dayOf(at)), devices })],
  );
}

/** Sessions that a device's clock puts outside the plan: what was done counts in its place, and the day is asked. */
function clocks({ record, dayOf, today, on }: WatchInput): readonly Reason[] {
  return record.sessions
    .map(({ session, at }) => ({ session, day: dayOf(at) }))
    .filter(({ day }) => day < on || day > today)
    .map(({ session, day }) => reason("watch/clock", { session, on: printDay(day) }));
}

function asked({ days, record, today, on }: WatchInput): readonly Reason[] {
  const from = addDays(today, -ASKED_DAYS);
  const found = adherence(days, record, from < on ? on : from, today);
  if (found.asked === 0) return [];
  const { sets, missed, ...counts } = found;
  const data = { ...counts, setsAsked: sets.asked, setsDone: sets.done, missed: missed as Json };
  return [reason("watch/adherence", { ...data, days: Math.min(ASKED_DAYS, today - on) })];
}

function load({ record, dayOf, today }: WatchInput): readonly Reason[] {
  const weeks = loadWeeks(record, dayOf, today, LOAD_WEEKS);
  const last = weeks.at(-1)!;
  if (!last.known) return [reason("watch/load-unrated", { days: last.missing.map(printDay) })];
  const { total, monotony, strain } = last.week;
  if (total === 0) return [];
  const before = weeks.slice(0, -1).map((each) => (each.known ? each.week.total : null));
  return [reason("watch/week-load", { total, monotony: monotony ?? null, strain: strain ?? null, before })];
}
