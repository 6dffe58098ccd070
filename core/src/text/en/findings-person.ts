import type { CheckId } from "../../checks/index.ts";
import { type Data, dataListIn, MISSING, numberIn, said, wordsIn } from "../facts.ts";
import { muscleOf, phaseTitle, weekOf } from "./finding-parts.ts";
import { listed, plural, printNumber } from "./number.ts";
import { loadIn } from "./units.ts";
import { statements, tags } from "./words.ts";

function statementsIn(data: Data): string {
  return listed(wordsIn(data, "statements").map((each) => statements[each as keyof typeof statements] ?? each));
}

function tooHeavyWhenYoung(data: Data): string {
  const name = `${said(data, "name")}${weekOf(data)}`;
  return said(data, "side") === "share"
    ? `${said(data, "percent")} % of the 1RM is asked in ${name} of somebody of ${said(data, "age")}; up to ${said(data, "most")} % is enough.`
    : `Fewer than ${said(data, "left")} repetitions are left in ${name}, by somebody of ${said(data, "age")}.`;
}

function pastDoseLimits(data: Data): string {
  const limits = [
    ...(Number.isFinite(numberIn(data, "percent")) ? [`at most ${said(data, "percent")} % of the 1RM`] : []),
    ...(Number.isFinite(numberIn(data, "reserve")) ? [`${said(data, "reserve")} repetitions left`] : []),
    ...(Number.isFinite(numberIn(data, "holdS")) ? [`holds of ${said(data, "holdS")} s at most`] : []),
  ];
  const doses = dataListIn(data, "doses");
  const named = doses.slice(0, 4).map((each) => `${said(each, "name")} (“${said(each, "dose")}”)`);
  const more = doses.length > 4 ? ` and ${doses.length - 4} more` : "";
  return `${plural(doses.length, "dose", "doses")} in ${phaseTitle(data)} past what this person is given: ${listed(limits)}. The plan cuts ${named.join(", ")}${more}.`;
}

function aboveCeiling(data: Data): string {
  const stresses = [...new Set(wordsIn(data, "tags"))].map((tag) => tags[tag as keyof typeof tags] ?? tag);
  const name = said(data, "name");
  if (stresses.length > 0)
    return `${name} is set aside for this person, for ${listed(stresses)}. They get another form.`;
  const lanes = wordsIn(data, "lanes");
  return lanes.length > 0
    ? `${name} is set aside for this person: ${listed(lanes)} waits for a clinician's written limits.`
    : `${name} is set aside for this person by a stated condition. They get another form.`;
}

function comebackSets(data: Data): string {
  if (said(data, "side") === "new") {
    const fresh = dataListIn(data, "muscles").map((each) => `${muscleOf(each)} ${printNumber(numberIn(each, "sets"))}`);
    return `New in the first session of ${phaseTitle(data)}, sets that they drive: ${listed(fresh)}. None of the last ${said(data, "known")} trained weeks had any; ${said(data, "most")} are enough to begin with.`;
  }
  const named = dataListIn(data, "muscles").map(
    (each) => `${muscleOf(each)} ${printNumber(numberIn(each, "sets"))} after ${printNumber(numberIn(each, "usual"))}`,
  );
  const sets = `sets in the first week of ${phaseTitle(data)}: ${listed(named)}`;
  const known = plural(numberIn(data, "known"), "trained week", "trained weeks");
  return said(data, "side") === "comeback"
    ? `${said(data, "daysOff")} days off, and over ${said(data, "percent")} % of the usual ${sets}. Usual is the mean of the last ${known}.`
    : `Over ${said(data, "percent")} % of the usual ${sets}. Usual is the mean of the last ${known}.`;
}

/** What the checks for one person say. */
export const findingsOfPerson = {
  "person/strength-once": (data: Data) =>
    `${plural(numberIn(data, "days"), "session", "sessions")} of work a week in ${phaseTitle(data)} for this person; ${said(data, "least")} are advised to everybody.`,
  "person/balance-for-older": (data: Data) =>
    `${plural(numberIn(data, "days"), "day", "days")} a week with work that asks for balance in ${phaseTitle(data)}; ${said(data, "least")} are advised at ${said(data, "age")}.`,
  "person/power-for-older": (data: Data) =>
    `0 fast movements in ${phaseTitle(data)} for somebody of ${said(data, "age")}: speed goes before strength does.`,
  "person/too-heavy-when-young": tooHeavyWhenYoung,
  "person/too-often-when-young": (data: Data) =>
    `${said(data, "days")} sessions of work a week in ${phaseTitle(data)} for somebody of ${said(data, "age")}; 2 to ${said(data, "most")}, a day apart, are advised.`,
  "person/breath-hold": (data: Data) =>
    `“${said(data, "dose")}” of ${said(data, "name")}${weekOf(data)} cannot be done without holding the breath, and this person must not: ${statementsIn(data)}.`,
  "person/past-dose-limits": pastDoseLimits,
  "person/above-ceiling": aboveCeiling,
  "person/load-from-floor": (data: Data) =>
    `${said(data, "name")} begins with the load on the floor, which this person's bones should be spared: a raised start does the same.`,
  "person/comeback-sets": comebackSets,
  "person/comeback-load": (data: Data) =>
    `${loadIn(data, "asked") ?? MISSING} for ${said(data, "name")} after ${said(data, "daysOff")} days off, which is ${said(data, "percent")} % of the last ${loadIn(data, "before") ?? MISSING}; about ${said(data, "most")} % is enough to come back with.`,
} satisfies Partial<Record<CheckId, (data: Data) => string>>;

/** Why they are there. */
export const whysOfPerson = {
  "person/strength-once":
    "Adults of any age are advised to train the great muscles on two days a week or more. Judged where a person is named, by the phase and the days they have; it warns from 65 on.",
  "person/balance-for-older":
    "From 65 on, varied work that asks for balance and strength is advised on three days a week. Anything counts that is done on one leg, on the move or as a balance exercise; which movements these are is our own judgement.",
  "person/power-for-older":
    "With age speed goes before strength does, and catching oneself needs speed. The stand advises older people six to ten repetitions at 40 to 60 % of the 1RM, lifted fast. Throws, swings, jumps and a tempo that lifts in no time count; it is a note.",
  "person/too-heavy-when-young":
    "Young people learn with up to 60 % of the 1RM, by a position stand as restated, and are later given less than 80 %, by our own table. Two repetitions are always left; a test of the maximum is rarely needed.",
  "person/too-often-when-young": "Two or three sessions a week with a day between them are advised to young people.",
  "person/breath-hold":
    "Nobody lifts 85 % or the last repetition without holding the breath, and pressure in the head, the eye and the belly rises steeply then. Asked only for people whose stated condition forbids it. The shares are our own judgement, and unsigned.",
  "person/past-dose-limits":
    "Stated conditions cap the share of the 1RM, the repetitions left and the seconds of a hold, by our own unsigned table. The plan keeps to them by itself; the note tells a coach what it will change.",
  "person/above-ceiling":
    "Stated conditions cap stresses: loads lifted from the floor and leaning under load, the way down to the floor, arms overhead and more, by our own unsigned table. A first choice past a cap is given to nobody with that condition.",
  "person/load-from-floor":
    "With osteoporosis or after a low-trauma fracture, lifting from the floor and putting down there is to be avoided, by published recommendations; which forms do so is ours. Asked only for people who have stated it.",
  "person/comeback-sets":
    "Muscles are sorest after what they are no longer used to, trained people's too. After two to three weeks off half to two thirds of the usual sets, after more than four weeks half, are common practice, without a source. Without a break the limit is 20 % and three sets over the usual. A muscle that none of two weeks or more trained begins with two sets that it drives, our own choice; a novice's first session is judged by itself. Needs the person's recent weeks.",
  "person/comeback-load":
    "After two to three weeks off about nine tenths of the load are common practice, without a source. Judged where the programme writes the load itself and the exercise is on record.",
} satisfies Partial<Record<CheckId, string>>;
