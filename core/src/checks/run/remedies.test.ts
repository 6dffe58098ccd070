import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { day } from "../../day.ts";
import { CATALOGUE } from "../../exercises/index.ts";
import { editProgramme, type Finding, type Programme, readProgramme, type Severity } from "../../model/index.ts";
import { madeUpPerson, madeUpPlace } from "../../testing/index.ts";
import { REMEDY_IDS } from "../../text/index.ts";
import { CHECKS, type CheckInput, checkProgramme, runChecks } from "../index.ts";
import { identityOf } from "./identity.ts";

const HEAD = `# A coach's own remark
stave: 1
id: fixture
title: Fixture
version: 1
goal: general
`;

/** Programmes that each have something wrong; between them every check finds something. */
const PLAIN: Readonly<Record<string, string>> = {
  "a name slipped, a side left out, no pull and no trunk work": `${HEAD}status: novice
units: kg
phases:
  - key: base
    title: Base
    weeks: 4
    light: [4]
    sessions:
      - key: a
        title: Day A
        minutes: 60
        work:
          - { slot: a-squat, pattern: squat, first: goblet-sqaut, dose: "3 × 8–10, rest 90 s, 2 in reserve" }
          # stays with its slot
          - slot: a-split
            pattern: single leg
            first: split-squat
            dose: 2 × 8, rest 60 s
            changes:
              - { week: 3, dose: "3 × 8, rest 60 s" }
          - { slot: a-push, pattern: horizontal push, first: floor-push-up, dose: "3 × 8–12, rest 60 s" }
          - { slot: a-hinge, pattern: hinge, first: kettlebell-deadlift, dose: "3 × 10, rest 60 s" }
`,
  "too long, in long rests": `${HEAD}status: intermediate
units: kg
weekly:
  sets: { chest: 2–20, lats: 2–20, front thigh: 2–20, buttocks: 2–20, back thigh: 0–20, mid back: 2–20 }
phases:
  - key: base
    title: Base
    weeks: 2
    sessions:
      - key: a
        title: Day A
        minutes: 45
        warmup:
          - { do: cycle-upright, dose: 1 × 8 min }
          - { ramp: a-squat, sets: 2 }
        work:
          - { slot: a-squat, pattern: squat, first: barbell-back-squat, dose: "4 × 8, rest 120 s" }
          - { slot: a-bench, pattern: horizontal push, first: dumbbell-bench-press, dose: "4 × 8, rest 120 s" }
          - { slot: a-row, pattern: horizontal pull, first: one-arm-row, dose: "4 × 8 each side, rest 120 s" }
          - pair:
              - { slot: a-press, pattern: vertical push, first: dumbbell-press-seated, dose: 4 × 10 }
              - { slot: a-pull, pattern: vertical pull, first: lat-pull-down, dose: 4 × 10 }
            restS: 120
          - { slot: a-plank, pattern: anti-extension, first: forearm-plank, dose: "4 × 30 s, rest 60 s" }
`,
  "shares that nobody can do so often": `${HEAD}status: advanced
units: lb
phases:
  - key: peak
    title: Peak
    weeks: 3
    sessions:
      - key: a
        title: Day A
        minutes: 90
        work:
          - { slot: a-squat, pattern: squat, first: barbell-back-squat, dose: "5 × 5 @90 %, rest 180 s" }
          - slot: a-bench
            pattern: horizontal push
            first: barbell-bench-press
            dose: 1 × 3 @90 % + 3 × 12 @85 %, rest 120 s
            changes: [{ week: 2, dose: "3 × 20 @90 %" }]
          - { slot: a-curl, pattern: upper isolation, first: dumbbell-curl, dose: 3 × 10 each side }
`,
  "a block for size that is a beginner's fifth week": `${HEAD.replace("general", "size")}status: intermediate
units: kg
weekly:
  sets: { chest: 0–40, front shoulder: 0–40, side shoulder: 0–40, rear shoulder: 0–40, rotator cuff: 0–40, lats: 0–40, mid back: 0–40, upper traps: 0–40, biceps: 0–40, triceps: 0–40, forearm: 0–40, front trunk: 0–40, side trunk: 0–40, low back: 0–40, buttocks: 0–40, side hip: 0–40, inner thigh: 0–40, front thigh: 0–40, back thigh: 0–40, calf: 0–40 }
phases:
  - key: one
    title: One
    weeks: 4
    sessions:
      - key: a
        title: Day A
        minutes: 200
        work:
          - { slot: bench-a, pattern: horizontal push, first: barbell-bench-press, dose: "4 × 8, rest 90 s, 2 in reserve" }
          - { slot: row-a, pattern: horizontal pull, first: one-arm-row, dose: "4 × 8 each side, rest 90 s, 2 in reserve" }
          - { slot: plank-a, pattern: anti-extension, first: forearm-plank, dose: "2 × 120 s, rest 60 s" }
      - key: b
        title: Day B
        minutes: 200
        warmup: [{ do: cycle-upright, dose: 5 min }]
        work:
          # goes behind the squat
          - { slot: hip-b, pattern: lower isolation, first: standing-hip-extension, dose: "2 × 12 each side, rest 60 s" }
          - { slot: squat-b, pattern: squat, first: back-squat, dose: "2 × 3, rest 45 s, 2 in reserve" }
          - { slot: row-b, pattern: horizontal pull, first: one-arm-row, dose: "4 × 8 each side, rest 90 s, 2 in reserve" }
      - key: c
        title: Day C
        minutes: 200
        warmup: [{ do: cycle-upright, dose: 5 min }]
        work:
          - pair:
              - { slot: leg-c, pattern: squat, first: leg-press-mid, dose: "2 × 10, 2 in reserve" }
              - { slot: one-c, pattern: single leg, first: one-leg-press, dose: "2 × 10 each side, 2 in reserve" }
            restS: 60
          - { slot: row-c, pattern: horizontal pull, first: one-arm-row, dose: "4 × 8 each side, rest 90 s, 2 in reserve" }
      - key: d
        title: Day D
        minutes: 200
        warmup: [{ do: cycle-upright, dose: 5 min }]
        work:
          - { slot: split-d, pattern: single leg, first: split-squat-support, dose: "2 × 8 each side, rest 60 s, 2 in reserve" }
          - { slot: row-d, pattern: horizontal pull, first: one-arm-row, dose: "4 × 8 each side, rest 90 s, 2 in reserve" }
  - key: two
    title: Two
    weeks: 2
    sessions:
      - key: a
        title: Day A
        minutes: 200
        warmup: [{ do: cycle-upright, dose: 5 min }]
        work:
          - { slot: lunge-2, pattern: single leg, first: reverse-lunge, dose: "6 × 8 each side, rest 60 s, 2 in reserve" }
          - { slot: squat-2, pattern: squat, first: back-squat, dose: "6 × 8, rest 2 min, 2 in reserve" }
      - key: b
        title: Day B
        minutes: 200
        warmup: [{ do: cycle-upright, dose: 5 min }]
        work:
          - { slot: squat-2b, pattern: squat, first: back-squat, dose: "6 × 8, rest 2 min, 2 in reserve" }
  - key: three
    title: Three
    weeks: 2
    light: [1, 2]
    sessions:
      - key: a
        title: Day A
        minutes: 200
        warmup: [{ do: cycle-upright, dose: 5 min }]
        work:
          - { slot: squat-3, pattern: squat, first: back-squat, dose: "2 × 8, rest 2 min, 4 in reserve" }
      - key: b
        title: Day B
        minutes: 200
        warmup: [{ do: cycle-upright, dose: 5 min }]
        work:
          - { slot: squat-3b, pattern: squat, first: back-squat, dose: "2 × 8, rest 2 min, 4 in reserve" }
`,
  "a beginner's first day": `${HEAD}status: novice
units: kg
phases:
  - key: one
    title: One
    weeks: 4
    sessions:
      - key: a
        title: Day A
        minutes: 90
        warmup: [{ do: cycle-upright, dose: 5 min }]
        work:
          - { slot: squat, pattern: squat, first: goblet-squat, dose: "3 × 8, rest 90 s, 1 in reserve" }
          - { slot: bench, pattern: horizontal push, first: barbell-bench-press, dose: "1 × 2 @90 %, rest 2 min, 3 in reserve" }
          - { slot: row, pattern: horizontal pull, first: one-arm-row, dose: "2 × 8, rest 60 s, 3 in reserve" }
`,
  "a season without an end": `${HEAD.replace("general", "size")}status: novice
units: kg
weekly:
  gap: 24
phases:
  - key: one
    title: One
    weeks: 9
    sessions:
      - key: a
        title: Day A
        minutes: 200
        warmup: [{ do: cycle-upright, dose: 20 min }]
        work:
          - { slot: wall, pattern: horizontal push, first: wall-push-up, dose: "2 × 8, tempo 6-0-6-0, rest 90 s, 3 in reserve", way: load }
          - { slot: squat, pattern: squat, first: goblet-squat, dose: "2 × 8, rest 90 s, 3 in reserve" }
          - { slot: jump, pattern: jump, first: snap-down, dose: "8 × 10 contacts, rest 60 s" }
      - { key: b, title: Day B, minutes: 200, warmup: [{ do: cycle-upright, dose: 5 min }], work: [{ slot: b, pattern: hinge, first: kettlebell-deadlift, dose: "2 × 8, rest 90 s, 0 in reserve" }] }
      - { key: c, title: Day C, minutes: 200, warmup: [{ do: cycle-upright, dose: 5 min }], work: [{ slot: c, pattern: hinge, first: kettlebell-deadlift, dose: "2 × 8, rest 90 s, 0 in reserve" }] }
      - { key: d, title: Day D, minutes: 200, warmup: [{ do: cycle-upright, dose: 5 min }], work: [{ slot: d, pattern: hinge, first: kettlebell-deadlift, dose: "4 × 8, rest 90 s, 0 in reserve" }] }
      - { key: e, title: Day E, minutes: 45, work: [], conditioning: [{ do: rowing-machine, dose: 30 min, effort: steady }] }
  - key: two
    title: Two
    weeks: 4
    sessions:
      - key: a
        title: Day A
        minutes: 200
        warmup: [{ do: cycle-upright, dose: 5 min }]
        work: [{ slot: f, pattern: hinge, first: kettlebell-deadlift, dose: "2 × 8, rest 90 s, 3 in reserve", way: stay }]
        conditioning: [{ do: rowing-machine, dose: 90 min, effort: steady }]
`,
};

/** For people: somebody of 70 with thin bones who was away, and somebody of 15. */
const ON = day("2027-03-01");
const OLDER = madeUpPerson({
  born: day("1957-01-01"),
  perWeek: 1,
  cautions: [{ statement: "bone", from: day("2027-01-01"), recheck: day("2027-06-01"), who: "Dr Example" }],
  lifts: [{ exercise: "barbell-bench-press", load: { value: 60, unit: "kg" }, reps: 8, on: day("2027-01-15") }],
  recent: [{ week: day("2027-01-11"), sets: { chest: 4, "front thigh": 4 } }],
});
const YOUNG = madeUpPerson({ born: day("2011-06-01"), status: "intermediate" });
const FOR_THEM = `${HEAD}status: intermediate
units: kg
phases:
  - key: one
    title: One
    weeks: 4
    sessions:
${["a", "b", "c", "d"]
  .map((key) => {
    const session = `      - { key: ${key}, title: Day ${key}, minutes: 200, warmup: [{ do: cycle-upright, dose: 5 min }], work: [`;
    const slots = [
      `{ slot: row-${key}, pattern: horizontal pull, first: cable-row-seated, dose: "1 × 8, 2 in reserve" }`,
      ...(key === "a"
        ? [
            '{ slot: dead, pattern: hinge, first: barbell-deadlift, dose: "1 × 6 @85 %, 2 in reserve" }',
            '{ slot: leg, pattern: squat, first: leg-press-mid, dose: "4 × 8–12, rest 2 min, 0 in reserve" }',
            '{ slot: bench, pattern: horizontal push, first: barbell-bench-press, dose: "8 × 8 @60 kg, rest 2 min, 2 in reserve" }',
          ]
        : []),
    ];
    return `${session}${slots.join(", ")}] }\n`;
  })
  .join("")}`;

/** 8 kg is not there, and the pair after 6 kg is half as heavy again. */
const ROOM = madeUpPlace({ dumbbells: { loads: [4, 6, 10].map((value) => ({ value, unit: "kg" })), pairs: true } });
const NOT_HERE = PLAIN["a beginner's first day"]!.replace("2 × 8, rest 60 s", "2 × 8 @8 kg, rest 60 s");

interface Fixture {
  readonly text: string;
  readonly about: Pick<CheckInput, "person" | "on" | "place">;
}
const FIXTURES: Readonly<Record<string, Fixture>> = {
  ...Object.fromEntries(Object.entries(PLAIN).map(([name, text]) => [name, { text, about: {} }])),
  "wrong for somebody of 70 who comes back": { text: FOR_THEM, about: { person: OLDER, on: ON } },
  "a load that is not in the room": { text: NOT_HERE, about: { place: ROOM } },
  "wrong for somebody of 15": { text: FOR_THEM, about: { person: YOUNG, on: ON } },
};

const RANK: Readonly<Record<Severity, number>> = { stop: 2, warn: 1, note: 0 };

function read(text: string): Programme {
  const result = readProgramme(text, "fixture.yaml");
  if (!result.ok) return expect.fail(`does not read: ${JSON.stringify(result.problems)}\n${text}`);
  return result.value.programme;
}

/** The fixtures are checked once for all tests: their remedies take long to try. */
const CHECKED = new WeakMap<Fixture, readonly Finding[]>();

function check(fixture: Fixture): readonly Finding[] {
  const known = CHECKED.get(fixture);
  if (known !== undefined) return known;
  const { text, about } = fixture;
  const { findings } = checkProgramme({ programme: read(text), catalogue: CATALOGUE, ...about });
  CHECKED.set(fixture, findings);
  return findings;
}

/** Its findings alone: those of the same programme with remedies are equal to them. */
function findingsOf({ text, about }: Fixture): readonly Finding[] {
  return runChecks({ programme: read(text), catalogue: CATALOGUE, ...about }, [], "none").findings;
}

/** Applies each remedy of each finding to the text and holds what is promised of it. */
function holdRemedies(fixture: Fixture): number {
  const { text, about } = fixture;
  const before = check(fixture);
  const rankBefore = new Map(before.map((finding) => [identityOf(finding), RANK[finding.severity]]));
  let applied = 0;
  for (const finding of before) {
    for (const remedy of finding.remedies) {
      const edited = editProgramme(text, remedy.edits);
      if (!edited.ok) expect.fail(`${finding.check}: ${JSON.stringify([remedy, edited.problems])}`);
      else {
        applied++;
        const after = findingsOf({ text: edited.value, about });
        const mine = after.find((each) => identityOf(each) === identityOf(finding));
        const name = `${finding.check} ${remedy.id} ${JSON.stringify(remedy.data)}`;
        const left = Number(remedy.data["overS"] ?? 0);
        if (left > 0) expect(mine?.data["overS"], name).toBe(left);
        else expect(mine, name).toBeUndefined();
        const come = after.filter((each) => {
          if (each === mine || RANK[each.severity] < RANK[finding.severity]) return false;
          return RANK[each.severity] > (rankBefore.get(identityOf(each)) ?? -1);
        });
        expect(
          come.map((each) => [each.check, each.data]),
          name,
        ).toEqual([]);
      }
    }
  }
  return applied;
}

describe("every remedy, applied to the text, leaves a programme that reads, lacks the finding and has none as serious", () => {
  for (const [name, fixture] of Object.entries(FIXTURES)) {
    test(name, () => expect(holdRemedies(fixture)).toBeGreaterThan(0));
  }

  test("in programmes of any exercises and doses", () => {
    const ids = [...CATALOGUE.exercises.values()].filter(({ amounts }) => amounts === "reps");
    const slot = fc.record({
      exercise: fc.constantFrom(...ids),
      sets: fc.integer({ min: 1, max: 6 }),
      reps: fc.integer({ min: 1, max: 15 }),
      restS: fc.constantFrom(undefined, 60, 120, 240),
      percent: fc.constantFrom(undefined, undefined, 70, 85, 95),
      sides: fc.boolean(),
      slip: fc.integer({ min: 0, max: 9 }),
    });
    const programme = fc.record({
      status: fc.constantFrom("novice", "intermediate", "advanced"),
      minutes: fc.integer({ min: 3, max: 18 }),
      slots: fc.array(slot, { minLength: 1, maxLength: 7 }),
    });
    let applied = 0;
    fc.assert(
      fc.property(programme, ({ status, minutes, slots }) => {
        const lines = slots.map(({ exercise, sets, reps, restS, percent, sides, slip }, index) => {
          const first = slip === 0 ? `${exercise.id.slice(0, -1)}` : exercise.id;
          const rest = restS === undefined ? "" : `, rest ${restS} s`;
          const share = percent === undefined ? "" : ` @${percent} %`;
          const dose = `${sets} × ${reps}${sides ? " each side" : ""}${share}${rest}`;
          return `          - { slot: s-${index}, pattern: ${exercise.pattern}, first: ${first.replace(/-$/, "")}, dose: "${dose}" }`;
        });
        const text = `${HEAD}status: ${status}\nunits: kg\nphases:\n  - key: one\n    title: One\n    weeks: 4\n    sessions:\n      - key: a\n        title: Day A\n        minutes: ${minutes * 5}\n        work:\n${lines.join("\n")}\n`;
        applied += holdRemedies({ text, about: {} });
      }),
      { numRuns: 20, seed: 7 },
    );
    expect(applied).toBeGreaterThan(100);
  });
});

test("the fixtures between them make every check speak", () => {
  const findings = Object.values(FIXTURES).flatMap(check);
  expect(new Set(findings.map(({ check: id }) => id))).toEqual(new Set(CHECKS.map(({ id }) => id)));
});

test("the fixtures between them offer every remedy that there is", () => {
  const offered = Object.values(FIXTURES).flatMap((fixture) => check(fixture).flatMap(({ remedies }) => remedies));
  expect([...new Set(offered.map(({ id }) => id))].sort()).toEqual([...REMEDY_IDS].sort());
});

test("comments and order survive a remedy", () => {
  const text = PLAIN["a name slipped, a side left out, no pull and no trunk work"]!;
  const [slip] = check({ text, about: {} }).filter((finding) => finding.check === "slot/unknown-exercise");
  const edited = editProgramme(text, slip?.remedies[0]?.edits ?? []);
  expect(edited.ok && edited.value).toBe(text.replace("goblet-sqaut", "goblet-squat"));
});

test("of remedies that are one way to the same end only the first that holds is offered; names that are near each", () => {
  const ONE_WAY = ["add-slot", "more-sets", "fewer-sets", "over-two-sessions", "drop-light", "into-table"];
  const offered = Object.values(FIXTURES).flatMap((fixture) => check(fixture).map(({ remedies }) => remedies));
  for (const remedies of offered) {
    const ids = remedies.map(({ id }) => id).filter((id) => ONE_WAY.includes(id));
    expect(ids).toEqual([...new Set(ids)]);
  }
  const near = offered.map((remedies) => remedies.filter(({ id }) => id === "take-near-name").length);
  expect(Math.max(...near)).toBeGreaterThan(1);
});

test("what only lessens a finding is offered too, with what it leaves", () => {
  const offered = Object.values(FIXTURES).flatMap((fixture) => check(fixture).flatMap(({ remedies }) => remedies));
  const left = offered.filter(({ id, data }) => id === "shorten" && Number(data["overS"]) > 0);
  expect(left.length).toBeGreaterThan(0);
});
