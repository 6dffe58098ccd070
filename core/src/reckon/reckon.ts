import { parseDay } from "../day.ts";
import type { About } from "../equations/index.ts";
import { nearNames, type Problem } from "../model/index.ts";
import { BODY } from "./body.ts";
import { CONDITIONING } from "./conditioning.ts";
import { FOOD } from "./food.ts";
import { readLoadList, readPlatePairs, readRatedMinutes } from "./load-list.ts";
import { LOADING } from "./loading.ts";
import { MONITORING } from "./monitoring.ts";
import { NORMS } from "./norms.ts";
import { DIMENSIONS, type Quantity, readQuantity } from "./quantity.ts";
import { type Asked, type Figure, givenBy, type Listed, type Reckoning } from "./reckoning.ts";
import { ROOM } from "./room.ts";
import { STRENGTH } from "./strength.ts";

/** Everything that can be reckoned by name, in the order it is listed. */
export const RECKONINGS: readonly Reckoning[] = [
  ...STRENGTH,
  ...LOADING,
  ...CONDITIONING,
  ...MONITORING,
  ...ROOM,
  ...BODY,
  ...NORMS,
  ...FOOD,
];

/** What came out, on whom the formulas were made, and what was put in as it was read. */
export interface Reckoned {
  readonly name: string;
  readonly given: Readonly<Record<string, string>>;
  readonly figures: readonly Figure[];
  readonly about: readonly About[];
}

export type ReckonResult =
  | { readonly ok: true; readonly value: Reckoned }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** More and longer answers than any reckoning takes are nobody's slip. */
const MOST_ANSWERS = 20;
const LONGEST = 80;
const BYTES = /^(?:[\da-f]{2})+$/i;
const LONGEST_LIST = 300;
/** How a list is written, for a problem. */
const LISTS: Readonly<Record<Listed["list"], string>> = {
  plates: "15 kg: 1; 10 kg: 2",
  loads: "2; 4; 6 kg, 5–30 kg by 5",
  sessions: "60x7, 60x7; 20x3, 60x?, 0",
};
const WALL = /^(\d{4}-\d{2}-\d{2})[ T]([01]\d|2[0-3]):([0-5]\d)$/;

/**
 * Reckons one thing from answers written as `name=value`.
 *
 * @param name of the reckoning
 * @param answers `key=value`, at most 20; quantities with their unit
 * @returns figures with their sources, intervals and people; or every problem: unknown name or key, a value in another
 *   form, something missing, or a value that the formula was not made for
 * @example reckon("one-rep-max", ["load=100 kg", "reps=5"])
 */
export function reckon(name: string, answers: readonly string[]): ReckonResult {
  const reckoning = RECKONINGS.find((each) => each.name === name);
  if (reckoning === undefined) {
    const names = RECKONINGS.map((each) => each.name);
    return {
      ok: false,
      problems: [problem("reckon/no-such-name", [], clip(name), names.join(", "), nearNames(clip(name), names)[0])],
    };
  }
  const problems: Problem[] = [];
  const quantities = new Map<string, Quantity>();
  const words = new Map<string, string>();
  const lists = new Map<string, Listed>();
  const given: Record<string, string> = {};
  const tried = new Set<string>();
  if (answers.length > MOST_ANSWERS)
    problems.push(problem("reckon/too-many", [], `${answers.length}`, `at most ${MOST_ANSWERS}`));
  for (const answer of answers.slice(0, MOST_ANSWERS)) {
    const read = readAnswer(reckoning, answer, given);
    if ("code" in read) {
      problems.push(read);
      tried.add(String(read.at[0]));
    } else {
      given[read.key] = read.text;
      if (typeof read.value === "string") words.set(read.key, read.value);
      else if ("list" in read.value) lists.set(read.key, read.value);
      else quantities.set(read.key, read.value);
    }
  }
  for (const { key, optional, ...asked } of reckoning.asks)
    if (!optional && !(key in given) && !tried.has(key))
      problems.push(problem("reckon/missing", [key], undefined, allowedOf({ key, ...asked } as Asked)));
  if (problems.length > 0) return { ok: false, problems };
  const all = givenBy(quantities, words, lists);
  try {
    return {
      ok: true,
      value: { name, given, figures: reckoning.figures(all), about: reckoning.about(all).map(plainAbout) },
    };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { ok: false, problems: [problem("reckon/refused", [], undefined, error.message)] };
  }
}

/** Only what is said of people and error: equations carry more. */
function plainAbout({ source, who, people, ageY, miss }: About): About {
  return {
    source,
    who,
    ...(people === undefined ? {} : { people }),
    ...(ageY === undefined ? {} : { ageY }),
    ...(miss === undefined ? {} : { miss }),
  };
}

type Answered = { readonly key: string; readonly text: string; readonly value: Quantity | Listed | string };

function readAnswer(reckoning: Reckoning, answer: string, given: Readonly<Record<string, string>>): Answered | Problem {
  const keys = reckoning.asks.map(({ key }) => key);
  const at = answer.indexOf("=");
  const longest = reckoning.asks.some((each) => "list" in each) ? LONGEST_LIST : LONGEST;
  if (at < 1 || answer.length > longest)
    return problem("reckon/answer-form", [], clip(answer), keys.map((key) => `${key}=…`).join(" "));
  const [key, text] = [answer.slice(0, at).trim(), answer.slice(at + 1).trim()];
  const asked = reckoning.asks.find((each) => each.key === key);
  if (asked === undefined)
    return problem("reckon/unknown-answer", [key], key, keys.join(", "), nearNames(key, keys)[0]);
  if (key in given) return problem("reckon/twice", [key], text, `${key} once`);
  if ("of" in asked) {
    if (asked.of.includes(text)) return { key, text, value: text };
    return problem("reckon/choice", [key], text, asked.of.join(", "), nearNames(text, asked.of)[0]);
  }
  if ("mostBytes" in asked) {
    const pairs = text.replaceAll(" ", "");
    const fits = BYTES.test(pairs) && pairs.length <= 2 * asked.mostBytes;
    return fits ? { key, text, value: pairs } : problem("reckon/bytes-form", [key], text, allowedOf(asked));
  }
  if ("clock" in asked) {
    const value = wallMinutes(text);
    return value === undefined
      ? problem("reckon/wall-form", [key], text, allowedOf(asked))
      : { key, text, value: { value, unit: "min" } };
  }
  if ("list" in asked) {
    const value = listIn(text, asked.list);
    return value === undefined
      ? problem("reckon/list-form", [key], clip(text), allowedOf(asked))
      : { key, text, value };
  }
  const value = readQuantity(text, asked.dimension);
  return typeof value === "string" ? problem(value, [key], text, allowedOf(asked)) : { key, text, value };
}

/** @returns minutes on the wall clock of some place since a day that is the same for all */
function wallMinutes(text: string): number | undefined {
  const [, on, hour, minute] = WALL.exec(text) ?? [];
  const day = on === undefined ? undefined : parseDay(on);
  return day === undefined ? undefined : day * 1440 + Number(hour) * 60 + Number(minute);
}

function listIn(text: string, list: Listed["list"]): Listed | undefined {
  if (list === "plates") {
    const plates = readPlatePairs(text);
    return plates && { list, plates };
  }
  if (list === "sessions") {
    const sessions = readRatedMinutes(text);
    return sessions && { list, sessions };
  }
  const loads = readLoadList(text);
  return loads && { list, loads };
}

/** What may stand behind a key, for a problem. */
function allowedOf(asked: Asked): string {
  if ("of" in asked) return asked.of.join(", ");
  if ("mostBytes" in asked) return `up to ${asked.mostBytes} bytes, two hexadecimal figures each`;
  if ("clock" in asked) return "a day and an hour, as 2027-03-28 10:00";
  if ("list" in asked) return LISTS[asked.list];
  const units = Object.keys(DIMENSIONS[asked.dimension]);
  return units.length === 0 ? "a number" : `a number with ${units.join(", ")}`;
}

function problem(
  code: string,
  at: readonly string[],
  found: string | undefined,
  allowed: string,
  maybe?: string,
): Problem {
  return {
    code,
    file: "stave reckon",
    at,
    line: 0,
    column: 0,
    ...(found === undefined ? {} : { found }),
    allowed,
    ...(maybe === undefined ? {} : { maybe }),
  };
}

/** Input is shown back, and never more of it than fits a line. */
function clip(text: string): string {
  return text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text;
}
