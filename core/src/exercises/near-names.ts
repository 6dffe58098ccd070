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
  const words = wordsOf(wanted);
  const best = new Map<Exercise, Rank>();
  for (const label of labelsOf(catalogue)) {
    const rank = rankOf(label, wanted, words);
    const before = best.get(label.exercise);
    if (rank && (!before || compare(rank, before) < 0)) best.set(label.exercise, rank);
  }
  return [...best]
    .sort(([a, one], [b, other]) => compare(one, other) || (a.id < b.id ? -1 : 1))
    .slice(0, FEW)
    .map(([exercise]) => exercise);
}

/** By slips 0 or by words 1, how many, and in which field: the lower the nearer. */
type Rank = readonly [by: 0 | 1, count: number, field: number];

interface Label {
  readonly exercise: Exercise;
  readonly field: number;
  readonly text: string;
  readonly words: readonly string[];
}

function rankOf({ field, text, words }: Label, wanted: string, wantedWords: readonly string[]): Rank | undefined {
  const most = slipsAllowed(wanted);
  const slips = Math.abs(text.length - wanted.length) > most ? most + 1 : slipsBetween(wanted, text, most);
  if (slips <= most) return [0, slips, field];
  const all = wantedWords.length > 0 && wantedWords.every((word) => words.includes(word));
  return all ? [1, words.length - wantedWords.length, field] : undefined;
}

/** A file full of unknown names asks often, and the labels of a catalogue never change. */
const LABELS = new WeakMap<Catalogue, readonly Label[]>();

function labelsOf(catalogue: Catalogue): readonly Label[] {
  const known = LABELS.get(catalogue);
  if (known) return known;
  const labels = [...catalogue.exercises.values()].flatMap((exercise) =>
    [exercise.id, exercise.name, ...exercise.synonyms].map((text, i) => {
      return { exercise, field: Math.min(i, 2), text, words: wordsOf(text) };
    }),
  );
  LABELS.set(catalogue, labels);
  return labels;
}

function wordsOf(text: string): readonly string[] {
  return text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");
}

function compare(a: Rank, b: Rank): number {
  return a[0] - b[0] || a[1] - b[1] || a[2] - b[2];
}
