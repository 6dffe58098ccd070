import type { SourceId } from "../sources.ts";

/** What a test counts in. */
export type TestUnit = "repetitions" | "s" | "m" | "cm" | "kg" | "N m" | "m/s" | "points of 10";

/** One thing that must be the same before two results may stand side by side. */
export interface Condition {
  readonly id: string;
  /** Words to choose from; a number with a unit when empty. */
  readonly choices: readonly string[];
  /** What the protocol asks for; results under others stand in another series. */
  readonly standard: string;
}

/** A test that a coach can give with what stands in a gym, in our own words. */
export interface AssessmentTest {
  readonly id: string;
  readonly name: string;
  readonly unit: TestUnit;
  /** More repetitions is better; more seconds of a timed task is not. */
  readonly better: "more" | "less";
  readonly sides: boolean;
  /** How it is given, step by step. */
  readonly protocol: readonly string[];
  readonly conditions: readonly Condition[];
  /** Whether it is taken to the end of what the person can: then screening must allow it. */
  readonly maximal: boolean;
  /** Most that anybody has been seen to do; higher is a slip of the pen. Ours. */
  readonly most: number;
  readonly sources: readonly SourceId[];
}

const shoes: Condition = { id: "feet", choices: ["shoes", "bare"], standard: "shoes" };

/** The tests of the room; every one states what must be the same next time. */
export const ASSESSMENT_TESTS: readonly AssessmentTest[] = [
  {
    id: "chair-stand-30",
    name: "Chair stand, 30 seconds",
    unit: "repetitions",
    better: "more",
    sides: false,
    protocol: [
      "A chair against the wall, seat 43 cm high; arms crossed on the chest, feet flat.",
      "On go, stand up fully and sit down again, as often as is safe in 30 seconds.",
      "More than half-way up at the end counts as a stand: write the full stands and `end`. Using the arms scores 0; note what was done.",
    ],
    conditions: [
      { id: "seat", choices: ["43 cm", "other"], standard: "43 cm" },
      { id: "arms", choices: ["crossed", "used"], standard: "crossed" },
      { id: "end", choices: ["seated", "more than half-way up"], standard: "seated" },
    ],
    maximal: false,
    most: 60,
    sources: ["rikliJones1999"],
  },
  {
    id: "five-rises",
    name: "Five rises from a chair, timed",
    unit: "s",
    better: "less",
    sides: false,
    protocol: ["A chair of 43 cm against the wall, arms crossed.", "Time from go to the fifth full stand."],
    conditions: [{ id: "seat", choices: ["43 cm", "other"], standard: "43 cm" }],
    maximal: false,
    most: 120,
    sources: ["ewgsop2019", "awgs2019"],
  },
  {
    id: "one-leg-stand",
    name: "Stand on one leg, eyes open",
    unit: "s",
    better: "more",
    sides: true,
    protocol: [
      "Beside a rail or wall, arms on the hips, one foot off the floor and off the other leg.",
      "Stop the clock when a foot moves, a hand leaves the hip, or at 60 seconds.",
    ],
    conditions: [shoes, { id: "eyes", choices: ["open", "closed"], standard: "open" }],
    maximal: false,
    most: 60,
    sources: ["bohannon2006"],
  },
  {
    id: "push-up-toes",
    name: "Push-ups from the toes, no time limit",
    unit: "repetitions",
    better: "more",
    sides: false,
    protocol: ["Chin to the floor and arms straight each time, in a row without a rest.", "Stop when form goes twice."],
    conditions: [{ id: "from", choices: ["toes", "knees"], standard: "toes" }],
    maximal: true,
    most: 150,
    sources: ["csepPushUps"],
  },
  {
    id: "push-up-knees",
    name: "Push-ups from the knees, no time limit",
    unit: "repetitions",
    better: "more",
    sides: false,
    protocol: ["As from the toes, knees on a mat, body straight from knee to head.", "Stop when form goes twice."],
    conditions: [{ id: "from", choices: ["knees", "toes"], standard: "knees" }],
    maximal: true,
    most: 150,
    sources: ["csepPushUps"],
  },
  {
    id: "front-plank",
    name: "Front plank",
    unit: "s",
    better: "more",
    sides: false,
    protocol: [
      "On forearms and toes, body straight.",
      "Stop when the hips drop or rise twice, at pain, or at 3 minutes.",
    ],
    conditions: [{ id: "from", choices: ["toes", "knees"], standard: "toes" }],
    maximal: true,
    most: 180,
    sources: ["practice"],
  },
  {
    id: "side-plank",
    name: "Side plank",
    unit: "s",
    better: "more",
    sides: true,
    protocol: [
      "On one forearm, feet one before the other, body straight.",
      "Stop when the hip drops twice, or at pain.",
    ],
    conditions: [{ id: "from", choices: ["feet", "knees"], standard: "feet" }],
    maximal: true,
    most: 180,
    sources: ["practice"],
  },
  {
    id: "dead-hang",
    name: "Hang from a bar",
    unit: "s",
    better: "more",
    sides: false,
    protocol: ["Both hands over the bar at shoulder width, feet free.", "Stop when a hand lets go or at pain."],
    conditions: [{ id: "grip", choices: ["over", "under"], standard: "over" }],
    maximal: true,
    most: 300,
    sources: ["practice"],
  },
  {
    id: "heel-raise",
    name: "Heel raises on one leg",
    unit: "repetitions",
    better: "more",
    sides: true,
    protocol: [
      "Fingertips on a wall, knee straight, one raise every two seconds.",
      "Count raises to full height; stop when height or rhythm goes twice.",
    ],
    conditions: [{ id: "floor", choices: ["flat", "step"], standard: "flat" }],
    maximal: true,
    most: 100,
    sources: ["practice"],
  },
  {
    id: "knee-to-wall",
    name: "Knee to the wall",
    unit: "cm",
    better: "more",
    sides: true,
    protocol: [
      "Foot flat, heel down, knee touches the wall; big toe as far back as that allows.",
      "Measure toe to wall.",
    ],
    conditions: [{ id: "feet", choices: ["bare", "shoes"], standard: "bare" }],
    maximal: false,
    most: 25,
    sources: ["practice"],
  },
  {
    id: "grip",
    name: "Grip strength",
    unit: "kg",
    better: "more",
    sides: true,
    protocol: [
      "Seated, elbow bent square, wrist free, the handle in its second place.",
      "Best of three, a minute between.",
    ],
    conditions: [{ id: "device", choices: [], standard: "" }],
    maximal: true,
    most: 120,
    sources: ["ewgsop2019", "awgs2019"],
  },
  {
    id: "knee-extension-torque",
    name: "Knee straightening, torque at 60° a second",
    unit: "N m",
    better: "more",
    sides: true,
    protocol: [
      "On a device that keeps 60° a second, in a clinic; the sound side first.",
      "Best of three to five, as the report prints it.",
    ],
    conditions: [{ id: "device", choices: [], standard: "" }],
    maximal: true,
    most: 500,
    sources: ["practice"],
  },
  {
    id: "single-hop",
    name: "Single hop for distance",
    unit: "cm",
    better: "more",
    sides: true,
    protocol: ["On one leg, arms free, land on the same leg and hold for 2 seconds.", "Toe to heel, best of three."],
    conditions: [shoes],
    maximal: true,
    most: 400,
    sources: ["practice"],
  },
  {
    id: "triple-hop",
    name: "Triple hop for distance",
    unit: "cm",
    better: "more",
    sides: true,
    protocol: ["Three hops in a row on one leg, hold the last for 2 seconds.", "Toe to heel, best of three."],
    conditions: [shoes],
    maximal: true,
    most: 1000,
    sources: ["practice"],
  },
  {
    id: "side-hop",
    name: "Side hop, 30 seconds",
    unit: "repetitions",
    better: "more",
    sides: true,
    protocol: ["On one leg over two lines 40 cm apart, to and fro for 30 seconds.", "Landings on a line do not count."],
    conditions: [shoes],
    maximal: true,
    most: 120,
    sources: ["practice"],
  },
  {
    id: "usual-walk",
    name: "Usual walking speed",
    unit: "m/s",
    better: "more",
    sides: false,
    protocol: ["From a walking start over a measured 4 m at the usual pace, twice; take the quicker."],
    conditions: [{ id: "aid", choices: ["none", "stick", "frame"], standard: "none" }],
    maximal: false,
    most: 4,
    sources: ["ewgsop2019", "awgs2019"],
  },
  {
    id: "up-and-go",
    name: "Up and go, 3 m",
    unit: "s",
    better: "less",
    sides: false,
    protocol: ["From a chair of 43 cm: stand up, walk 3 m, turn, come back and sit.", "Time from go to seated."],
    conditions: [{ id: "aid", choices: ["none", "stick", "frame"], standard: "none" }],
    maximal: false,
    most: 180,
    sources: ["ewgsop2019"],
  },
  {
    id: "heavy-single-set",
    name: "A hard set of 3 to 10 repetitions",
    unit: "kg",
    better: "more",
    sides: false,
    protocol: [
      "Warm up in three to four lighter sets; then one set to two repetitions in reserve, 3 to 10 repetitions.",
      "The most that could be lifted once is shown as a range from it, never as one figure.",
    ],
    conditions: [{ id: "exercise", choices: [], standard: "" }],
    maximal: false,
    most: 600,
    sources: ["practice"],
  },
];
