import type { Amount } from "./dose.ts";
import { DOSE_BOUNDS } from "./dose-bounds.ts";
import { type Quantity, readQuantity, spanOf, takeNumber, type Unit } from "./dose-quantity.ts";
import { bounded, here, report, type Scan, sees, take } from "./dose-scan.ts";

/** What one set asks for as it is written, before anyone knows what a bare number counts. */
export type Written = { readonly at: number; readonly end: number } & (
  | { readonly kind: "most"; least?: number }
  | { readonly kind: "counted"; readonly quantity: Quantity; readonly bouts: readonly number[] }
);

const AMOUNTS = "8, 8–10, 30 s, 30 m, 8 min, 5 contacts, as many as possible";
const MOST =
  /(?:as many (?:(?:good |clean )?(?:reps|repetitions) )?as (?:possible|you can|they can)|amrap|max(?:imum)?(?: reps| repetitions)?|(?:to |until )?failure)\b/y;
const AT_LEAST = /(?:, *)?(?:at least|>=|≥) *(?=\d)/y;
const REPS = /(?:reps?|repetitions?)\b/y;
const OR_MORE = /\+(?= *(?:$|[,;@()/+])| +[a-z])/y;
const MORE_BOUTS = /\+ *(?=\d)(?! *\d+ *(?:x|sets?\b))/y;
const HOLD = /(?:hold|holds)\b/y;
const LOAD_WORD = /%|(?:kgs?|kilos?|kilograms?|lbs?|pounds?)\b/y;

/** @returns whether an amount begins here */
export function seesAmount(scan: Scan): boolean {
  return sees(scan, /\d/y) || sees(scan, MOST);
}

/**
 * Reads what one set asks for: `8`, `8–10 reps`, `30 s`, `4+4+4`, `5+`, `as many as possible, at least 5`.
 *
 * @param head where the part that needs the amount begins, for the problem
 * @returns undefined, with a problem noted, where no amount stands
 */
export function readAmount(scan: Scan, head: number): Written | undefined {
  const start = here(scan);
  if (take(scan, MOST)) return { kind: "most", at: start, end: scan.at, ...readLeast(scan) };
  const read = readQuantity(scan);
  if (read === undefined) {
    reportNoAmount(scan, head);
    return undefined;
  }
  const { at } = read;
  if (take(scan, LOAD_WORD)) {
    report(scan, "dose/no-amount", at, AMOUNTS, { maybe: `8 @${scan.raw.slice(at, scan.at)}` });
    return undefined;
  }
  const timed = read.unit === "min" || read.unit === "s" || read.clock;
  const quantity = timed && take(scan, HOLD) ? { ...read, unit: "s" as const } : read;
  if (sees(scan, /-/y)) reportOpenRange(scan, quantity);
  if (quantity.unit !== undefined && quantity.unit !== "reps")
    return { kind: "counted", quantity, bouts: [], at, end: scan.at };
  if (scan.text[scan.at - 1] !== " " && take(scan, OR_MORE)) {
    bounded(scan, quantity.from, DOSE_BOUNDS.reps, at);
    return { kind: "most", least: quantity.from, at, end: scan.at };
  }
  return { kind: "counted", quantity, bouts: readBouts(scan), at, end: scan.at };
}

/** Takes `, at least 5`, when it stands here. */
export function readLeast(scan: Scan): { readonly least?: number } {
  if (!take(scan, AT_LEAST)) return {};
  const from = scan.at;
  const least = takeNumber(scan)!;
  bounded(scan, least, DOSE_BOUNDS.reps, from);
  take(scan, REPS);
  return { least };
}

function reportOpenRange(scan: Scan, quantity: Quantity): void {
  take(scan, /-+/y);
  const third = takeNumber(scan);
  if (third === undefined || !quantity.ranged) {
    report(scan, "dose/unfinished", quantity.at, "8–10", { maybe: `${quantity.from}–${quantity.from + 2}` });
  } else {
    report(scan, "dose/one-number", quantity.at, "8–10", { maybe: `${quantity.from}, ${quantity.to}, ${third}` });
  }
}

function readBouts(scan: Scan): readonly number[] {
  const bouts: number[] = [];
  const start = scan.at;
  while (take(scan, MORE_BOUTS)) {
    const from = scan.at;
    const reps = takeNumber(scan)!;
    bounded(scan, reps, DOSE_BOUNDS.reps, from);
    bouts.push(reps);
  }
  if (bouts.length > 0) {
    take(scan, REPS);
    bounded(scan, Math.min(bouts.length, 10), DOSE_BOUNDS.bouts, start);
  }
  return bouts;
}

/** Says that an amount is missing after `head`, and passes over what stands in its place. */
function reportNoAmount(scan: Scan, head: number): void {
  const from = scan.at;
  const other = take(scan, /[^,;+()/]+/y);
  if (other) report(scan, "dose/no-amount", from, AMOUNTS);
  else report(scan, "dose/unfinished", head, AMOUNTS);
}

/** What the numbers count, once the unit is known, with every bound looked at. */
export function amountOf(scan: Scan, written: Written, unit: Unit | undefined): Amount {
  if (written.kind === "most") {
    return written.least === undefined ? { kind: "most" } : { kind: "most", least: written.least };
  }
  const { quantity } = written;
  if (quantity.clock && unit === undefined) {
    const { from, to, at, end } = quantity;
    report(scan, "dose/unit-missing", at, "s, min", { to: end, maybe: from === to ? `${from} s` : `${from}–${to} s` });
    return { kind: "hold", span: { from, to } };
  }
  switch (unit) {
    case "s":
      return { kind: "hold", span: spanOf(scan, quantity, DOSE_BOUNDS.hold) };
    case "min":
      return { kind: "time", span: spanOf(scan, quantity, DOSE_BOUNDS.time) };
    case "m":
      return { kind: "metres", span: spanOf(scan, quantity, DOSE_BOUNDS.metres) };
    case "km":
      return { kind: "metres", span: spanOf(scan, quantity, DOSE_BOUNDS.metres, 1000) };
    case "contacts":
      return { kind: "contacts", span: spanOf(scan, quantity, DOSE_BOUNDS.contacts) };
    default:
      return { kind: "reps", span: spanOf(scan, quantity, DOSE_BOUNDS.reps) };
  }
}
