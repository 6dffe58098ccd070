import { printDay } from "../day.ts";
import { occurrencesOf, type RunRecord, runsIn, sessionSeconds } from "../measures/index.ts";
import type { Exercise, Patch, PlanSession, PlanSlot, Reason } from "../model/index.ts";
import { BACK_AFTER_DAYS, nextRun, RUNS_OF_A_LEVEL, runWalkDose } from "../tables/index.ts";
import { type NextDose, stay } from "./dose-state.ts";
import type { ProgressInput } from "./progress-input.ts";
import { reason } from "./reasons.ts";

/** A run of a plan as it is asked next, and what its records say of it. */
export interface RunNext {
  readonly slot: PlanSlot;
  readonly exercise: Exercise;
  readonly next: NextDose;
  /** Pain that grew while running. */
  readonly stop: boolean;
}

/** A run as the phase that runs asks it next. */
interface RunAhead {
  readonly slot: PlanSlot;
  readonly level: number;
  /** Every session that has it, as it comes next. */
  readonly sessions: PlanSession[];
}

function runsAhead({ plan, record }: ProgressInput): readonly RunAhead[] {
  const recorded = new Set(record.sessions.map(({ session }) => session));
  const ahead = new Map<string, RunAhead>();
  for (const { id, phase, session } of occurrencesOf(plan)) {
    if (phase !== plan.firmTo.phase || recorded.has(id)) continue;
    for (const { slot, level } of runsIn(session)) {
      const run = ahead.get(slot.key) ?? { slot, level, sessions: [] };
      if (!run.sessions.some(({ key }) => key === session.key)) run.sessions.push(session);
      ahead.set(slot.key, run);
    }
  }
  return [...ahead.values()];
}

/**
 * The next level of every run of the phase that runs: three good runs lead on, pain that grew takes two levels back and
 * stops until it is answered, days away take levels back, and breath or legs change nothing. A level for which
 * one of its sessions has no room is not proposed.
 *
 * @source ours, practice
 */
export function runsNext(input: ProgressInput): readonly RunNext[] {
  return runsAhead(input).flatMap((run): RunNext[] => {
    const exercise = input.catalogue.exercises.get(run.slot.exercise);
    if (exercise === undefined) return [];
    const runs = input.record.runs.filter(({ slot }) => slot === run.slot.key);
    const last = runs.at(-1);
    if (last === undefined) return [{ slot: run.slot, exercise, next: stay(), stop: false }];
    const stop = last.level === run.level && last.end === "pain";
    return [{ slot: run.slot, exercise, next: afterRun(input, run, runs, last), stop }];
  });
}

function afterRun(input: ProgressInput, run: RunAhead, runs: readonly RunRecord[], last: RunRecord): NextDose {
  const { slot, level } = run;
  const on = (at: number) => printDay(input.dayOf(at));
  const isOf = last.level === level;
  const good = isOf ? goodRuns(runs, level) : [];
  const daysOff = Math.max(0, input.today - input.dayOf(last.at));
  const next = nextRun(level, isOf ? last.end : "done", good.length, daysOff).level.level;
  const patch: Patch = { slot: slot.key, change: "run-walk", level: next };
  const ended = reason("progress/run-ended", { level, end: last.end, on: on(last.at) });
  if (isOf && last.end === "pain") {
    const pause: Patch = { slot: slot.key, change: "pause" };
    const back = next === level ? { patch: pause, others: [] } : { patch, others: [pause] };
    return { kind: "down", ...back, evidence: [ended], refused: [], since: last.n };
  }
  if (next < level) {
    const days = BACK_AFTER_DAYS.findLast((each) => daysOff >= each)!;
    const away = reason("progress/runs-away", { days, since: on(last.at) });
    return { kind: "down", patch, evidence: [away], refused: [], others: [], since: last.n };
  }
  if (next === level) return stay(isOf && last.end !== "done" ? [ended] : []);
  const sessions = good.slice(-RUNS_OF_A_LEVEL).map(({ at }) => ({ on: on(at) }));
  const evidence = [reason("progress/runs-good", { level, sessions })];
  const against = noRoom(input, run, next);
  if (against !== undefined) return stay([...evidence, against]);
  return { kind: "up", patch, evidence, refused: [], others: [], since: good[0]!.n };
}

/** The good runs of a level up to now, none between them that was not. */
function goodRuns(runs: readonly RunRecord[], level: number): readonly RunRecord[] {
  const until = runs.findLastIndex((run) => run.level !== level || run.end !== "done");
  return runs.slice(until + 1);
}

/** Why the next level finds no room, reckoned as fit does: the upper end of the length within the minutes of both. */
function noRoom(input: ProgressInput, { slot, level, sessions }: RunAhead, next: number): Reason | undefined {
  const bouts = sessions.flatMap(runsIn).flatMap((run) => (run.slot.key === slot.key ? run.slot.dose.sets.length : []));
  if (Math.min(...bouts) < runWalkDose(level).sets.length) return reason("progress/run-cut", { level });
  const over = sessions.map((session) => {
    const conditioning = session.conditioning.map((item) =>
      item.run?.slot === slot.key ? { ...item, dose: runWalkDose(next) } : item,
    );
    const asked = { ...session, conditioning };
    const { high } = sessionSeconds(asked, (id) => input.catalogue.exercises.get(id));
    return high - 60 * Math.min(input.person.minutes, minutesOf(input, session.key));
  });
  const most = Math.max(...over);
  return most <= 0 ? undefined : reason("progress/run-no-room", { level: next, more: Math.ceil(most / 60) });
}

function minutesOf({ programme, plan }: ProgressInput, key: string): number {
  const phase = programme.phases.find((each) => each.key === plan.firmTo.phase);
  return phase?.sessions.find((session) => session.key === key)?.minutes ?? 0;
}
