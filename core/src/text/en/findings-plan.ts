import type { CheckId } from "../../checks/index.ts";
import { type Data, numberIn, said, wordsIn } from "../facts.ts";
import { muscleOf, musclesIn, phaseTitle, statusOf, weekOf } from "./finding-parts.ts";
import { listed, plural, printNumber } from "./number.ts";
import { loadIn } from "./units.ts";
import { patterns } from "./words.ts";

function session(data: Data): string {
  return `“${said(data, "title")}”`;
}

function patternsIn(data: Data, name: string): readonly string[] {
  return wordsIn(data, name).map((each) => patterns[each as keyof typeof patterns] ?? each);
}

function unequalOpposites(data: Data): string {
  const [one, other] = [plural(numberIn(data, "one"), "set", "sets"), printNumber(numberIn(data, "other"))];
  return said(data, "side") === "push and pull"
    ? `${one} a week of pushing and ${other} of pulling in ${phaseTitle(data)}.`
    : `${one} a week of squats and single-leg work and ${other} of hinges and bridges in ${phaseTitle(data)}.`;
}

function activityMinutes(data: Data): string {
  const got = `${printNumber(Math.round(numberIn(data, "equivalent")))} min a week of conditioning in ${phaseTitle(data)}`;
  if (said(data, "side") === "cannot judge") {
    return `Cannot judge whether conditioning comes to ${said(data, "least")} min a week: ${got} are asked in time, and more in something else. Missing: its minutes.`;
  }
  const hard = numberIn(data, "vigorous") > 0 ? ", hard minutes counted twice" : "";
  return `${got}${hard}; adults are advised ${said(data, "least")} to ${said(data, "to")} of moderate activity, everything they do counted.`;
}

function wayCannot(data: Data): string {
  const name = said(data, "name");
  switch (said(data, "way")) {
    case "load":
      return `${name} goes up by load, and it has none.`;
    case "ladder":
      return `${name} goes up its ladder, and it stands on none.`;
    default:
      return `${name} goes up by ${said(data, "way")}, and its dose is counted in something else.`;
  }
}

function cannotJudge(data: Data): string {
  if (said(data, "side") === "dose")
    return `Cannot judge sets, length, effort, recovery or progress. Missing: the dose of ${said(data, "doses")} of ${plural(numberIn(data, "of"), "slot", "slots")}. Ask before anything is changed: sets, repetitions and loads of the last 4 to 6 weeks, what was left in reserve, how long a session takes, sleep, body mass, and what has stopped rising since when.`;
  const some = `${said(data, "doses")} of ${plural(numberIn(data, "of"), "dose", "doses")}`;
  return said(data, "side") === "effort"
    ? `Cannot judge how hard ${some} are. Missing: repetitions in reserve or a share of the 1RM.`
    : `Cannot judge the rests of ${some}. Missing: seconds or minutes of rest.`;
}

/** What the checks of a programme's shape say. */
export const findingsOfPlan = {
  "week/trunk-directions": (data: Data) =>
    `${said(data, "directions")} of 4 trunk directions in ${phaseTitle(data)}: ${listed(patternsIn(data, "trained"))}. Not trained: ${listed(patternsIn(data, "missing"))}.`,
  "week/unequal-opposites": unequalOpposites,
  "session/many-sets-at-once": (data: Data) =>
    `${plural(numberIn(data, "sets"), "set", "sets")} for ${muscleOf(data)} in ${session(data)}${numberIn(data, "week") > 1 ? `, week ${said(data, "week")}` : ""}; ${said(data, "most")} are the most that one session is good for.`,
  "week/activity-minutes": activityMinutes,
  "week/more-days-than-usual": (data: Data) =>
    `${said(data, "days")} sessions of work a week in ${phaseTitle(data)}; up to ${said(data, "most")} are usual for ${statusOf(data)}.`,
  "phase/long-without-light": (data: Data) =>
    `${said(data, "weeks")} full weeks in a row from week ${said(data, "fromWeek")} of ${phaseTitle(data)}; few lifters go more than ${said(data, "most")} without a light one.`,
  "phase/nothing-goes-up": (data: Data) =>
    `0 of ${plural(numberIn(data, "slots"), "slot", "slots")} go up in the ${said(data, "weeks")} weeks of ${phaseTitle(data)}: the last week asks for what the first did.`,
  "slot/way-cannot": wayCannot,
  "slot/load-not-here": (data: Data) => {
    const near = ["down", "up"].flatMap((name) => loadIn(data, name) ?? []);
    return `${loadIn(data, "asked")} cannot be made ready for ${said(data, "name")} at ${said(data, "place")}. Beside it: ${listed(near)}.`;
  },
  "slot/no-next-load": (data: Data) => {
    const next = loadIn(data, "next");
    const after = `${loadIn(data, "from")} of ${said(data, "name")} at ${said(data, "place")}`;
    return next === undefined
      ? `0 loads heavier than ${after}: it can go up by repetitions, tempo, sets or another form, and not by load.`
      : `${next} is the next after ${after}, ${said(data, "percent")} % more; up to 10 % is usual. Repetitions are widened first.`;
  },
  "session/fast-work-last": (data: Data) =>
    `${said(data, "name")} comes after ${said(data, "after")}, which tires the same limbs; fast work is learned fresh.`,
  "session/warm-up-too-long": (data: Data) =>
    `${said(data, "minutes")} min of easy work before the slots of ${session(data)}; about 10 warm as well, and over ${said(data, "most")} is better done afterwards.`,
  "phase/mostly-to-failure": (data: Data) =>
    `${said(data, "failing")} of ${plural(numberIn(data, "sets"), "set", "sets")} in ${phaseTitle(data)} end with nothing in reserve. It gains nothing that was found, and recovery takes longer.`,
  "session/pair-for-one-muscle": (data: Data) =>
    `${wordsIn(data, "names").length} movements done in turn are for the same muscle (${musclesIn(data)}), which never rests: ${listed(wordsIn(data, "names"))}.`,
  "session/many-contacts": (data: Data) =>
    `${said(data, "contacts")} landings in ${session(data)}; people new to them begin with 30 to ${said(data, "most")}.`,
  "phase/jump-in-conditioning": (data: Data) =>
    `${printNumber(Math.round(numberIn(data, "minutes")))} min a week of conditioning in ${phaseTitle(data)}, after ${printNumber(Math.round(numberIn(data, "before")))} in the phase before.`,
  "dose/slow-repetitions": (data: Data) =>
    `${said(data, "seconds")} s for each repetition of ${said(data, "name")}${weekOf(data)}; from half a second to 8 s all build as much, over ${said(data, "most")} s less.`,
  "programme/cannot-judge": cannotJudge,
} satisfies Partial<Record<CheckId, (data: Data) => string>>;

/** Why they are there. */
export const whysOfPlan = {
  "week/trunk-directions":
    "The trunk is loaded in four ways: against arching, against turning, against bending to the side, and turning itself. A phase that trains only one of them is told the number. That two are enough is our own judgement, and nothing here is a fault.",
  "week/unequal-opposites":
    "Weekly sets of pushing against pulling, and of squats and single-leg work against hinges and bridges, shown as numbers where one has over twice the other. Equal sets are custom; no trial was found, and ratios compare only within one way of measuring.",
  "session/many-sets-at-once":
    "A stand calls about ten sets of a muscle the most that one session is good for. Sets are counted as everywhere: 1 where the muscle drives, a half where it helps.",
  "week/activity-minutes":
    "Adults are advised 150 to 300 minutes of moderate activity a week or 75 to 150 of vigorous, one vigorous minute standing for two. Judged only where a phase has sessions of conditioning alone and so means to take care of it; what people do besides is not in the programme.",
  "week/more-days-than-usual":
    "Sessions a week by training status as two bodies print them: 2–3 for novices, 3–4 for intermediates, 4–5 or 4–7 for advanced people. Where they differ the greater is taken. It is a note: days may be many and short.",
  "phase/long-without-light":
    "246 lifters who take light weeks took one every 5.6 weeks, give or take 2.3. Nobody has shown that one must, so over eight full weeks in a row is a note. A week away does as well.",
  "phase/nothing-goes-up":
    "What is asked must rise for anything to change. A phase of four weeks or more in which every slot stays and no dose changes asks for the same to its end. The four weeks are our own judgement.",
  "slot/way-cannot":
    "A way up that the movement cannot take is never followed: load where there is none, seconds where repetitions are counted, a ladder on which the movement does not stand.",
  "session/fast-work-last":
    "The handbook puts power before the great lifts and those before the rest; the stand says higher before lower intensity. Which slow work tires which fast work is our own judgement, so it is a note.",
  "session/warm-up-too-long":
    "Ten easy minutes before lifting are a good warm-up. What is longer or harder goes after the work or on another day when strength or size is the aim. Common practice, without a source.",
  "phase/mostly-to-failure":
    "The newest position stand finds no consistent gain from going on until nothing is left, and recovery of strength was slower by up to one or two days. A few such sets tell where the limit is; more than half of them, by our own rule, warn novices and are a note for others.",
  "session/pair-for-one-muscle":
    "Two movements in turn for one muscle save time at the price of load and repetitions. A coach may want just that, so it is a note.",
  "session/many-contacts":
    "Landings are counted as contacts. People new to them begin with 30 to 60 in a session, as is common practice, without a source.",
  "phase/jump-in-conditioning":
    "Legs and shins follow more slowly than breath. Over half as many minutes again as the phase before, and thirty more, is worth a look. Both figures are our own judgement.",
  "dose/slow-repetitions":
    "Of eight studies that were put together, tempos from half a second to eight a repetition built as much muscle, and over ten less. Judged only where size is the goal.",
  "slot/load-not-here":
    "A load that nobody can make ready is another load on the day. Asked only when a place is named that lists its loads; the plan takes the easier neighbour.",
  "slot/no-next-load":
    "The position stand raises a load by 2 to 10 %. Where the place has nothing heavier, or the next is further off, the load cannot carry the progress, and it is better to know that when the programme is written. Asked only when a place is named that lists its loads.",
  "programme/cannot-judge":
    "A plan that somebody brings often leaves out how hard and how long to rest. Nothing is guessed: what is missing is named, and the checks that would need it stay silent or say what they took instead.",
} satisfies Partial<Record<CheckId, string>>;
