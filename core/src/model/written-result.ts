/** One set as it was written: repetitions or seconds, and whether all that could be done was done. */
export interface WrittenSet {
  readonly reps?: number;
  readonly holdS?: number;
  /** A set to the last repetition that went. */
  readonly most?: boolean;
}

/** Why nothing was done, where it is said. */
export const NOT_DONE = ["sick", "away", "tired", "busy", "pain"] as const;
export type NotDone = (typeof NOT_DONE)[number];

/** What a coach wrote for the result of a movement. */
export type WrittenResult =
  | { readonly kind: "sets"; readonly sets: readonly WrittenSet[]; readonly eachSide: boolean }
  | { readonly kind: "not done"; readonly because?: NotDone }
  /** Listed and asked, never turned into 0. */
  | { readonly kind: "unknown"; readonly text: string };

const LONGEST = 60;
const MOST_SETS = 20;
const MOST_REPS = 500;
const MOST_SECONDS = 3600;
const WORDS: Readonly<Record<string, NotDone>> = {
  sick: "sick",
  ill: "sick",
  flu: "sick",
  away: "away",
  holiday: "away",
  travel: "away",
  tired: "tired",
  busy: "busy",
  hurt: "pain",
  pain: "pain",
};

function inRange(set: WrittenSet): boolean {
  const { reps, holdS } = set;
  return (
    (reps === undefined || (reps >= 0 && reps <= MOST_REPS)) &&
    (holdS === undefined || (holdS >= 1 && holdS <= MOST_SECONDS))
  );
}

/** One set: `10`, `30s`, `30"`, `1:30`, `1 min`, `AMRAP 14`, `14+`. */
function readSet(text: string): WrittenSet | undefined {
  const reps = /^(\d{1,3})$/.exec(text);
  if (reps) return { reps: Number(reps[1]) };
  const most = /^(?:amrap|max) ?(\d{1,3})$/i.exec(text) ?? /^(\d{1,3})\+$/.exec(text);
  if (most) return { reps: Number(most[1]), most: true };
  const seconds = /^(\d{1,4}) ?(?:s|sec|secs|seconds|"|″)$/i.exec(text);
  if (seconds) return { holdS: Number(seconds[1]) };
  const clock = /^(\d{1,2}):([0-5]\d)$/.exec(text);
  if (clock) return { holdS: Number(clock[1]) * 60 + Number(clock[2]) };
  const minutes = /^(\d{1,2}) ?(?:min|m)$/i.exec(text);
  return minutes ? { holdS: Number(minutes[1]) * 60 } : undefined;
}

/** `10/10/8`, `10,10,8`, `10 10 8`, `3x10`, `3 × 30s`, or one set. */
function readSets(text: string): readonly WrittenSet[] | undefined {
  const times = /^(\d{1,2}) ?[x×*] ?(.+)$/i.exec(text);
  if (times) {
    const set = readSet(times[2]!.trim());
    const count = Number(times[1]);
    // 12x60 is twelve repetitions of 60 kg more often than twelve sets of sixty.
    if (count >= 10 && (set?.reps ?? 0) >= 30) return undefined;
    return set !== undefined && count >= 1 && count <= MOST_SETS ? Array.from({ length: count }, () => set) : undefined;
  }
  const one = readSet(text);
  if (one !== undefined) return [one];
  const parts = text.split(/ ?[/,;] ?| /).map(readSet);
  return parts.length <= MOST_SETS && parts.every((part) => part !== undefined) ? parts : undefined;
}

/**
 * What a result in a coach's own shorthand means: `10/10/8`, `3x10`, `30s`, `1:30`, `8e`, `AMRAP 14`, `-`, `sick`.
 *
 * Commas part sets, so a cell of a file whose own comma parts columns comes here whole and not split.
 *
 * @param text one cell or token, at most 60 characters, 20 sets, 500 repetitions, one hour
 */
export function readWrittenResult(text: string): WrittenResult {
  const said = text.normalize("NFC").trim().replace(/\s+/g, " ");
  const unknown: WrittenResult = { kind: "unknown", text: said.slice(0, LONGEST) };
  if (said.length > LONGEST) return unknown;
  if (/^(?:-|--|–|—|n\/?a|skip(?:ped)?|missed|left out|none)?$/i.test(said)) return { kind: "not done" };
  const because = Object.hasOwn(WORDS, said.toLowerCase()) ? WORDS[said.toLowerCase()] : undefined;
  if (because !== undefined) return { kind: "not done", because };
  const sided = /^(.*\d"?″?s?) ?(?:e|ea|each|es|per side|\/side|each side)$/i.exec(said);
  const sets = readSets(sided?.[1] ?? said);
  if (sets === undefined || !sets.every(inRange)) return unknown;
  return { kind: "sets", sets, eachSide: sided !== null };
}
