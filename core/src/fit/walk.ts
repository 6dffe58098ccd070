import type { Net, SessionNet } from "./net.ts";

/** Most states in which one node of a net is told apart; a session that needs more keeps a looser bound. */
const MOST_STATES = 64;
const MOST_BITS = 30;

/** What a path takes more often than it is there. */
interface Clash {
  readonly things: readonly number[];
  readonly stations: readonly number[];
}

/** Items of a step that take the same of the watched things, the quickest first. */
interface Class {
  readonly bits: number;
  readonly items: Int32Array;
  /** Index of a state before the step, and of the state after it. */
  links: readonly (readonly [from: number, to: number])[];
}

/**
 * The dynamic programme over the time of one session. A state is a node, the time left, and which of the *watched*
 * things are taken. At first nothing is watched, so that the best path may take a thing twice: then that thing is
 * watched and the path sought again, until it is a real session (decremental state space).
 *
 * Tables only hold the times that can occur: between what the slowest and the quickest way to a node leave, and no more
 * than the slowest way on from it can use.
 */
export class Walk {
  readonly #net: Net;
  readonly #session: SessionNet;
  /** Watched things, each with its bit. */
  #watched = new Map<number, number>();
  /** Watched stations, each with its bit. */
  #stations = new Map<number, number>();
  #stationBits = 0;
  #bits = false;
  #full = false;
  #low: Int32Array = new Int32Array(0);
  #top: Int32Array = new Int32Array(0);
  /** The states of each node: sets of bits. */
  #states: number[][] = [];
  #classes: Class[][] = [];
  #tables: Float64Array[][] = [];
  #leaving: number[][] = [];
  /** Steps of the dynamic programme so far: a count of work. */
  work = 0;
  /** False when the best path may not be a real session. */
  exact = true;

  constructor(net: Net, session: SessionNet) {
    this.#net = net;
    this.#session = session;
    this.rebuild();
  }

  /** To be called when items were taken out. */
  rebuild(): void {
    const { steps, end, capacity } = this.#session;
    const { time } = this.#net;
    const quickestTo = new Int32Array(end + 1).fill(1 << 29);
    const slowestTo = new Int32Array(end + 1).fill(-1);
    const slowestFrom = new Int32Array(end + 1).fill(-1);
    this.#leaving = Array.from({ length: end + 1 }, () => []);
    quickestTo[0] = 0;
    slowestTo[0] = 0;
    slowestFrom[end] = 0;
    for (const [s, { from, to, items }] of steps.entries()) {
      this.#leaving[from]!.push(s);
      if (items.length === 0) continue;
      quickestTo[to] = Math.min(quickestTo[to]!, quickestTo[from]! + time[items[0]!]!);
      slowestTo[to] = Math.max(slowestTo[to]!, slowestTo[from]! + time[items[items.length - 1]!]!);
    }
    for (let s = steps.length - 1; s >= 0; s--) {
      const { from, to, items } = steps[s]!;
      if (items.length === 0 || slowestFrom[to]! < 0) continue;
      slowestFrom[from] = Math.max(slowestFrom[from]!, slowestFrom[to]! + time[items[items.length - 1]!]!);
    }
    this.#top = new Int32Array(end + 1);
    this.#low = new Int32Array(end + 1);
    for (let node = 0; node <= end; node++) {
      this.#top[node] = Math.min(capacity - quickestTo[node]!, slowestFrom[node]!);
      this.#low[node] = Math.min(Math.max(0, capacity - slowestTo[node]!), Math.max(0, this.#top[node]!));
    }
    this.#full = false;
    this.#spread();
  }

  #bitsOf(item: number): number {
    let bits = 0;
    for (const thing of this.#net.taken[item]!) bits |= this.#watched.get(thing) ?? 0;
    for (const station of this.#net.stations[item]!) bits |= this.#stations.get(station) ?? 0;
    return bits;
  }

  /** The state after an item, or −1 when it may not be taken. */
  #after(state: number, bits: number, keep: number): number {
    if ((state & bits & ~this.#stationBits) !== 0) return -1;
    const next = state | bits;
    if (this.#stationBits !== 0 && count(next & this.#stationBits) > this.#net.task.stations!) return -1;
    return next & keep;
  }

  /** Bits that matter from a node on: things that may still be taken again, and every station. */
  #keep: Int32Array = new Int32Array(0);

  /** Finds the classes of every step and the states that each node can be reached in. */
  #spread(): void {
    const { steps, end } = this.#session;
    this.#stationBits = [...this.#stations.values()].reduce((sum, one) => sum | one, 0);
    this.#bits = this.#watched.size + this.#stations.size > 0;
    this.#classes = steps.map(({ items }) => {
      if (!this.#bits) return items.length === 0 ? [] : [{ bits: 0, items, links: [] }];
      const found = new Map<number, number[]>();
      for (const item of items) {
        const bits = this.#bitsOf(item);
        const known = found.get(bits);
        if (known === undefined) found.set(bits, [item]);
        else known.push(item);
      }
      return [...found].map(([bits, list]) => ({ bits, items: Int32Array.from(list), links: [] }));
    });
    const keep = new Int32Array(end + 1);
    for (let s = steps.length - 1; s >= 0; s--) {
      const { from, to } = steps[s]!;
      let bits = keep[to]!;
      for (const each of this.#classes[s]!) bits |= each.bits;
      keep[from]! |= bits;
    }
    for (let node = 0; node <= end; node++)
      if ((keep[node]! & this.#stationBits) !== 0) keep[node]! |= this.#stationBits;
    this.#keep = keep;
    const reached = Array.from({ length: end + 1 }, () => new Set<number>());
    reached[0]!.add(0);
    for (const [s, { from, to }] of steps.entries()) {
      for (const { bits } of this.#classes[s]!) {
        for (const state of reached[from]!) {
          const next = this.#after(state, bits, keep[to]!);
          if (next >= 0) reached[to]!.add(next);
        }
      }
    }
    this.#states = reached.map((states) => [...states].sort((a, b) => a - b));
    this.#tables = this.#states.map((states, node) =>
      states.map(() => new Float64Array(Math.max(0, this.#top[node]! - this.#low[node]! + 1))),
    );
    for (const [s, { from, to }] of steps.entries()) {
      for (const each of this.#classes[s]!) {
        each.links = this.#states[from]!.flatMap((state, index): [number, number][] => {
          const next = this.#after(state, each.bits, keep[to]!);
          return next < 0 ? [] : [[index, this.#states[to]!.indexOf(next)]];
        });
      }
    }
  }

  get states(): number {
    return this.#states.reduce((most, { length }) => Math.max(most, length), 0);
  }

  /**
   * The best session at these worths of its items.
   *
   * @returns its items in the order of the steps, and its worth; undefined when there is none
   */
  best(worth: Float64Array): { readonly worth: number; readonly items: readonly number[] } | undefined {
    for (;;) {
      this.#backward(worth);
      const table = this.#tables[0]![0]!;
      const value = table[table.length - 1];
      if (value === undefined || value === Number.NEGATIVE_INFINITY) return undefined;
      const items = this.#path(worth);
      const clash = this.#clashOf(items);
      this.exact = clash === undefined;
      if (clash === undefined || this.#full) return { worth: value, items };
      this.#watch(clash);
    }
  }

  #backward(worth: Float64Array): void {
    const { steps, end } = this.#session;
    const { time } = this.#net;
    const [low, top] = [this.#low, this.#top];
    for (let node = 0; node < end; node++)
      for (const table of this.#tables[node]!) table.fill(Number.NEGATIVE_INFINITY);
    for (const table of this.#tables[end]!) table.fill(0);
    for (let s = steps.length - 1; s >= 0; s--) {
      const { from, to } = steps[s]!;
      if (top[from]! < 0 || top[to]! < 0) continue;
      const [lowFrom, topFrom, lowTo, topTo] = [low[from]!, top[from]!, low[to]!, top[to]!];
      for (const { links, items } of this.#classes[s]!) {
        let most = Number.NEGATIVE_INFINITY;
        for (let i = 0; i < items.length; i++) {
          const item = items[i]!;
          const value = worth[item]!;
          // Whatever is slower and worth no more adds nothing.
          if (!(value > most)) continue;
          most = value;
          const took = time[item]!;
          for (let l = 0; l < links.length; l++) {
            const mine = this.#tables[from]![links[l]![0]]!;
            const theirs = this.#tables[to]![links[l]![1]]!;
            const begin = Math.max(lowFrom, took);
            const split = Math.min(topFrom, topTo + took);
            const shift = took + lowTo;
            for (let c = begin; c <= split; c++) {
              const total = value + theirs[c - shift]!;
              if (total > mine[c - lowFrom]!) mine[c - lowFrom] = total;
            }
            const full = value + theirs[topTo - lowTo]!;
            for (let c = Math.max(begin, split + 1); c <= topFrom; c++)
              if (full > mine[c - lowFrom]!) mine[c - lowFrom] = full;
            this.work += Math.max(0, topFrom - begin + 1);
          }
        }
      }
    }
  }

  /**
   * For every item the worth of the best session that takes it, after `best` at the same worths; a little more where not
   * everything is watched.
   *
   * @param most what is found, by item
   */
  with(worth: Float64Array, most: Float64Array): void {
    const { steps } = this.#session;
    const { time } = this.#net;
    const [low, top] = [this.#low, this.#top];
    const before = this.#tables.map((tables, node) =>
      tables.map((table) => new Float64Array(table.length).fill(node === 0 ? 0 : Number.NEGATIVE_INFINITY)),
    );
    for (const [s, { from, to }] of steps.entries()) {
      if (top[from]! < 0 || top[to]! < 0) continue;
      const [lowFrom, topFrom, lowTo, topTo] = [low[from]!, top[from]!, low[to]!, top[to]!];
      for (const { links, items } of this.#classes[s]!) {
        let best = Number.NEGATIVE_INFINITY;
        let last = -1;
        const joined = new Map<number, number>();
        for (const item of items) {
          const took = time[item]!;
          if (took !== last) {
            let together = Number.NEGATIVE_INFINITY;
            for (const [index, next] of links) {
              const mine = before[from]![index]!;
              const theirs = this.#tables[to]![next]!;
              const begin = Math.max(lowFrom, took);
              const end = Math.max(begin, Math.min(topFrom, topTo + took));
              for (let c = begin; c <= end && c <= topFrom; c++) {
                const total = mine[c - lowFrom]! + theirs[Math.min(c - took, topTo) - lowTo]!;
                if (total > together) together = total;
              }
              this.work += Math.max(0, end - begin + 1);
            }
            joined.set(took, together);
            last = took;
          }
          most[item] = worth[item]! + joined.get(took)!;
        }
        for (const item of items) {
          const value = worth[item]!;
          if (!(value > best)) continue;
          best = value;
          const took = time[item]!;
          for (const [index, next] of links) {
            const mine = before[from]![index]!;
            const theirs = before[to]![next]!;
            const end = Math.min(topTo, topFrom - took);
            for (let c = lowTo; c <= end; c++) {
              const total = value + mine[Math.max(c + took, lowFrom) - lowFrom]!;
              if (total > theirs[c - lowTo]!) theirs[c - lowTo] = total;
            }
            this.work += Math.max(0, end - lowTo + 1);
          }
        }
      }
    }
  }

  /** The most that can be added from a node on in a state with so much time left. */
  ahead(node: number, state: number, left: number): number {
    const at = this.#states[node]!.indexOf(state & this.#keep[node]!);
    const [low, top] = [this.#low[node]!, this.#top[node]!];
    if (at < 0 || left < low || top < low)
      return left < 0 || at < 0 ? Number.NEGATIVE_INFINITY : (this.#tables[node]![at]![0] ?? Number.NEGATIVE_INFINITY);
    return this.#tables[node]![at]![Math.min(left, top) - low]!;
  }

  /** @returns the state after an item, −1 when a watched thing forbids it */
  next(state: number, item: number): number {
    if (!this.#bits) return 0;
    return this.#after(state, this.#bitsOf(item), -1);
  }

  #path(worth: Float64Array): number[] {
    const { steps, end, capacity } = this.#session;
    const { time } = this.#net;
    const items: number[] = [];
    let [node, state, left] = [0, 0, Math.min(capacity, this.#top[0]!)];
    while (node !== end) {
      const wanted = this.ahead(node, state, left);
      let found = false;
      for (const s of this.#leaving[node]!) {
        for (const item of steps[s]!.items) {
          if (time[item]! > left) break;
          const next = this.next(state, item);
          if (next < 0 || worth[item]! + this.ahead(steps[s]!.to, next, left - time[item]!) !== wanted) continue;
          items.push(item);
          [node, state, left] = [steps[s]!.to, next & this.#keep[steps[s]!.to]!, left - time[item]!];
          found = true;
          break;
        }
        if (found) break;
      }
      if (!found) throw new Error("A table of the search has no path: this cannot be");
    }
    return items;
  }

  #clashOf(items: readonly number[]): Clash | undefined {
    const { taken, atMost, stations, task } = this.#net;
    const counts = new Map<number, number>();
    for (const item of items) for (const thing of taken[item]!) counts.set(thing, (counts.get(thing) ?? 0) + 1);
    const things = [...counts].filter(([thing, n]) => n > atMost[thing]!).map(([thing]) => thing);
    const there = [...new Set(items.flatMap((item) => stations[item]!))].sort((a, b) => a - b);
    const many = there.length > (task.stations ?? there.length) ? there : [];
    return things.length > 0 || many.length > 0 ? { things, stations: many } : undefined;
  }

  /** Watches what clashed; once that makes too many states, or cannot be done, nothing more is watched. */
  #watch(clash: Clash): void {
    const before: readonly [readonly [number, number][], readonly [number, number][]] = [
      [...this.#watched],
      [...this.#stations],
    ];
    const all = () => this.#watched.size + this.#stations.size;
    const size = all();
    const room = () => all() < MOST_BITS;
    for (const thing of clash.things)
      if (this.#net.atMost[thing] === 1 && !this.#watched.has(thing) && room()) this.#watched.set(thing, 1 << all());
    for (const station of clash.stations)
      if (!this.#stations.has(station) && room()) this.#stations.set(station, 1 << all());
    this.#full = all() === size;
    if (this.#full) return;
    this.#spread();
    if (this.states <= MOST_STATES) return;
    this.#full = true;
    this.#watched = new Map(before[0]);
    this.#stations = new Map(before[1]);
    this.#spread();
  }
}

function count(bits: number): number {
  let n = 0;
  for (let rest = bits; rest !== 0; rest &= rest - 1) n++;
  return n;
}

/** One walk for each session. */
export function walksOf(net: Net): readonly Walk[] {
  return net.sessions.map((session) => new Walk(net, session));
}
