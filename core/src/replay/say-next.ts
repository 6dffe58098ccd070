import { type DoneSet, leastOf, type SlotSession } from "../measures/index.ts";
import { massOf } from "../units.ts";
import type { Rule } from "./rule.ts";

export type Move = "up" | "same" | "back";

const DAY_MS = 86_400_000;

function overTop({ reps, reserve, asked }: DoneSet, reserveCounts: boolean): number | undefined {
  const done = leastOf(reps);
  if (done === undefined || asked?.amount.kind !== "reps") return undefined;
  const over = done - asked.amount.span.to;
  if (!reserveCounts || reserve === undefined || asked.reserve === undefined) return over;
  const { from, to } = asked.reserve;
  return over + Math.max(0, reserve - to) - Math.max(0, from - reserve);
}

function underBottom({ reps, asked }: DoneSet): number | undefined {
  const done = leastOf(reps);
  return done === undefined || asked?.amount.kind !== "reps" ? undefined : asked.amount.span.from - done;
}

/** The last so many sessions of these, with the same form and load in every set that was asked, and no break between them. */
function running(before: readonly SlotSession[], at: number, count: number, within: number) {
  const last = before.slice(-count);
  if (last.length < count) return undefined;
  const times = [...last.map((session) => session.at), at];
  if (!times.every((time, index) => index === 0 || time - times[index - 1]! < within * DAY_MS)) return undefined;
  const { exercise, load } = last.at(-1)!.asked;
  const same = ({ asked, sets }: SlotSession) =>
    asked.exercise === exercise &&
    sets.every((set) => set.exercise === exercise && isSame(set.lifted, load) && isSame(asked.load, load));
  return last.every(same) ? last : undefined;
}

function isSame(one: DoneSet["lifted"], other: DoneSet["lifted"]): boolean {
  return one !== undefined && other !== undefined && massOf(one) === massOf(other);
}

/**
 * What a rule says of the next session of a slot, from the sessions before it.
 *
 * A set that was asked for and is not there, or of which nobody read the repetitions, shows nothing; another form,
 * another load and a break begin the count anew.
 *
 * @param before sessions of one slot, oldest first, light weeks left out
 * @param at epoch milliseconds of the session that is asked about
 * @returns same where nothing was earned
 */
export function sayNext({ up, back, within }: Rule, before: readonly SlotSession[], at: number): Move {
  const earned = running(before, at, up.sessions, within)?.every(({ asked, sets }) => {
    const all = asked.dose.sets.map((_, index) => sets.find(({ set }) => set === index));
    const chosen = up.sets === "all" ? all : [up.sets === "last" ? all.at(-1) : all[0]];
    return chosen.every((set) => set !== undefined && (overTop(set, up.reserve === "counts") ?? -1) >= up.over);
  });
  if (earned === true) return "up";
  if (back === undefined) return "same";
  const missed = running(before, at, back.sessions, within)?.every(({ sets }) => {
    const first = sets.find(({ set }) => set === 0);
    return first !== undefined && (underBottom(first) ?? -1) >= back.under;
  });
  return missed === true ? "back" : "same";
}
