import { printDay } from "../day.ts";
import type { Missed, Reason } from "../model/index.ts";
import { afterAMiss } from "./after-a-miss.ts";
import { reason } from "./reasons.ts";
import type { CalendarTask, Placed } from "./task.ts";

/** What stands after several misses. */
export interface AfterMisses {
  readonly task: CalendarTask;
  readonly placed: Placed;
  /** Not made up, and owed by nobody. */
  readonly skipped: readonly string[];
  readonly why: readonly Reason[];
}

/**
 * Several sessions were missed: what stands now? Each miss is answered by its cause, the earlier one first, on the days
 * that stood until then. A miss on a day without a session says so and changes nothing; one on a day outside the task
 * says nothing.
 */
export function afterMisses(task: CalendarTask, placed: Placed, misses: readonly Missed[]): AfterMisses {
  let now: AfterMisses = { task, placed, skipped: [], why: [] };
  for (const { on, because, back } of misses.toSorted((a, b) => a.on - b.on)) {
    const missed = now.placed.placements.find(({ day }) => day === on);
    if (missed === undefined) {
      const inside = on >= task.start && on < task.start + task.days;
      const told = inside ? [reason("calendar/missed-nothing", { day: printDay(on) })] : [];
      now = { ...now, why: [...now.why, ...told] };
      continue;
    }
    const miss = { session: missed.session, because, ...(back === undefined ? {} : { back }) };
    const then = afterAMiss(now.task, now.placed, miss);
    now = {
      task: then.task,
      placed: then.placed,
      skipped: [...now.skipped, ...then.skipped],
      why: [...now.why, ...then.why],
    };
  }
  return now;
}
