import type { ProgressCode } from "../../progress/index.ts";
import { type Data, dataListIn, numberIn, said } from "../facts.ts";
import type { Say } from "../names.ts";
import { listed, plural, printNumber } from "./number.ts";
import { sheet } from "./sheet.ts";
import { loadIn } from "./units.ts";
import { capital } from "./words.ts";

/** "week 3 of base". */
function week(data: Data, name = "week"): string {
  const [phase, number] = said(data, name).split("/");
  return `week ${number} of ${phase}`;
}

const WHY_OFF: Readonly<Record<string, string>> = {
  away: "was spent away",
  sick: "was spent sick",
  "nothing recorded": "has nothing on record",
  "little done": "had less than half of its sets done",
};

const ENDED: Readonly<Record<string, string>> = {
  light: "a light week",
  away: "a week away",
  sick: "a week sick",
  "nothing recorded": "a week with nothing on record",
  "little done": "a week with less than half done",
};

function hardWeeks(data: Data): string {
  const ended = data["ended"];
  const on = () => sheet.shortDay(said(data, "on"));
  if (ended === "runs") return `The week of ${on()} is not half done yet.`;
  const count = numberIn(data, "weeks");
  const since = typeof ended === "string" ? `, since ${ENDED[ended] ?? ended} from ${on()}` : "";
  const weeks = count === 0 ? "No hard week" : plural(count, "hard week", "hard weeks");
  return `${weeks} before ${week(data)}${since}.`;
}

function efforts(data: Data): string {
  return `${printNumber(numberIn(data, "now"))} of 10 over ${plural(numberIn(data, "sessions"), "session", "sessions")} of the last two weeks, ${printNumber(numberIn(data, "was"))} over ${said(data, "before")} before`;
}

type LightCode = Extract<
  ProgressCode,
  | `progress/${string}light${string}`
  | `progress/effort-${string}`
  | `progress/${"full-week" | "hard-weeks" | "week-off" | "stood-still" | "fell-short"}`
>;

/** Light weeks: what is proposed, and with what it rests. */
export const lightReasons: Readonly<Record<LightCode, Say>> = {
  "progress/light-week": (data) => {
    const instead = typeof data["instead"] === "string" ? `, instead of ${week(data, "instead")}` : "";
    const loads = data["lighter"] === true ? "a tenth less load" : "loads as they are";
    return `Light week: ${week(data)}${instead}. Half the sets, one more in reserve, ${loads}.`;
  },
  "progress/full-week": (data) => `Full week: ${week(data)}, which was to be light.`,
  "progress/hard-weeks": hardWeeks,
  "progress/light-rule": (data) =>
    `By the rule “${said(data, "rule")}” a light week follows ${said(data, "weeks")} hard ones at the latest; by “${said(data, "other")}” ${said(data, "otherWeeks")}. Tiredness brings it forward. Competitors take one every 5.6 ± 2.3 weeks; coaches asked to agree say it is there to clear fatigue.`,
  "progress/light-planned": (data) => `${capital(week(data))} is a light one already.`,
  "progress/light-refused": (data) =>
    data["again"] === null
      ? "Refused in this run of weeks; without signs it is not asked again."
      : `Refused in this run of weeks; without signs it is asked again after ${said(data, "again")} hard weeks.`,
  "progress/light-too-soon": (data) =>
    `Rest was less than ${said(data, "apart")} weeks ago: ask about sleep, food and illness first.`,
  "progress/light-near-rest": (data) =>
    `${capital(week(data, "light"))} was to be light and lies within ${said(data, "apart")} weeks of it: one rest is enough.`,
  "progress/week-off": (data) =>
    `${capital(week(data))} (from ${sheet.shortDay(said(data, "on"))}) ${WHY_OFF[said(data, "because")] ?? said(data, "because")}: it counts as a light week.`,
  "progress/stood-still": (data) =>
    `The plan stood still for ${plural(numberIn(data, "days"), "day", "days")} before ${week(data)}: they count as a light week.`,
  "progress/light-no-record": () => "Cannot judge: nothing is on record yet.",
  "progress/light-no-week": () => "No week is left before the last one of the plan.",
  "progress/light-not-measured": () => "How sure it is that a light week helps: no data.",
  "progress/light-not-recorded": () => "Sleep and soreness are not on record: ask.",
  "progress/fell-short": (data, names) => {
    const unit = said(data, "kind") === "hold" ? " s" : "";
    const sessions = dataListIn(data, "sessions").map((one) => {
      const load = loadIn(one, "load");
      const on = sheet.shortDay(said(one, "on"));
      return `${said(one, "done")}${unit} on ${on}${load === undefined ? "" : ` with ${load}`} (80 % interval from ${printNumber(numberIn(one, "low"))})`;
    });
    return `${names.exercise(said(data, "exercise"))} fell short twice running: ${listed(sessions)}.`;
  },
  "progress/effort-up": (data) => `Effort of sessions went up: ${efforts(data)}.`,
  "progress/effort-level": (data) => `Effort of sessions did not go up: ${efforts(data)}.`,
  "progress/effort-unrated": (data) =>
    `Effort of sessions is not known: ${said(data, "sessions")} and ${said(data, "before")} were rated, ${said(data, "needed")} each are needed.`,
};
