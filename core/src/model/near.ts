/**
 * How many typing slips lie between two words, counting a swap of neighbours as one.
 *
 * Case is not counted, nor the difference between a space, a hyphen and an underscore.
 *
 * @param most stop looking beyond this many
 * @returns slips, 0 to `most`, or `most + 1` when there are more
 * @example
 * slipsBetween("sqaut", "squat", 2) //=> 1
 */
export function slipsBetween(one: string, other: string, most: number): number {
  const a = plain(one);
  const b = plain(other);
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let older: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let slips = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) slips = Math.min(slips, older[j - 2]! + 1);
      row.push(slips);
    }
    if (Math.min(...row) > most) return most + 1;
    older = last;
    last = row;
  }
  return Math.min(last[b.length]!, most + 1);
}

const MAX_LISTED = 30;
/** Longer words are nobody's slip of a name, and would cost time. */
const LONGEST = 60;

/**
 * The names that somebody may have meant: one of two or more letters may be wrong, of six two, of nine three.
 *
 * @returns at most three names, nearest first, ties in the order of `names`
 * @example
 * nearNames("windws", ["window", "windows", "wide"]) //=> ["windows", "window"]
 */
export function nearNames(word: string, names: Iterable<string>): readonly string[] {
  if (word.length > LONGEST) return [];
  const most = word.length < 2 ? 0 : Math.min(3, Math.max(1, Math.floor(word.length / 3)));
  const found: { name: string; slips: number }[] = [];
  for (const name of names) {
    const slips = slipsBetween(word, name, most);
    if (slips <= most) found.push({ name, slips });
  }
  return found
    .sort((a, b) => a.slips - b.slips)
    .slice(0, 3)
    .map(({ name }) => name);
}

function plain(word: string): string {
  return word.toLowerCase().replace(/[ _]/g, "-");
}

/**
 * Names as one piece of text for a message. Long lists are cut, since the near ones are told apart.
 *
 * @example
 * listNames(["mon", "tue"]) //=> "mon, tue"
 */
export function listNames(names: readonly string[]): string {
  return names.length > MAX_LISTED ? `${names.slice(0, MAX_LISTED).join(", ")}, …` : names.join(", ");
}
