import { WEEKDAYS, type Weekday } from "../day.ts";
import { nearNames } from "./near.ts";
import { read, type Slip, type Slipped, slipped } from "./slip.ts";

/** What can be wrong with written hours. Each names a sentence. */
export const WINDOW_PROBLEMS = [
  "window/no-day",
  "window/day",
  "window/no-time",
  "window/time",
  "window/reversed",
  "window/any",
  "window/word",
] as const;

/** How gladly somebody trains then, as points that a calendar adds up. */
export const GLADNESS = { gladly: 0, fine: 2, "if needed": 4 } as const;

/** Days with the hours of each, as one text says them. */
export interface Hours<D> {
  readonly days: readonly D[];
  /** Only so many of the days. */
  readonly any?: number;
  /** Minutes after midnight. */
  readonly from: number;
  readonly to: number;
  readonly cost: number;
  readonly place?: string;
  /** Where the place's id stands in the text. */
  readonly placeOffset?: number;
}

/** A part of the text with its distance from the start. */
interface Part {
  readonly text: string;
  readonly offset: number;
}

/** What may stand beside days and times. */
interface Allows {
  readonly any: boolean;
  readonly words: readonly (readonly [word: string, cost: number])[];
  readonly place: boolean;
}

const EVERYTHING: Allows = { any: true, words: Object.entries(GLADNESS), place: true };
const CLOCKS = /(\d{1,2}:\d{2})\s*(?:[–-]|to)\s*(\d{1,2}:\d{2})(?!\d)/;
const HALF_CLOCKS = /(?<![\d:])(\d{1,2})(?::\d{0,2})?\s*(?:[–-]|to)\s*(\d{1,2})(?::\d{0,2})?(?!\d)/;
const WEEK = "mon, tue, wed, thu, fri, sat, sun, mon–fri, daily";

/**
 * Reads hours of the week as people write them.
 *
 * @param text days, a from–to time, then if wanted how gladly and where: `mon wed 17:00–18:30 if needed at home`
 * @returns days, each once, as they were written; without a word for it, gladly
 * @example
 * readHours("mon–wed 07:00–08:30 fine") //=> mon, tue, wed; from 420 to 510; cost 2
 */
export function readHours(text: string): Slipped<Hours<Weekday>> {
  return readText(text, weekDays, EVERYTHING);
}

/**
 * Reads hours that hold for a while instead of the usual ones: as those, but without a choice of days.
 *
 * @example
 * readHoursInstead("daily 07:00–07:25 at hotel") //=> every day; from 420 to 445; cost 0; at hotel
 */
export function readHoursInstead(text: string): Slipped<Hours<Weekday>> {
  return readText(text, weekDays, { ...EVERYTHING, any: false });
}

/**
 * Reads the hours of a place: days and times alone.
 *
 * @example
 * readOpenHours("sun 06:30–13:00") //=> sun; from 390 to 780; cost 0
 */
export function readOpenHours(text: string): Slipped<Hours<Weekday>> {
  return readText(text, weekDays, { any: false, words: [], place: false });
}

/**
 * Reads hours of a rota, whose days are numbers.
 *
 * @param length days of the rota, 1 = first
 * @example
 * readRotaHours("5–8 10:00–14:00", 8) //=> days 5, 6, 7, 8; from 600 to 840; cost 0
 */
export function readRotaHours(text: string, length: number): Slipped<Hours<number>> {
  const names = Array.from({ length }, (_, i) => String(i + 1));
  const allows = { ...EVERYTHING, any: false };
  const hours = readText(text, (part) => readDays(part, names, `1–${length}`), allows);
  return hours.ok ? read({ ...hours.value, days: hours.value.days.map(Number) }) : hours;
}

function weekDays(part: Part): Slipped<readonly Weekday[]> {
  return /^(daily|7 days)$/.test(part.text) ? read(WEEKDAYS) : readDays(part, WEEKDAYS, WEEK);
}

function readText<D>(text: string, daysOf: (part: Part) => Slipped<readonly D[]>, allows: Allows): Slipped<Hours<D>> {
  const clocks = CLOCKS.exec(text);
  if (!clocks) return noClocks(text);
  const end = clocks.index + clocks[0].length;
  const any = allows.any ? /^\s*any\s+(\d+)\s+of\s+/.exec(text.slice(0, clocks.index)) : null;
  const days = daysOf(trimmed(text, any?.[0].length ?? 0, clocks.index));
  if (!days.ok) return days;
  const many = any ? Number(any[1]) : undefined;
  if (any && !(many! >= 1 && many! <= days.value.length)) {
    const offset = text.indexOf(any[1]!);
    return slipped({ code: "window/any", offset, found: any[1]!, allowed: `1–${days.value.length}` });
  }
  const from = minutesOf(clocks[1]!);
  const to = minutesOf(clocks[2]!);
  if (from === undefined) return wrongClock(clocks[1]!, clocks.index);
  if (to === undefined) return wrongClock(clocks[2]!, end - clocks[2]!.length);
  if (!(from < to)) {
    const maybe = from === to ? {} : { maybe: `${clocks[2]}–${clocks[1]}` };
    const found = `${clocks[1]}–${clocks[2]}`;
    return slipped({ code: "window/reversed", offset: clocks.index, found, allowed: `${clocks[1]}–24:00`, ...maybe });
  }
  const words = wordsOf(trimmed(text, end, text.length), allows);
  if (!words.ok) return words;
  return read({ days: days.value, from, to, ...words.value, ...(many === undefined ? {} : { any: many }) });
}

function noClocks(text: string): { readonly ok: false; readonly slip: Slip } {
  const half = HALF_CLOCKS.exec(text);
  if (!half) return slipped({ code: "window/no-time", offset: 0, found: text.trim(), allowed: "mon 17:00–18:30" });
  const [from, to] = [half[1]!, half[2]!].map((hour) => `${hour.padStart(2, "0")}:00`);
  return slipped({
    code: "window/time",
    offset: half.index,
    found: half[0],
    allowed: "00:00–24:00",
    maybe: `${from}–${to}`,
  });
}

function wrongClock(found: string, offset: number): { readonly ok: false; readonly slip: Slip } {
  return slipped({ code: "window/time", offset, found, allowed: "00:00–24:00" });
}

function minutesOf(clock: string): number | undefined {
  const [hours, minutes] = clock.split(":").map(Number);
  const all = hours! * 60 + minutes!;
  return minutes! < 60 && all <= 24 * 60 ? all : undefined;
}

function trimmed(text: string, from: number, to: number): Part {
  const lead = /^[\s,]*/.exec(text.slice(from, to))![0].length;
  return { text: text.slice(from + lead, to).replace(/[\s,]+$/, ""), offset: from + lead };
}

/** Days one by one and as runs; a run may go over the end of the week, such as `fri–mon`. */
function readDays<D extends string>(part: Part, names: readonly D[], allowed: string): Slipped<readonly D[]> {
  if (part.text === "") return slipped({ code: "window/no-day", offset: part.offset, found: "", allowed });
  const found = new Set<D>();
  for (const match of part.text.matchAll(/[^\s,]+/g)) {
    const ends = match[0].split(/[–-]/);
    const [first, last] = [ends[0], ends.at(-1)].map((end) => names.indexOf(end as D));
    if (ends.length > 2 || first === undefined || first < 0 || last === undefined || last < 0) {
      const wrong = ends.find((end) => !names.includes(end as D)) ?? match[0];
      const near = nearNames(wrong.length > 3 ? wrong.slice(0, 3) : wrong, names);
      const offset = part.offset + match.index + match[0].indexOf(wrong);
      const maybe = near.length > 0 ? { maybe: near.join(", ") } : {};
      return slipped({ code: "window/day", offset, found: wrong, allowed, ...maybe });
    }
    const count = ((last - first + names.length) % names.length) + 1;
    for (let i = 0; i < count; i++) found.add(names[(first + i) % names.length]!);
  }
  return read([...found]);
}

function wordsOf(part: Part, allows: Allows): Slipped<{ cost: number; place?: string; placeOffset?: number }> {
  const glad = allows.words.find(([word]) => new RegExp(`^${word}(?=$|[\\s,])`).test(part.text));
  const rest = trimmed(part.text, glad?.[0].length ?? 0, part.text.length);
  const at = allows.place ? /^at\s+(\S+)$/.exec(rest.text) : null;
  const cost = glad?.[1] ?? 0;
  if (rest.text === "") return read({ cost });
  if (at) {
    const placeOffset = part.offset + rest.offset + at[0].length - at[1]!.length;
    return read({ cost, place: at[1]!, placeOffset });
  }
  const words = allows.words.map(([word]) => word);
  const near = nearNames(rest.text, words);
  return slipped({
    code: "window/word",
    offset: part.offset + rest.offset,
    found: rest.text,
    allowed: [...words, ...(allows.place ? ["at …"] : [])].join(", "),
    ...(near.length > 0 ? { maybe: near.join(", ") } : {}),
  });
}
