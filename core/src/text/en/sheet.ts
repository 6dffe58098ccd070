import { civil, parseDay, weekdayOf } from "../../day.ts";
import type { Pattern, PulseZone } from "../../model/index.ts";
import { listed, plural, printSpan } from "./number.ts";
import { printIntervals, WEEKDAY_NAMES } from "./units.ts";

const SHORT_MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** A day with its year, short. @example dated("2027-03-02") //=> "2 Mar 2027" */
function dated(text: string): string {
  const found = parseDay(text);
  if (found === undefined) return text;
  const { year, month, date } = civil(found);
  return `${date} ${SHORT_MONTHS[month - 1]} ${year}`;
}

/** The day of a session, where a week's column is narrow. @example shortDay("2027-03-02") //=> "Tue 2 Mar" */
function shortDay(text: string): string {
  const found = parseDay(text);
  if (found === undefined) return text;
  const { month, date } = civil(found);
  return `${WEEKDAY_NAMES[weekdayOf(found)].slice(0, 3)} ${date} ${SHORT_MONTHS[month - 1]}`;
}

/** Weeks that stand side by side. @example weeks([5, 6, 7]) //=> "weeks 5 to 7" */
function weeks(numbers: readonly number[]): string {
  const [first, last] = [numbers[0]!, numbers.at(-1)!];
  if (numbers.length === 1) return `week ${first}`;
  const inRow = last - first === numbers.length - 1;
  return `weeks ${inRow && numbers.length > 2 ? `${first} to ${last}` : listed(numbers.map(String))}`;
}

/** What a place in a session was for, in words for whoever trains. */
const work: Readonly<Record<Pattern, string>> = {
  squat: "squat",
  hinge: "hip hinge",
  bridge: "bridge",
  "single leg": "single-leg work",
  "horizontal push": "push",
  "vertical push": "push overhead",
  "horizontal pull": "row",
  "vertical pull": "pull from above",
  carry: "carry",
  rotation: "turning work for the trunk",
  "anti-rotation": "trunk work",
  "anti-extension": "trunk work",
  "anti-lateral flexion": "trunk work for the sides",
  "mixed hold": "hold",
  "trunk flexion and extension": "trunk work",
  jump: "jumps",
  throw: "throws",
  "power lift": "power lift",
  "upper isolation": "small work for arms and shoulders",
  "lower isolation": "small work for the legs",
  locomotion: "moving from place to place",
  mobility: "mobility",
  balance: "balance",
};

/** Everything that is printed on a sheet and is not a name or a dose. Plain words, read on a gym floor. */
export const sheet = {
  /** A letter or figure is called a session; a title of its own stands alone. */
  session: (title: string) => (title.length > 2 ? title : `Session ${title}`),
  continued: (title: string) => `${title}, continued`,
  weeks,
  week: (week: number) => `Week ${week}`,
  light: "light",
  forecast: "forecast",
  leftOpen: "left open",
  date: "date",
  shortDay,
  minutes: (low: number, high: number) => `${printSpan(low, high)} min`,
  screened: (on: string, until: string) => `screened ${dated(on)}, until ${dated(until)}`,
  documentTitle: (who: string, programme: string) => `Training sheet: ${who}, ${programme}`,
  movement: "Movement",
  warmUp: "Warm up",
  load: "load",
  setting: "setting",
  help: "help",
  band: "band",
  height: "height",
  done: "done",
  ownWeight: "own weight",
  bodyAnd: (load: string) => `body + ${load}`,
  seconds: "seconds",
  metres: "metres",
  minutesDone: "minutes",
  each: (load: string) => `2 × ${load}`,
  inOther: (load: string, other: string) => `${load} (${other})`,
  inOrder: (loads: readonly string[]) => loads.join(", then "),
  find: (load: string) => `find: begin with ${load}`,
  findLight: "find: begin light",
  findLow: "find: begin low",
  findHelp: "find: begin with much help",
  findBand: (label: string) => `find: begin with ${label}`,
  inTurn: "in turn",
  inTurnResting: (rest: string) => `in turn, rest ${rest} between`,
  oneSide: (side: "left" | "right") => `${side} side only`,
  and: (pieces: readonly string[]) => pieces.join("; "),
  lighter: (movement: string, reps: string, loads: readonly string[]) =>
    `Before ${movement}: ${reps} easy repetitions with ${listed(loads)}.`,
  lighterUnsaid: (movement: string, sets: number, reps: string) =>
    `Before ${movement}: ${plural(sets, "easy set", "easy sets")} of ${reps} with a light load.`,
  efforts: {
    easy: "Talk in full sentences.",
    steady: "Talk in full sentences, breathing deeper.",
    hard: "Short phrases only.",
  },
  beats: ({ from, to, miss }: PulseZone) =>
    `${printSpan(from, to)} beats a minute${miss === 0 ? "" : `, give or take ${miss}`}.`,
  /** Bouts of running with walks between them. */
  intervals: printIntervals,
  runLevel: (level: number, most: number, intervals: string) => `level ${level} of ${most}: ${intervals}`,
  runEnded: "done, breath, legs or pain",
  open: (patterns: readonly Pattern[]) =>
    `Left open: ${listed([...new Set(patterns.map((pattern) => work[pattern]))])}. Ask your coach.`,
  stop: {
    head: "Stop and tell your coach",
    text: "at chest pain or pressure, faintness, unusual breathlessness, numbness, or pain that is sharp or rising. In an emergency call for help first.",
  },
  write: {
    head: "In each box",
    text: "repetitions, or seconds, on top; how many more you could have done below. If something hurt, write where and 0 to 10.",
  },
  sides: {
    head: "A box with a dashed line",
    text: "has your left side at its left. Begin with the weaker side, or with the left if both are alike.",
  },
  first: {
    head: "First of all",
    text: "what your clinician told you, and the rules of the place you train in, come before this sheet.",
  },
} as const;
