import { type Day, printDay } from "../day.ts";
import { HARD_SETS, upperSeconds } from "../measures/index.ts";
import { MUSCLES, type Muscle, type Reason } from "../model/index.ts";
import { reason } from "./reasons.ts";
import { type DealTask, deal, levelsOf, MOST_NODES } from "./recut-deal.ts";

/** A slot, or a pair or round with all its slots, which stays together. */
export interface RecutSlot {
  readonly key: string;
  /** Direct sets that end near the limit, per muscle, as `directSets` counts them under `near`. */
  readonly hard: Readonly<Partial<Record<Muscle, number>>>;
  /** Typical seconds, with its lighter sets before and the way to it. */
  readonly seconds: number;
  readonly lane: string;
}

export interface RecutSession {
  readonly key: string;
  /** Seconds that stay with the session: warm-up and conditioning. */
  readonly fixedS: number;
  readonly slots: readonly RecutSlot[];
}

export interface RecutTask {
  /** Sessions of one week, in order. */
  readonly sessions: readonly RecutSession[];
  /** When each of them starts. */
  readonly starts: readonly { readonly day: Day; readonly start: number }[];
  readonly gapHours: number;
  /** Limit of each session, for its upper estimate. */
  readonly minutes: number;
  /** After so many days the same sessions come again. */
  readonly weekDays: number;
  /** Free days of this week on which a session could stand too. */
  readonly otherDays: number;
}

export interface Recut {
  readonly sessions: readonly {
    readonly key: string;
    readonly slots: readonly string[];
    readonly hard: readonly Muscle[];
    /** Upper estimate, whole minutes, rounded up. */
    readonly minutes: number;
  }[];
  /** Muscles that two close sessions both load hard, before and after. */
  readonly closeBefore: number;
  readonly closeAfter: number;
  readonly minutesOver: number;
  readonly why: readonly Reason[];
  readonly proven: boolean;
}

/**
 * The days cannot be mended: which slots go into which session, so that no muscle is loaded hard twice within the wanted
 * hours? Exactly the wanted hours are enough, so that of three days in a row the first and the third may share muscles.
 *
 * Every slot is kept as it is, so that weekly sets stay the same. Levels, in this order: no session without a slot;
 * fewest muscles that two close sessions both load hard; fewest minutes over the limit; fewest slots of one lane in one session; harder sessions
 * first; fewest slots moved. The week is taken to come again, so that its last session is also held against its first.
 *
 * @throws RangeError unless every session has a start, in rising order
 * @source ours
 */
export function recut(task: RecutTask, mostNodes: number = MOST_NODES): Recut {
  const dealt = dealTaskOf(task);
  const parts = task.sessions.flatMap(({ slots }) => slots);
  const home = dealt.task.parts.map((part) => part.home);
  const best = deal(dealt.task, mostNodes);
  const slotsIn = (sessions: readonly number[], s: number) => parts.filter((_, p) => sessions[p] === s);
  const sessions = task.sessions.map((session, s) => {
    const slots = slotsIn(best.sessions, s);
    const seconds = slots.reduce((sum, slot) => sum + slot.seconds, session.fixedS);
    const minutes = Math.ceil(upperSeconds(Math.max(0, seconds)) / 60);
    return { key: session.key, slots: slots.map(({ key }) => key), hard: hardIn(slots), minutes };
  });

  const why: Reason[] = [];
  if (task.sessions.length > 0) why.push(daysAsTheyAre(task));
  parts.forEach((slot, p) => {
    const [from, to] = [home[p]!, best.sessions[p]!];
    const keys = { slot: slot.key, from: task.sessions[from]!.key, to: task.sessions[to]!.key };
    if (from === to) {
      why.push(reason("calendar/slot-kept", { slot: slot.key, session: keys.from }));
      return;
    }
    const clash = dealt.close.flatMap(({ earlier, later, hours }) => {
      if (earlier !== from && later !== from) return [];
      const other = hardIn(slotsIn(home, earlier === from ? later : earlier));
      const muscles = hardIn(slotsIn(home, from)).filter((m) => (slot.hard[m] ?? 0) > 0 && other.includes(m));
      return muscles.length > 0 ? [{ muscles, hours }] : [];
    });
    if (clash.length === 0) why.push(reason("calendar/slot-moved-along", keys));
    else {
      const muscles = MUSCLES.filter((m) => clash.some((one) => one.muscles.includes(m)));
      const hours = Math.min(...clash.map((one) => one.hours));
      why.push(reason("calendar/slot-moved", { ...keys, muscles, hours, wanted: task.gapHours }));
    }
  });
  for (const { earlier, later, hours } of dealt.close) {
    const muscles = sessions[earlier]!.hard.filter((muscle) => sessions[later]!.hard.includes(muscle));
    if (muscles.length === 0) continue;
    const keys = { earlier: sessions[earlier]!.key, later: sessions[later]!.key };
    why.push(reason("calendar/still-close", { ...keys, muscles, hours, wanted: task.gapHours }));
  }
  for (const { key, minutes } of sessions) {
    if (minutes > task.minutes)
      why.push(reason("calendar/over-minutes", { session: key, minutes, limit: task.minutes }));
  }
  return {
    sessions,
    closeBefore: levelsOf(dealt.task, home)[1],
    closeAfter: best.levels[1],
    minutesOver: sessions.reduce((sum, { minutes }) => sum + Math.max(0, minutes - task.minutes), 0),
    why,
    proven: best.proven,
  };
}

/** Muscles that these slots together load hard. */
function hardIn(slots: readonly RecutSlot[]): Muscle[] {
  return MUSCLES.filter((muscle) => slots.reduce((sum, slot) => sum + (slot.hard[muscle] ?? 0), 0) >= HARD_SETS);
}

function daysAsTheyAre(task: RecutTask): Reason {
  const days = new Set(task.starts.map(({ day }) => day));
  return reason("calendar/days-as-they-are", {
    days: days.size,
    from: printDay(task.starts[0]!.day),
    to: printDay(task.starts.at(-1)!.day),
    others: task.otherDays,
  });
}

interface ClosePair {
  readonly earlier: number;
  readonly later: number;
  readonly hours: number;
}

function dealTaskOf(task: RecutTask): { readonly task: DealTask; readonly close: readonly ClosePair[] } {
  const minutes = task.starts.map(({ day, start }) => day * 24 * 60 + start);
  const rising = minutes.every((at, s) => s === 0 || at > minutes[s - 1]!);
  if (!(rising && minutes.length === task.sessions.length)) {
    throw new RangeError(
      `Cannot deal slots anew as each session must have a start after the one before: ${minutes.length} starts for ${task.sessions.length} sessions`,
    );
  }
  const close = minutes.flatMap((a, earlier) =>
    minutes.slice(earlier + 1).flatMap((b, more): ClosePair[] => {
      const hours = Math.min(b - a, task.weekDays * 24 * 60 - (b - a)) / 60;
      return hours >= task.gapHours ? [] : [{ earlier, later: earlier + 1 + more, hours }];
    }),
  );
  // The longest typical time whose upper estimate keeps the limit.
  let limit = task.minutes * 60;
  while (limit > 0 && upperSeconds(limit) > task.minutes * 60) limit--;
  return {
    close,
    task: {
      parts: task.sessions.flatMap(({ slots }, home) =>
        slots.map(({ hard, seconds, lane }) => ({ hard: MUSCLES.map((m) => hard[m] ?? 0), seconds, lane, home })),
      ),
      fixed: task.sessions.map(({ fixedS }) => fixedS),
      limit,
      close: close.map(({ earlier, later }) => [earlier, later] as const),
      hardSets: HARD_SETS,
    },
  };
}
