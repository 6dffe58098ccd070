import { sharedCount } from "./muscle-mask.ts";
import { closePoints } from "./points.ts";
import type { CalendarTask, PastSession } from "./task.ts";

const MINUTES_A_DAY = 1440;

/** A session that may start on a day. */
interface Loading {
  readonly session: number;
  readonly from: number;
}

/** What was loaded hard on one day, and from when. More than one only on days before the task. */
type Load = readonly Pick<PastSession, "hard" | "start">[];

/**
 * What the last days loaded, packed into one number: a digit for each of the last `depth` days, yesterday lowest, in
 * which 0 is "nothing that any later start can be close to". Equal digits have equal consequences: the loads of a day
 * are parted into classes by the points they give to every start of the days to come, anew as they grow older.
 */
export interface Memory {
  /** How many days are remembered at most: enough for the wanted hours. */
  readonly days: number;
  /** How many different memories there are when `depth` days are remembered. */
  size(depth: number): number;
  /** The memory before the first day. */
  readonly first: number;
  /** The memory before the next day when this one takes its n-th start, or rests (−1). */
  after(memory: number, day: number, start: number, depth: number): number;
  /** Points for the n-th start of a day, so close to what is remembered. */
  points(memory: number, day: number, start: number): number;
}

/** Loads of one day at one age: which class each class of a day younger becomes, and what it costs the starts then. */
interface Age {
  /** From the class one day younger, or from the load when this is the first age. */
  readonly becomes: readonly number[];
  /** For each class the points of every load of the day that is so much later; class 0 has none. */
  readonly points: readonly (readonly number[])[];
}

/** The different loads that the starts of a day can be, and which of them each start is. */
interface Day {
  readonly loads: readonly Load[];
  readonly of: readonly number[];
}

/**
 * @param starts what can be placed on each day, in the order in which starts are numbered
 */
export function memoryOf(task: CalendarTask, starts: readonly (readonly Loading[])[]): Memory {
  const wanted = task.gapHours * 60;
  const digits = Math.ceil(task.gapHours / 24);
  const past = task.before?.past ?? [];
  const pastDays = Array.from({ length: digits }, (_, n): Day => {
    const load = past.filter(({ daysAgo }) => daysAgo === digits - n);
    return { loads: load.length === 0 ? [] : [load], of: [] };
  });
  const days = [...pastDays, ...starts.map((list) => loadsOf(task, list))];
  const dayAt = (day: number): Day | undefined => days[day + digits];

  const pointsOf = (load: Load, age: number, [later]: Load): number => {
    let points = 0;
    for (const { hard, start } of load) {
      const minutes = age * MINUTES_A_DAY + later!.start - start;
      if (minutes < wanted) points += closePoints(sharedCount(hard, later!.hard), minutes, wanted);
    }
    return points;
  };
  const agesOf: Age[][] = [];
  for (let day = -digits; day < task.days; day++) {
    const later = Array.from({ length: digits }, (_, n) => dayAt(day + n + 1)?.loads ?? []);
    const vectors = dayAt(day)!.loads.map((load) =>
      later.map((list, n) => (day + n + 1 < 0 ? [] : list.map((other) => pointsOf(load, n + 1, other)))),
    );
    agesOf.push(classes(vectors, digits));
  }
  const bases = Array.from({ length: digits }, (_, n) => Math.max(1, ...agesOf.map((ages) => ages[n]!.points.length)));
  const units = [1];
  for (const base of bases) units.push(units.at(-1)! * base);
  const ageOf = (day: number, age: number): Age => agesOf[day + digits]![age - 1]!;

  const olderBy = (memory: number, day: number, newest: number, depth: number): number => {
    if (depth === 0) return 0;
    let next = newest;
    let rest = memory;
    for (let age = 1; age < depth && rest > 0; age++) {
      const base = bases[age - 1]!;
      const digit = rest % base;
      rest = (rest - digit) / base;
      if (digit !== 0) next += ageOf(day - age, age + 1).becomes[digit]! * units[age]!;
    }
    return next;
  };

  let first = 0;
  for (let day = -digits; day < 0; day++) first = olderBy(first, day, ageOf(day, 1).becomes[0] ?? 0, digits);
  return {
    days: digits,
    size: (depth) => units[depth]!,
    first,
    after: (memory, day, start, depth) =>
      olderBy(memory, day, start < 0 || depth === 0 ? 0 : ageOf(day, 1).becomes[dayAt(day)!.of[start]!]!, depth),
    points(memory, day, start) {
      let points = 0;
      let rest = memory;
      for (let age = 1; rest > 0; age++) {
        const base = bases[age - 1]!;
        const digit = rest % base;
        rest = (rest - digit) / base;
        if (digit !== 0) points += ageOf(day - age, age).points[digit]![dayAt(day)!.of[start]!]!;
      }
      return points;
    },
  };
}

function loadsOf({ sessions }: CalendarTask, starts: readonly Loading[]): Day {
  const known = new Map<number, number>();
  const loads: Load[] = [];
  const of = starts.map(({ session, from }) => {
    const { hard } = sessions[session]!;
    const key = hard * MINUTES_A_DAY + from;
    const found = known.get(key) ?? loads.push([{ hard, start: from }]) - 1;
    known.set(key, found);
    return found;
  });
  return { loads, of };
}

/** Parts loads into classes for every age, from the oldest on: alike are those that cost the same from then on. */
function classes(vectors: readonly (readonly (readonly number[])[])[], digits: number): Age[] {
  // For every age the class of each load, and one load that stands for each class.
  const classOf: number[][] = Array.from({ length: digits + 1 }, () => vectors.map(() => 0));
  const heads: number[][] = Array.from({ length: digits }, () => [-1]);
  for (let age = digits; age >= 1; age--) {
    const known = new Map<string, number>();
    vectors.forEach((vector, load) => {
      const now = vector[age - 1]!;
      const later = classOf[age]![load]!;
      if (later === 0 && now.every((points) => points === 0)) return;
      const key = `${later}:${now.join(",")}`;
      const found = known.get(key) ?? heads[age - 1]!.push(load) - 1;
      known.set(key, found);
      classOf[age - 1]![load] = found;
    });
  }
  return heads.map((list, n) => ({
    becomes: n === 0 ? classOf[0]! : heads[n - 1]!.map((load) => (load < 0 ? 0 : classOf[n]![load]!)),
    points: list.map((load) => (load < 0 ? [] : vectors[load]![n]!)),
  }));
}
