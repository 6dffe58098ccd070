import { describe, expect, test } from "vitest";
import { day } from "../../day.ts";
import { CATALOGUE } from "../../exercises/index.ts";
import { type Finding, readPlaces, readProgramme, readRoster } from "../../model/index.ts";
import { sayFinding } from "../../text/index.ts";
import { checkProgramme } from "./run-checks.ts";

/**
 * Whole programmes as a coach writes them, after published templates and in our own words, for people and places that
 * they suit: nothing may bark.
 */

/** After Garber et al. 2011: two or three days, every large muscle, 2 to 4 sets of 8 to 12. */
const EVENING = `# For adults who start in the evening at a full room: two days, ten movements, after the stand of 2011.
stave: 1
id: evening-basics
title: Evening basics
version: 1
about: Two evenings a week for adults who begin, each large muscle on both, eight to twelve at a load that leaves some over.
goal: general
status: novice
units: kg
phases:
  - key: one
    title: Six weeks
    weeks: 6
    light: [6]
    sessions:
      - key: a
        title: Monday
        minutes: 60
        warmup:
          - { do: cycle-upright, dose: 5 min, or: [walk-brisk] }
          - { ramp: a-squat, sets: 1 }
        work:
          - { slot: a-squat, pattern: squat, first: goblet-squat, dose: "2 × 8–12, rest 2 min, 3 in reserve" }
          - { slot: a-push, pattern: horizontal push, first: chest-press-machine, dose: "2 × 8–12, rest 2 min, 3 in reserve" }
          - { slot: a-row, pattern: horizontal pull, first: cable-row-seated, dose: "2 × 8–12, rest 2 min, 3 in reserve" }
          - { slot: a-curl, pattern: lower isolation, first: leg-curl, dose: "2 × 10–12, rest 90 s, 3 in reserve" }
          - { slot: a-trunk, pattern: anti-extension, first: bench-plank, dose: "2 × 20–30 s, rest 1 min" }
          - { slot: a-side, pattern: anti-lateral flexion, first: side-plank-knees, dose: "2 × 15–20 s each side, rest 45 s" }
      - key: b
        title: Thursday
        minutes: 60
        warmup:
          - { do: rowing-machine, dose: 5 min, or: [cycle-upright] }
          - { ramp: b-hinge, sets: 1 }
        work:
          - { slot: b-hinge, pattern: hinge, first: dumbbell-rdl, dose: "2 × 8–12, rest 2 min, 3 in reserve" }
          - { slot: b-step, pattern: single leg, first: step-up-20, dose: "2 × 8–10 each side, rest 90 s, 3 in reserve" }
          - { slot: b-push, pattern: horizontal push, first: incline-press-30, dose: "2 × 8–12, rest 2 min, 3 in reserve" }
          - { slot: b-pull, pattern: vertical pull, first: lat-pull-down, dose: "2 × 8–12, rest 2 min, 3 in reserve" }
          - { slot: b-row, pattern: horizontal pull, first: chest-supported-row, dose: "2 × 8–12, rest 2 min, 3 in reserve" }
          - { slot: b-trunk, pattern: anti-extension, first: dead-bug, dose: "2 × 8–10, rest 45 s" }
          - { slot: b-carry, pattern: carry, first: suitcase-carry, dose: "2 × 20 m each side, rest 60 s" }
`;

/** After Fragala et al. 2019 and WHO 2020: two to three sets, some of it fast, balance on three days. */
const SEVENTY = `# For people of 65 and more, at home or in a small room, three mornings: strength, quick rises, standing still on less.
stave: 1
id: steady-at-seventy
title: Steady at seventy
version: 1
about: Three mornings a week for people over 65 who are new to it. Legs first, some rises done quickly, balance on every day.
goal: general
status: novice
units: kg
phases:
  - key: one
    title: Eight weeks
    weeks: 8
    light: [4, 8]
    sessions:
      - key: a
        title: First morning
        minutes: 50
        warmup: [{ do: march-in-place, dose: 5 min, or: [walk-easy] }]
        work:
          - { slot: a-rise, pattern: squat, first: sit-to-stand-45, dose: "2 × 8–10, rest 2 min, 3 in reserve, tempo 2-0-x-0" }
          - { slot: a-push, pattern: horizontal push, first: counter-push-up, dose: "2 × 8–12, rest 2 min, 3 in reserve" }
          - { slot: a-row, pattern: horizontal pull, first: band-row-seated, dose: "2 × 10–12, rest 2 min, 3 in reserve" }
          - { slot: a-trunk, pattern: anti-extension, first: wall-forearm-plank, dose: "2 × 20 s, rest 45 s" }
          - { slot: a-stand, pattern: balance, first: one-leg-stand-support, dose: "2 × 20 s each side, rest 30 s" }
      - key: b
        title: Second morning
        minutes: 50
        warmup: [{ do: march-in-place, dose: 5 min, or: [walk-easy] }]
        work:
          - { slot: b-hinge, pattern: hinge, first: dumbbell-rdl, dose: "2 × 10–12, rest 2 min, 3 in reserve" }
          - { slot: b-step, pattern: single leg, first: step-up-low, dose: "2 × 8 each side, rest 90 s, 3 in reserve" }
          - { slot: b-pull, pattern: vertical pull, first: band-pull-down, dose: "2 × 10–12, rest 2 min, 3 in reserve" }
          - { slot: b-side, pattern: anti-lateral flexion, first: wall-side-plank, dose: "2 × 15 s each side, rest 45 s" }
          - { slot: b-stand, pattern: balance, first: heel-to-toe-stand, dose: "2 × 20 s each side, rest 30 s" }
        conditioning: [{ do: walk-brisk, dose: 10 min, effort: steady }]
      - key: c
        title: Third morning
        minutes: 50
        warmup: [{ do: march-in-place, dose: 5 min, or: [walk-easy] }]
        work:
          - { slot: c-rise, pattern: squat, first: sit-to-stand-45, dose: "2 × 8–10, rest 2 min, 3 in reserve" }
          - { slot: c-hinge, pattern: hinge, first: dumbbell-rdl, dose: "2 × 10–12, rest 2 min, 3 in reserve" }
          - { slot: c-push, pattern: horizontal push, first: band-press-seated, dose: "2 × 10–12, rest 2 min, 3 in reserve" }
          - { slot: c-row, pattern: horizontal pull, first: band-row-seated, dose: "2 × 10–12, rest 2 min, 3 in reserve" }
          - { slot: c-trunk, pattern: anti-extension, first: wall-forearm-plank, dose: "2 × 20 s, rest 45 s" }
          - { slot: c-side, pattern: anti-lateral flexion, first: wall-side-plank, dose: "2 × 15 s each side, rest 45 s" }
          - { slot: c-walk, pattern: balance, first: weight-shifts, dose: "2 × 30 s, rest 30 s" }
`;

/** After Lloyd et al. 2014: one or two sets of 8 to 12 at 60 % at most, two days with days between. */
const CLUB = `# For a school club of 14 and 15, a coach always there: learn first, light, two days with days between.
stave: 1
id: first-club
title: First club
version: 1
about: Two afternoons a week for young people who learn to lift. One or two sets, light enough to look the same at the end.
goal: general
status: novice
units: kg
phases:
  - key: learn
    title: Eight weeks of learning
    weeks: 8
    light: [4, 8]
    sessions:
      - key: a
        title: Tuesday
        minutes: 45
        warmup: [{ do: march-in-place, dose: 4 min, or: [walk-brisk] }, { do: arm-reaches, dose: 1 × 10 }]
        work:
          - { slot: a-squat, pattern: squat, first: goblet-squat, dose: "2 × 8–12 @60 %, rest 1 min, 4 in reserve" }
          - { slot: a-push, pattern: horizontal push, first: push-up-30, dose: "2 × 8–10, rest 1 min, 3 in reserve" }
          - { slot: a-row, pattern: horizontal pull, first: inverted-row-45, dose: "2 × 8–12, rest 1 min, 3 in reserve" }
          - { slot: a-curl, pattern: lower isolation, first: leg-curl, dose: "2 × 10–12 @60 %, rest 1 min, 4 in reserve" }
          - { slot: a-trunk, pattern: anti-extension, first: forearm-plank, dose: "2 × 20 s, rest 45 s" }
          - { slot: a-side, pattern: anti-lateral flexion, first: side-plank-knees, dose: "2 × 15–20 s each side, rest 45 s" }
      - key: b
        title: Friday
        minutes: 50
        warmup: [{ do: march-in-place, dose: 4 min, or: [walk-brisk] }, { do: hip-circles, dose: 1 × 8 each side }]
        work:
          - { slot: b-jump, pattern: jump, first: snap-down, dose: "3 × 5 contacts, rest 1 min" }
          - { slot: b-hinge, pattern: hinge, first: kettlebell-deadlift, dose: "2 × 8–12 @60 %, rest 1 min, 4 in reserve" }
          - { slot: b-split, pattern: single leg, first: split-squat-free, dose: "2 × 8–10 each side, rest 1 min, 3 in reserve" }
          - { slot: b-push, pattern: horizontal push, first: push-up-30, dose: "2 × 8–10, rest 1 min, 3 in reserve" }
          - { slot: b-row, pattern: horizontal pull, first: one-arm-row, dose: "2 × 8–12 each side, rest 1 min, 3 in reserve" }
          - { slot: b-trunk, pattern: anti-extension, first: forearm-plank, dose: "2 × 20 s, rest 45 s" }
          - { slot: b-carry, pattern: carry, first: suitcase-carry, dose: "2 × 20 m each side, rest 1 min" }
`;

/** After Schoenfeld et al. 2021: ten weekly sets and more, at most about ten a session, 6 to 12 near the limit. */
const SIZE = `# For people with a year or two behind them who want to grow: upper and lower in turn, four days, ten sets and more.
stave: 1
id: four-day-size
title: Four days, upper and lower
version: 1
about: Upper and lower body in turn, four days a week, six to twelve with one or two left, for people past their first year.
goal: size
status: intermediate
units: kg
weekly:
  sets: { side shoulder: 3–12, rear shoulder: 4–14, rotator cuff: 0–6, upper traps: 0–10, forearm: 2–14, low back: 3–12, inner thigh: 3–12, side hip: 1–8, calf: 4–10, side trunk: 2–10, front trunk: 3–12 }
phases:
  - key: grow
    title: Five weeks up, one down
    weeks: 6
    light: [6]
    sessions:
      - key: a
        title: Upper one
        minutes: 75
        warmup: [{ do: rowing-machine, dose: 5 min }, { ramp: a-bench, sets: 2 }]
        work:
          - { slot: a-bench, pattern: horizontal push, first: barbell-bench-press, dose: "4 × 6–10, rest 2 min, 2 in reserve" }
          - { slot: a-row, pattern: horizontal pull, first: chest-supported-row, dose: "4 × 8–12, rest 2 min, 2 in reserve" }
          - { slot: a-press, pattern: vertical push, first: dumbbell-press-seated, dose: "4 × 8–12, rest 90 s, 2 in reserve" }
          - { slot: a-pull, pattern: vertical pull, first: lat-pull-down, dose: "3 × 8–12, rest 90 s, 2 in reserve" }
          - pair:
              - { slot: a-curl, pattern: upper isolation, first: dumbbell-curl, dose: "3 × 10–15, 1 in reserve" }
              - { slot: a-tri, pattern: upper isolation, first: press-down, dose: "3 × 10–15, 1 in reserve" }
            restS: 60
      - key: b
        title: Lower one
        minutes: 75
        warmup: [{ do: cycle-upright, dose: 5 min }, { ramp: b-squat, sets: 2 }]
        work:
          - { slot: b-squat, pattern: squat, first: back-squat, dose: "3 × 6–10, rest 3 min, 2 in reserve" }
          - { slot: b-rdl, pattern: hinge, first: barbell-rdl, dose: "4 × 8–10, rest 2 min, 2 in reserve" }
          - { slot: b-ext, pattern: lower isolation, first: leg-extension, dose: "3 × 10–15, rest 90 s, 1 in reserve" }
          - { slot: b-curl, pattern: lower isolation, first: leg-curl, dose: "3 × 10–15, rest 90 s, 1 in reserve" }
          - { slot: b-calf, pattern: lower isolation, first: calf-machine-raise, dose: "3 × 10–15, rest 90 s, 1 in reserve" }
          - { slot: b-trunk, pattern: anti-extension, first: long-lever-plank, dose: "3 × 15–25 s, rest 60 s" }
      - key: c
        title: Upper two
        minutes: 75
        warmup: [{ do: rowing-machine, dose: 5 min }, { ramp: c-pull, sets: 1 }]
        work:
          - { slot: c-pull, pattern: vertical pull, first: assisted-pull-up, dose: "4 × 6–10, rest 2 min, 2 in reserve" }
          - { slot: c-incline, pattern: horizontal push, first: incline-press-30, dose: "4 × 8–12, rest 2 min, 2 in reserve" }
          - { slot: c-row, pattern: horizontal pull, first: one-arm-row, dose: "3 × 8–12 each side, rest 60 s, 2 in reserve" }
          - { slot: c-raise, pattern: upper isolation, first: lateral-raise, dose: "3 × 12–15, rest 60 s, 1 in reserve" }
          - { slot: c-rear, pattern: horizontal pull, first: face-pull, dose: "3 × 12–15, rest 60 s, 2 in reserve" }
          - pair:
              - { slot: c-curl, pattern: upper isolation, first: hammer-curl, dose: "3 × 10–15, 1 in reserve" }
              - { slot: c-tri, pattern: upper isolation, first: press-down, dose: "3 × 10–15, 1 in reserve" }
            restS: 60
      - key: d
        title: Lower two
        minutes: 75
        warmup: [{ do: cycle-upright, dose: 5 min }, { ramp: d-thrust, sets: 2 }]
        work:
          - { slot: d-thrust, pattern: bridge, first: hip-thrust, dose: "4 × 8–12, rest 2 min, 2 in reserve" }
          - { slot: d-split, pattern: single leg, first: rear-foot-split-squat, dose: "3 × 8–10 each side, rest 90 s, 2 in reserve" }
          - { slot: d-press, pattern: squat, first: leg-press-mid, dose: "3 × 10–12, rest 2 min, 2 in reserve" }
          - { slot: d-curl, pattern: lower isolation, first: leg-curl, dose: "3 × 10–15, rest 90 s, 1 in reserve" }
          - { slot: d-calf, pattern: lower isolation, first: calf-machine-raise, dose: "3 × 12–15, rest 60 s, 1 in reserve" }
          - { slot: d-side, pattern: anti-lateral flexion, first: side-plank, dose: "2 × 20–30 s each side, rest 45 s" }
        conditioning: [{ do: cycle-upright, dose: 8 min, effort: steady }]
`;

const PEOPLE = `stave: 1
people:
  - id: odile
    name: Odile Warrander
    born: 1981-05-12
    mass: { load: 68 kg, on: 2027-01-02 }
    status: novice
    units: kg
    place: ropewalk
    programme: evening-basics
    windows: [mon thu 18:00–19:30]
    minutes: 60
    screening: { outcome: no reason found, on: 2027-01-02, until: 2028-01-01, by: Imke Farrowdale }
  - id: benedikt
    name: Benedikt Thornquill
    born: 1955-09-30
    mass: { load: 74 kg, on: 2027-01-02 }
    status: novice
    units: kg
    place: front-room
    programme: steady-at-seventy
    windows: [mon wed fri 09:30–10:45]
    minutes: 50
    screening: { outcome: start light to moderate, on: 2027-01-02, until: 2028-01-01, by: Imke Farrowdale, effort: moderate }
    rungs: { squat: sit-to-stand-45, push-up: counter-push-up, hinge: dumbbell-rdl, step-up: step-up-low }
  - id: solvi
    name: Solvi Marchbanks
    born: 2012-06-01
    mass: { load: 52 kg, on: 2027-01-02 }
    status: novice
    units: kg
    place: ropewalk
    programme: first-club
    windows: [tue fri 16:00–17:00]
    minutes: 50
    screening: { outcome: no reason found, on: 2027-01-02, until: 2028-01-01, by: Imke Farrowdale }
    cautions: [{ statement: young, from: 2027-01-02, recheck: 2027-03-27, who: Imke Farrowdale }]
    rungs: { squat: goblet-squat, push-up: push-up-30, row: inverted-row-45, hinge: kettlebell-deadlift, single-leg: split-squat-free, front-trunk: forearm-plank, side-plank: side-plank-knees, jump: snap-down }
  - id: rurik
    name: Rurik Ashmole
    born: 1996-11-20
    mass: { load: 82 kg, on: 2027-01-02 }
    status: intermediate
    units: kg
    place: ropewalk
    programme: four-day-size
    windows: [mon tue thu fri 18:00–20:00]
    minutes: 75
    screening: { outcome: no reason found, on: 2027-01-02, until: 2028-01-01, by: Imke Farrowdale }
`;

const PLACES = `stave: 1
places:
  - id: ropewalk
    name: Room
    zone: Europe/London
    open: [mon–sun 06:30–21:00]
    has: { rack: 2, barbell: 3, adjustable bench: 2, bench: 2, rail: 1, box: 4, straps: 2, pull-up bar: 1, parallel bars: 1, cable: 2, pull-down machine: 1, row machine: 1, leg press: 1, chest press machine: 1, leg curl machine: 1, leg extension machine: 1, calf machine: 1, assisted pull-up machine: 1, cycle: 4, rowing machine: 2, ab wheel: 1 }
    dumbbells: { pairs: [1–10 kg by 1, 12.5–32.5 kg by 2.5] }
    kettlebells: 8–24 kg by 4
    bars: [20 kg]
    plates: { 20 kg: 4, 10 kg: 4, 5 kg: 4, 2.5 kg: 4, 1.25 kg: 2 }
    stacks: { cable: 5–75 kg by 5, pull-down machine: 5–100 kg by 5, row machine: 5–100 kg by 5, leg press: 10–200 kg by 10, chest press machine: 5–90 kg by 5, leg curl machine: 5–80 kg by 5, leg extension machine: 5–80 kg by 5, calf machine: 10–150 kg by 10, assisted pull-up machine: 5–80 kg by 5 }
  - id: front-room
    name: Front room
    zone: Europe/London
    open: [mon–sun 06:30–21:00]
    has: { rail: 1 }
    dumbbells: { pairs: [2–10 kg by 2] }
    bands: [A, B, C]
`;

function findings(text: string, who?: string): readonly Finding[] {
  const read = readProgramme(text, "programme.yaml");
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const places = readPlaces(PLACES, "places.yaml");
  const people = readRoster(PEOPLE, "people.yaml");
  if (!places.ok || !people.ok) throw new Error(JSON.stringify({ places, people }));
  const person = people.value.value.find(({ id }) => id === who);
  const place = places.value.value.find(({ id }) => id === person?.place);
  const about = person && place ? { person, place, on: day("2027-01-11") } : {};
  return checkProgramme({ programme: read.value.programme, catalogue: CATALOGUE, ...about }).findings;
}
const said = (found: readonly Finding[]) => found.map((finding) => sayFinding(finding));

describe("good programmes stay silent, alone and for a person at their place", () => {
  test.each([
    ["two evenings for adults who begin", EVENING, "odile"],
    ["three mornings at seventy, at home", SEVENTY, "benedikt"],
    ["a school club of fourteen", CLUB, "solvi"],
    ["four days for size", SIZE, "rurik"],
  ])("%s", (_, text, who) => {
    for (const found of [findings(text), findings(text, who)]) {
      expect(said(found.filter(({ severity }) => severity !== "note"))).toEqual([]);
      // A note names the muscles that get helping sets alone: to know, and nothing to mend.
      const told = found.map(({ check, data }) => [check, data["side"]]);
      expect(told.filter(([, side]) => side !== "helping only")).toEqual([]);
    }
  });

  test("one slip in each is found", () => {
    const slips: readonly (readonly [text: string, from: string, to: string, check: string])[] = [
      [
        EVENING,
        'first: dumbbell-rdl, dose: "2 × 8–12, rest 2 min, 3 in reserve"',
        'first: dumbbell-rdl, dose: "9 × 8–12, rest 2 min, 3 in reserve"',
        "session/over-its-minutes",
      ],
      [
        SEVENTY,
        'first: wall-side-plank, dose: "2 × 15 s',
        'first: wall-side-plank, dose: "2 × 90 s',
        "dose/hold-outside-range",
      ],
      [
        CLUB,
        "2 × 8–12 @60 %, rest 1 min, 4 in reserve",
        "2 × 3 @92 %, rest 1 min, 0 in reserve",
        "dose/too-heavy-for-novice",
      ],
      [SIZE, "rest 3 min, 2 in reserve", "rest 40 s, 2 in reserve", "dose/rest-too-short"],
    ];
    for (const [text, from, to, check] of slips) {
      expect(text).toContain(from);
      expect(findings(text.replace(from, to)).map((found) => found.check)).toContain(check);
    }
  });
});

describe("trunk work, of which no weekly figure was printed", () => {
  const fewer = EVENING.replace('first: dead-bug, dose: "2 × 8–10', 'first: dead-bug, dose: "1 × 8–10');
  const trunk = (text: string) =>
    findings(text)
      .filter(({ check, data }) => check === "week/sets-outside-band" && data["muscle"] === "front trunk")
      .map(({ severity, data }) => [severity, data["side"], data["sets"]]);
  test("three sets a week are a note", () => expect(trunk(fewer)).toEqual([["note", "under", 3]]));
  test("four are silent", () => expect(trunk(EVENING)).toEqual([]));
  test("under the programme's own band it warns", () => {
    expect(trunk(fewer.replace("phases:", "weekly: { sets: { front trunk: 4–10 } }\nphases:"))).toEqual([
      ["warn", "under", 3],
    ]);
  });
  test("too much warns as for any muscle", () => {
    const more = EVENING.replace('first: dead-bug, dose: "2 × 8–10', 'first: dead-bug, dose: "9 × 8–10');
    expect(trunk(more)).toEqual([["warn", "over", 11]]);
  });
});
