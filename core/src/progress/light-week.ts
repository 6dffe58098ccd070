import { type Day, printDay } from "../day.ts";
import {
  type Occurrence,
  OFF_DAYS,
  occurrencesOf,
  slotsIn,
  type WeekDone,
  type WeekSpan,
  weeksDone,
} from "../measures/index.ts";
import type { Patch, PlanSlot, Reason } from "../model/index.ts";
import { LEAST_APART, LIGHT_RULES, lightRulesFor } from "./light-rules.ts";
import { lightSigns } from "./light-signs.ts";
import type { ProgressInput } from "./progress-input.ts";
import { reason } from "./reasons.ts";

/** What light weeks are judged from: days of the plan's weeks and of its sessions beside the rest. */
export interface LightWeekInput extends ProgressInput {
  readonly spans: readonly WeekSpan[];
  readonly days: readonly { readonly occurrence: Occurrence; readonly day: Day }[];
}

/** What is said of light weeks now. */
export interface LightWeekSaid {
  /** light: one is proposed · move: one comes later · full: one is not needed · none: nothing changes · unknown: no record. */
  readonly kind: "light" | "move" | "full" | "none" | "unknown";
  readonly patch?: Patch;
  readonly evidence: readonly Reason[];
  /** What would have been proposed, and why it is not. */
  readonly refused: readonly Reason[];
  readonly others: readonly Patch[];
  /** The first slot of the week, which stands for all of it. */
  readonly slot?: PlanSlot;
}

/**
 * Whether the next week should be a light one: by the calendar, after so many hard weeks running, or because tiredness
 * shows. A week away or sick is a light week too: it ends the run, and a light week that stands near it comes later or
 * becomes full. Where the plan has a light week before the run gets long, that one is it.
 *
 * How sure it is that a light week helps nobody has measured, so no figure is given.
 *
 * @source rogerson2024, bell2023, ours
 */
export function lightWeek(input: LightWeekInput): LightWeekSaid {
  const { plan, record, person, today, dayOf, spans } = input;
  if (record.sessions.length === 0) return nothing("unknown", [reason("progress/light-no-record")]);
  const weeks = weeksDone(plan, spans, record, { away: person.away, today, dayOf });
  const at = nextWeek(input, weeks);
  if (at === undefined) return nothing("none", [reason("progress/light-no-week")]);
  return moved(input, weeks, at) ?? proposed(input, weeks, at);
}

function nothing(
  kind: "none" | "unknown",
  evidence: readonly Reason[],
  refused: readonly Reason[] = [],
): LightWeekSaid {
  return { kind, evidence, refused, others: [] };
}

/** The first week that nothing of has begun; undefined where none is left, or the last alone. */
function nextWeek({ days, today }: LightWeekInput, weeks: readonly WeekDone[]): number | undefined {
  const now = weeks.findIndex(({ last }) => last >= today);
  if (now === -1) return undefined;
  const { name, done } = weeks[now]!;
  const begun = done > 0 || days.some(({ occurrence, day }) => day < today && nameOf(occurrence) === name);
  const at = begun ? now + 1 : now;
  return at < weeks.length - 1 ? at : undefined;
}

const nameOf = ({ phase, week }: Occurrence) => `${phase}/${week}`;

/** Rest that was none of the plan's: a week off, or days before a week on which the plan stood still. */
const isRest = ({ off, stoodStill }: WeekDone) => off !== undefined || stoodStill >= OFF_DAYS;

/** A light week to come that stands near a week off: it comes after the next hard weeks, or is a full one. */
function moved(input: LightWeekInput, weeks: readonly WeekDone[], at: number): LightWeekSaid | undefined {
  const lightAt = weeks.findIndex(({ light, off }, index) => index >= at && light && off === undefined);
  const light = weeks[lightAt];
  const slot = light && slotOf(input, light.name);
  const began = weeks.findIndex(({ done }) => done > 0);
  const restAt = weeks.findIndex(
    (week, index) => index > began && index !== lightAt && Math.abs(index - lightAt) <= LEAST_APART && isRest(week),
  );
  const rest = weeks[restAt];
  if (light === undefined || slot === undefined || rest === undefined) return undefined;
  const evidence = [restReason(rest), reason("progress/light-near-rest", { light: light.name, apart: LEAST_APART })];
  const full: Patch = { slot: slot.key, change: "full week", week: light.name };
  const later = restAt + LIGHT_RULES[0]!.hardWeeks + 1;
  const to = weeks[later];
  const taken = weeks.some(
    (week, index) => index > lightAt && Math.abs(index - later) <= LEAST_APART && (week.light || isRest(week)),
  );
  if (to === undefined || later === weeks.length - 1 || taken)
    return { kind: "full", patch: full, evidence, refused: [], others: [], slot };
  const patch: Patch = { slot: slot.key, change: "light week", week: to.name, instead: light.name };
  return { kind: "move", patch, evidence, refused: [], others: [full], slot };
}

function restReason({ name, off, stoodStill, first }: WeekDone): Reason {
  return off === undefined
    ? reason("progress/stood-still", { week: name, days: stoodStill, on: printDay(first) })
    : reason("progress/week-off", { week: name, because: off, on: printDay(first) });
}

/** The next week light, where the run of hard weeks or signs ask for it and nothing else is the light week already. */
function proposed(input: LightWeekInput, weeks: readonly WeekDone[], at: number): LightWeekSaid {
  const [rule, other] = lightRulesFor(input.person.status);
  const longest = Math.max(rule.hardWeeks, other.hardWeeks);
  const next = weeks[at]!;
  const slot = slotOf(input, next.name);
  const run = runBefore(weeks, at);
  const ran = reason("progress/hard-weeks", { week: next.name, ...run });
  const because = reason("progress/light-rule", {
    rule: rule.id,
    weeks: rule.hardWeeks,
    other: other.id,
    otherWeeks: other.hardWeeks,
  });
  if (next.light) return nothing("none", [ran, reason("progress/light-planned", { week: next.name })]);
  if (isRest(next)) return nothing("none", [ran, restReason(next)]);
  if (run.weeks === 0 || slot === undefined) return nothing("none", [ran]);
  const due = run.weeks >= rule.hardWeeks;
  const signs = lightSigns(input);
  if (!due && !signs.shows) return nothing("none", [ran, because], signs.because);
  if (!due && run.weeks < LEAST_APART)
    return nothing("none", [ran], [...signs.because, reason("progress/light-too-soon", { apart: LEAST_APART })]);
  const restAt = weeks.findIndex((week, index) => index > at && (week.light || isRest(week)));
  const rest = weeks[restAt];
  const waits = signs.shows ? [] : whyNotYet(input, weeks, { at, restAt, hard: run.weeks, longest });
  if (waits.length > 0) return nothing("none", [ran, because], waits);
  const near = rest?.light === true && restAt - at <= LEAST_APART ? { instead: rest.name } : {};
  const patch: Patch = { slot: slot.key, change: "light week", week: next.name, ...near };
  const why = [ran, ...(due ? [because] : []), ...(signs.shows ? signs.because : [])];
  return {
    kind: "light",
    patch,
    evidence: [...why, reason("progress/light-not-measured")],
    refused: [],
    others: [{ ...patch, lighter: true }],
    slot,
  };
}

/** Where a light week is looked for: its week, the next rest after it or -1, the hard weeks before it, the longest run. */
interface Due {
  readonly at: number;
  readonly restAt: number;
  readonly hard: number;
  readonly longest: number;
}

/** What is the light week already by the calendar: one to come soon, planned or away, or a coach's no in this run. */
function whyNotYet({ record }: LightWeekInput, weeks: readonly WeekDone[], due: Due): readonly Reason[] {
  const { at, restAt, hard, longest } = due;
  const rest = weeks[restAt];
  const soon = rest !== undefined && hard + (restAt - at) <= longest;
  const run = weeks.slice(at - hard, at).map(({ name }) => name);
  const refused = record.decisions.flatMap(({ kind, proposal: { patch } = {} }) => {
    const hardThen = kind === "refused" && patch?.change === "light week" ? run.indexOf(patch.week) : -1;
    return hardThen === -1 ? [] : [hardThen];
  });
  // A no before the longest run is asked once more then; a no then is the last word on this run.
  const isLast = refused.some((hardThen) => hardThen >= longest);
  const holds = refused.length > 0 && (isLast || hard < longest);
  return [
    ...(soon ? [rest.light ? reason("progress/light-planned", { week: rest.name }) : restReason(rest)] : []),
    ...(holds ? [reason("progress/light-refused", { again: isLast ? null : longest })] : []),
  ];
}

/** Hard weeks running before one, and what ended the run before them. */
function runBefore(weeks: readonly WeekDone[], at: number) {
  let hard = 0;
  const run = (ended: string | null, week?: WeekDone) => ({
    weeks: hard,
    ended,
    on: week === undefined ? null : printDay(week.first),
  });
  for (let index = at - 1; index >= 0; index--) {
    const week = weeks[index]!;
    if (week.light) return run("light", week);
    if (week.off !== undefined) return run(week.off, week);
    // The week that runs counts once half of it is done.
    if (!(week.done >= week.asked / 2)) return run("runs", week);
    hard++;
    if (week.stoodStill >= OFF_DAYS) return run("away", week);
  }
  return run(null);
}

function slotOf({ plan }: LightWeekInput, week: string): PlanSlot | undefined {
  return occurrencesOf(plan)
    .filter((one) => nameOf(one) === week)
    .flatMap(({ session }) => slotsIn(session))[0];
}
