import { describe, expect, test } from "vitest";
import { WEEKDAYS, type Weekday } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { type Pattern, type Programme, readProgramme, type Slot, slotsOf } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  timeOf,
} from "../testing/index.ts";
import { activityMinutes } from "./activity-minutes.ts";
import { overItsMinutes } from "./over-its-minutes.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";
import { checkProgramme } from "./run/run-checks.ts";
import { warmUpTooLong } from "./warm-up-too-long.ts";

describe("cp-05 a 45-minute session of six exercises, 4 sets of 40 s each, rest 120 s, 2 min to change and set up", () => {
  // Ten repetitions of 4 s are a set of 40 s. Each exercise has a muscle of its own, so none competes with another.
  const kinds: readonly (readonly [Pattern, string])[] = [
    ["squat", "front thigh"],
    ["horizontal push", "chest"],
    ["hinge", "back thigh"],
    ["horizontal pull", "mid back"],
    ["anti-extension", "front trunk"],
    ["vertical push", "side shoulder"],
  ];
  const easy = madeUpExercise({ id: "easy", pattern: "locomotion", mode: "cyclic", amounts: "time" });
  const catalogue = madeUpCatalogue([
    easy,
    ...kinds.map(([pattern, muscle]) =>
      madeUpExercise({
        id: muscle.replace(" ", "-"),
        pattern,
        muscles: { [muscle]: 1 },
        secondsPerRep: 4,
        setupS: 120,
      }),
    ),
  ]);
  const dose = sets(4, reps(10), { restS: 120 });
  const work = kinds.map(([pattern, muscle]): Slot => madeUpSlot(muscle.replace(" ", "-"), pattern, dose));
  const programme = (minutes: number, slots = work) =>
    madeUpProgramme([madeUpSession("a", minutes, slots, { warmup: [{ do: "easy", dose: sets(1, timeOf(480)) }] })]);
  const found = (minutes: number, slots = work) =>
    overItsMinutes.run(lookAt({ programme: programme(minutes, slots), catalogue }));

  test("takes 72 minutes: warm-up 8, work 16, rest 36, changes 12; it stops", () => {
    expect(found(45)).toMatchObject([
      {
        severity: "stop",
        data: { typicalS: 72 * 60, parts: { warmUp: 480, work: 960, rest: 2160, setUp: 720 } },
      },
    ]);
  });

  const cuts = (found(45)[0]!.cures?.() ?? []).filter(({ id }) => id === "shorten");

  test("3 sets and 90 s of rest are 50 minutes; pairs of movements that do not compete go under 45", () => {
    const minutes = cuts.map(({ data }) => ({
      pairs: (data["pairs"] as readonly unknown[]).length,
      typical: Number(data["typicalS"]) / 60,
    }));
    expect(minutes).toContainEqual({ pairs: 0, typical: 50 });
    const paired = minutes.filter(({ pairs }) => pairs === 3);
    expect(Math.min(...paired.map(({ typical }) => typical))).toBeLessThan(45);
  });

  test("every cut that is offered keeps all six movements", () => {
    expect(cuts.length).toBeGreaterThan(2);
    for (const { changes } of cuts) {
      const left = changed(programme(45), changes).phases[0]!.sessions[0]!.work.flatMap(slotsOf);
      expect(left.map(({ pattern }) => pattern).sort()).toEqual(kinds.map(([pattern]) => pattern).sort());
    }
  });

  test("neighbour: with 90 minutes for it, or with two exercises, nothing is found", () => {
    expect(found(90)).toEqual([]);
    expect(found(45, work.slice(0, 2))).toEqual([]);
  });
});

/** A day of a week: what is done first, and in how many sets of ten with two left. */
type Work = readonly (readonly [pattern: Pattern, first: string, sets: number])[];

/** A week as somebody brings it, written as a file. */
function brought(
  days: Readonly<Record<string, Work>>,
  head = "goal: size\nstatus: intermediate",
  dose = "× 10, rest 90 s, 2 in reserve",
) {
  const sessions = Object.entries(days).map(([title, work]) => {
    const slots = work.map(([pattern, first, sets], n) => {
      const key = `${title}-${n}`.toLowerCase().replace(/[^a-z0-9]+/g, "-");
      const asked =
        dose === ""
          ? ""
          : `, dose: "${sets} ${CATALOGUE.exercises.get(first)!.eachSide ? dose.replace(/10/, "10 each side") : dose}"`;
      return `          - { slot: ${key}, pattern: ${pattern}, first: ${first}${asked} }`;
    });
    const easy = '        conditioning:\n          - { do: walk-brisk, dose: "40 min", effort: steady }';
    const done = slots.length > 0 ? `        work:\n${slots.join("\n")}` : `        work: []\n${easy}`;
    return `      - key: ${title.toLowerCase()}\n        title: ${title}\n        minutes: 90\n${done}`;
  });
  const phase = `  - key: all\n    title: All\n    weeks: 6\n    sessions:\n${sessions.join("\n")}`;
  return readProgramme(
    `stave: 1\nid: brought\ntitle: Brought\nversion: 1\n${head}\nunits: kg\nphases:\n${phase}\n`,
    "brought.yaml",
  );
}

function programmeOf(read: ReturnType<typeof brought>): Programme {
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value.programme;
}

const LEGS: Work = [
  ["squat", "back-squat", 4],
  ["squat", "leg-press-mid", 3],
  ["hinge", "barbell-rdl", 4],
  ["lower isolation", "leg-curl", 4],
];
const CHEST: Work = [
  ["horizontal push", "barbell-bench-press", 4],
  ["horizontal push", "incline-press-30", 4],
  ["upper isolation", "cable-fly", 2],
];
const SHOULDERS: Work = [
  ["vertical push", "dumbbell-press-seated", 4],
  ["upper isolation", "front-raise", 3],
  ["upper isolation", "lateral-raise", 3],
];
const BACK: Work = [
  ["vertical pull", "lat-pull-down", 4],
  ["horizontal pull", "cable-row-seated", 4],
  ["horizontal pull", "chest-supported-row", 4],
];
const BICEPS: Work = [["upper isolation", "dumbbell-curl", 4]];
const TRICEPS: Work = [["upper isolation", "press-down", 4]];

describe("cp-01: chest and biceps on Monday, shoulders and triceps on Tuesday, back, legs, and easy work on Saturday; “every muscle has 48 hours”", () => {
  const days = (...free: Weekday[]) =>
    madeUpPerson({
      status: "intermediate",
      minutes: 90,
      windows: free.map((on) => ({ day: on, from: 1020, to: 1140, cost: 0 })),
    });
  const split = programmeOf(
    brought({ Mon: [...CHEST, ...BICEPS], Tue: [...SHOULDERS, ...TRICEPS], Wed: BACK, Thu: LEGS, Sat: [] }),
  );
  const found = (programme: Programme, person = days("mon", "tue", "wed", "thu", "sat")) =>
    checkProgramme({ programme, catalogue: CATALOGUE, person }).findings;
  const close = (programme: Programme, person?: ReturnType<typeof days>) =>
    found(programme, person).filter(({ check }) => check === "week/close-sessions");

  test("it is not so: what presses on Monday helps with, Tuesday trains 24 hours later", () => {
    const [pair, ...others] = close(split);
    expect(pair?.data).toMatchObject({ before: "Mon", title: "Tue", hours: 24, wanted: 48, helping: true, days: 5 });
    expect(pair?.data["muscles"]).toEqual(["front shoulder", "triceps"]);
    // Helpers are loaded, not driven: a note and no warning.
    expect(pair?.severity).toBe("note");
    // Monday's curls and Wednesday's pulls are 48 hours apart, which is enough.
    expect(others).toEqual([]);
  });

  test("each muscle is trained directly once a week, and two rounds are offered for the same sets", () => {
    const once = found(split).find(({ check }) => check === "week/muscle-once");
    const muscles = once?.data["muscles"] as readonly { readonly muscle: string; readonly sets: number }[];
    expect(muscles.map(({ muscle }) => muscle)).toEqual(
      expect.arrayContaining(["chest", "lats", "front thigh", "back thigh"]),
    );
    expect(once?.severity).toBe("warn");
    expect(once?.remedies.map(({ id }) => id)).toEqual(["over-two-sessions"]);
  });

  test("neighbour: legs between the two, and nothing is too close", () => {
    const spread = programmeOf(
      brought({ Mon: [...CHEST, ...BICEPS], Tue: LEGS, Wed: [...SHOULDERS, ...TRICEPS], Thu: BACK, Sat: [] }),
    );
    expect(close(spread).flatMap(({ data }) => (data["title"] === "Wed" ? [data] : []))).toEqual([]);
  });

  test("neighbour: Tuesday also presses the chest itself, and it is a warning", () => {
    const twice = programmeOf(
      brought({ Mon: [...CHEST, ...BICEPS], Tue: [...CHEST, ...TRICEPS], Wed: BACK, Thu: LEGS, Sat: [] }),
    );
    expect(close(twice)[0]).toMatchObject({ severity: "warn", data: { hours: 24, helping: false } });
  });

  test("neighbour: with every day free the four hard days can be spread, and nothing is told", () => {
    const four = programmeOf(
      brought({ Mon: [...CHEST, ...BICEPS], Tue: [...SHOULDERS, ...TRICEPS], Wed: BACK, Thu: LEGS }),
    );
    expect(close(four, days(...WEEKDAYS))).toEqual([]);
  });
});

describe("cp-03: a first session of 8 × 20 dumbbell squats with 30 s of rest, 5 × 30 push-ups, lunges, deadlifts, trunk", () => {
  const session = (squats: string, pushes: string, status: string) => {
    const slots = [
      `{ slot: squat, pattern: squat, first: goblet-squat, dose: "${squats}" }`,
      `{ slot: push, pattern: horizontal push, first: floor-push-up, dose: "${pushes}" }`,
      '{ slot: lunge, pattern: single leg, first: forward-lunge, dose: "3 × 12 each side, rest 60 s, 2 in reserve" }',
      '{ slot: hinge, pattern: hinge, first: dumbbell-rdl, dose: "3 × 12, rest 60 s, 2 in reserve" }',
      '{ slot: row, pattern: horizontal pull, first: one-arm-row, dose: "2 × 10 each side, rest 60 s, 3 in reserve" }',
      '{ slot: trunk, pattern: anti-extension, first: forearm-plank, dose: "2 × 30 s, rest 60 s" }',
    ];
    const text = `stave: 1\nid: first\ntitle: First\nversion: 1\ngoal: size\nstatus: ${status}\nunits: kg\nphases:\n  - key: one\n    title: One\n    weeks: 4\n    sessions:\n      - key: a\n        title: A\n        minutes: 90\n        work:\n${slots.map((slot) => `          - ${slot}\n`).join("")}`;
    const read = readProgramme(text, "first.yaml");
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    return checkProgramme({ programme: read.value.programme, catalogue: CATALOGUE }).findings;
  };
  const far = (findings: ReturnType<typeof session>) =>
    findings.filter(({ check, data }) => check === "session/first-dose" && data["side"] === "far too much");

  test.each(["novice", "intermediate", "advanced"])("stops whatever the form says of her: %s", (status) => {
    const [first] = far(session("8 × 20, rest 30 s", "5 × 30, rest 60 s", status));
    expect(first?.severity).toBe("stop");
    const muscles = first!.data["muscles"] as readonly { readonly muscle: string; readonly reps: number }[];
    const reps = Object.fromEntries(muscles.map(({ muscle, reps: done }) => [muscle, done]));
    expect(reps["front thigh"]).toBeGreaterThanOrEqual(160);
    expect(reps["chest"]).toBe(150);
  });

  test("one or two sets of each movement are offered, and they end it", () => {
    const [first] = far(session("8 × 20, rest 30 s", "5 × 30, rest 60 s", "intermediate"));
    const fewer = first!.remedies.find(({ id }) => id === "fewer-sets");
    const sets = (fewer?.data["slots"] as readonly { readonly slot: string; readonly to: number }[]) ?? [];
    expect(sets.map(({ slot }) => slot)).toEqual(expect.arrayContaining(["squat", "push"]));
    for (const { to } of sets) expect(to).toBeLessThanOrEqual(2);
  });

  test("30 s of rest between sets of squats is told too", () => {
    const findings = session("8 × 20, rest 30 s", "5 × 30, rest 60 s", "intermediate");
    expect(findings.find(({ check }) => check === "dose/rest-too-short")?.data).toMatchObject({
      slot: "squat",
      restS: 30,
    });
  });

  test("neighbour: 2 × 10 of each stops nobody", () => {
    const fine = session("2 × 10, rest 90 s, 3 in reserve", "2 × 10, rest 90 s, 3 in reserve", "intermediate");
    expect(far(fine)).toEqual([]);
    expect(fine.filter(({ severity }) => severity === "stop")).toEqual([]);
  });
});

describe("cp-07: chest and triceps, legs and shoulders, back and biceps, and no sets, repetitions or loads", () => {
  const days = { Mon: [...CHEST, ...TRICEPS], Wed: [...LEGS, ...SHOULDERS], Fri: [...BACK, ...BICEPS], Sun: [] };
  const slots = Object.values(days).flat().length;

  test("the first answer is a question for every dose, and nothing is judged", () => {
    const read = brought(days, undefined, "");
    if (read.ok) throw new Error("It was read without its doses");
    expect(read.problems.map(({ code }) => code)).toEqual(Array.from({ length: slots }, () => "key/missing"));
    for (const { at, allowed, line } of read.problems) {
      expect([at.at(-1), allowed]).toContain("dose");
      expect(line).toBeGreaterThan(0);
    }
  });

  test("neighbour: with them, each muscle once a week is said, and two exposures for the same work; no movement is exchanged", () => {
    const { findings } = checkProgramme({ programme: programmeOf(brought(days)), catalogue: CATALOGUE });
    const once = findings.find(({ check }) => check === "week/muscle-once");
    const muscles = once!.data["muscles"] as readonly { readonly muscle: string }[];
    expect(muscles.map(({ muscle }) => muscle)).toEqual(expect.arrayContaining(["chest", "lats", "front thigh"]));
    const remedies = findings.flatMap((finding) => finding.remedies);
    expect(remedies.flatMap(({ edits }) => edits).filter(({ at }) => at.at(-1) === "first")).toEqual([]);
  });

  test("without a word on effort or loads nothing is said of loads", () => {
    const silent = programmeOf(brought(days, undefined, "× 10, rest 90 s"));
    const { findings } = checkProgramme({ programme: silent, catalogue: CATALOGUE });
    const aboutLoads = ["dose/too-heavy-for-novice", "dose/reps-unlikely-at-share"];
    expect(findings.filter(({ check }) => aboutLoads.includes(check))).toEqual([]);
  });
});

describe("cd-07: lifts Monday to Thursday, one day of conditioning, asks about ten minutes before lifting (real question)", () => {
  const cycle = madeUpExercise({ id: "cycle", pattern: "locomotion", mode: "cyclic", amounts: "time" });
  const ride = (minutes: number) => ({ do: "cycle", dose: sets(1, timeOf(60 * minutes)) });
  const easy = (minutes: number) => ({ ...ride(minutes), effort: "easy" as const });
  const lift = [madeUpSlot("squat", "squat", sets(3, reps(8)))];
  const week = (before: number, alone: number, after: number) =>
    lookAt({
      programme: madeUpProgramme(
        [
          ...["mon", "tue", "wed", "thu"].map((key, index) =>
            madeUpSession(key, 90, lift, {
              warmup: [ride(before)],
              conditioning: index < 2 && after > 0 ? [easy(after)] : [],
            }),
          ),
          madeUpSession("sat", 120, [], { conditioning: [easy(alone)] }),
        ],
        { goal: "size" },
      ),
      catalogue: madeUpCatalogue([cycle]),
    });

  test("ten easy minutes before the work are a good warm-up; its neighbour of twenty is longer than that", () => {
    expect(warmUpTooLong.run(week(10, 60, 0))).toEqual([]);
    expect(warmUpTooLong.run(week(20, 60, 0))).toHaveLength(4);
  });

  test("one day is under the advised 150 minutes; a long one with two blocks of 25 after lifting is not", () => {
    expect(activityMinutes.run(week(10, 60, 0))).toMatchObject([
      { data: { side: "under", equivalent: 60, least: 150 } },
    ]);
    expect(activityMinutes.run(week(10, 60, 25))).toMatchObject([{ data: { equivalent: 110 } }]);
    expect(activityMinutes.run(week(10, 100, 25))).toEqual([]);
  });
});
