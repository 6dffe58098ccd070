/** Stands for a letter that no font has. */
const SQUARE = "□";

/** What the typesetter says of every letter that it has no glyph for, as it prints its own message. */
const SAID = /the text `\\*"(.+?)\\*"` could not be displayed/g;

/**
 * The letters that no font could show, read from the typesetter's complaint.
 *
 * @example
 * unknownLetters('… the text `\\"ተ\\"` could not be displayed with font …') //=> ["ተ"]
 */
export function unknownLetters(complaint: string): readonly string[] {
  const said = [...complaint.matchAll(SAID)].map(([, text]) =>
    text!.replace(/\\+u\{([0-9a-f]+)\}/g, (_, code: string) => String.fromCodePoint(Number.parseInt(code, 16))),
  );
  return [...new Set(said.flatMap((text) => [...text]))];
}

function inStrings(data: unknown, change: (text: string) => string): unknown {
  if (typeof data === "string") return change(data);
  if (Array.isArray(data)) return data.map((each) => inStrings(each, change));
  if (typeof data !== "object" || data === null) return data;
  return Object.fromEntries(Object.entries(data).map(([name, each]) => [name, inStrings(each, change)]));
}

/**
 * The data without letters that no font has, so that one strange letter does not cost a whole sheet. A mark that joins
 * letters goes first and alone, since the letters it stood on may be fine without it; a letter becomes a square.
 *
 * @returns undefined when nothing can be taken out: plain letters are never to blame
 */
export function withoutLetters(data: unknown, letters: readonly string[]): unknown {
  const strange = letters.filter((letter) => letter > "\u007f" && letter !== SQUARE);
  const marks = strange.filter((letter) => /^[\p{M}\p{Cf}]$/u.test(letter));
  const out = new Set(marks.length > 0 ? marks : strange);
  if (out.size === 0) return undefined;
  const instead = marks.length > 0 ? "" : SQUARE;
  return inStrings(data, (text) => [...text].map((letter) => (out.has(letter) ? instead : letter)).join(""));
}
