/** A part of a session that is dealt as one: a slot, or a pair or round with all its slots. */
export interface Part {
  /** Direct sets that end near the limit, by row of MUSCLES. */
  readonly hard: readonly number[];
  readonly seconds: number;
  readonly lane: string;
  /** The session it comes from. */
  readonly home: number;
}

/** What is dealt over how many sessions. */
export interface DealTask {
  readonly parts: readonly Part[];
  /** Seconds that each session takes before any part. */
  readonly fixed: readonly number[];
  /** Seconds that a session may take. */
  readonly limit: number;
  /** Sessions too close to load the same muscle hard in both. */
  readonly close: readonly (readonly [earlier: number, later: number])[];
  /** Sets of one muscle from which on a session loads it hard. */
  readonly hardSets: number;
}

/**
 * What is counted against a deal, first to last: sessions without any part; muscles loaded hard in two close sessions;
 * minutes begun over the limit; pairs of parts of one lane in one session; hard sets by which a later session is harder than an earlier one;
 * parts that leave their session.
 */
export type Levels = readonly [
  empty: number,
  close: number,
  over: number,
  alike: number,
  rising: number,
  moved: number,
];

export interface Deal {
  /** For each part, its session. */
  readonly sessions: readonly number[];
  readonly levels: Levels;
  readonly proven: boolean;
  readonly nodes: number;
}

/** Parts looked at before the search gives up proving. */
export const MOST_NODES = 2_000_000;

/** @returns the levels of a deal, counted plainly */
export function levelsOf(task: DealTask, sessions: readonly number[]): Levels {
  const rows = task.fixed.map((_, s) => task.parts.filter((_, p) => sessions[p] === s));
  const isHard = (s: number, muscle: number) => rows[s]!.reduce((sum, p) => sum + p.hard[muscle]!, 0) >= task.hardSets;
  const muscles = task.parts[0]?.hard.map((_, muscle) => muscle) ?? [];
  const close = task.close.flatMap(([a, b]) => muscles.filter((m) => isHard(a, m) && isHard(b, m)));
  const seconds = rows.map((parts, s) => parts.reduce((sum, p) => sum + p.seconds, task.fixed[s]!));
  const load = rows.map((parts) => parts.reduce((sum, p) => sum + loadOf(p), 0));
  const alike = rows.map((parts) => parts.flatMap((p, i) => parts.slice(i + 1).filter((q) => q.lane === p.lane)));
  return [
    rows.filter((row) => row.length === 0).length,
    close.length,
    seconds.reduce((sum, s) => sum + Math.ceil(Math.max(0, s - task.limit) / 60), 0),
    alike.flat().length,
    load.reduce((sum, a, i) => sum + load.slice(i + 1).reduce((more, b) => more + Math.max(0, b - a), 0), 0),
    task.parts.filter((p, i) => sessions[i] !== p.home).length,
  ];
}

/** @returns hard sets of a part, over all muscles */
function loadOf(part: Part): number {
  return part.hard.reduce((sum, sets) => sum + sets, 0);
}

/** @returns true when a comes before b, level by level */
function isLess(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((value, level) => value !== b[level]);
  return at >= 0 && a[at]! < b[at]!;
}

/**
 * The best deal of the parts over the sessions, level by level. Branch and bound: parts with most hard sets first, each
 * tried in its own session and then in the others from the first on; the first deal found among equals stays. A branch
 * is left when what it must cost at least is no less than the best found.
 *
 * @returns `proven` false when the count of work ran out: the deal is then the best seen
 */
export function deal(task: DealTask, mostNodes: number = MOST_NODES): Deal {
  const { parts, fixed, limit } = task;
  const order = parts
    .map((_, index) => index)
    .sort((a, b) => loadOf(parts[b]!) - loadOf(parts[a]!) || parts[b]!.seconds - parts[a]!.seconds || a - b);
  const seconds = [...fixed];
  const load = fixed.map(() => 0);
  const held = fixed.map(() => 0);
  const sets = fixed.map(() => (parts[0]?.hard ?? []).map(() => 0));
  const lanes = fixed.map(() => new Map<string, number>());
  const laneLeft = new Map<string, number>();
  for (const { lane } of parts) laneLeft.set(lane, (laneLeft.get(lane) ?? 0) + 1);
  let secondsLeft = parts.reduce((sum, part) => sum + part.seconds, 0);
  let loadLeft = parts.reduce((sum, part) => sum + loadOf(part), 0);
  let close = 0;
  let alike = 0;
  let moved = 0;
  let nodes = 0;
  const chosen = parts.map(({ home }) => home);
  let best = [...chosen];
  let bestLevels = levelsOf(task, best);

  const partners = fixed.map((_, s) => task.close.flatMap(([a, b]) => (a === s ? [b] : b === s ? [a] : [])));
  const put = (index: number, s: number, sign: 1 | -1): void => {
    const part = parts[index]!;
    part.hard.forEach((more, muscle) => {
      if (more === 0) return;
      const before = sets[s]![muscle]!;
      const after = before + sign * more;
      sets[s]![muscle] = after;
      const turned = Number(after >= task.hardSets) - Number(before >= task.hardSets);
      if (turned !== 0) close += turned * partners[s]!.filter((o) => sets[o]![muscle]! >= task.hardSets).length;
    });
    const here = lanes[s]!.get(part.lane) ?? 0;
    alike += sign === 1 ? here : -(here - 1);
    lanes[s]!.set(part.lane, here + sign);
    laneLeft.set(part.lane, laneLeft.get(part.lane)! - sign);
    seconds[s]! += sign * part.seconds;
    load[s]! += sign * loadOf(part);
    held[s]! += sign;
    secondsLeft -= sign * part.seconds;
    loadLeft -= sign * loadOf(part);
    moved += s === part.home ? 0 : sign;
  };
  const atLeast = (depth: number): Levels => {
    let begun = 0;
    let exact = 0;
    let room = 0;
    for (const s of seconds) {
      begun += Math.ceil(Math.max(0, s - limit) / 60);
      exact += Math.max(0, s - limit);
      room += Math.max(0, limit - s);
    }
    const over = Math.max(begun, Math.ceil((exact + Math.max(0, secondsLeft - room)) / 60));
    let rising = 0;
    for (let a = 0; a < load.length; a++) {
      for (let b = a + 1; b < load.length; b++) rising = Math.max(rising, load[b]! - load[a]! - loadLeft);
    }
    let pairs = alike;
    for (const [lane, left] of laneLeft)
      if (left > 0)
        pairs += leastPairs(
          lanes.map((l) => l.get(lane) ?? 0),
          left,
        );
    const empty = held.filter((count) => count === 0).length - (parts.length - depth);
    return [Math.max(0, empty), close, over, pairs, rising, moved];
  };
  const visit = (depth: number): void => {
    if (nodes >= mostNodes) return;
    nodes++;
    const bound = atLeast(depth);
    if (!isLess(bound, bestLevels)) return;
    if (depth === order.length) {
      const levels = levelsOf(task, chosen);
      if (isLess(levels, bestLevels)) {
        best = [...chosen];
        bestLevels = levels;
      }
      return;
    }
    const index = order[depth]!;
    const { home } = parts[index]!;
    for (const s of [home, ...fixed.map((_, at) => at).filter((at) => at !== home)]) {
      put(index, s, 1);
      chosen[index] = s;
      visit(depth + 1);
      put(index, s, -1);
    }
    chosen[index] = home;
  };
  visit(0);
  return { sessions: best, levels: bestLevels, proven: nodes < mostNodes, nodes };
}

/** The fewest new pairs when `left` more of a lane go where there are fewest of it. */
function leastPairs(counts: number[], left: number): number {
  let pairs = 0;
  for (let n = 0; n < left; n++) {
    const least = Math.min(...counts);
    pairs += least;
    counts[counts.indexOf(least)] = least + 1;
  }
  return pairs;
}
