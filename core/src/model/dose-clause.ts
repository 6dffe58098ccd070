import { readLeast } from "./dose-amount.ts";
import { type Bounds, DOSE_BOUNDS } from "./dose-bounds.ts";
import { EACH_SIDE, RPE, readEffort, readEffortUnit, readRpe, reserveOfRpe } from "./dose-effort.ts";
import { type Marks, note, readAfter, type Whole } from "./dose-marks.ts";
import { printSeconds } from "./dose-print.ts";
import { type Quantity, readQuantity, spanOf } from "./dose-quantity.ts";
import { bounded, here, report, type Scan, sees, take } from "./dose-scan.ts";

const FILLER = /(?:(?:with|at|for|then|and|a)\b(?! *(?:least|side|leg|arm))|&|\.(?!\d))/y;
const NO_REST = /(?:no|without) (?:a )?(?:rest|pause)\b/y;
const REST = /(?:rests?|pause)\b(?: (?:of|for))? *:?/y;
const REST_AFTER = /(?:of )?(?:(?:rest|pause|off)\b(?: between(?: (?:the )?sets)?\b)?|between(?: (?:the )?sets)?\b)/y;
const INSIDE = /(?:inside|within)\b *:?/y;
const INSIDE_AFTER = /(?:of )?(?:rest )?(?:inside|within)\b(?: (?:the |a |each )?sets?\b)?/y;
const RESERVE = /(?:rir|reserve|leave|keep)\b *:?/y;
const RESERVE_AFTER = /(?:in reserve|rir|left|in the tank|to spare)\b/y;
const TEMPO = /tempo\b *:?/y;
const TEMPO_PARTS = /(?:\d+|x) *-+ *(?:\d+|x)(?: *-+ *(?:\d+|x)){1,2}(?![\d\w])/y;
const TEMPO_DIGITS = /[\dx]{3,4}(?![\d\w])/y;
/** `3x8x60 kg` is what `3x8 @60 kg` is. */
const AT = /@|x(?= *\d+(?:[.,]\d+)? *(?:%|kg|kilo|lb|pound))/y;
const FAILURE = /(?:to |until )(?:failure|the end)\b/y;

/**
 * Takes one clause and notes what it says: rest, reserve, effort, load, tempo, side.
 *
 * @returns false, with nothing taken, where none stands
 */
export function readClause(scan: Scan, marks: Marks, whole: Whole): boolean {
  const start = scan.at;
  while (take(scan, FILLER));
  const from = here(scan);
  if (take(scan, EACH_SIDE)) note(scan, marks, "eachSide", from, true);
  else if (take(scan, NO_REST)) note(scan, whole, "restS", from, 0);
  else if (take(scan, REST))
    readAfter(scan, from, "rest 90 s", (q) => note(scan, whole, "restS", from, restOf(scan, q)));
  else if (take(scan, INSIDE))
    readAfter(scan, from, "15 s inside", (q) => note(scan, marks, "insideS", from, insideOf(scan, q)));
  else if (take(scan, RESERVE)) readAfter(scan, from, "2 in reserve", (q) => noteReserve(scan, marks, from, q));
  else if (take(scan, RPE)) readRpe(scan, marks, from);
  else if (take(scan, TEMPO)) readTempo(scan, whole, from);
  else if (sees(scan, TEMPO_PARTS)) readTempo(scan, whole, from);
  else if (take(scan, FAILURE)) note(scan, marks, "reserve", from, { from: 0, to: 0 });
  else if (take(scan, AT)) readEffort(scan, marks, from);
  else if (sees(scan, /(?:at least|>=|≥) *\d/y)) note(scan, marks, "least", from, readLeast(scan).least!);
  else if (!readNumberFirst(scan, marks, whole, from)) {
    scan.at = start;
    return false;
  }
  return true;
}

/** Clauses whose number comes before the word that says what it is: `90 s rest`, `2 in reserve`, `60 kg`. */
function readNumberFirst(scan: Scan, marks: Marks, whole: Whole, from: number): boolean {
  const before = scan.problems.length;
  const quantity = readQuantity(scan);
  if (quantity === undefined) return false;
  if (take(scan, INSIDE_AFTER)) note(scan, marks, "insideS", from, insideOf(scan, quantity));
  else if (take(scan, REST_AFTER)) note(scan, whole, "restS", from, restOf(scan, quantity));
  else if (take(scan, RESERVE_AFTER)) noteReserve(scan, marks, from, quantity);
  else if (take(scan, RPE)) note(scan, marks, "reserve", from, reserveOfRpe(scan, quantity));
  else if (!readEffortUnit(scan, marks, from, quantity)) {
    scan.at = from;
    scan.problems.length = before;
    return false;
  }
  return true;
}

/** Seconds without a unit are at least this many; fewer are likelier minutes, so the unit must be said. */
const BARE_SECONDS = 10;

/** Whole seconds of a rest; `2 m` is two minutes here, since nobody rests in metres. */
function secondsOf(
  scan: Scan,
  quantity: Quantity,
  bounds: Bounds,
  word: (duration: string) => string,
): number | undefined {
  const { at, end, from, to, ranged, clock, unit } = quantity;
  const minutes = unit === "m";
  const wrongUnit = unit !== undefined && unit !== "s" && unit !== "min" && !minutes;
  if (wrongUnit || (unit === undefined && !clock && to !== 0 && to < BARE_SECONDS)) {
    const code = wrongUnit ? "dose/mixed-units" : "dose/unit-missing";
    report(scan, code, at, "s, min", {
      to: end,
      maybe: word(`${to} ${bounds === DOSE_BOUNDS.rest && to < BARE_SECONDS ? "min" : "s"}`),
    });
    return undefined;
  }
  const times = minutes ? 60 : 1;
  if (ranged) {
    report(scan, "dose/one-number", at, word("90 s"), {
      to: end,
      maybe: word(printSeconds(Math.max(from, to) * times)),
    });
    return undefined;
  }
  bounded(scan, from * times, bounds, at, end);
  return from * times;
}

function restOf(scan: Scan, quantity: Quantity): number | undefined {
  const seconds = secondsOf(scan, quantity, DOSE_BOUNDS.rest, (duration) => `rest ${duration}`);
  take(scan, REST_AFTER);
  return seconds;
}

function insideOf(scan: Scan, quantity: Quantity): number | undefined {
  return secondsOf(scan, quantity, DOSE_BOUNDS.inside, (duration) => `${duration} inside`);
}

function noteReserve(scan: Scan, marks: Marks, from: number, quantity: Quantity): void {
  take(scan, RESERVE_AFTER);
  if (quantity.unit !== undefined && quantity.unit !== "reps") {
    report(scan, "dose/mixed-units", from, "2 in reserve");
    return;
  }
  note(scan, marks, "reserve", from, spanOf(scan, quantity, DOSE_BOUNDS.reserve));
}

/** Lowering, pause, lifting, pause; the last pause may be left out. X, as quick as can be, is 0. */
function readTempo(scan: Scan, whole: Whole, from: number): void {
  const match = take(scan, TEMPO_PARTS) ?? take(scan, TEMPO_DIGITS);
  if (!match) {
    take(scan, /[^\s,;+()]+/y);
    report(scan, "dose/unfinished", from, "tempo 3-1-1-0", { maybe: "tempo 3-1-1-0" });
    return;
  }
  const at = scan.at - match[0].length;
  const parts = (match[0].includes("-") ? match[0].split(/[ -]+/) : match[0].split("")).map((part) =>
    part === "x" ? 0 : Number(part),
  );
  const wrong = parts.find((part) => part > DOSE_BOUNDS.tempo.to);
  if (wrong !== undefined) bounded(scan, wrong, DOSE_BOUNDS.tempo, at);
  else if (parts.every((part) => part === 0)) report(scan, "dose/out-of-range", at, "tempo 3-1-1-0");
  note(scan, whole, "tempo", from, [parts[0]!, parts[1]!, parts[2]!, parts[3] ?? 0]);
}
