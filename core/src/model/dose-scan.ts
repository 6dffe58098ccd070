import type { Bounds } from "./dose-bounds.ts";

/** What can be wrong with a written dose. Each names a sentence. */
export const DOSE_PROBLEMS = [
  "dose/empty",
  "dose/too-long",
  "dose/unfinished",
  "dose/no-sets",
  "dose/no-amount",
  "dose/out-of-range",
  "dose/reversed",
  "dose/not-whole",
  "dose/one-number",
  "dose/unit-missing",
  "dose/mixed-units",
  "dose/comma",
  "dose/count",
  "dose/percent-and-load",
  "dose/twice",
  "dose/side-of-load",
  "dose/pair-load",
  "dose/at-least-alone",
  "dose/inside-alone",
  "dose/inside-missing",
  "dose/unknown-word",
] as const;
export type DoseProblemCode = (typeof DOSE_PROBLEMS)[number];

/** One thing wrong in a dose; `offset` counts UTF-16 units from its first character. */
export interface DoseProblem {
  readonly code: DoseProblemCode;
  readonly offset: number;
  readonly found: string;
  readonly allowed: string;
  readonly maybe?: string;
}

/** A whole dose, as the problems show one. */
export const DOSE_EXAMPLE = "3 × 8–10, rest 90 s, 2 in reserve";

/**
 * A dose while it is read. `text` is `raw` in one alphabet, unit for unit of the same length, so that every offset is
 * also one of the writer's text.
 */
export interface Scan {
  readonly raw: string;
  readonly text: string;
  readonly problems: DoseProblem[];
  at: number;
}

const LOOKALIKES: ReadonlyMap<string, string> = new Map([
  ...[..."\u00a0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u3000\t\n\r"].map(
    (c) => [c, " "] as const,
  ),
  ...[..."‐‑‒–—―−﹘﹣〜~"].map((c) => [c, "-"] as const),
  ...[..."×✕✖⨯хХ*"].map((c) => [c, "x"] as const),
  ...[..."′’ʹ"].map((c) => [c, "'"] as const),
  ...[..."″”“"].map((c) => [c, '"'] as const),
  ["、", ","],
]);

function plain(unit: string): string {
  const code = unit.charCodeAt(0);
  const narrow = code >= 0xff01 && code <= 0xff5e ? String.fromCharCode(code - 0xfee0) : unit;
  const lower = (LOOKALIKES.get(narrow) ?? narrow).toLowerCase();
  return lower.length === 1 ? lower : unit;
}

/** @returns a fresh reading of a dose: dashes, signs, blanks, full-width characters and capitals made one */
export function scanDose(raw: string): Scan {
  return { raw, text: raw.split("").map(plain).join(""), problems: [], at: 0 };
}

const BLANKS = / */y;

function skipBlanks(scan: Scan): void {
  BLANKS.lastIndex = scan.at;
  scan.at += BLANKS.exec(scan.text)![0].length;
}

/**
 * Takes what a pattern matches right here, after blanks.
 *
 * @param pattern a sticky pattern (flag y)
 */
export function take(scan: Scan, pattern: RegExp): RegExpExecArray | undefined {
  skipBlanks(scan);
  pattern.lastIndex = scan.at;
  const match = pattern.exec(scan.text);
  if (match === null) return undefined;
  scan.at += match[0].length;
  return match;
}

/** @returns whether a sticky pattern matches right here, after blanks; takes nothing but the blanks */
export function sees(scan: Scan, pattern: RegExp): boolean {
  skipBlanks(scan);
  pattern.lastIndex = scan.at;
  return pattern.test(scan.text);
}

/** @returns where the next thing begins, after blanks */
export function here(scan: Scan): number {
  skipBlanks(scan);
  return scan.at;
}

/** @returns whether nothing but blanks is left */
export function atEnd(scan: Scan): boolean {
  return here(scan) >= scan.text.length;
}

const MAX_FOUND = 40;

/** Notes a problem about the text from an offset up to the end of what has been taken, or up to `to`. */
export function report(
  scan: Scan,
  code: DoseProblemCode,
  from: number,
  allowed: string,
  more: { readonly to?: number; readonly maybe?: string } = {},
): void {
  const found = scan.raw.slice(from, more.to ?? scan.at).trim();
  scan.problems.push({
    code,
    offset: from,
    found: found.length > MAX_FOUND ? `${found.slice(0, MAX_FOUND)}…` : found,
    allowed,
    ...(more.maybe === undefined ? {} : { maybe: more.maybe }),
  });
}

/** @returns the number that digits stand for; a decimal comma is a point, `10^9` and `1e9` are what they say */
export function numberOf(digits: string): number {
  const [base, power] = digits.split("^");
  return power === undefined ? Number(digits.replace(",", ".")) : Number(base) ** Number(power);
}

/** Notes a problem unless the number is whole and inside its bounds. */
export function bounded(scan: Scan, value: number, bounds: Bounds, from: number, to = scan.at): void {
  const allowed = bounds.words ?? `${bounds.from}–${bounds.to} ${bounds.unit}`;
  if (!(value >= bounds.from && value <= bounds.to)) {
    report(scan, "dose/out-of-range", from, allowed, { to });
  } else if (!Number.isInteger(value)) {
    report(scan, "dose/not-whole", from, allowed, { to, maybe: `${Math.floor(value)} ${bounds.unit}` });
  }
}
