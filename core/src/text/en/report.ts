import { plural, printNumber } from "./number.ts";

/** What reports say that is no reason and no dose. */
export const report = {
  titles: {
    person: (name: string) => `${name}: what has changed`,
    clinician: (name: string) => `${name}: training report for a clinician`,
    coach: (name: string) => `${name}: record`,
  },
  days: (from: string, to: string) => `${from} to ${to}`,
  by: (coach: string) => `written by ${coach}`,
  born: (day: string) => `born ${day}`,
  done: "What was done",
  movements: "Movement by movement",
  strip: (sessions: number) => `the last ${plural(sessions, "session", "sessions")}, one stroke for each set`,
  session: (day: string, sets: string, load: string | undefined) =>
    `${day}: ${sets}${load === undefined ? "" : ` with ${load}`}`,
  firstAndLast: (first: string, last: string) => `First ${first}. Last ${last}.`,
  once: (value: string, low: string, high: string, sessions: number) =>
    `Can lift about ${value} once; 80 % between ${low} and ${high}, from ${plural(sessions, "session", "sessions")}.`,
  unsaid: "not entered",
  legend:
    "One stroke is one set: its height is what was done against the asked range, its width the load against what can be lifted now. A dot was left out; half filled means that no number was entered.",
  training: "Training",
  planned: (names: readonly string[]) => `Movements of the plan: ${names.join("; ")}.`,
  pain: "Pain that was noted",
  painColumns: ["Day", "Place", "Of 10", "Next morning"],
  noPain: "No pain was noted.",
  notAsked: "not said",
  late: (value: number, days: number) => `${value}, ${plural(days, "day", "days")} late`,
  pressure: {
    before: "Blood pressure before sessions, sitting, mmHg",
    after: "Blood pressure after sessions, sitting, mmHg",
  },
  pressureColumns: ["Day", "Upper", "Lower"],
  means: (first: readonly [number, number], last: readonly [number, number]) =>
    `Mean of the first three readings ${printNumber(first[0], 1)}/${printNumber(first[1], 1)}, of the last three ${printNumber(last[0], 1)}/${printNumber(last[1], 1)}.`,
  fewReadings: (count: number) =>
    `${plural(count, "reading", "readings")}: too few for means of the first and the last three.`,
  medicines: (day: string, text: string) =>
    `Medicines, ${day}: ${text}. Readings before and after it are not one series.`,
  medicinesMark: "medicines",
  pressurePicture: (count: number, from: string, to: string) =>
    `${count} readings from ${from} to ${to}: upper values as dark dots, lower values as light dots, changes of medicines as lines`,
  shown: (shown: number, all: number) => `The latest ${shown} of ${all} readings; all are drawn above.`,
  limits: "Limits on record",
  limit: (what: string, who: string, from: string, to: string) => `${what}, by ${who}, ${from} to ${to}`,
  limitKinds: { load: "load", rest: "rest", movement: "movement" },
  noLimits: "No written limit is on record.",
  observed: "What this is",
  observedLines: [
    "All figures are as they were recorded by the person or the coach. What can be lifted is an estimate with its interval.",
    "Nothing here says that training caused a change.",
    "It holds training, pain, blood pressure, changes of medicines and limits, and nothing else of the file.",
  ],
  calls: "What calls for a look",
  nothingCalls: "Nothing calls for a look.",
  figures: "Figures",
  decisions: "What was decided",
  decisionColumns: ["Day", "What", "By"],
  noDecisions: "Nothing was decided.",
  caution:
    "Stop at chest pain, faintness, unusual breathlessness, sharp or rising pain. Stave plans exercise; it does not diagnose, treat or clear anyone.",
} as const;
