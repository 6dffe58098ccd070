import type { CheckId } from "../../checks/index.ts";
import { REPS_WHEN_OPEN, REST_WHEN_UNSAID_S } from "../../measures/index.ts";
import { type Data, dataIn, dataListIn, listIn, numberIn, numbersIn, said, wordsIn } from "../facts.ts";
import { laneOf, muscleOf, musclesIn, phaseTitle, spanIn, statusOf, weekOf } from "./finding-parts.ts";
import { findingsOfPerson, whysOfPerson } from "./findings-person.ts";
import { findingsOfPlan, whysOfPlan } from "./findings-plan.ts";
import { listed, plural, printNumber, runs } from "./number.ts";
import { minutesOf, printDuration, printMinutes } from "./units.ts";
import { goals } from "./words.ts";

function unknownExercise(data: Data): string {
  const near = dataListIn(data, "near").map((each) => `${said(each, "name")} (${said(each, "id")})`);
  const start = `“${said(data, "exercise")}” is not in the catalogue`;
  return near.length === 0 ? `${start}, and no name is near it.` : `${start}. Near it: ${listed(near, "or")}.`;
}

function patternNeverTrained(data: Data): string {
  const lane = said(data, "lane");
  const missing = `0 sets of ${laneOf(data)} in ${phaseTitle(data)}`;
  if (lane === "squat" || lane === "hinge" || lane === "push" || lane === "pull" || lane === "trunk") {
    return `${missing}: no session trains it. ${lane === "trunk" ? "Trunk work" : `A ${lane}`} is one of the movements that everybody is taught.`;
  }
  return `${missing}: no session has it.`;
}

function setsOutsideBand(data: Data): string {
  switch (said(data, "side")) {
    case "helping only": {
      const named = dataListIn(data, "muscles").map(
        (each) => `${muscleOf(each)} (${printNumber(numberIn(each, "sets"))})`,
      );
      return `Under ${plural(numberIn(data, "from"), "set", "sets")} a week in ${phaseTitle(data)}, and no slot is for them: ${listed(named)}.`;
    }
    case "cannot judge":
      return `Cannot judge whether weekly sets in ${phaseTitle(data)} are too few. Missing: what ${listed(wordsIn(data, "unknown"))} trains.`;
    default: {
      const count = `${plural(numberIn(data, "sets"), "set", "sets")} a week for ${muscleOf(data)} in ${phaseTitle(data)}`;
      const weeks = numbersIn(data, "weeks");
      const when =
        weeks.length === 1 ? `week ${runs(weeks)}` : `weeks ${runs(weeks)}, most in week ${said(data, "week")}`;
      const worst = weeks.length > 1 && said(data, "side") === "under" ? when.replace("most in", "fewest in") : when;
      const band = `${printNumber(numberIn(data, "from"))} to ${printNumber(numberIn(data, "to"))}`;
      const whose = data["own"] === true ? "the programme's own band" : `the band for ${statusOf(data)}`;
      return `${count} (${worst}): ${whose} is ${band}.`;
    }
  }
}

function timeParts(data: Data): string {
  const parts = dataIn(data, "parts") ?? {};
  const names = [
    ["warmUp", "warm-up"],
    ["setUp", "set-up"],
    ["work", "work"],
    ["rest", "rest"],
    ["changes", "changing stations"],
    ["conditioning", "conditioning"],
  ] as const;
  const told = names.filter(([key]) => numberIn(parts, key) > 0);
  return listed(told.map(([key, name]) => `${name} ${minutesOf(numberIn(parts, key))}`));
}

function assumed(data: Data): string {
  const rest = dataListIn(data, "assumed").some((each) => each["what"] === "rest");
  const reps = dataListIn(data, "assumed").some((each) => each["what"] === "reps");
  const taken = [
    ...(rest ? [`${REST_WHEN_UNSAID_S} s of rest where none is said`] : []),
    ...(reps ? [`${REPS_WHEN_OPEN} repetitions where they are open`] : []),
  ];
  return taken.length === 0 ? "" : ` Taken: ${listed(taken)}.`;
}

function overItsMinutes(data: Data): string {
  const session = `“${said(data, "title")}”`;
  const unknown = wordsIn(data, "unknown");
  const without = unknown.length === 0 ? "" : ` Counted without ${listed(unknown)}.`;
  if (said(data, "side") === "cannot judge") {
    return `Cannot judge whether ${session} fits its ${said(data, "minutes")} min: ${printMinutes(numberIn(data, "typicalS"))} without it. Missing: how long ${listed(unknown)} takes.`;
  }
  const range = `${minutesOf(numberIn(data, "lowS"))} to ${minutesOf(numberIn(data, "highS"))}`;
  const has = data["of"] === "person" ? "this person has" : "it has";
  const week = numberIn(data, "week") > 1 ? ` in week ${said(data, "week")}` : "";
  return `${printMinutes(numberIn(data, "typicalS"))} (${range}) for ${session}${week}, and ${has} ${said(data, "minutes")}. In minutes: ${timeParts(data)}.${without}${assumed(data)}`;
}

function repsUnlikely(data: Data): string {
  const needed = printNumber(numberIn(data, "needed"));
  const possible = printNumber(numberIn(data, "possible"));
  const fresh = printNumber(numberIn(data, "fresh"));
  const where = `set ${said(data, "set")} of ${said(data, "name")} at ${said(data, "percent")} %`;
  const from = numberIn(data, "fromWeek");
  const week = Number.isFinite(from) ? ` from week ${from}` : "";
  const why =
    possible === fresh ? `the book gives ${fresh}` : `the book gives ${fresh} when fresh, about ${possible} by then`;
  return `${needed} repetitions, those in reserve included, are asked of ${where}${week}, and ${why}. People differ widely.`;
}

function oneSided(data: Data): string {
  const name = said(data, "name");
  return data["wanted"] === true
    ? `${name} is done one side at a time, and its dose does not say “each side”.`
    : `${name} is done with both sides at once, and its dose says “each side”.`;
}

function holdOutside(data: Data): string {
  return `${spanIn(data, "asked")} s are asked of ${said(data, "name")}${weekOf(data)}, and ${spanIn(data, "range")} s suit this hold. Beyond that a harder form does more than the clock.`;
}

function restTooShort(data: Data): string {
  const goal = goals[said(data, "goal") as keyof typeof goals] ?? said(data, "goal");
  return `${printDuration(numberIn(data, "restS"))} of rest for ${said(data, "name")}${weekOf(data)}; ${printDuration(numberIn(data, "least"))} or more serves ${goal} better.`;
}

function outsideTable(data: Data): string {
  const goal = goals[said(data, "goal") as keyof typeof goals] ?? said(data, "goal");
  if (said(data, "goal") === "size") {
    return `${spanIn(data, "reps")} repetitions near the limit build muscle, and ${said(data, "name")} asks for “${said(data, "dose")}”${weekOf(data)}.`;
  }
  const rows = dataListIn(data, "bands").map((band) => `${spanIn(band, "percent")} % × ${spanIn(band, "reps")}`);
  return `0 doses of ${laneOf(data)} in ${phaseTitle(data)} reach what the tables give for ${goal} of ${statusOf(data)}: ${listed(rows, "or")}. The first is ${said(data, "slotName")}, “${said(data, "dose")}”.`;
}

function muscleOnce(data: Data): string {
  const named = dataListIn(data, "muscles").map(
    (each) =>
      `${muscleOf(each)} (${each["sets"] === null ? "" : `${printNumber(numberIn(each, "sets"))} sets `}in “${said(each, "session")}”)`,
  );
  return `1 session a week trains these in ${phaseTitle(data)}: ${listed(named)}.`;
}

function closeSessions(data: Data): string {
  const [hours, wanted] = [numberIn(data, "hours"), numberIn(data, "wanted")];
  const free = numberIn(data, "days");
  const days = Number.isFinite(free) ? `${plural(free, "day", "days")} a week` : "whatever days they have";
  const what = data["helping"] === true ? "loaded hard in both, in one of them as helpers" : "hard in both";
  return `${hours} h from “${said(data, "before")}” to “${said(data, "title")}” cannot be avoided (${days}), and ${wanted} are wanted: ${musclesIn(data)}, ${what}.`;
}

function jumpInSets(data: Data): string {
  const named = dataListIn(data, "muscles").map(
    (each) =>
      `${muscleOf(each)} ${printNumber(numberIn(each, "sets"))} sets after ${printNumber(numberIn(each, "mean"))}`,
  );
  return `More than 20 % and 3 sets over the mean of the last ${said(data, "known")} full weeks, in week ${said(data, "fromWeek")} of ${phaseTitle(data)}: ${listed(named)}.`;
}

function notServed(data: Data): string {
  const groups = listIn(data, "groups").map((group) => listed(Array.isArray(group) ? group.map(String) : [], "or"));
  return `${said(data, "name")} needs ${listed(groups)}, and ${said(data, "place")} has none. Nobody there is given it: another form, or nothing.`;
}

function oneStationTwice(data: Data): string {
  const have = numberIn(data, "have");
  const there = Number.isFinite(have) ? `and there ${have === 1 ? "is" : "are"} ${have}` : "which works only with two";
  return `${wordsIn(data, "names").length} movements done in turn need a ${said(data, "station")} each, ${there}: ${listed(wordsIn(data, "names"))}.`;
}

function neverHappens(data: Data): string {
  const days = plural(numberIn(data, "perWeek"), "day", "days");
  switch (said(data, "side")) {
    case "full week":
      return `0 full weeks of ${plural(numberIn(data, "weeks"), "week", "weeks")} in ${phaseTitle(data)}: the doses as written are never done.`;
    case "session":
      return `0 turns in ${plural(numberIn(data, "weeks"), "week", "weeks")} of ${phaseTitle(data)}, at ${days} a week, for ${listed(wordsIn(data, "sessions"))}.`;
    default: {
      const [from, last] = [said(data, "fromWeek"), said(data, "last")];
      return `The dose of ${said(data, "name")} for ${from === last ? `week ${from}` : `weeks ${from}–${last}`} of ${phaseTitle(data)} is never done: at ${days} a week its session has no turn then.`;
    }
  }
}

function firstDose(data: Data): string {
  const session = `“${said(data, "title")}” is the first session of all`;
  const named = (unit: "sets" | "reps") =>
    listed(dataListIn(data, "muscles").map((each) => `${muscleOf(each)} ${printNumber(numberIn(each, unit))}`));
  switch (said(data, "side")) {
    case "far too much":
      return `${session}, and it asks for ${named("sets")} direct sets (${named("reps")} repetitions). Over ${said(data, "mostSets")} sets or ${said(data, "mostReps")} repetitions a muscle have put active people into hospital days later. Whoever has done it is asked on the next two days about swelling, weakness and dark urine; dark urine goes to a doctor at once.`;
    case "sets":
      return `${session}: ${named("sets")} direct sets, where ${said(data, "most")} a muscle are enough to begin with.`;
    case "reserve":
      return `${session}, and fewer than ${said(data, "least")} repetitions in reserve are left, or none is said: ${listed(wordsIn(data, "names"))}.`;
    default:
      return `${session}, and sets that only lower make the sorest muscles: ${listed(wordsIn(data, "names"))}.`;
  }
}

/** What each check says. The number first, then what it means. */
export const findings: Readonly<Record<CheckId, (data: Data) => string>> = {
  "slot/unknown-exercise": unknownExercise,
  "week/pattern-never-trained": patternNeverTrained,
  "week/sets-outside-band": setsOutsideBand,
  "session/over-its-minutes": overItsMinutes,
  "dose/reps-unlikely-at-share": repsUnlikely,
  "dose/one-sided-without-side": oneSided,
  "dose/hold-outside-range": holdOutside,
  "session/no-warm-up": (data) =>
    `0 minutes of warm-up before the work of “${said(data, "title")}”, and no lighter set either.`,
  "session/single-before-multi": (data) =>
    `${said(data, "name")} tires ${musclesIn(data)} before ${said(data, "before")}, which loads more.`,
  "dose/rest-too-short": restTooShort,
  "dose/too-heavy-for-novice": (data) =>
    `${said(data, "percent")} % of the 1RM is asked of novices in ${said(data, "name")}${weekOf(data)}; up to ${said(data, "advised")} % makes them as strong.`,
  "dose/outside-table": outsideTable,
  "week/muscle-once": muscleOnce,
  "week/close-sessions": closeSessions,
  "week/jump-in-sets": jumpInSets,
  "phase/jump-in-rungs": (data) =>
    `${said(data, "steps")} steps up the ladder from ${said(data, "before")} to ${said(data, "name")}, from one phase to the next; 2 are enough.`,
  "slot/not-served-here": notServed,
  "session/one-station-twice": oneStationTwice,
  "phase/never-happens": neverHappens,
  "session/first-dose": firstDose,
  ...findingsOfPlan,
  ...findingsOfPerson,
};

/** Why each check is there, for the page of checks. */
export const whys: Readonly<Record<CheckId, string>> = {
  "slot/unknown-exercise":
    "Nobody can be given an exercise that the catalogue does not know, and neither its sets nor its minutes can be counted. It stops, and it cannot be silenced.",
  "week/pattern-never-trained":
    "People who start are taught a small set of movements: a squat, a hinge, a push, a pull and trunk work. A phase without one of them warns. Single-leg work stands in for a squat; single-leg work, carries and conditioning are a note, as is trunk work for people past their first months. Which movements these are is common practice, without a source.",
  "week/sets-outside-band":
    "Sets for each muscle in a week, 1 where it drives the movement and a half where it helps, against the programme's own band or the usual one: 4–10 for novices, 8–16 for intermediates, 10–20 for advanced people, and no least for calves and forearms. 4 is where growth can first be told and 5–10 is called effective; 10 is a general least and 20 the upper end suggested for trained young men; the band between is common practice. Light weeks may fall under it. A muscle that no slot is for is named in a note, unless it is one of the great movers; too little for the trunk is a note as well, since no figure was printed for it.",
  "session/over-its-minutes":
    "Set-up, rest and changing stations take more than anybody thinks. The length is counted from the doses and from usual times for each kind of equipment, which are our own, since no study of them was found. It warns when the upper estimate (a quarter more) is over the session's minutes and stops when even the lower one (a tenth less) is.",
  "dose/reps-unlikely-at-share":
    "Repetitions asked, with those in reserve, against the book's table of repetitions at a share of the 1RM. By our own rule a set that leaves fewer than 2 costs the next one half a repetition, or a quarter after 3 min of rest. People differ widely, so it warns; it stops beyond two and a half times the book's number, which is about the most that anybody measured did. Below 65 % the table says nothing and neither does the check.",
  "dose/one-sided-without-side":
    "“3 × 8” of a one-sided movement may mean 8 or 4 a side: two people read two doses, one twice the other. Movements that take turns may be counted either way.",
  "dose/hold-outside-range":
    "Every hold has a range of seconds in which it is useful, our own judgement, still to be signed. Under it too little happens; over it a harder form does more than more seconds. Plans give seconds within the range.",
  "session/no-warm-up":
    "Of 32 studies that were put together, 79 % of what was measured got better after a warm-up; how much depends on the work. A few easy minutes or lighter sets before the first slot are enough, as is common practice.",
  "session/single-before-multi":
    "The position stand advises movements of several joints before those of one, and calls its own evidence weak, so this is a note. A coach who tires a muscle first on purpose is free to.",
  "dose/rest-too-short":
    "For size a meta-analysis of rest found a little more with over 60 s; the handbook prints 30–90 s, so under 60 s only warns. For strength the stand asks for 2–3 min between heavy sets of several joints and 1–2 min for the rest. Pairs, rounds and one-sided movements rest while something else is done and are not judged.",
  "dose/too-heavy-for-novice":
    "The stand advises novices 60–70 % of the 1RM for 8–12 repetitions, the handbook gives 85 % and more for strength whoever lifts. Where they disagree the milder one is taken: from 85 % on, a programme for novices is warned.",
  "dose/outside-table":
    "Loads and repetitions by goal and training status, as the handbook and the stand print them. For size 5–30 repetitions near the limit are fine at any load. A goal of strength or endurance is judged lane by lane: lighter work beside a heavy lift is no fault. The tables disagree with each other, so for these it is a note. No table was read for general and for power.",
  "week/muscle-once":
    "All great muscles twice a week is what the newest position stand advises. Where the weekly sets are equal, once a week was as good for size; for strength, for soreness and for weeks with a missed day twice is better. Muscles that other sessions help to train are not named.",
  "week/close-sessions":
    "48 h between sessions that load the same muscle hard, three direct sets or more with at most three in reserve, unless the programme says other hours. Of all days the sessions could have, the best still has these too close. Trained people were seen to do well on less, so it warns and never stops; where a muscle only helps in one of them it is a note.",
  "week/jump-in-sets":
    "Weekly sets of a muscle over 20 % above the mean of the last four full weeks, and at least three sets more. The 20 % is a position stand's limit for about four weeks; the three sets are ours, so that small muscles are not named for one set. What somebody did before the programme is not known to it.",
  "phase/jump-in-rungs":
    "A first choice more than two steps of its ladder above the phase before asks for a form that few have earned by then; most will be given an easier one. The two steps are our own judgement.",
  "slot/not-served-here":
    "A first choice that needs what the place does not have is given to nobody there. Asked only when a place is named.",
  "session/one-station-twice":
    "A pair saves time while both movements can be kept. When both need the same station it costs more time than it saves, and a busy room waits. Without a place it is a note, since there may be two.",
  "phase/never-happens":
    "What is written and never done misleads whoever reads the programme: weeks that are all light, sessions and changes of a dose without a turn when there are fewer days than sessions.",
  "session/first-dose":
    "Muscles are sorest after what is new to them, whatever the form says about fitness. Somebody untrained begins with two direct sets a muscle and three repetitions left over, by our own rule. Ten sets are called the most that one session is good for, and a published first session of 8 × 20 squats and 5 × 30 push-ups ended in hospital, so beyond that it stops; a coach who means it silences it with a reason.",
  ...whysOfPlan,
  ...whysOfPerson,
};
