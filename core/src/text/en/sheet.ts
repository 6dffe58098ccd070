import { plural } from "./number.ts";

/** Everything that is printed on a sheet and is not a name or a dose. Plain words, read on a gym floor. */
export const sheet = {
  /** A letter or figure is called a session; a title of its own stands alone. */
  session: (title: string) => (title.length > 2 ? title : `Session ${title}`),
  weeks: (from: number, to: number) => (from === to ? `week ${from}` : `weeks ${from} to ${to}`),
  week: (week: number, light: boolean) => (light ? `Week ${week}, light` : `Week ${week}`),
  minutes: (low: number, high: number) => `${low}–${high} min`,
  screened: (date: string) => `screened ${date}`,
  documentTitle: (who: string, programme: string) => `Training sheet: ${who}, ${programme}`,
  movement: "Movement",
  date: "date",
  warmUp: "Warm up",
  load: "load",
  ownWeight: "own weight",
  seconds: "seconds",
  metres: "metres",
  last: (load: string) => `begin ${load}`,
  band: "band",
  setting: (value: string) => `setting ${value}`,
  help: (value: string) => `help ${value}`,
  added: (value: string) => `body + ${value}`,
  each: (count: number, load: string) => `${count} × ${load}`,
  findLoad: "find a load",
  nextLoad: ", then ",
  firstThen: (rest: string) => `in turn, rest ${rest} after each`,
  inTurn: "in turn",
  oneSide: (side: "left" | "right") => `${side} side only`,
  lighter: (loads: string, movement: string) => `Before ${movement}: a few easy repetitions with ${loads}.`,
  lighterUnsaid: (sets: number, movement: string) =>
    `Before ${movement}: ${plural(sets, "easy set", "easy sets")} of 5 with a light load.`,
  efforts: {
    easy: "Talk in full sentences.",
    steady: "Talk in full sentences, breathing deeper.",
    hard: "Short phrases only.",
  },
  openName: (what: string) => what.charAt(0).toUpperCase() + what.slice(1),
  open: "Left open. Ask your coach.",
  stop: {
    head: "Stop and tell your coach",
    text: "at chest pain or pressure, faintness, unusual breathlessness, or pain that is sharp or rising. In an emergency call for help first.",
  },
  write: {
    head: "In each box",
    text: "repetitions (or seconds) on top, how many more you could have done below. Left of the dashed line is your left side. If something hurt, write where and 0 to 10 beside it.",
  },
  first: {
    head: "First of all",
    text: "what your doctor, midwife or physiotherapist told you, and the rules of the place you train in, come before this sheet.",
  },
} as const;
