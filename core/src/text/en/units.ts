import { civil, parseDay, type WEEKDAYS, weekdayOf } from "../../day.ts";
import type { Json } from "../../model/index.ts";
import type { Load } from "../../units.ts";
import { type Data, MISSING } from "../facts.ts";
import { printNumber } from "./number.ts";

/** @example printLoad({ value: 12.5, unit: "kg" }) //=> "12.5 kg" */
export function printLoad({ value, unit }: Load): string {
  return `${printNumber(value, 3)} ${unit}`;
}

function numbersOf(value: Json): Load | undefined {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return undefined;
  const { value: size, unit } = value as { readonly value?: Json; readonly unit?: Json };
  return typeof size === "number" && (unit === "kg" || unit === "lb") ? { value: size, unit } : undefined;
}

/** @returns a load that travels as data, or undefined when it is none */
export function loadIn(data: Data, name: string): string | undefined {
  const load = numbersOf(data[name] as Json);
  return load === undefined ? undefined : printLoad(load);
}

/** An end of a band that was reckoned and not lifted, in whole kilograms or pounds: the lower one down, the upper one up. */
export function bandEndIn(data: Data, name: "low" | "high"): string | undefined {
  const load = numbersOf(data[name] as Json);
  if (load === undefined) return undefined;
  const value = name === "low" ? Math.floor(load.value) : Math.ceil(load.value);
  return printLoad({ ...load, value });
}

/** Minutes, rounded up, as a coach plans them. @example printMinutes(4320) //=> "72 min" */
export function printMinutes(seconds: number): string {
  return `${minutesOf(seconds)} min`;
}

/** @returns whole minutes, rounded up */
export function minutesOf(seconds: number): string {
  return printNumber(Math.ceil(seconds / 60), 0);
}

/** Bouts of running with walks between. @example printIntervals(10, 60, 60) //=> "10 × run 1 min, walk 1 min between; 19 min in all" */
export function printIntervals(bouts: number, runS: number, walkS: number): string {
  if (bouts === 1) return `run ${printDuration(runS)}`;
  const whole = printDuration(bouts * runS + (bouts - 1) * walkS);
  return `${bouts} × run ${printDuration(runS)}, walk ${printDuration(walkS)} between; ${whole} in all`;
}

/** A stretch of time to the second. @example printDuration(90) //=> "1 min 30 s" */
export function printDuration(seconds: number): string {
  if (!Number.isFinite(seconds)) return MISSING;
  const hours = Math.floor(seconds / 3600);
  const minutes = Math.floor((seconds % 3600) / 60);
  const rest = seconds % 60;
  const parts = [
    ...(hours > 0 ? [`${hours} h`] : []),
    ...(minutes > 0 ? [`${minutes} min`] : []),
    ...(rest > 0 || seconds === 0 ? [`${printNumber(rest)} s`] : []),
  ];
  return parts.join(" ");
}

const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

export const WEEKDAY_NAMES: Readonly<Record<(typeof WEEKDAYS)[number], string>> = {
  mon: "Monday",
  tue: "Tuesday",
  wed: "Wednesday",
  thu: "Thursday",
  fri: "Friday",
  sat: "Saturday",
  sun: "Sunday",
};

/** A day that travels as YYYY-MM-DD. @example printDate("2027-03-02") //=> "Tuesday 2 March 2027" */
export function printDate(text: string): string {
  const found = parseDay(text);
  if (found === undefined) return text;
  const { year, month, date } = civil(found);
  return `${WEEKDAY_NAMES[weekdayOf(found)]} ${date} ${MONTHS[month - 1]} ${year}`;
}

/** Hours with a half where there is one. @example printHours(46.5) //=> "46.5 h" */
export function printHours(hours: number): string {
  return `${printNumber(hours, 1)} h`;
}
