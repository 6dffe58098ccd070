import type { BlockTask, FitTask } from "./task.ts";

/** One step of a way: from a node to the next, taking one of its items. */
export interface Step {
  readonly block: number;
  readonly way: number;
  readonly step: number;
  readonly from: number;
  readonly to: number;
  /** Items that may still be part of the best plan, the quickest first. */
  items: Int32Array;
}

/**
 * One session as a net: nodes 0 … end, each block a bundle of ways from one node to the next. A plan of the session is a
 * path. Steps stand in the order of the blocks, so that every step comes after those that lead to it.
 */
export interface SessionNet {
  readonly capacity: number;
  readonly end: number;
  readonly steps: readonly Step[];
}

/** The task in arrays: every option of every step is an item, with a number of its own. */
export interface Net {
  readonly task: FitTask;
  readonly sessions: readonly SessionNet[];
  readonly items: number;
  readonly option: Int32Array;
  readonly block: Int32Array;
  readonly way: Int32Array;
  readonly must: Int32Array;
  readonly want: Int32Array;
  readonly rank: Int32Array;
  /** Units of 5 s; the time of a way is counted with its first step. */
  readonly time: Int32Array;
  /** Rows of item i: `row[k]`, `amount[k]` for k from `rows[i]` to before `rows[i + 1]`. */
  readonly rows: Int32Array;
  readonly row: Int32Array;
  readonly amount: Int32Array;
  /** Things of which a session or a block has only so many: what item i takes is `taken[i]`. */
  readonly taken: readonly (readonly number[])[];
  /** How many there are of each thing. */
  readonly atMost: readonly number[];
  /** Busy stations of each item, by number. */
  readonly stations: readonly (readonly number[])[];
}

/** Numbers for names, in the order in which they are first seen. */
function numberer(): (name: string) => number {
  const numbers = new Map<string, number>();
  return (name) => {
    const known = numbers.get(name);
    if (known !== undefined) return known;
    numbers.set(name, numbers.size);
    return numbers.size - 1;
  };
}

/** Nothing is taken and no station used, by most items. */
const NONE: readonly number[] = [];

/** Forms that could be taken twice in a session, because they stand in more than one of its slots. */
function formsTwice(blocks: readonly BlockTask[]): ReadonlySet<string> {
  const seen = new Map<string, string>();
  const twice = new Set<string>();
  for (const [b, { ways }] of blocks.entries()) {
    for (const { steps } of ways) {
      for (const [s, options] of steps.entries()) {
        for (const { exercise } of options) {
          if (exercise === undefined) continue;
          const place = `${b} ${s}`;
          const before = seen.get(exercise);
          if (before === undefined) seen.set(exercise, place);
          else if (before !== place) twice.add(exercise);
        }
      }
    }
  }
  return twice;
}

export function netOf(task: FitTask): Net {
  const every = task.blocks.flatMap(({ ways }) => ways.flatMap(({ steps }) => steps.flat()));
  const size = every.length;
  const rows = new Int32Array(size + 1);
  for (let i = 0; i < size; i++) rows[i + 1] = rows[i]! + every[i]!.rows.length;
  const row = new Int32Array(rows[size]!);
  const amount = new Int32Array(rows[size]!);
  for (let i = 0, k = 0; i < size; i++) for (const pair of every[i]!.rows) [row[k], amount[k++]] = pair;
  const [option, block, way, time] = Array.from({ length: 4 }, () => new Int32Array(size)) as [
    Int32Array,
    Int32Array,
    Int32Array,
    Int32Array,
  ];
  const taken: (readonly number[])[] = [];
  const stations: (readonly number[])[] = [];
  const atMost: number[] = [];
  const thing = numberer();
  const station = numberer();
  const take = (name: string, count: number) => {
    const number = thing(name);
    atMost[number] = count;
    return number;
  };
  let item = 0;
  const sessions = task.capacity.map((capacity, session): SessionNet => {
    const twice = formsTwice(task.blocks.filter((each) => each.session === session));
    const steps: Step[] = [];
    let node = 0;
    for (const [b, { session: mine, slots, ways, atOnce }] of task.blocks.entries()) {
      if (mine !== session) continue;
      const from = node;
      const to = ways.reduce((last, each) => last + each.steps.length - 1, from + 1);
      for (const [w, each] of ways.entries()) {
        let here = from;
        for (const [s, options] of each.steps.entries()) {
          const next = s === each.steps.length - 1 ? to : ++node;
          const first = item;
          for (const [o, { exercise, stations: places, time: took }] of options.entries()) {
            option[item] = o;
            block[item] = b;
            way[item] = w;
            time[item] = took + (s === 0 ? each.time : 0);
            const form = exercise !== undefined && twice.has(exercise) ? [take(`${session} ${exercise}`, 1)] : NONE;
            const shared: readonly string[] = slots.length < 2 ? [] : places.filter((name) => atOnce.has(name));
            taken.push(
              shared.length === 0
                ? form
                : [...form, ...shared.map((name) => take(`block ${b} ${name}`, atOnce.get(name)!))],
            );
            stations.push(places.length === 0 ? NONE : places.map(station));
            item++;
          }
          const items = Int32Array.from({ length: item - first }, (_, index) => first + index);
          items.sort((x, y) => time[x]! - time[y]! || x - y);
          steps.push({ block: b, way: w, step: s, from: here, to: next, items });
          here = next;
        }
      }
      node = to;
    }
    return { capacity, end: node, steps };
  });
  return {
    task,
    sessions,
    items: size,
    option,
    block,
    way,
    must: Int32Array.from(every, ({ must }) => must),
    want: Int32Array.from(every, ({ want }) => want),
    rank: Int32Array.from(every, ({ rank }) => rank),
    time,
    rows,
    row,
    amount,
    taken,
    atMost,
    stations,
  };
}

/** @returns the same task, from which items can be taken without harm to the first */
export function copyOf(net: Net): Net {
  return {
    ...net,
    sessions: net.sessions.map((session) => ({ ...session, steps: session.steps.map((step) => ({ ...step })) })),
  };
}
