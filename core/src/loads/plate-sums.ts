import { type Load, type Mass, massOf } from "../units.ts";

/** Plates of one kind that can be put in one place: on one side of a bar, or on a belt. */
export interface PlateKind {
  readonly load: Load;
  readonly count: number;
}

export interface PlateSum {
  readonly mass: Mass;
  /** Largest first. */
  readonly plates: readonly Load[];
}

/** Plates together at most: about what one sleeve of a bar holds. Ours, no source. */
const MOST_PLATES = 10;
/** Where more sums than this exist, fewer plates together are allowed until they fit. Ours, for speed. */
const MOST_SUMS = 4000;

interface Kind extends PlateKind {
  readonly mass: Mass;
}

/** How many of each kind, the largest kind first. */
interface Choice {
  readonly plates: number;
  readonly counts: readonly number[];
}

/**
 * Every mass that some of these plates make together, nothing included, with the plates that make it.
 *
 * All choices are looked at, not the largest plate first, which misses sums when a set has gaps. Masses are added
 * exactly, also where kilograms and pounds mix. Of several ways to one sum the one with fewest plates is kept, then
 * the one with the larger plates; the order of the kinds does not matter. At most 10 plates together, and fewer where
 * that leaves more than 4000 sums.
 *
 * @param kinds kinds that stand twice are added up; less than one whole plate is left out
 * @returns rising, the first is 0
 * @source ours
 * @example
 * plateSums([{ load: { value: 10, unit: "kg" }, count: 2 }]).map((sum) => inKg(sum.mass)) //=> [0, 10, 20]
 */
export function plateSums(kinds: readonly PlateKind[]): readonly PlateSum[] {
  const merged = merge(kinds);
  return [...choices(merged)]
    .sort(([a], [b]) => a - b)
    .map(([mass, { counts }]) => ({
      mass: mass as Mass,
      plates: merged.flatMap(({ load }, i) => Array<Load>(counts[i] ?? 0).fill(load)),
    }));
}

function merge(kinds: readonly PlateKind[]): readonly Kind[] {
  const merged = new Map<Mass, Kind>();
  for (const { load, count } of kinds) {
    const mass = massOf(load);
    const known = merged.get(mass);
    if (count >= 1 && mass > 0) {
      merged.set(mass, { load: known?.load ?? load, mass, count: Math.floor(count) + (known?.count ?? 0) });
    }
  }
  return [...merged.values()].sort((a, b) => b.mass - a.mass);
}

function choices(kinds: readonly Kind[]): ReadonlyMap<number, Choice> {
  for (let most = MOST_PLATES; most >= 1; most--) {
    const found = choicesOfAtMost(most, kinds);
    if (found !== undefined) return found;
  }
  return new Map([[0, { plates: 0, counts: [] }]]);
}

/** Kind by kind, so that each sum keeps its best choice; undefined when there are too many sums. */
function choicesOfAtMost(most: number, kinds: readonly Kind[]): ReadonlyMap<number, Choice> | undefined {
  let found = new Map<number, Choice>([[0, { plates: 0, counts: [] }]]);
  for (const { mass, count } of kinds) {
    const next = new Map<number, Choice>();
    for (const [sum, choice] of found) {
      for (let more = 0; more <= Math.min(count, most - choice.plates); more++) {
        const rival = next.get(sum + more * mass);
        if (rival !== undefined && rival.plates < choice.plates + more) continue;
        const grown = { plates: choice.plates + more, counts: [...choice.counts, more] };
        if (rival === undefined || isBetter(grown, rival)) next.set(sum + more * mass, grown);
      }
      if (next.size > MOST_SUMS) return undefined;
    }
    found = next;
  }
  return found;
}

function isBetter(a: Choice, b: Choice): boolean {
  if (a.plates !== b.plates) return a.plates < b.plates;
  const differs = a.counts.findIndex((count, i) => count !== b.counts[i]);
  return differs >= 0 && a.counts[differs]! > b.counts[differs]!;
}
