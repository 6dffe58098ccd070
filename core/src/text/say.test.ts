import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { ASSESS_CODES, RESULT_PROBLEMS } from "../assess/index.ts";
import { CALENDAR_CODES } from "../calendar/index.ts";
import { CAPACITY_CODES } from "../capacity/index.ts";
import { CHECKS, checkProgramme } from "../checks/index.ts";
import { CATALOGUE, OWN_PROBLEMS } from "../exercises/index.ts";
import { FIT_CODES } from "../fit/index.ts";
import { LOAD_CODES } from "../loads/index.ts";
import { type Json, readProgramme } from "../model/index.ts";
import { OFFER_CODES } from "../offer/index.ts";
import { PROGRESS_CODES } from "../progress/index.ts";
import { RECORD_CODES, RECORD_PROBLEMS } from "../record/index.ts";
import { PLAN_CODES } from "../revise/index.ts";
import { ANSWER_PROBLEMS, RULE_PROBLEMS, SCREEN_CODES, TODAY_PROBLEMS } from "../screen/index.ts";
import { RULE_CODES, WATCH_CODES } from "../watch/index.ts";
import {
  en,
  type Messages,
  namesFrom,
  REMEDY_IDS,
  sayFinding,
  sayPlace,
  sayProblem,
  sayReason,
  sayRemedy,
  saySources,
} from "./index.ts";

/** Every code of a problem that stands in a folder's own text. */
function codesIn(folder: string): readonly string[] {
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter(
    (name) => name.endsWith(".ts") && !name.endsWith(".test.ts"),
  );
  return files.flatMap((name) => {
    const text = readFileSync(`${folder}/${name}`, "utf8");
    return [...text.matchAll(/"([a-z]+\/[a-z-]+)"/g)].map(([, code]) => code!);
  });
}

/** Written in the same way, but no problems: checks, reasons, folders. */
const OTHERS: readonly string[] = [...CHECKS.map(({ id }) => id), ...OFFER_CODES, "examples/ropewalk"];

test("every problem that readers and commands can tell has a sentence", () => {
  const named = ["core/src/model", "server/src/commands"].flatMap(codesIn).filter((code) => !OTHERS.includes(code));
  const own = [
    ...OWN_PROBLEMS,
    ...ANSWER_PROBLEMS,
    ...RESULT_PROBLEMS,
    ...RECORD_PROBLEMS,
    ...TODAY_PROBLEMS,
    ...RULE_PROBLEMS,
  ];
  const codes = new Set([...named, ...own]);
  expect(codes.size).toBeGreaterThan(100);
  expect([...codes].filter((code) => !(code in en.problems))).toEqual([]);
});

test("every reason and every check has a sentence", () => {
  const reasons = [
    ...OFFER_CODES,
    ...LOAD_CODES,
    ...CALENDAR_CODES,
    ...FIT_CODES,
    ...PLAN_CODES,
    ...SCREEN_CODES,
    ...ASSESS_CODES,
    ...PROGRESS_CODES,
    ...CAPACITY_CODES,
    ...RECORD_CODES,
    ...WATCH_CODES,
    ...RULE_CODES,
  ];
  expect(reasons.filter((code) => !(code in en.reasons))).toEqual([]);
  expect(CHECKS.filter(({ id }) => !(id in en.findings) || !(id in en.whys))).toEqual([]);
  expect(REMEDY_IDS.filter((id) => !(id in en.remedies))).toEqual([]);
});

const NAMES = namesFrom(CATALOGUE, { sessions: new Map([["a", "Day A"]]), slots: new Map([["s", "the squat"]]) });

describe("reasons, the number first", () => {
  const limit = {
    atMost: { value: 10, unit: "kg" },
    applies: "hand",
    side: "left",
    who: "Dr Okparavere",
    to: "2027-03-02",
  };
  const record = { exercise: "goblet-squat", load: { value: 16, unit: "kg" }, reps: 8, reserve: 2, on: "2027-02-01" };
  const said: readonly (readonly [code: string, data: Parameters<typeof sayReason>[0]["data"], sentence: string])[] = [
    [
      "offer/equipment",
      { groups: [["dumbbell", "kettlebell"], ["bench"]] },
      "Needs dumbbell or kettlebell and bench, and this place has none.",
    ],
    [
      "offer/ceiling",
      { tag: "floor", grade: 3, ceiling: 1, from: [{ by: "vertigo", ceiling: 1 }] },
      "Getting down to the floor and up: grade 3, and 1 is the most for vertigo or dizziness with position.",
    ],
    [
      "offer/above-rung",
      { ladder: "squat", stands: "body-squat", assessed: false },
      "Not assessed on this ladder, so it starts on Body squat to parallel.",
    ],
    [
      "offer/not-shown",
      { ladder: "squat" },
      "Not assessed on Squat: its hardest forms with body mass alone have to be shown first.",
    ],
    [
      "offer/count-not-shown",
      { needs: { of: "body-squat", reps: 12, sets: 3 } },
      "3 × 12 of Body squat to parallel has to be shown first.",
    ],
    [
      "offer/over-limit",
      { ...limit, held: { value: 12, unit: "kg" } },
      "12 kg would be held, and 10 kg in a hand on the left is the most, ordered by Dr Okparavere until Tuesday 2 March 2027.",
    ],
    [
      "offer/rest-order",
      { part: "arm", side: "left", who: "Dr Okparavere", to: "2027-03-02" },
      "Rest of left arm, ordered by Dr Okparavere until Tuesday 2 March 2027.",
    ],
    [
      "offer/limit-throughout",
      { ...limit, kind: "load", from: "2027-02-08", first: "2027-03-01", last: "2027-03-28" },
      "At most 10 kg in a hand on the left, ordered by Dr Okparavere from Monday 8 February 2027 until Tuesday 2 March 2027: it binds on every day from Monday 1 March 2027 to Sunday 28 March 2027, since one choice serves the whole phase.",
    ],
    [
      "offer/caution-throughout",
      { statement: "knee", who: "Dr Okparavere", from: "2027-03-15", first: "2027-03-01", last: "2027-03-28" },
      "Pain at the front of the knee, from Monday 15 March 2027 on (set by Dr Okparavere): it binds on every day from Monday 1 March 2027 to Sunday 28 March 2027, since one choice serves the whole phase.",
    ],
    [
      "offer/percent-cut",
      { asked: 85, limit: 70, from: ["pressure"] },
      "70 % of the 1RM instead of 85 %: high blood pressure.",
    ],
    [
      "offer/reserve-raised",
      { asked: null, limit: 3, from: ["back", "screening"] },
      "3 in reserve: low-back pain and the screening outcome.",
    ],
    ["offer/no-screening", {}, "0 screening outcomes on record, so nothing is printed. Enter a dated one."],
    [
      "loads/record-old",
      { record, weeks: 20, from: null },
      "20 weeks since 8 repetitions of Goblet squat with 16 kg, 2 in reserve on Monday 1 February 2027: too long ago to tell. Begin light and let the first set decide.",
    ],
    [
      "loads/written-not-here",
      { asked: { value: 102.5, unit: "kg" }, down: { value: 100, unit: "kg" }, up: { value: 105, unit: "kg" } },
      "102.5 kg cannot be made up here; nearest 100 kg or 105 kg.",
    ],
    [
      "calendar/close",
      { with: "a", day: "2027-03-02", hours: 24.5, wanted: 48, muscles: ["chest", "lats"] },
      "24.5 h after Day A on Tuesday 2 March 2027, and 48 h are wanted: both load chest and lats hard.",
    ],
    [
      "calendar/close",
      { with: null, day: "2027-03-02", hours: 24, wanted: 48, muscles: ["chest"] },
      "24 h after the last session on Tuesday 2 March 2027, and 48 h are wanted: both load chest hard.",
    ],
    [
      "calendar/fewer-days",
      { sessions: ["a", "b"], days: ["2027-03-02"] },
      "1 day (Tuesday 2 March 2027) for 2 sessions: Day A and b. One has no day.",
    ],
    [
      "fit/instead",
      { first: "goblet-squat", why: [{ code: "offer/coach-only", data: {} }] },
      "Instead of Goblet squat. Only a coach adds it, by hand.",
    ],
  ];
  for (const [code, data, sentence] of said) {
    test(`${code}: ${sentence}`, () => expect(sayReason({ code, data }, NAMES)).toBe(sentence));
  }
  test("a code that nobody knows is shown as it is", () => {
    expect(sayReason({ code: "new/code", data: {} }, NAMES)).toBe("new/code");
  });
});

test("findings of the bad example and their remedies: whole sentences, nothing missing", () => {
  const read = readProgramme(readFileSync("examples/ropewalk/bad-twin.yaml", "utf8"), "bad-twin.yaml");
  if (!read.ok) return expect.fail("the bad example does not read");
  const { findings } = checkProgramme({ programme: read.value.programme, catalogue: CATALOGUE });
  const sentences = findings.flatMap((finding) => [
    sayFinding(finding),
    ...finding.remedies.map((each) => sayRemedy(each)),
  ]);
  expect(sentences.length).toBeGreaterThan(findings.length);
  for (const sentence of sentences) {
    expect(sentence).toMatch(/^[\p{Lu}\d“].*\.$/su);
    expect(sentence).not.toMatch(/undefined|NaN|\[object|\?|null/);
  }
});

test("findings say the number, then what it means", () => {
  const phase = { phase: "one", title: "Ground", status: "novice" };
  const sets = {
    ...phase,
    side: "under",
    muscle: "lats",
    sets: 1.5,
    from: 4,
    to: 10,
    own: false,
    week: 2,
    weeks: [1, 2, 3],
  };
  expect(sayFinding({ check: "week/sets-outside-band", data: sets })).toBe(
    "1.5 sets a week for lats in “Ground” (weeks 1–3, fewest in week 2): the band for a novice is 4 to 10.",
  );
  const time = {
    ...{ phase: "one", session: "a", title: "Day A", minutes: 45, side: "over", of: "session", week: 1 },
    ...{
      lowS: 3888,
      typicalS: 4320,
      highS: 5400,
      overS: 2700,
      unknown: [],
      assumed: [{ exercise: "x", what: "rest" }],
    },
    parts: { warmUp: 480, setUp: 720, work: 960, rest: 2160, changes: 0, conditioning: 0 },
  };
  expect(sayFinding({ check: "session/over-its-minutes", data: time })).toBe(
    "72 min (65 to 90) for “Day A”, and it has 45. In minutes: warm-up 8, set-up 12, work 16 and rest 36. Taken: 90 s of rest where none is said.",
  );
});

test("a remedy says what it does and what it leaves", () => {
  const fewer = [
    { slot: "a", name: "Squat", from: 4, to: 3 },
    { slot: "b", name: "Row", from: 4, to: 3 },
  ];
  const data = { restS: 90, pairs: [["Press", "Row"]], fewer, typicalS: 2460, highS: 3075, overS: 375 };
  expect(sayRemedy({ id: "shorten", data })).toBe(
    "Rest 1 min 30 s; pair Press with Row; 3 sets instead of 4 of Squat and Row: 41 min, up to 52, 7 min still over at most.",
  );
});

test("a problem says what it is, what was found, what is allowed, a likely cure; and where", () => {
  const problem = {
    code: "dose/not-whole",
    file: "a.yaml",
    at: [],
    line: 12,
    column: 7,
    found: "2.5",
    allowed: "1–20 sets",
    maybe: "2 sets",
  };
  expect(sayProblem(problem)).toBe("A whole number is wanted here. Found: 2.5. Allowed: 1–20 sets. Maybe: 2 sets.");
  expect(sayPlace(problem)).toBe("a.yaml, line 12, column 7");
  expect(sayPlace({ ...problem, line: 0 })).toBe("a.yaml");
});

test("sources are named, our own choices as such", () => {
  expect(saySources("dose/one-sided-without-side")).toBe("Source: Common practice, no source.");
  expect(saySources("session/over-its-minutes")).toContain("Our own choice");
  expect(saySources("no/such-check")).toBe("");
});

test("sentences name no person to blame and cheer nobody", () => {
  const words = [en.problems, en.whys].flatMap((part) => Object.values<string>(part)).join(" ");
  expect(words).not.toMatch(/\b(you|your|fail(ed|ure)?|great job|well done|awesome|sorry|oops)\b|!(?! says)/i);
});

test("another language has to give every sentence", () => {
  const other: Messages = { ...en, frames: { ...en.frames, place: (file, line) => `${file}, Zeile ${line}` } };
  const problem = { code: "yaml/tab", file: "a.yaml", at: [], line: 2, column: 1 };
  expect(sayPlace(problem, other)).toBe("a.yaml, Zeile 2");
});

describe("proposals and their evidence", () => {
  const kg = (value: number) => ({ value, unit: "kg" });
  const cases: readonly (readonly [code: string, data: Record<string, Json>, facts: readonly string[]])[] = [
    [
      "progress/go-to-load",
      { exercise: "goblet-squat", to: kg(16), from: kg(12), percent: 33.3 },
      ["Goblet squat", "16 kg", "12 kg now", "+33.3 %"],
    ],
    ["progress/go-to-load", { exercise: null, to: kg(16), from: null, percent: null }, ["16 kg"]],
    [
      "progress/widen-range",
      { exercise: "goblet-squat", from: { from: 8, to: 10 }, to: { from: 10, to: 15 } },
      ["Goblet squat", "10–15", "8–10 now"],
    ],
    ["progress/pause", { exercise: "goblet-squat", until: "2027-03-08" }, ["Pause Goblet squat", "8 March 2027"]],
    [
      "progress/step-too-large",
      { from: kg(5), to: kg(7.5), percent: 50, most: 10 },
      ["5 kg to 7.5 kg", "50 % more", "10 %"],
    ],
    [
      "progress/pain",
      { where: "knee", howMuch: 6, on: "2027-03-01", exercise: "goblet-squat", hurt: "x" },
      ["6 of 10", "knee", "1 Mar", "Goblet squat"],
    ],
    ["capacity/over-ten", { most: 10 }, ["Cannot judge", "10 repetitions"]],
  ];
  test.each(cases)("%s names its facts with their units", (code, data, facts) => {
    const sentence = sayReason({ code, data }, NAMES);
    for (const fact of facts) expect(sentence).toContain(fact);
    expect(sentence).not.toMatch(/undefined|null|NaN|\?/);
  });
});
