import type { CheckId } from "../../checks/index.ts";
import { REPS_WHEN_OPEN, REST_WHEN_UNSAID_S } from "../../measures/index.ts";
import { type Data, dataIn, dataListIn, numberIn, numbersIn, said, wordsIn } from "../facts.ts";
import { listed, plural, printNumber, runs } from "./number.ts";
import { minutesOf, printMinutes } from "./units.ts";
import { lanes, muscles, statuses } from "./words.ts";

function phaseTitle(data: Data): string {
  return `“${said(data, "title")}”`;
}

function laneOf(data: Data): string {
  return lanes[said(data, "lane") as keyof typeof lanes] ?? said(data, "lane");
}

function muscleOf(data: Data): string {
  return muscles[said(data, "muscle") as keyof typeof muscles] ?? said(data, "muscle");
}

function statusOf(data: Data): string {
  return statuses[said(data, "status") as keyof typeof statuses] ?? said(data, "status");
}

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
      return `Weekly sets in ${phaseTitle(data)} are counted without ${listed(wordsIn(data, "unknown"))}, so too little cannot be told.`;
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
    return `${printMinutes(numberIn(data, "typicalS"))} for ${session}, counted without ${listed(unknown)}: whether it fits its ${said(data, "minutes")} min cannot be told.`;
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

/** What each check says. The number first, then what it means. */
export const findings: Readonly<Record<CheckId, (data: Data) => string>> = {
  "slot/unknown-exercise": unknownExercise,
  "week/pattern-never-trained": patternNeverTrained,
  "week/sets-outside-band": setsOutsideBand,
  "session/over-its-minutes": overItsMinutes,
  "dose/reps-unlikely-at-share": repsUnlikely,
  "dose/one-sided-without-side": oneSided,
};

/** Why each check is there, for the page of checks. */
export const whys: Readonly<Record<CheckId, string>> = {
  "slot/unknown-exercise":
    "Nobody can be given an exercise that the catalogue does not know, and neither its sets nor its minutes can be counted. It stops, and it cannot be silenced.",
  "week/pattern-never-trained":
    "People who start are taught a small set of movements: a squat, a hinge, a push, a pull and trunk work. A phase without one of them warns. Single-leg work stands in for a squat; single-leg work, carries and conditioning are a note, as is trunk work for people past their first months. Which movements these are is common practice, without a source.",
  "week/sets-outside-band":
    "Sets for each muscle in a week, 1 where it drives the movement and a half where it helps, against the programme's own band or the usual one: 4–10 for novices, 8–16 for intermediates, 10–20 for advanced people, and no least for calves and forearms. 4 is where growth can first be told and 5–10 is called effective; 10 is a general least and 20 the upper end suggested for trained young men; the band between is common practice. Light weeks may fall under it. A muscle that no slot is for is named in a note, unless it is one of the great movers.",
  "session/over-its-minutes":
    "Set-up, rest and changing stations take more than anybody thinks. The length is counted from the doses and from usual times for each kind of equipment, which are our own, since no study of them was found. It warns when the upper estimate (a quarter more) is over the session's minutes and stops when even the lower one (a tenth less) is.",
  "dose/reps-unlikely-at-share":
    "Repetitions asked, with those in reserve, against the book's table of repetitions at a share of the 1RM. By our own rule a set that leaves fewer than 2 costs the next one half a repetition, or a quarter after 3 min of rest. People differ widely, so it warns; it stops beyond two and a half times the book's number, which is about the most that anybody measured did. Below 65 % the table says nothing and neither does the check.",
  "dose/one-sided-without-side":
    "“3 × 8” of a one-sided movement may mean 8 or 4 a side: two people read two doses, one twice the other. Movements that take turns may be counted either way.",
};
