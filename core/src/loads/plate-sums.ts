import { type Load, type Mass, type MassUnit, massOf } from "../units.ts";

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
/** Work at most for one search of all choices; beyond it fewer plates together are allowed. Ours, for speed. */
const MOST_STEPS = 60_000;

interface Kind extends PlateKind {
  readonly mass: Mass;
}

/** Some plates as a list, the largest kind in front, and how many they are. */
interface Choice {
  readonly plates: number;
  readonly front?: { readonly kind: number; readonly count: number; readonly rest: Choice };
}

const NO_PLATES: Choice = { plates: 0 };

/**
 * Every mass that some of these plates make together, nothing included, with the plates that make it.
 *
 * All choices are looked at, not the largest plate first, which misses sums when a set has gaps. Masses are added
 * exactly, also where kilograms and pounds mix. Of several ways to one sum the one with fewest plates is kept, then
 * the one with the larger plates; the order of the kinds does not matter. At most 10 plates together, and fewer where
 * there are so many kinds that the search would be long; plates of one unit are then still searched alone.
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
    .map(([mass, choice]) => ({
      mass: mass as Mass,
      plates: [...platesOf(choice, merged)],
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
  // Smallest first, so that the largest kind ends in front of each choice.
  return [...merged.values()].sort((a, b) => a.mass - b.mass);
}

/** Plates of one unit are also searched alone, so that a second set in the other unit does not crowd them out. */
function choices(kinds: readonly Kind[]): ReadonlyMap<number, Choice> {
  const found = new Map<number, Choice>();
  const units = new Set(kinds.map((kind) => kind.load.unit));
  const searches = units.size < 2 ? [kinds] : [kinds, ...[...units].map((unit) => onlyIn(unit, kinds))];
  for (const search of searches) {
    for (const [mass, choice] of choicesThatFit(search)) {
      const rival = found.get(mass);
      if (rival === undefined || isBetter(choice, rival)) found.set(mass, choice);
    }
  }
  return found;
}

function onlyIn(unit: MassUnit, kinds: readonly Kind[]): readonly Kind[] {
  return kinds.map((kind) => (kind.load.unit === unit ? kind : { ...kind, count: 0 }));
}

function choicesThatFit(kinds: readonly Kind[]): ReadonlyMap<number, Choice> {
  const all = choicesOfAtMost(MOST_PLATES, kinds);
  if (all !== undefined) return all;
  let found: ReadonlyMap<number, Choice> = new Map([[0, NO_PLATES]]);
  for (let most = 1; most < MOST_PLATES; most++) {
    const more = choicesOfAtMost(most, kinds);
    if (more === undefined) return found;
    found = more;
  }
  return found;
}

/** Kind by kind, so that each sum keeps its best choice; undefined when that is too much work. */
function choicesOfAtMost(most: number, kinds: readonly Kind[]): ReadonlyMap<number, Choice> | undefined {
  const found = new Map<number, Choice>([[0, NO_PLATES]]);
  let steps = 0;
  for (const [kind, { mass, count }] of kinds.entries()) {
    for (const [sum, rest] of [...found]) {
      for (let more = 1; more <= Math.min(count, most - rest.plates); more++) {
        if (++steps > MOST_STEPS) return undefined;
        const grown = { plates: rest.plates + more, front: { kind, count: more, rest } };
        const rival = found.get(sum + more * mass);
        if (rival === undefined || isBetter(grown, rival)) found.set(sum + more * mass, grown);
      }
    }
  }
  return found;
}

function isBetter(a: Choice, b: Choice): boolean {
  if (a.plates !== b.plates) return a.plates < b.plates;
  let [ours, theirs] = [a.front, b.front];
  while (ours !== undefined && theirs !== undefined && ours !== theirs) {
    if (ours.kind !== theirs.kind) return ours.kind > theirs.kind;
    if (ours.count !== theirs.count) return ours.count > theirs.count;
    [ours, theirs] = [ours.rest.front, theirs.rest.front];
  }
  return false;
}

function* platesOf(choice: Choice, kinds: readonly Kind[]): Generator<Load> {
  for (let front = choice.front; front !== undefined; front = front.rest.front) {
    for (let i = 0; i < front.count; i++) yield kinds[front.kind]!.load;
  }
}
