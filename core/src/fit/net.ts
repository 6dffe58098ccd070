import type { FitTask, Option } from "./task.ts";

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
  readonly option: readonly number[];
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
function numberer(): { readonly of: (name: string) => number; readonly size: () => number } {
  const numbers = new Map<string, number>();
  return {
    of: (name) => {
      const known = numbers.get(name);
      if (known !== undefined) return known;
      numbers.set(name, numbers.size);
      return numbers.size - 1;
    },
    size: () => numbers.size,
  };
}

export function netOf(task: FitTask): Net {
  const all: Option[] = [];
  const option: number[] = [];
  const blocks: number[] = [];
  const ways: number[] = [];
  const times: number[] = [];
  const taken: number[][] = [];
  const atMost: number[] = [];
  const stations: number[][] = [];
  const things = numberer();
  const stationNames = numberer();
  const take = (name: string, count: number) => {
    const thing = things.of(name);
    atMost[thing] = count;
    return thing;
  };
  const sessions = task.capacity.map((capacity, session): SessionNet => {
    const steps: Step[] = [];
    let node = 0;
    for (const [b, block] of task.blocks.entries()) {
      if (block.session !== session) continue;
      const from = node;
      const inner = block.ways.reduce((sum, way) => sum + way.steps.length - 1, 0);
      const to = node + inner + 1;
      for (const [w, way] of block.ways.entries()) {
        let here = from;
        for (const [s, options] of way.steps.entries()) {
          const last = s === way.steps.length - 1;
          const next = last ? to : ++node;
          const items = options.map((each, o): number => {
            all.push(each);
            option.push(o);
            blocks.push(b);
            ways.push(w);
            times.push(each.time + (s === 0 ? way.time : 0));
            const form = each.exercise === undefined ? [] : [take(`${session} ${each.exercise}`, 1)];
            const places = each.stations.flatMap((name) => {
              const count = block.atOnce.get(name);
              return count === undefined || block.slots.length < 2 ? [] : [take(`block ${b} ${name}`, count)];
            });
            taken.push([...form, ...places]);
            stations.push(each.stations.map((name) => stationNames.of(name)));
            return all.length - 1;
          });
          items.sort((x, y) => times[x]! - times[y]! || x - y);
          steps.push({ block: b, way: w, step: s, from: here, to: next, items: Int32Array.from(items) });
          here = next;
        }
      }
      node = to;
    }
    return { capacity, end: node, steps };
  });
  const rows = new Int32Array(all.length + 1);
  for (const [i, each] of all.entries()) rows[i + 1] = rows[i]! + each.rows.length;
  const flat = all.flatMap((each) => each.rows);
  return {
    task,
    sessions,
    items: all.length,
    option,
    block: Int32Array.from(blocks),
    way: Int32Array.from(ways),
    must: Int32Array.from(all, ({ must }) => must),
    want: Int32Array.from(all, ({ want }) => want),
    rank: Int32Array.from(all, ({ rank }) => rank),
    time: Int32Array.from(times),
    rows,
    row: Int32Array.from(flat, ([row]) => row),
    amount: Int32Array.from(flat, ([, amount]) => amount),
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
