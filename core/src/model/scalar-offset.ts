const ESCAPE = /^\\(?:x[\dA-Fa-f]{2}|u[\dA-Fa-f]{4}|U[\dA-Fa-f]{8}|\r?\n[ \t]*|[\s\S])/;

/**
 * Where a character of a scalar's value stands in the scalar as it is written.
 *
 * @param written with its quotes, beginning at the scalar's first character
 * @param offset characters into the value, counted from 0
 * @returns characters into `written`; 0 for a block of text, whose lines are set in
 * @example
 * offsetInScalar("'it''s'", "single", 3) //=> 5
 */
export function offsetInScalar(
  written: string,
  style: "plain" | "single" | "double" | "block",
  offset: number,
): number {
  if (style === "block") return 0;
  let at = style === "plain" ? 0 : 1;
  const end = style === "plain" ? written.length : written.length - 1;
  for (let left = offset; at < end; ) {
    const piece = nextPiece(written, at, style);
    if (piece.value > left) break;
    at += piece.length;
    left -= piece.value;
  }
  return Math.min(at, Math.max(end, 0));
}

/** The next characters that belong together: how many are written and how many they stand for. */
function nextPiece(written: string, at: number, style: string): { length: number; value: number } {
  const fold = /^[ \t]*(?:\r?\n[ \t]*)+/.exec(written.slice(at));
  if (fold) {
    const breaks = fold[0].split("\n").length - 1;
    return { length: fold[0].length, value: breaks === 1 ? 1 : breaks - 1 };
  }
  if (style === "single" && written.startsWith("''", at)) return { length: 2, value: 1 };
  if (style === "double" && written[at] === "\\") {
    const text = ESCAPE.exec(written.slice(at))?.[0] ?? "\\";
    if (/^\\\r?\n/.test(text)) return { length: text.length, value: 0 };
    return { length: text.length, value: text[1] === "U" && Number.parseInt(text.slice(2), 16) > 0xff_ff ? 2 : 1 };
  }
  return { length: 1, value: 1 };
}
