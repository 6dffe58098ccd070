import type { LoadCode } from "../../loads/index.ts";
import { type Data, dataIn, MISSING, numberIn, said, wordsIn } from "../facts.ts";
import type { Names, Say } from "../names.ts";
import { listed, plural, printNumber } from "./number.ts";
import { bandEndIn, loadIn, printDate } from "./units.ts";

/** A record in words: what was done, with what, when. */
function recordOf(data: Data, names: Names): string {
  const record = dataIn(data, "record") ?? {};
  const reps = numberIn(record, "reps");
  const reserve = numberIn(record, "reserve");
  const done = Number.isFinite(reps) ? `${plural(reps, "repetition", "repetitions")} ` : "";
  const left = Number.isFinite(reserve) ? `, ${printNumber(reserve)} in reserve` : "";
  const load = loadIn(record, "load") ?? "the body alone";
  return `${done}of ${names.exercise(said(record, "exercise"))} with ${load}${left} on ${printDate(said(record, "on"))}`;
}

/** Where to begin when the load has to be found. */
function begin(data: Data): string {
  const from = loadIn(data, "from");
  return from === undefined
    ? "Begin light and let the first set decide."
    : `Begin with ${from} and let the repetitions decide.`;
}

function tooLight(data: Data, names: Names, share: string): string {
  const heaviest = loadIn(data, "heaviest") ?? MISSING;
  const least = numberIn(data, "least");
  return `${heaviest} is the heaviest here and about ${printNumber(least, 0)} repetitions are possible with it${share}, where ${said(data, "asked")} are asked with those in reserve (${recordOf(data, names)}).`;
}

/** Why a starting load is what it is, why it must be found, and why none here will do. */
export const loadReasons: Readonly<Record<LoadCode, Say>> = {
  "loads/from-record": (data, names) => {
    const low = bandEndIn(data, "low") ?? MISSING;
    const high = bandEndIn(data, "high") ?? MISSING;
    const body = data["moved"] === true ? ", body mass included," : "";
    const up = loadIn(data, "up");
    const next = up === undefined ? "" : ` The next load here is ${up}.`;
    return `${said(data, "percent")} % of a 1RM of ${low} to ${high}${body} from ${recordOf(data, names)}, rounded down to what is here.${next}`;
  },
  "loads/as-on-record": (data, names) =>
    `${said(data, "asked")} repetitions are asked with those in reserve, and ${recordOf(data, names)} shows them.`,
  "loads/as-written": (data) => `${loadIn(data, "load") ?? MISSING}, as the programme says.`,
  "loads/written-not-listed": (data) =>
    `${loadIn(data, "load") ?? MISSING}, as the programme says; this place does not list its loads.`,
  "loads/written-not-here": (data) => {
    const near = ["down", "up"].flatMap((name) => loadIn(data, name) ?? []);
    return `${loadIn(data, "asked") ?? MISSING} cannot be made up here; ${near.length === 0 ? "nothing is near" : `nearest ${listed(near, "or")}`}.`;
  },
  "loads/written-over-limit": (data) =>
    `${loadIn(data, "chosen") ?? MISSING} instead of ${loadIn(data, "asked") ?? MISSING}: the most that a limit lets through.`,
  "loads/nothing-known": (data) => `Nothing is recorded yet. ${begin(data)}`,
  "loads/record-over-ten-reps": (data, names) =>
    `${recordOf(data, names)}: above 10 repetitions no equation gives a 1RM. ${begin(data)}`,
  "loads/record-old": (data, names) =>
    `${plural(numberIn(data, "weeks"), "week", "weeks")} since ${recordOf(data, names)}: too long ago to tell. ${begin(data)}`,
  "loads/reps-beyond-table": (data) =>
    `${said(data, "reps")} repetitions with those in reserve: no table goes so far. ${begin(data)}`,
  "loads/not-in-reps": (data) => `It is not counted in repetitions, so no 1RM leads to a load. ${begin(data)}`,
  "loads/share-unknown": (data) => `A share of the 1RM is the limit, and the 1RM is not known. ${begin(data)}`,
  "loads/body-mass-unknown": (data) => `Body mass is not recorded, so the load moved cannot be told. ${begin(data)}`,
  "loads/other-machine": (data) =>
    `The record is from another machine, whose numbers mean nothing here. ${begin(data)}`,
  "loads/bands": (data) =>
    `Bands, weakest first: ${listed(wordsIn(data, "labels"))}. Begin with the weakest that is felt.`,
  "loads/not-listed": () => "This place does not list its loads for this. Begin light and let the first set decide.",
  "loads/lightest-too-heavy": (data) =>
    `${loadIn(data, "lightest") ?? MISSING} is the lightest here and ${loadIn(data, "aim") ?? MISSING} is wanted.`,
  "loads/lightest-over-limit": (data) =>
    `${loadIn(data, "lightest") ?? MISSING} is the lightest here, and that is over this person's limit.`,
  "loads/unknown-under-limit": () =>
    "There is a limit on load, and nobody knows the true load of a band, a stack or a machine that helps.",
  "loads/too-light-by-record": (data, names) => tooLight(data, names, ""),
  "loads/too-light-by-maximum": (data, names) => tooLight(data, names, `, at ${said(data, "percent")} % of the 1RM`),
  "loads/too-light-by-squat": (data, names) =>
    tooLight(data, names, `, at ${said(data, "percent")} % of one leg's 1RM, worked from the squat`),
};
