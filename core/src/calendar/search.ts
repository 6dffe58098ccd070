import { addDays } from "../day.ts";
import { levelsIn, type Weights, weightsOf } from "./levels.ts";
import { type Memory, memoryOf } from "./memory.ts";
import { latePoints, MOVED_POINTS, NEXT_DAY_POINTS } from "./points.ts";
import { asAnnounced, type Start, span, startsOn } from "./starts.ts";
import type { CalendarTask, Levels, Placement } from "./task.ts";

/** Choices looked at before the search gives up proving: some seconds of work. */
export const MOST_WORK = 20_000_000;
/** Within so many choices the whole is looked at in one round. */
const SMALL_WORK = 2000;

/** A session that may start on a day, with all that it costs but for what lies close before it. */
interface DayStart extends Start {
  readonly session: number;
  readonly value: number;
}

/** The best plan found, and how many are as good. */
export interface Best {
  readonly placements: readonly Placement[];
  readonly dropped: readonly string[];
  readonly value: Levels;
  /** Nothing is better than this; equal to `value` when that is proven best. */
  readonly bound: Levels;
  readonly proven: boolean;
  readonly count: number;
  /** States kept and choices looked at, all rounds together. */
  readonly states: number;
  readonly work: number;
}

/**
 * All states of a round, day after day, as lists side by side. All that the rest of a plan depends on is the next session,
 * training days in a row and memory.
 */
interface Round {
  /** Days remembered. */
  readonly depth: number;
  /** The first state of each day, and one behind the last. */
  readonly days: readonly number[];
  readonly session: readonly number[];
  readonly row: readonly number[];
  readonly memory: readonly number[];
  /** Cost of the cheapest way to each state. */
  readonly sofar: readonly number[];
  /** Where the choices of each state begin; they stand in the order of ties. */
  readonly from: readonly number[];
  /** Of every choice: the number of the start, −1 for rest; the state it leads to; its cost. */
  readonly start: readonly number[];
  readonly next: readonly number[];
  readonly cost: readonly number[];
  /** For each day, its states by key. */
  readonly at: readonly ReadonlyMap<number, number>[];
  /** Cost from each state to the end, and how many ways have it. */
  readonly rest: Float64Array;
  readonly count: Float64Array;
}

/** A plan: for every day its start or rest, and what it costs when all is remembered. */
interface Path {
  readonly choices: readonly (DayStart | undefined)[];
  readonly value: number;
}

/** What has been done so far. */
interface Work {
  done: number;
  states: number;
}

/** What a round needs to know of the task. */
interface Sheet {
  readonly task: CalendarTask;
  readonly weights: Weights;
  readonly starts: readonly (readonly DayStart[])[];
  readonly memory: Memory;
  /** The first session from this one on whose last day has not passed. */
  passOver(session: number, day: number): number;
  /** Cost of dropping all sessions before the n-th. */
  readonly dropping: readonly number[];
  readonly rows: number;
}

/**
 * Which days and starts are best? Fewest sessions without a day first, fixed ones before the others;
 * then fewest points for hours missing, where these are a must; then fewest points. Among equals, the days are compared
 * from the first on: training goes before rest, then the earlier start, then the earlier session, then the name of the
 * place.
 *
 * Dynamic programming over days. It is exact, since what a day's choice may be and cost depends on the days before it
 * only through the state: two sessions more than ceil(H / 24) days apart start at least H hours apart whatever their
 * hours. Every plan is one path through the states, so that counting paths counts plans.
 *
 * It goes in rounds that remember 0, 1, 2 … days. A round that forgets loads charges too little, never too much, so its
 * cost to the end is a bound by which the next round leaves out states that cannot lead to a plan as good as the best
 * one seen. The last round remembers all; when the work runs out before, the best plan seen and the bound stand.
 *
 * @param task a checked task
 * @param asked sessions that must have a day if any plan gives them one, whatever else is dropped
 */
export function search(task: CalendarTask, mostWork: number = MOST_WORK, asked: ReadonlySet<string> = new Set()): Best {
  const sheet = sheetOf(task, asked);
  const { days } = sheet.memory;
  const work = { done: 0, states: 0 };
  const whole = roundOf(sheet, days, undefined, Number.POSITIVE_INFINITY, Math.min(SMALL_WORK, mostWork), work);
  if (whole) return answer(sheet, pathOf(sheet, whole), whole, work);
  let earlier: Round | undefined;
  let best: Path | undefined;
  for (let depth = 0; depth <= days; depth++) {
    const most = depth === 0 ? Number.POSITIVE_INFINITY : mostWork;
    const round = roundOf(sheet, depth, earlier, best?.value ?? Number.POSITIVE_INFINITY, most, work);
    if (!round) break;
    const path = pathOf(sheet, round);
    if (depth === days || best === undefined || path.value < best.value) best = path;
    earlier = round;
  }
  return answer(sheet, best!, earlier!, work);
}

function answer({ task, weights, memory }: Sheet, path: Path, round: Round, work: Readonly<Work>): Best {
  const placements = path.choices.flatMap((start, day): Placement[] => {
    if (!start) return [];
    const at = { session: task.sessions[start.session]!.id, day: addDays(task.start, day), start: start.from };
    return [start.place === undefined ? at : { ...at, place: start.place }];
  });
  const done = new Set(placements.map(({ session }) => session));
  const bound = round.sofar[0]! + round.rest[0]!;
  return {
    placements,
    dropped: task.sessions.map(({ id }) => id).filter((id) => !done.has(id)),
    value: levelsIn(path.value, weights),
    bound: levelsIn(bound, weights),
    proven: path.value === bound,
    count: round.depth === memory.days ? round.count[0]! : 1,
    states: work.states,
    work: work.done,
  };
}

function sheetOf(task: CalendarTask, asked: ReadonlySet<string>): Sheet {
  const { days, sessions } = task;
  const weights = weightsOf(task);
  // By hour: sessions are gone through in order, and the starts of one session by place.
  const byHour = Array.from({ length: days }, () => new Map<number, DayStart[]>());
  const dropping = [0];
  const lasts: number[] = [];
  sessions.forEach((session, index) => {
    const { first, homeEnd, last } = span(task, session);
    lasts.push(last);
    const above = (session.fixed ? weights.fixed : 0) + (asked.has(session.id) ? weights.asked : 0);
    dropping.push(dropping[index]! + weights.dropped + above);
    for (let day = first; day <= last; day++) {
      for (const start of startsOn(task, day, session)) {
        const moved = asAnnounced(session, task.start + day, start) ? 0 : MOVED_POINTS;
        const value = start.cost + latePoints(Math.max(0, day - homeEnd)) + moved;
        const hour = byHour[day]!.get(start.from);
        if (hour) hour.push({ session: index, ...start, value });
        else byHour[day]!.set(start.from, [{ session: index, ...start, value }]);
      }
    }
  });
  const starts = byHour.map((hours) => [...hours.keys()].sort((a, b) => a - b).flatMap((from) => hours.get(from)!));
  const rows = Math.min(task.maxInRow, days + (task.before?.inRow ?? 0)) + 1;
  const memory = memoryOf(task, starts);
  if (!((sessions.length + 1) * rows * memory.size(memory.days) < Number.MAX_SAFE_INTEGER)) {
    throw new RangeError(`Cannot place sessions as a day has too many windows: ${sessions.length} sessions`);
  }
  const passOver = (session: number, day: number): number => {
    let next = session;
    while (next < sessions.length && (day >= days || lasts[next]! < day)) next++;
    return next;
  };
  return { task, weights, starts, memory, passOver, dropping, rows };
}

/**
 * One round: every state that can be reached and may still lead to a plan that costs no more than `most`, with its cost
 * to the end.
 *
 * @param depth days remembered
 * @param earlier the round that remembers a day less
 * @param most value of the best plan seen
 * @returns undefined when the work ran out
 */
function roundOf(
  { task, weights, starts, memory, dropping, passOver, rows }: Sheet,
  depth: number,
  earlier: Round | undefined,
  most: number,
  mostWork: number,
  work: Work,
): Round | undefined {
  const { days: dayCount, maxInRow, before } = task;
  const size = memory.size(depth);
  const sizeBefore = earlier === undefined ? 1 : memory.size(depth - 1);
  const days = [0];
  const [session, row, remembered, sofar]: [number[], number[], number[], number[]] = [[], [], [], []];
  const [from, start, next, cost]: [number[], number[], number[], number[]] = [[], [], [], []];
  const at = Array.from({ length: dayCount + 1 }, () => new Map<number, number>());

  const first = passOver(0, 0);
  const firstRow = Math.min(before?.inRow ?? 0, rows - 1);
  at[0]!.set((first * rows + firstRow) * size + (memory.first % size), 0);
  session.push(first);
  row.push(firstRow);
  remembered.push(memory.first % size);
  sofar.push(dropping[first]!);
  for (let day = 0; day < dayCount; day++) {
    const list = starts[day]!;
    const known = at[day + 1]!;
    const [knownBefore, restBefore] = [earlier?.at[day + 1], earlier?.rest];
    const end = session.length;
    days.push(end);
    for (let state = days[day]!; state < end; state++) {
      const [own, ownRow, now, here] = [session[state]!, row[state]!, remembered[state]!, sofar[state]!];
      from.push(start.length);
      work.done += list.length + 1;
      for (let n = ownRow < maxInRow ? 0 : list.length; n <= list.length; n++) {
        const rests = n === list.length;
        const taken = rests ? own - 1 : list[n]!.session;
        if (taken < own && !rests) continue;
        const then = memory.after(now, day, rests ? -1 : n, depth);
        const nextSession = passOver(taken + 1, day + 1);
        const nextRow = rests ? 0 : Math.min(ownRow + 1, rows - 1);
        const skipped = dropping[nextSession]! - dropping[taken + 1]!;
        const price = rests
          ? skipped
          : skipped +
            dropping[taken]! -
            dropping[own]! +
            list[n]!.value +
            (ownRow > 0 ? NEXT_DAY_POINTS : 0) +
            weights.close * memory.points(now, day, n);
        const place = nextSession * rows + nextRow;
        if (knownBefore !== undefined) {
          const least = knownBefore.get(place * sizeBefore + (then % sizeBefore));
          if (least === undefined || here + price + restBefore![least]! > most) continue;
        }
        const key = place * size + then;
        let to = known.get(key);
        if (to === undefined) {
          to = session.length;
          known.set(key, to);
          session.push(nextSession);
          row.push(nextRow);
          remembered.push(then);
          sofar.push(here + price);
        } else if (here + price < sofar[to]!) sofar[to] = here + price;
        start.push(rests ? -1 : n);
        next.push(to);
        cost.push(price);
      }
    }
    if (work.done > mostWork) return undefined;
  }
  days.push(session.length);
  from.push(start.length);
  work.states += session.length;
  const lists = { depth, days, session, row, memory: remembered, sofar, from, start, next, cost, at };
  return { ...lists, ...settled(lists) };
}

/** For every state the cost to the end and how many ways have it, from the last day back. */
function settled({
  days,
  from,
  next,
  cost,
}: Pick<Round, "days" | "from" | "next" | "cost">): Pick<Round, "rest" | "count"> {
  const states = days.at(-1)!;
  const end = days.at(-2)!;
  const rest = new Float64Array(states);
  const count = new Float64Array(states).fill(1, end);
  for (let state = end - 1; state >= 0; state--) {
    let best = Number.POSITIVE_INFINITY;
    let ways = 0;
    for (let choice = from[state]!; choice < from[state + 1]!; choice++) {
      const to = next[choice]!;
      const value = cost[choice]! + rest[to]!;
      if (value < best) {
        best = value;
        ways = count[to]!;
      } else if (value === best) ways = Math.min(Number.MAX_SAFE_INTEGER, ways + count[to]!);
    }
    rest[state] = best;
    count[state] = ways;
  }
  return { rest, count };
}

/** The best plan of a round; among equal choices the first. */
function pathOf({ weights, starts, memory, dropping }: Sheet, round: Round): Path {
  const { row, from, start, next, cost, rest } = round;
  let state = 0;
  let value = dropping.at(-1)!;
  let now = memory.first;
  const choices = starts.map((list, day) => {
    let choice = from[state]!;
    while (cost[choice]! + rest[next[choice]!]! !== rest[state]) choice++;
    const nextDay = row[state]! > 0 ? NEXT_DAY_POINTS : 0;
    state = next[choice]!;
    const n = start[choice]!;
    const placed = list[n];
    if (placed) {
      const kept = dropping[placed.session + 1]! - dropping[placed.session]!;
      value += placed.value + nextDay + weights.close * memory.points(now, day, n) - kept;
    }
    now = memory.after(now, day, n, memory.days);
    return placed;
  });
  return { choices, value };
}
