import { addDays } from "../day.ts";
import { memoryOf } from "./memory.ts";
import { latePoints } from "./points.ts";
import { type Start, span, startsOn } from "./starts.ts";
import type { CalendarTask, Placement } from "./task.ts";

/** A session that may start on a day. */
interface DayStart extends Start {
  readonly session: number;
}

/** A choice for one day: rest or a start, the state it leads to, and what it costs. */
interface Choice {
  readonly placed: DayStart | undefined;
  readonly next: number;
  readonly dropped: number;
  readonly points: number;
}

/** Cost from a state to the end, how many plans have it, and the first choice that leads there. */
interface Value {
  readonly dropped: number;
  readonly points: number;
  readonly count: number;
  readonly choice: number;
}

/** All that the rest of a plan depends on: the next session, training days in a row, and what was loaded lately. */
interface State {
  readonly session: number;
  readonly row: number;
  readonly memory: number;
  readonly choices: Choice[];
}

type Layer = State[];

/** The best plan, and how many are as good. */
export interface Best {
  readonly placements: readonly Placement[];
  readonly dropped: readonly string[];
  readonly points: number;
  readonly count: number;
  readonly states: number;
}

/**
 * Which days and starts are best? Fewest dropped sessions first, then fewest points. Among equals, the days are
 * compared from the first on: training goes before rest, then the earlier start, then the earlier session, then the
 * name of the place.
 *
 * Dynamic programming over days. It is exact, since what a day's choice may be and cost depends on the days before it
 * only through the state: two sessions more than ceil(H / 24) days apart start at least H hours apart whatever their
 * hours. Every plan is one path through the states, so that counting paths counts plans. Sessions whose last day has
 * passed are dropped at once, which keeps the number of states linear in the weeks.
 *
 * @param task a checked task
 */
export function search(task: CalendarTask): Best {
  const layers = statesOf(task);
  const values = valuesOf(layers);
  const placements: Placement[] = [];
  let at = 0;
  for (let day = 0; day < task.days; day++) {
    const { placed, next } = layers[day]![at]!.choices[values[day]![at]!.choice]!;
    at = next;
    if (!placed) continue;
    const placement = { session: task.sessions[placed.session]!.id, day: addDays(task.start, day), start: placed.from };
    placements.push(placed.place === undefined ? placement : { ...placement, place: placed.place });
  }
  const done = new Set(placements.map(({ session }) => session));
  return {
    placements,
    dropped: task.sessions.map(({ id }) => id).filter((id) => !done.has(id)),
    points: values[0]![0]!.points,
    count: values[0]![0]!.count,
    states: layers.reduce((sum, layer) => sum + layer.length, 0),
  };
}

/** Every state that can be reached, day by day, with its choices in the stated order. The last layer has none. */
function statesOf(task: CalendarTask): Layer[] {
  const { days, sessions } = task;
  const spans = sessions.map((session) => span(task, session));
  const starts = Array.from({ length: days }, (_, day) => dayStarts(task, spans, day));
  const memory = memoryOf(task, Math.max(0, ...starts.map(({ length }) => length)));
  const rows = Math.min(task.maxInRow, days + (task.before?.inRow ?? 0)) + 1;
  if (!((sessions.length + 1) * rows * memory.size < Number.MAX_SAFE_INTEGER)) {
    throw new RangeError(`Cannot place sessions as a day has too many windows: ${sessions.length} sessions`);
  }

  const layers: Layer[] = Array.from({ length: days + 1 }, () => []);
  let known = new Map<number, number>();
  const reach = (layer: Layer, session: number, row: number, memoryThen: number): number => {
    const key = (session * rows + row) * memory.size + memoryThen;
    const found = known.get(key);
    if (found !== undefined) return found;
    known.set(key, layer.length);
    return layer.push({ session, row, memory: memoryThen, choices: [] }) - 1;
  };
  const passOver = (session: number, day: number): number => {
    let next = session;
    while (next < sessions.length && (day >= days || spans[next]!.last < day)) next++;
    return next;
  };

  reach(layers[0]!, passOver(0, 0), Math.min(task.before?.inRow ?? 0, rows - 1), memory.first);
  for (let day = 0; day < days; day++) {
    known = new Map();
    const tomorrow = layers[day + 1]!;
    for (const state of layers[day]!) {
      for (const placed of state.row < task.maxInRow ? starts[day]! : []) {
        if (placed.session < state.session) continue;
        const { hard } = sessions[placed.session]!;
        const then = memory.after(state.memory, day, { hard, from: placed.from });
        const session = passOver(placed.session + 1, day + 1);
        state.choices.push({
          placed,
          next: reach(tomorrow, session, Math.min(state.row + 1, rows - 1), then),
          dropped: session - state.session - 1,
          points:
            placed.cost +
            latePoints(Math.max(0, day - spans[placed.session]!.homeEnd)) +
            memory.points(state.memory, day, hard, placed.from),
        });
      }
      const session = passOver(state.session, day + 1);
      const next = reach(tomorrow, session, 0, memory.after(state.memory, day));
      state.choices.push({ placed: undefined, next, dropped: session - state.session, points: 0 });
    }
  }
  return layers;
}

/** What can be placed on a day, in the stated order of ties. */
function dayStarts(task: CalendarTask, spans: readonly { first: number; last: number }[], day: number): DayStart[] {
  const options = task.sessions.flatMap((session, index) =>
    spans[index]!.first <= day && day <= spans[index]!.last
      ? startsOn(task, day, session.minutes).map((start) => ({ session: index, ...start }))
      : [],
  );
  const place = (option: DayStart) => option.place ?? "";
  return options.sort((a, b) => a.from - b.from || a.session - b.session || (place(a) < place(b) ? -1 : 1));
}

/** For every state the cost to the end, from the last day back. */
function valuesOf(layers: readonly Layer[]): Value[][] {
  const values: Value[][] = layers.map(() => []);
  values[layers.length - 1] = layers.at(-1)!.map(() => ({ dropped: 0, points: 0, count: 1, choice: -1 }));
  for (let day = layers.length - 2; day >= 0; day--) {
    values[day] = layers[day]!.map((state) => bestFrom(state, values[day + 1]!));
  }
  return values;
}

function bestFrom(state: State, later: readonly Value[]): Value {
  let best: Value = { dropped: Number.POSITIVE_INFINITY, points: Number.POSITIVE_INFINITY, count: 0, choice: -1 };
  state.choices.forEach((choice, at) => {
    const rest = later[choice.next]!;
    const dropped = choice.dropped + rest.dropped;
    const points = choice.points + rest.points;
    if (dropped < best.dropped || (dropped === best.dropped && points < best.points)) {
      best = { dropped, points, count: rest.count, choice: at };
    } else if (dropped === best.dropped && points === best.points) {
      best = { ...best, count: Math.min(Number.MAX_SAFE_INTEGER, best.count + rest.count) };
    }
  });
  return best;
}
