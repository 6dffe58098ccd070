import type { Dose } from "./dose.ts";
import { readAmount, seesAmount } from "./dose-amount.ts";
import { DOSE_BOUNDS, MAX_DOSE_TEXT } from "./dose-bounds.ts";
import { readClause } from "./dose-clause.ts";
import type { Mark, Marks, Whole } from "./dose-marks.ts";
import {
  atEnd,
  bounded,
  DOSE_EXAMPLE,
  type DoseProblem,
  here,
  numberOf,
  report,
  type Scan,
  scanDose,
  take,
} from "./dose-scan.ts";
import { type Group, type Item, setsOf } from "./dose-sets.ts";
import { nearNames } from "./near.ts";

export type DoseRead =
  | { readonly ok: true; readonly value: Dose }
  | { readonly ok: false; readonly problems: readonly DoseProblem[] };

const COUNT = /(\d+(?:\.\d+|\^\d+|e\d+)?) *(?:sets?\b *(?:of\b|x|,)?|x(?![a-z]))/y;
const NEXT = /\+|(?:[,;] *)?(?:then\b|and\b) *(?=\d+ *(?:x|sets?\b))|[,;] *(?=\d+ *(?:x|sets?\b))/y;
const WORDS =
  "rest,reserve,in reserve,tempo,inside,side,each side,reps,min,contacts,as many as possible,amrap,at least,rpe,rir,kg,lb".split(
    ",",
  );

/**
 * Reads a dose as coaches write it.
 *
 * @param text for example `3 × 8–10, rest 90 s, 2 in reserve` or `3x30s/side`; the grammar stands in the guide
 * @returns the dose, or everything that is wrong with it in the order of the text
 * @example
 * readDose("12-8").problems[0].maybe //=> "8–12"
 */
export function readDose(text: string): DoseRead {
  const scan = scanDose(text.length > MAX_DOSE_TEXT ? "" : text);
  if (text.length > MAX_DOSE_TEXT) {
    const found = String(text.length);
    return { ok: false, problems: [{ code: "dose/too-long", offset: 0, found, allowed: `1–${MAX_DOSE_TEXT}` }] };
  }
  if (atEnd(scan)) {
    return { ok: false, problems: [{ code: "dose/empty", offset: 0, found: "", allowed: DOSE_EXAMPLE }] };
  }
  const whole: Whole = {};
  const groups = readGroups(scan, whole);
  const sets = setsOf(scan, groups);
  if (scan.problems.length > 0) return { ok: false, problems: scan.problems.sort((a, b) => a.offset - b.offset) };
  return {
    ok: true,
    value: {
      sets,
      ...(whole.restS ? { restS: whole.restS.value } : {}),
      ...(whole.tempo ? { tempo: whole.tempo.value } : {}),
    },
  };
}

function readGroups(scan: Scan, whole: Whole): readonly Group[] {
  const groups: Group[] = [];
  do groups.push(readGroup(scan, whole));
  while (!atEnd(scan));
  return groups;
}

function readGroup(scan: Scan, whole: Whole): Group {
  const head = here(scan);
  const count = take(scan, COUNT);
  const group: Group = {
    ...(count ? { count: { value: numberOf(count[1]!), at: head, end: head + count[1]!.length } } : {}),
    items: [],
    marks: {},
  };
  readItem(scan, group, head, false);
  while (!atEnd(scan)) {
    const from = scan.at;
    if (take(scan, NEXT)) {
      if (atEnd(scan)) report(scan, "dose/unfinished", from, DOSE_EXAMPLE);
      break;
    }
    const last = group.items.at(-1);
    if (take(scan, /\(/y)) {
      readBrackets(scan, last, whole);
    } else if (take(scan, /[,;]/y)) {
      if (atEnd(scan)) report(scan, "dose/unfinished", from, DOSE_EXAMPLE);
      else if (readClause(scan, group.marks, whole)) continue;
      else if (seesAmount(scan)) readItem(scan, group, scan.at, false);
      else skipUnknown(scan);
    } else if (last && take(scan, /\/ *(?=\d|amrap\b|max\b|as many\b)/y)) {
      readItem(scan, group, from, true);
    } else if (!readClause(scan, last?.marks ?? group.marks, whole)) {
      skipUnknown(scan);
    }
  }
  return group;
}

function readItem(scan: Scan, group: Group, head: number, bySlash: boolean): void {
  const written = readAmount(scan, head);
  if (written) group.items.push({ written, marks: {}, bracketed: new Set(), bySlash });
}

function readBrackets(scan: Scan, item: Item | undefined, whole: Whole): void {
  const open = scan.at - 1;
  const marks: Marks = {};
  while (!take(scan, /\)/y)) {
    if (atEnd(scan)) {
      report(scan, "dose/unfinished", open, "( … )");
      break;
    }
    if (item?.written.kind === "most" && item.written.least === undefined && takeOrMore(scan, item.written)) continue;
    if (!take(scan, /[,;]/y) && !readClause(scan, marks, whole)) skipUnknown(scan);
  }
  for (const [name, mark] of Object.entries(marks) as [keyof Marks, Mark<unknown>][]) {
    if (!item || item.marks[name] !== undefined) report(scan, "dose/twice", mark.at, "1", { to: mark.end });
    else Object.assign(item.marks, { [name]: mark });
    item?.bracketed.add(name);
  }
}

/** `AMRAP (5+)` */
function takeOrMore(scan: Scan, written: { least?: number }): boolean {
  const match = take(scan, /(\d+) *\+/y);
  if (!match) return false;
  written.least = Number(match[1]);
  bounded(scan, written.least, DOSE_BOUNDS.reps, scan.at - match[0].length);
  return true;
}

/** Notes words that mean nothing here, up to the next sign that divides. */
function skipUnknown(scan: Scan): void {
  const from = scan.at;
  const word = take(scan, /[^\s,;+()@]+/y)?.[0];
  if (word === undefined) scan.at = from + 1;
  else take(scan, /[^,;+()]*/y);
  const near = word === undefined ? [] : nearNames(word, WORDS);
  report(scan, "dose/unknown-word", from, WORDS_TOLD, near.length > 0 ? { maybe: near.join(", ") } : {});
}

const WORDS_TOLD = "rest, in reserve, RPE, @, each side, tempo, inside";
