import type { Span } from "./dose.ts";
import { read, type Slipped, slipped } from "./slip.ts";

/** What can be wrong with a written span. Each names a sentence. */
export const SPAN_PROBLEMS = ["span/form", "span/size", "span/step", "span/reversed"] as const;

const FORMS = "4–10, 4-10, 6";
const NUMBER = String.raw`\d+(?:[.,]\d+)?`;
const SPAN = new RegExp(`^\\s*(${NUMBER})(?:\\s*(?:[‐‑‒–—−-]|to)\\s*(${NUMBER}))?\\s*$`);

/**
 * Reads a span of weekly sets.
 *
 * @param text one number or two with a dash between them, in quarter sets, 0 to `most`
 * @returns the span; one number is a span whose ends are equal
 * @example
 * readSpan("4–10", 60) //=> { ok: true, value: { from: 4, to: 10 } }
 */
export function readSpan(text: string, most: number): Slipped<Span> {
  const match = SPAN.exec(text);
  const found = text.trim();
  const offset = text.length - text.trimStart().length;
  if (!match) return slipped({ code: "span/form", offset, found, allowed: FORMS });
  const [first, second] = [match[1]!, match[2] ?? match[1]!];
  const [from, to] = [first, second].map((digits) => Number(digits.replace(",", "."))) as [number, number];
  if (!(to <= most && from <= most)) return slipped({ code: "span/size", offset, found, allowed: `0–${most}` });
  if (from * 4 !== Math.round(from * 4) || to * 4 !== Math.round(to * 4)) {
    return slipped({ code: "span/step", offset, found, allowed: "¼" });
  }
  if (from > to) return slipped({ code: "span/reversed", offset, found, allowed: FORMS, maybe: `${second}–${first}` });
  return read({ from, to });
}
