import { z } from "zod";
import { addDays, type Day, day, parseDay, printDay } from "../day.ts";
import type { Load } from "../units.ts";
import { readLoad, readLoadRun } from "./load-text.ts";
import { listNames, nearNames } from "./near.ts";
import type { Slipped } from "./slip.ts";

/** What can be wrong with names and dates in a file. Each names a sentence. */
export const PIECE_PROBLEMS = [
  "date/form",
  "date/none",
  "date/years",
  "date/reversed",
  "name/marks",
  "name/blank",
  "name/unknown",
  "id/form",
  "id/same",
] as const;

const DAY = /^\d{4}-\d{2}-\d{2}$/;
const FIRST_DAY = day("1900-01-01");
const LAST_DAY = day("2199-12-31");
const ID = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;
const MAX_ID = 40;
/** Control marks, half characters, and marks that turn the reading order of what stands around them. */
const MARKS = /[\p{Cc}\p{Cs}\u2028\u2029\u202A-\u202E\u2066-\u2069]/u;

/** The data of one problem, told by a schema. */
export interface Told {
  readonly code: string;
  readonly found?: string;
  readonly allowed?: string;
  readonly maybe?: string;
  readonly offset?: number;
  /** The name before the value is at fault. */
  readonly name?: boolean;
}

/** Checks that look at several values of an entry run although one of the values is wrong. */
export const ALWAYS = { when: () => true };

/** Fails what is being read. */
export function tell(ctx: z.core.$RefinementCtx, path: readonly (string | number)[], told: Told): void {
  ctx.addIssue({ code: "custom", path: [...path], params: { ...told } });
}

/** A short text with a form of its own. */
export function textPiece<T>(parse: (text: string) => Slipped<T>) {
  return z.string().transform((text, ctx): T => settle(parse(text), ctx, []));
}

/** A load; a bare number is told that its unit is missing. */
export const loadPiece = z
  .union([z.string(), z.number()])
  .transform((text, ctx): Load => settle(readLoad(String(text)), ctx, []));

/** One text or a list of them, none of which may fail. */
export function textsPiece<T>(parse: (text: string) => Slipped<T>) {
  const one = z.union([z.string(), z.number()]);
  return z
    .union([one, z.array(one).max(200)])
    .transform((said, ctx): readonly T[] =>
      Array.isArray(said)
        ? said.map((text, i) => settle(parse(String(text)), ctx, [i]))
        : [settle(parse(String(said)), ctx, [])],
    );
}

/** Loads that exist, rising and in one unit; at least `least` of them. */
export function loadsPiece(least: number) {
  return textsPiece(readLoadRun).transform((runs, ctx): readonly Load[] => {
    const loads = runs.flat();
    runs.forEach((run, i) => {
      const before = runs[i - 1]?.at(-1);
      const first = run[0];
      if (!before || !first) return;
      if (before.unit !== first.unit) {
        tell(ctx, [i], { code: "load/units", found: printLoad(first), allowed: before.unit });
      } else if (!(first.value > before.value)) {
        tell(ctx, [i], { code: "load/order", found: printLoad(first), allowed: `> ${printLoad(before)}` });
      }
    });
    if (loads.length < least || loads.length > 400) {
      tell(ctx, [], { code: "load/count", found: String(loads.length), allowed: `${least}–400` });
    }
    return loads;
  });
}

export function printLoad(load: Load): string {
  return `${load.value} ${load.unit}`;
}

/** A date that exists, 1900 to 2199; or what is wrong with its text. */
export function readDay(
  text: string,
): { readonly ok: true; readonly value: Day } | { readonly ok: false; readonly wrong: Told } {
  const found = parseDay(text);
  const wrong = (told: Told) => ({ ok: false, wrong: told }) as const;
  if (found === undefined) {
    if (!DAY.test(text)) return wrong({ code: "date/form", found: text.slice(0, 40), allowed: "2027-01-11" });
    const near = lastOfMonth(text);
    return wrong({ code: "date/none", found: text, ...(near ? { maybe: near } : {}) });
  }
  if (!(found >= FIRST_DAY && found <= LAST_DAY)) {
    return wrong({ code: "date/years", found: text, allowed: "1900–2199" });
  }
  return { ok: true, value: found };
}

export const dayPiece = z.string().transform((text, ctx): Day => {
  const read = readDay(text);
  return read.ok ? read.value : never(ctx, read.wrong);
});

/** The last day of a month that is too short for the date; December never is, and no month has a day 0. */
function lastOfMonth(text: string): string | undefined {
  const month = Number(text.slice(5, 7));
  if (!(month >= 1 && month <= 11 && Number(text.slice(8)) > 28)) return undefined;
  const next = parseDay(`${text.slice(0, 5)}${String(month + 1).padStart(2, "0")}-01`);
  return next === undefined ? undefined : printDay(addDays(next, -1));
}

/** Tells it when `to` comes before `from`; says nothing of what is no day. */
export function tellReversed(ctx: z.core.$RefinementCtx, path: readonly string[], from: unknown, to: unknown): void {
  if (typeof from !== "number" || typeof to !== "number" || to >= from) return;
  const [first, last] = [printDay(from as Day), printDay(to as Day)];
  tell(ctx, path, { code: "date/reversed", found: last, allowed: `≥ ${first}` });
}

/** A name as people write it, in any script, without marks that cannot be seen. */
export function namePiece(most: number, lines: "one line" | "lines" = "one line") {
  return z.string().transform((text, ctx): string => {
    const length = [...text].length;
    const seen = lines === "lines" ? text.replace(/[\n\t]/g, " ") : text;
    const mark = MARKS.exec(seen);
    if (text.trim() === "") return never(ctx, { code: "name/blank", found: "" });
    if (length > most) return never(ctx, { code: "value/long", found: String(length), allowed: `1–${most}` });
    if (mark) {
      const found = `U+${mark[0].codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0")}`;
      return never(ctx, { code: "name/marks", found, offset: mark.index });
    }
    return lines === "lines" ? text : text.trim();
  });
}

/** A permanent short name for files and records. */
export const idPiece = z.string().transform((text, ctx): string => {
  if (ID.test(text) && text.length <= MAX_ID) return text;
  const plain = text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "")
    .slice(0, MAX_ID);
  const found = text.length > MAX_ID ? `${text.slice(0, MAX_ID)}…` : text;
  return never(ctx, {
    code: "id/form",
    found,
    allowed: `a–z 0–9 -, 1–${MAX_ID}`,
    ...(ID.test(plain) ? { maybe: plain } : {}),
  });
});

/** An id that must be one of those known, if any are known. */
export function knownPiece(known: ReadonlySet<string> | undefined) {
  return idPiece.transform((id, ctx): string => {
    if (!known || known.has(id)) return id;
    return never(ctx, unknown(id, known));
  });
}

/** What to tell of a name that is not among those known. */
export function unknown(found: string, known: Iterable<string>): Told {
  const names = [...known];
  const near = nearNames(found, names);
  return {
    code: "name/unknown",
    found,
    allowed: listNames(names),
    ...(near.length > 0 ? { maybe: near.join(", ") } : {}),
  };
}

/** Ids of a list that stand there twice, told at the second. */
export function tellSameIds(entries: unknown, ctx: z.core.$RefinementCtx): void {
  if (!Array.isArray(entries)) return;
  const seen = new Set<unknown>();
  entries.forEach((entry, i) => {
    const id: unknown = entry?.id;
    if (typeof id !== "string") return;
    if (seen.has(id)) tell(ctx, [i, "id"], { code: "id/same", found: id });
    seen.add(id);
  });
}

export function settle<T>(piece: Slipped<T>, ctx: z.core.$RefinementCtx, path: readonly (string | number)[]): T {
  if (piece.ok) return piece.value;
  tell(ctx, path, piece.slip);
  return z.NEVER;
}

function never(ctx: z.core.$RefinementCtx, told: Told): never {
  tell(ctx, [], told);
  return z.NEVER;
}

/** An entry whose optional parts are either given or not there at all. */
export type Given<T> = { [K in keyof T as undefined extends T[K] ? never : K]: T[K] } & {
  [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>;
};

export function given<T extends object>(said: T): Given<T> {
  return Object.fromEntries(Object.entries(said).filter(([, value]) => value !== undefined)) as Given<T>;
}
