import { type Day, printDay } from "../day.ts";
import type { Reason } from "../model/index.ts";
import { reason } from "./reasons.ts";
import { score } from "./score.ts";
import { search } from "./search.ts";
import { standing } from "./standing.ts";
import { span } from "./starts.ts";
import type { CalendarTask, Levels, Parts, Placed, Placement, TaskSession } from "./task.ts";

/** What another plan costs more, in points and what they are made of; below 0 where it costs less. */
export interface More {
  readonly points: number;
  readonly parts: Parts;
}

/** A week on other days. */
export interface OtherWeek {
  readonly placements: readonly Placement[];
  readonly dropped: readonly string[];
  readonly more: More;
}

/** The best plan of the week that has one of its sessions on another day; undefined when none keeps all sessions. */
export interface Elsewhere {
  readonly session: string;
  readonly best?: Placement & { readonly more: More };
}

export interface WaysOfWeek {
  readonly week: number;
  /** How many ways to place this week are as good, hours and places counted; more than 2^53 − 1 reads 2^53 − 1. */
  readonly equal: number;
  /** Next best, best first; each has a session on another day than the plan and than those before it. */
  readonly others: readonly OtherWeek[];
  readonly elsewhere: readonly Elsewhere[];
}

/** A part of all ways to place the week: what its sessions may still do, and the best of them. */
interface Share {
  readonly sessions: readonly TaskSession[];
  /** Sessions of the week before this one are settled. */
  readonly from: number;
  /** Sessions that must have a day here. */
  readonly asked: readonly string[];
  readonly placements: readonly Placement[];
  readonly value: Levels;
}

/**
 * In which other ways could one week be placed, when all other weeks stay as they are? As many sessions keep a day as
 * in the plan.
 *
 * Each answer is exact: the ways that differ from the best one are parted by the first session that stands on another
 * day, each part is solved, and the best of the parts is the next best way; it is parted in turn.
 *
 * @param week home week, 0 = first
 * @param most how many other ways
 */
export function waysOfWeek(task: CalendarTask, placed: Placed, week: number, most = 3): WaysOfWeek {
  const free = new Set(task.sessions.filter((session) => session.week === week).map(({ id }) => id));
  const part = standing(task, placed.placements, free);
  const own = part.sessions.flatMap(({ id }, index) => (free.has(id) ? [index] : []));
  const now = score(part, placed.placements);
  const held = part.sessions.flatMap(({ id }) => (free.has(id) ? [] : [id]));
  const best = search(part, undefined, new Set(held));

  const solve = (sessions: readonly TaskSession[], from: number, asked: readonly string[]): Share[] => {
    const { placements } = search({ ...part, sessions }, undefined, new Set(asked));
    const { value } = score(part, placements);
    const kept = asked.every((id) => placements.some(({ session }) => session === id));
    const asMany = value.fixed === best.value.fixed && value.dropped === best.value.dropped;
    return kept && asMany ? [{ sessions, from, asked, placements, value }] : [];
  };
  const parted = ({ sessions, from, asked, placements }: Share): Share[] => {
    const settled = [...sessions];
    const kept = [...asked];
    return own.slice(from).flatMap((index, n): Share[] => {
      const session = sessions[index]!;
      const at = dayOf(placements, session);
      const found = solve(
        settled.with(index, at === undefined ? session : elsewhereThan(part, session, at)),
        from + n,
        [...kept, ...(at === undefined ? [session.id] : [])],
      );
      settled[index] = { ...session, days: at === undefined ? [] : [at] };
      if (at !== undefined) kept.push(session.id);
      return found;
    });
  };

  const root = { sessions: part.sessions, from: 0, asked: held, placements: best.placements, value: best.value };
  const open = parted(root);
  const others: OtherWeek[] = [];
  while (open.length > 0 && others.length < most) {
    const next = open.reduce((a, b) => (order(b, a) < 0 ? b : a));
    open.splice(open.indexOf(next), 1, ...(others.length + 1 < most ? parted(next) : []));
    const there = next.placements.filter(({ session }) => free.has(session));
    const kept = new Set(there.map(({ session }) => session));
    const dropped = [...free].filter((id) => !kept.has(id));
    others.push({ placements: there, dropped, more: moreThan(now, score(part, next.placements)) });
  }
  const elsewhere = own.flatMap((index): Elsewhere[] => {
    const session = part.sessions[index]!;
    const at = dayOf(placed.placements, session);
    if (at === undefined) return [];
    const changed = part.sessions.with(index, elsewhereThan(part, session, at));
    const [found] = solve(changed, 0, [...held, session.id]);
    const there = found?.placements.find((placement) => placement.session === session.id);
    if (!found || !there) return [{ session: session.id }];
    return [{ session: session.id, best: { ...there, more: moreThan(now, score(part, found.placements)) } }];
  });
  return { week, equal: best.count, others, elsewhere };
}

/** How good a plan is among all: the only best one, one of so many, or not proven best. */
export function howGood({ count, proven, value, bound }: Placed): Reason {
  if (!proven) {
    const least = { leastDropped: bound.dropped, leastPoints: bound.close + bound.points };
    return reason("calendar/not-proven", { dropped: value.dropped, points: value.close + value.points, ...least });
  }
  const more = count === Number.MAX_SAFE_INTEGER;
  return count === 1 ? reason("calendar/only-plan", {}) : reason("calendar/equal-plans", { count, more });
}

/** What another way to place a week changes, and what it costs more. */
export function otherWay(placed: Placed, week: number, other: OtherWeek): Reason {
  const now = new Map(placed.placements.map((placement) => [placement.session, placement]));
  const moved = other.placements.filter(({ session, day }) => now.get(session)?.day !== day);
  const sessions = [
    ...moved.map(({ session, day }) => ({ session, day: printDay(day) })),
    ...other.dropped.filter((session) => now.has(session)).map((session) => ({ session, day: null })),
  ];
  const { points, parts } = other.more;
  return reason("calendar/other-way", { week: week + 1, sessions, points, ...parts });
}

/** Below 0 when a is better; among equals the one that trains on the first day on which they differ. */
function order({ value: a, placements: x }: Share, { value: b, placements: y }: Share): number {
  const levels = a.fixed - b.fixed || a.dropped - b.dropped || a.close - b.close || a.points - b.points;
  const at = x.findIndex((one, n) => one.day !== y[n]?.day);
  return levels || (at < 0 ? 0 : x[at]!.day - (y[at]?.day ?? Number.POSITIVE_INFINITY));
}

function dayOf(placements: readonly Placement[], { id }: TaskSession): Day | undefined {
  return placements.find(({ session }) => session === id)?.day;
}

/** The session on any of its days but one. */
function elsewhereThan(task: CalendarTask, session: TaskSession, day: Day): TaskSession {
  const { first, last } = span(task, session);
  const days = session.days ?? Array.from({ length: last - first + 1 }, (_, n) => (task.start + first + n) as Day);
  return { ...session, days: days.filter((one) => one !== day) };
}

function moreThan(now: ReturnType<typeof score>, then: ReturnType<typeof score>): More {
  const parts = (["window", "late", "moved", "nextDay", "close"] as const).map((part) => [
    part,
    then.parts[part] - now.parts[part],
  ]);
  return { points: then.cost - now.cost, parts: Object.fromEntries(parts) as unknown as Parts };
}
