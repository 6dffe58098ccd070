import { type Catalogue, type Exercise, slipsBetween } from "../model/index.ts";

/** Longer texts are nobody's slip of a name, and would cost time. */
const LONGEST = 60;
const FEW = 3;

/** Slips allowed: one in a short name, two from eight letters, three from twelve. */
function slipsAllowed(text: string): number {
  return Math.min(3, Math.max(1, Math.floor(text.length / 4)));
}

/**
 * The exercises that somebody may have meant by a text that is no id.
 *
 * A text is near by few typing slips in an id, a name or a synonym, or when all its words stand in one of them.
 *
 * @returns at most three: first those with slips, fewest first, then those by words, fewest left over first; ties by
 *   id before name before synonym, then by id in the order of its letters. Empty when nothing is near, for a text of
 *   fewer than 2 characters and for one of more than 60
 * @example nearExercises(CATALOGUE, "goblet sqaut").map(({ id }) => id)[0] //=> "goblet-squat"
 */
export function nearExercises(catalogue: Catalogue, text: string): readonly Exercise[] {
  const wanted = text.trim();
  if (wanted.length < 2 || wanted.length > LONGEST) return [];
  const most = slipsAllowed(wanted);
  const words = wordsOf(wanted);
  const found: { readonly exercise: Exercise; readonly rank: readonly [number, number, number] }[] = [];
  for (const exercise of catalogue.exercises.values()) {
    let best: readonly [number, number, number] | undefined;
    for (const [field, label] of labelsOf(exercise)) {
      const slips = slipsBetween(wanted, label, most);
      const over = slips <= most ? 0 : wordsLeftOver(words, label);
      const rank =
        slips <= most ? ([0, slips, field] as const) : over === undefined ? undefined : ([1, over, field] as const);
      if (rank && (!best || compare(rank, best) < 0)) best = rank;
    }
    if (best) found.push({ exercise, rank: best });
  }
  return found
    .sort((a, b) => compare(a.rank, b.rank) || (a.exercise.id < b.exercise.id ? -1 : 1))
    .slice(0, FEW)
    .map(({ exercise }) => exercise);
}

function labelsOf({ id, name, synonyms }: Exercise): readonly (readonly [field: number, label: string])[] {
  return [[0, id], [1, name], ...synonyms.map((synonym) => [2, synonym] as const)];
}

/** How many words a label has besides the wanted ones, which must all stand in it; undefined otherwise. */
function wordsLeftOver(wanted: readonly string[], label: string): number | undefined {
  const there = wordsOf(label);
  return wanted.length > 0 && wanted.every((word) => there.includes(word)) ? there.length - wanted.length : undefined;
}

function wordsOf(text: string): readonly string[] {
  return text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");
}

function compare(a: readonly number[], b: readonly number[]): number {
  return a.map((value, i) => value - b[i]!).find((difference) => difference !== 0) ?? 0;
}
