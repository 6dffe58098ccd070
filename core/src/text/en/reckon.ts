import type { About, Miss } from "../../equations/index.ts";
import type { Asked, Figure, Reckoned, Reckoning } from "../../reckon/index.ts";
import { SOURCES } from "../../sources.ts";
import { printNumber, printSpan } from "./number.ts";

/** What each reckoning answers. */
export const reckonings = {
  "one-rep-max": "The one-repetition maximum from a set taken to failure, by seven equations",
  "five-rep-max": "The one-repetition maximum from a load that could be lifted five times",
  "reps-at-percent": "Repetitions allowed at a share of the one-repetition maximum",
  "percent-for-reps": "The share of the one-repetition maximum for repetitions done and left",
  reserve: "Repetitions left at a rating of effort from 1 to 10",
  "true-reserve": "Repetitions that were left when somebody says how many",
  "body-share": "How much of the body's mass an exercise moves",
  "next-load": "Where the next load lies after too many repetitions in two sessions running",
  "weekly-sets": "What a number of weekly sets of a muscle is called, and how many may follow",
  "press-pull": "The bench press over the pull-up with body mass",
  "bar-speed": "The share of the one-repetition maximum at a bar speed, bench press",
  "dose-shape": "Days until one dose of training does more good than harm, in a published model",
  "bar-load": "Which plates to put on each side of a bar for a load, or the loads on either side of it",
  "nearest-load": "The loads that exist around a wanted one, and the step to the next",
  "load-at-percent": "The load at a share of the one-repetition maximum",
  "load-step": "How large a step from one load to another is",
  "with-body": "What is moved in all with a belt, a vest, or a machine that helps",
  held: "What is held at once in one hand or two, in both units, against a limit",
  "highest-pulse": "The highest heart rate at an age",
  "pulse-target": "The heart rate at a share of the heart-rate reserve",
  "talk-test": "How hard an effort is, by how somebody can talk during it",
  "pulse-share": "The share of the heart-rate reserve that a heart rate is",
  "run-walk": "The next run of somebody who runs and walks in turn",
  intensity: "How hard an effort is called",
  walking: "What walking costs",
  running: "What running costs",
  pedalling: "What pedalling by legs or arms costs",
  stepping: "What stepping up and down costs",
  activity: "What a listed activity costs, by its code",
  "active-week": "MET-minutes of a usual week and their class",
  "week-load": "Load, monotony and strain of a week, from minutes and effort of each session",
  "recent-load": "The daily load of the last 7 days beside that of the 21 days before",
  "activity-for-record": "Active minutes of a week, in the form that health records take",
  "pulse-message": "What a heart-rate sensor sent",
  "take-turns": "How two or three people fare who take turns at one station, set by set",
  "called-off": "Whether a session was called off in time, and what that costs",
  "run-12-minutes": "Highest oxygen uptake from the distance run in 12 minutes",
  "run-1.5-miles": "Highest oxygen uptake from the time of 1.5 miles run",
  "walk-1-mile": "Highest oxygen uptake from one mile walked fast",
  "step-3-minutes": "Highest oxygen uptake from three minutes of stepping",
  "resting-energy": "Energy a body at rest takes in a day",
  "daily-energy": "Energy a body takes in a day",
  "energy-availability": "Energy left for the body after training",
  "loss-rate": "How fast body mass was lost",
  protein: "Protein in a day for an adult who trains",
  bmi: "Body mass index of an adult",
  waist: "The health risk that goes with a waist",
  skinfolds: "Body fat from skinfolds",
  tape: "Body fat from tape measures",
  plank: "Where a plank stands among students",
  "chair-stand": "Where stands from a chair in 30 seconds lie among people of that age",
  "push-ups": "The class of push-ups among people of that age",
  "heel-raises": "One-leg heel raises against what is usual at that age",
  "one-leg-stand": "How long people of an age stand on one leg",
  food: "Energy and protein in a day for a healthy adult, or whom to ask instead",
} as const satisfies Readonly<Record<string, string>>;

/** What a figure is, before its value. */
export const figures = {
  "one-rep-max": "One-repetition maximum",
  "one-rep-max-band": "One-repetition maximum, no single figure above 10 repetitions",
  "by-epley": "by Epley",
  "by-brzycki": "by Brzycki",
  "by-lander": "by Lander",
  "by-lombardi": "by Lombardi",
  "by-mayhew": "by Mayhew",
  "by-oconner": "by O'Conner",
  "by-wathen": "by Wathen",
  "reps-allowed": "Repetitions allowed, as printed",
  "reps-measured-back-squat": "Measured in the back squat",
  "reps-measured-leg-press": "Measured in the leg press",
  "percent-of-max": "Share of the one-repetition maximum",
  "reps-left": "Repetitions left",
  "reps-left-and-load": "Repetitions left, and a little more load",
  "mass-moved": "Moved of the body",
  "mass-on-hands": "On the hands",
  "next-load": "Next load",
  "load-here": "Can be loaded as wanted",
  "load-easier": "The easier beside it, taken unless the coach allows the other",
  "load-harder": "The harder beside it",
  "plates-a-side": "On each side",
  "bar-too-heavy":
    "More than was wanted even without plates, so another tool and not another number; the lightest here",
  "lightest-too-heavy": "More than was wanted, so another tool and not another number; the lightest here",
  "load-next": "The next",
  "load-step": "That step",
  "load-step-class": "Against the usual step after repetitions over the target",
  "load-at-percent": "Load",
  "moved-in-all": "Moved in all",
  "held-in-all": "Held in all",
  limit: "The limit",
  "against-limit": "That is",
  "volume-class": "Weekly sets are called",
  "most-sets-next": "At most in the next cycle",
  "growth-of-more": "Mean further growth with that many sets more",
  "press-over-pull": "Press over pull",
  "days-to-good": "Turns good after",
  "days-to-best": "Is best after",
  "highest-pulse": "Highest heart rate",
  "pulse-target": "Target",
  "pulse-band": "Band, rounded to whole beats, half up",
  "pulse-no-target": "No target in beats is made of it; go by",
  "run-weeks-least": "Until half an hour without a walk, when every run goes well, at least",
  "percent-of-reserve": "Share of the reserve",
  intensity: "Called",
  oxygen: "Oxygen",
  mets: "Energy cost",
  energy: "Energy of that time",
  "energy-per-minute": "Energy of a minute",
  "met-minutes": "MET-minutes",
  "activity-class": "Class of activity",
  "moderate-minutes": "Counted as moderate",
  "week-load": "Load of the week, effort × minutes, seven days with rest days as 0",
  "day-mean": "Mean of a day",
  "day-sd": "Standard deviation of the days (n − 1)",
  "week-monotony": "Monotony (n − 1)",
  "week-strain": "Strain (n − 1)",
  "week-monotony-all": "Monotony with n in place of n − 1, as others may print it",
  "week-strain-all": "Strain with n",
  "recent-over-usual": "The last 7 days over the last 28",
  "recent-over-earlier": "The last 7 days over the 21 before",
  "recent-fading": "The same where older days fade, 7 over 28",
  notice: "Notice, by the clock on the wall",
  "notice-in-time": "In time",
  "notice-costs": "Sessions that it costs",
  "pack-left": "Sessions left",
  "first-rests": "The first rests",
  "first-waits": "Of it, waiting beyond the others' turns",
  "first-free": "Rounds in which the first one's place is free",
  "second-rests": "The second rests",
  "second-waits": "Of it, waiting beyond the others' turns",
  "second-free": "Rounds in which the second one's place is free",
  "third-rests": "The third rests",
  "third-waits": "Of it, waiting beyond the others' turns",
  "third-free": "Rounds in which the third one's place is free",
  "turns-rounds": "Rounds",
  "turns-minutes": "From the first set to the last",
  "turns-crowded": "At one station",
  "active-minutes": "At least moderate activity",
  "record-code": "Code and unit",
  pulse: "Heart rate",
  "skin-contact": "On the skin",
  "energy-spent": "Energy since it was switched on",
  "between-beats": "Between two beats",
  "highest-oxygen": "Highest oxygen uptake",
  "highest-oxygen-absolute-form": "Highest oxygen uptake, the form for litres",
  "step-class": "Class of recovery",
  "resting-energy": "At rest",
  "daily-energy": "In a day",
  "energy-availability": "Left for each kilogram that is not fat",
  "energy-availability-class": "Against the common cut",
  "loss-per-week": "Lost",
  "loss-percent-per-week": "Lost of the first mass",
  "loss-class": "Pace",
  "protein-plateau": "No more was gained above",
  "protein-range": "Advised",
  bmi: "Body mass index",
  "bmi-class": "Class",
  "waist-risk": "Risk that goes with the waist",
  "waist-hip": "Waist over hip",
  "waist-hip-risk": "Risk that goes with it",
  "body-density": "Density",
  "body-fat": "Body fat",
  quarter: "Stands in the",
  "deviations-from-mean": "Standard deviations from the mean",
  "middle-half": "Middle half at that age",
  "push-up-class": "Class",
  "usual-at-age": "Usual at that age",
  "percent-of-usual": "Of the usual",
  "run-level": "Level",
  "run-bouts": "Bouts",
  "run-bout": "Run in each",
  "walk-bout": "Walk after each",
  "run-how": "How",
  "energy-to-eat": "To eat for the aim",
  "energy-floor": "Never less than",
  "protein-a-day": "Protein",
  "protein-a-meal": "Of that in a meal, about",
  "most-loss": "Lose no faster than",
  "food-refer": "No figures here, but a registered dietitian or a doctor, for",
  "food-unanswered": "Cannot judge. Missing: an answer on",
} as const satisfies Readonly<Record<string, string>>;

/** Said under figures that somebody could take for advice. */
export const cautions = {
  "energy-availability": "It diagnoses nothing. Under 30, a physician or a registered dietitian is asked.",
  bmi: "It diagnoses nothing.",
  waist: "It diagnoses nothing.",
  skinfolds: "A figure to watch, with its error, and no diagnosis; folds read low on average.",
  tape: "Men's waist is taken at the navel, women's at the narrowest. A figure to watch, with its error, and no diagnosis.",
  "resting-energy": "Equations were made on groups; meals for an illness are a dietitian's work.",
  "daily-energy": "Made for groups and wide for one person; meals for an illness are a dietitian's work.",
  food: "General guidance for healthy adults, wide for one person; a plan of meals, and food in any illness, is a dietitian's work.",
  protein: "Not in kidney disease or pregnancy and not under 18: there a clinician or dietitian is asked.",
  "week-load":
    "It says nothing of injury. Sessions of one day are added first; what nobody rated is unknown and not 0.",
  "recent-load":
    "It describes one person's weeks, in any unit. No value of it is safe or dangerous, and it foretells no injury.",
  "called-off":
    "At a change of the clocks the wall counts, and not the hours that went by. A session that was paid and not done is no session done.",
  "take-turns": "Over twice the rest that somebody wants is a wait; dumbbells or push-ups elsewhere are the other way.",
  "one-rep-max": "With body mass moved too, put in all that is moved (with-body), and take the body off again.",
  "bar-load": "Sides are always equal.",
  "nearest-load": "Numbers on a stack belong to that machine alone; with help, less help is harder.",
  held: "After a limit's last day it is asked about, never free. What a machine or a band weighs is not known.",
  "run-12-minutes": "A test of best effort: screening comes first.",
  "run-1.5-miles": "A test of best effort: screening comes first.",
  "talk-test": "Effort is the lead wherever the pulse cannot be.",
  "highest-pulse":
    "One person in three lies more than 10 beats away; with a medicine that slows the heart no target is made of it.",
  "run-walk": "Pain that grows while running ends that run at once.",
  "pulse-target": "With a medicine that slows the heart, effort and talking tell instead.",
  plank: "A test of the best hold, and no target for training.",
} as const satisfies Readonly<Partial<Record<keyof typeof reckonings, string>>>;

const UNITS: Readonly<Record<string, string>> = { bpm: "beats/min", reps: "repetitions", "kgm/min": "kg·m/min" };

function withUnit(value: number, figure: Figure): string {
  const unit = figure.unit === undefined ? "" : ` ${UNITS[figure.unit] ?? figure.unit}`;
  return `${printNumber(value, figure.decimals ?? 0)}${unit}`;
}

function valueText(figure: Figure): string {
  const { value, low, high } = figure;
  if (typeof value === "string") return value;
  if (figure.what.endsWith("-band") && low !== undefined && high !== undefined)
    return `${printNumber(low, figure.decimals ?? 0)} to ${withUnit(high, figure)}`;
  if (low !== undefined && high === undefined) return `${withUnit(low, figure)} or more`;
  if (low === undefined || high === undefined || (low === high && low === value)) return withUnit(value, figure);
  const span = `${printNumber(low, figure.decimals ?? 0)} to ${withUnit(high, figure)}`;
  return value === low ? span : `${withUnit(value, figure)}, ${span}`;
}

function missOf({ kind, from, to, unit }: Miss): string {
  const size = to === undefined ? printNumber(from) : `${printNumber(from)} to ${printNumber(to)}`;
  return kind === "range" ? `single people ${size} ${unit} off` : `${kind} ${size} ${unit}`;
}

function aboutOf({ source, who, people, ageY, miss }: About): string {
  const facts = [
    who,
    ...(people === undefined ? [] : [`${printNumber(people)} people`]),
    ...(ageY === undefined ? [] : [`${printSpan(ageY.from, ageY.to)} years`]),
    ...(miss === undefined ? ["error not stated"] : [missOf(miss)]),
  ];
  return `  ${SOURCES[source].cite}: ${facts.join("; ")}.`;
}

/** @returns figures with their source, on whom the formulas were made, how far they miss, and what to keep in mind */
export function sayReckoned({ name, figures: found, about }: Reckoned): string {
  const caution = (cautions as Readonly<Record<string, string>>)[name];
  return [
    `${reckonings[name as keyof typeof reckonings]}.`,
    ...found.map((figure) => {
      const { read } = SOURCES[figure.source];
      const doubt = read === "memory" ? "; from memory" : "";
      return `  ${figures[figure.what as keyof typeof figures]}: ${valueText(figure)} (${figure.source}${doubt})`;
    }),
    ...(caution === undefined ? [] : [caution]),
    "On whom, and how far off:",
    ...about.map(aboutOf),
    "",
  ].join("\n");
}

function askOf(asked: Asked): string {
  const what =
    "of" in asked && asked.of.length <= 7
      ? asked.of.map((word) => (word.includes(" ") ? `"${word}"` : word)).join("|")
      : "…";
  return asked.optional ? `[${asked.key}=${what}]` : `${asked.key}=${what}`;
}

/** @returns a line for each reckoning: its name, what it asks for, what it answers */
export function sayReckonings(list: readonly Reckoning[]): string {
  const lines = list.flatMap(({ name, asks }) => [
    `${name} ${asks.map(askOf).join(" ")}`,
    `    ${reckonings[name as keyof typeof reckonings]}`,
  ]);
  return `${lines.join("\n")}\n`;
}
