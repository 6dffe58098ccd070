import type { Day } from "../day.ts";
import { type DoneSet, leastOf, type SlotSession } from "../measures/index.ts";
import type { Dose } from "../model/index.ts";
import type { DoseState } from "./dose-state.ts";

/** So many days between two sessions, or since the last, and what was done then says little of now. Ours, no source. */
export const BREAK_DAYS = 14;

/** @returns the sessions of a slot in which anything of it was done, light weeks left out, latest last */
export function trained({ history }: Pick<DoseState, "history">): readonly SlotSession[] {
  return history.filter(({ light, sets }) => !light && sets.length > 0);
}

/**
 * The last so many sessions running, of this form throughout and with no break between them or since.
 *
 * @returns undefined where there are fewer, or another form or a break lies among them
 */
export function running(
  state: Pick<DoseState, "history" | "exercise" | "today" | "dayOf">,
  count: number,
): readonly SlotSession[] | undefined {
  const last = trained(state).slice(-count);
  if (last.length < count) return undefined;
  if (last.some(({ sets }) => sets.some((set) => set.exercise !== state.exercise.id))) return undefined;
  const days: readonly Day[] = [...last.map(({ at }) => state.dayOf(at)), state.today];
  return days.every((day, at) => at === 0 || day - days[at - 1]! < BREAK_DAYS) ? last : undefined;
}

/** @returns repetitions, contacts or seconds that were read of a set; undefined where nobody read them */
export function amountDone(set: DoneSet): number | undefined {
  return leastOf(set.asked?.amount.kind === "hold" ? set.holdS : (set.reps ?? set.holdS));
}

/** @returns the sets that were asked for, in order, each as it was done; undefined where one is missing */
export function allAsked({ asked, sets }: SlotSession): readonly DoneSet[] | undefined {
  const found = asked.dose.sets.map((_, at) => sets.find(({ set }) => set === at));
  return found.some((set) => set === undefined) ? undefined : (found as DoneSet[]);
}

/** @returns the lowest number that a set was asked for; undefined where as many as possible were */
export function floorOf({ asked }: DoneSet): number | undefined {
  return asked === undefined || asked.amount.kind === "most" ? undefined : asked.amount.span.from;
}

/** @returns the highest number that a set was asked for */
export function topOf({ asked }: DoneSet): number | undefined {
  return asked === undefined || asked.amount.kind === "most" ? undefined : asked.amount.span.to;
}

/** Whether a set reached the most that it was asked for, and that it is asked for next: a step once taken rests on new sets. */
export function isAtTop(done: DoneSet, next: Dose): boolean {
  const ahead = next.sets[done.set]?.amount ?? done.asked?.amount;
  const tops = [topOf(done), ahead === undefined || ahead.kind === "most" ? undefined : ahead.span.to];
  return tops.every((top) => top !== undefined && (amountDone(done) ?? -1) >= top);
}

/**
 * Repetitions beyond what was asked: those said to be left beyond the reserve asked count as done, missing ones as not.
 *
 * @returns undefined where repetitions were not asked or not read
 */
export function overAsked({ reps, reserve, asked }: DoneSet, goal: number): number | undefined {
  const done = leastOf(reps);
  if (done === undefined || asked?.amount.kind !== "reps") return undefined;
  const { from, to } = asked.reserve ?? {};
  if (reserve === undefined || from === undefined || to === undefined) return done - goal;
  const left = reserve > to ? reserve - to : reserve < from ? reserve - from : 0;
  return done + left - goal;
}
