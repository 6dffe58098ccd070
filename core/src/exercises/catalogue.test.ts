import { describe, expect, test } from "vitest";
import {
  type Equipment,
  type Exercise,
  type LoadMeaning,
  MUSCLES,
  type Pattern,
  type Position,
  STRESS_TAGS,
} from "../model/index.ts";
import { madeUpExercise, published } from "../testing/index.ts";
import { assemble, CATALOGUE } from "./catalogue.ts";

const ALL = [...CATALOGUE.exercises.values()];

/** The entries for which something is not as it must be, each with what is wrong. */
function wrong(what: (exercise: Exercise) => unknown): readonly string[] {
  return ALL.filter((exercise) => what(exercise)).map(({ id }) => id);
}

function words(text: string): readonly string[] {
  return text.split(/\s+/).filter(Boolean);
}

describe("every entry of the catalogue", () => {
  test("has its own id and its own name", () => {
    expect(wrong(({ id }) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id))).toEqual([]);
    expect(new Set(ALL.map(({ name }) => name.toLowerCase())).size).toBe(ALL.length);
    expect(ALL.length).toBeGreaterThanOrEqual(250);
  });

  test("has a name of at most 40 characters in sentence case", () => {
    // Romanian is the only proper name that the trade has no plain word for.
    const capital = (word: string) => /\p{Lu}/u.test(word) && word !== "Romanian";
    expect(wrong(({ name }) => name.length > 40 || name.trim() !== name)).toEqual([]);
    expect(wrong(({ name }) => !/^[\p{Lu}\d]/u.test(name))).toEqual([]);
    expect(wrong(({ name }) => words(name).slice(1).some(capital))).toEqual([]);
  });

  test("is named by what it is: no country, device, weapon, slang or insult", () => {
    const avoided = [
      ...["bulgarian", "turkish", "nordic", "copenhagen", "russian", "landmine", "trap", "corner", "stepper"],
      ...["skull", "crusher", "pistol", "killer", "superman", "girl", "lady", "man's", "glute", "booty", "butt"],
      ...["burpee", "bear", "crab", "donkey", "frog", "spider", "anatomy", "big three"],
    ];
    expect(wrong(({ name }) => avoided.some((word) => new RegExp(`\\b${word}`, "i").test(name)))).toEqual([]);
  });

  test("counts a muscle as 1 or a half: at most 3 direct and 4 helping", () => {
    const shares = ({ muscles }: Exercise, value: number) => Object.values(muscles).filter((each) => each === value);
    expect(wrong(({ muscles }) => Object.keys(muscles).some((muscle) => !MUSCLES.some((m) => m === muscle)))).toEqual(
      [],
    );
    expect(wrong(({ muscles }) => Object.values(muscles).some((value) => value !== 1 && value !== 0.5))).toEqual([]);
    expect(wrong((exercise) => shares(exercise, 1).length > 3 || shares(exercise, 0.5).length > 4)).toEqual([]);
  });

  test("counts muscles exactly when it is strength work", () => {
    const uncounted: readonly Pattern[] = ["mobility", "balance", "locomotion", "jump", "throw"];
    const counts = ({ muscles }: Exercise) => Object.keys(muscles).length > 0;
    expect(wrong((exercise) => counts(exercise) === uncounted.includes(exercise.pattern))).toEqual([]);
  });

  test("counts nothing as direct when it is a swing, which ends far from failure", () => {
    const swings = ALL.filter(({ mode, pattern }) => mode === "ballistic" && pattern === "hinge");
    expect(swings.length).toBeGreaterThan(0);
    expect(swings.filter(({ muscles }) => Object.values(muscles).includes(1)).map(({ id }) => id)).toEqual([]);
  });

  test("has known stress tags, graded 1 to 3", () => {
    expect(wrong(({ stress }) => Object.keys(stress).some((tag) => !STRESS_TAGS.some((t) => t === tag)))).toEqual([]);
    expect(wrong(({ stress }) => Object.values(stress).some((grade) => ![1, 2, 3].includes(grade)))).toEqual([]);
  });

  test("says that one must get down when it is done on a mat or on the knees", () => {
    const low: readonly Position[] = [
      "supine",
      "prone",
      "side-lying",
      "hands and knees",
      "half-kneeling",
      "tall-kneeling",
    ];
    expect(wrong(({ position, stress }) => low.includes(position) && !((stress.floor ?? 0) >= 1))).toEqual([]);
  });

  test("is done on each side when it is one arm, one leg or a split stance, and only then changes sides", () => {
    expect(wrong(({ limb, eachSide }) => /^one |^split/.test(limb) && !eachSide)).toEqual([]);
    expect(wrong(({ eachSide, switchS }) => eachSide !== switchS > 0)).toEqual([]);
  });

  test("has three outward cues of at most 8 words that say what to do", () => {
    const long = (cue: string) => words(cue).length > 8;
    expect(wrong(({ cues }) => cues.length !== 3 || new Set(cues).size !== 3)).toEqual([]);
    expect(wrong(({ cues }) => cues.some((cue) => cue.trim() === "" || long(cue)))).toEqual([]);
    expect(wrong(({ cues }) => cues.some((cue) => /\b(don['’]?t|do not|not|never|avoid)\b/i.test(cue)))).toEqual([]);
  });

  test("has a set-up of at most 25 words and a move of at most 30", () => {
    expect(wrong(({ setUp }) => words(setUp).length > 25 || words(setUp).length < 4)).toEqual([]);
    expect(wrong(({ move }) => words(move).length > 30 || words(move).length < 4)).toEqual([]);
  });

  test("has three faults, each with what is seen, why, and a first fix", () => {
    expect(wrong(({ faults }) => faults.length !== 3)).toEqual([]);
    expect(wrong(({ faults }) => faults.some((fault) => Object.values(fault).some((text) => text.length < 3)))).toEqual(
      [],
    );
  });

  test("takes positive whole seconds to set up and a plausible time for one repetition", () => {
    const odd = (value: number) => !(Number.isInteger(value) && value >= 0);
    expect(wrong(({ setupS, changeS, moveS, switchS }) => [setupS, changeS, moveS, switchS].some(odd))).toEqual([]);
    expect(wrong(({ secondsPerRep }) => !(secondsPerRep > 0 && secondsPerRep <= 30))).toEqual([]);
  });

  test("asks first for a form that exists and is another one", () => {
    const bad = ({ id, need: { count } }: Exercise) => count && (count.of === id || !CATALOGUE.exercises.has(count.of));
    expect(wrong(bad)).toEqual([]);
    const amounts = ({ need: { count } }: Exercise) => count && count.reps === undefined && count.holdS === undefined;
    expect(wrong(amounts)).toEqual([]);
  });

  test("shares no fault with another entry", () => {
    const lines = ALL.flatMap(({ faults }) =>
      faults.map(({ see, why, fix }) => `${see} | ${why} | ${fix}`.toLowerCase()),
    );
    expect(lines.filter((line, i) => lines.indexOf(line) !== i)).toEqual([]);
  });

  test("shares its three faults with nobody: not what is seen, not why, not the fix", () => {
    for (const part of ["see", "why", "fix"] as const) {
      const triples = ALL.map(({ faults }) =>
        faults
          .map((fault) => fault[part].toLowerCase())
          .sort()
          .join(" | "),
      );
      expect(triples.filter((triple, i) => triples.indexOf(triple) !== i)).toEqual([]);
    }
  });

  test("shares no run of six words in its cues with another entry", () => {
    const owner = new Map<string, string>();
    const shared: string[] = [];
    for (const { id, cues } of ALL) {
      const runs = cues.flatMap((cue) => {
        const said = words(cue.toLowerCase().replace(/[^\p{L}\p{N}\s'-]/gu, ""));
        return said.slice(5).map((_, i) => said.slice(i, i + 6).join(" "));
      });
      for (const run of new Set(runs)) {
        if (owner.has(run)) shared.push(`${owner.get(run)} and ${id}: ${run}`);
        owner.set(run, id);
      }
    }
    expect(shared).toEqual([]);
    expect(owner.size).toBeGreaterThan(50);
  });
});

/** How many entries each pattern was planned to have at least, 250 in all: ours. */
const PLANNED: Readonly<Record<Pattern, number>> = {
  squat: 14,
  hinge: 16,
  bridge: 8,
  "single leg": 18,
  "horizontal push": 16,
  "vertical push": 11,
  "horizontal pull": 14,
  "vertical pull": 10,
  carry: 8,
  rotation: 5,
  "anti-rotation": 7,
  "anti-extension": 12,
  "anti-lateral flexion": 7,
  "mixed hold": 5,
  "trunk flexion and extension": 6,
  jump: 9,
  throw: 4,
  "power lift": 6,
  "upper isolation": 22,
  "lower isolation": 14,
  locomotion: 14,
  mobility: 18,
  balance: 6,
};

test("every pattern has the entries that were planned for it", () => {
  expect(Object.values(PLANNED).reduce((sum, count) => sum + count, 0)).toBe(250);
  const counts = Object.entries(PLANNED).map(([pattern, planned]) => {
    return [pattern, planned, ALL.filter((exercise) => exercise.pattern === pattern).length] as const;
  });
  expect(counts.filter(([, planned, found]) => found < planned)).toEqual([]);
});

/** Tags that an implement brings with it by itself: how it is held, how heavy it can be. All others are the movement's. */
const OF_THE_IMPLEMENT: readonly string[] = [
  "grip",
  "wr_ext",
  "elbow",
  "neck",
  "sp_axial",
  "sp_hold",
  "pressor",
  "abd_press",
];

test("at most three entries in ten differ from another by the implement alone", () => {
  const movement = ({
    pattern,
    limb,
    plane,
    position,
    mode,
    amounts,
    eachSide,
    lowering,
    muscles,
    stress,
  }: Exercise) => {
    const tags = Object.entries(stress).filter(([tag]) => !OF_THE_IMPLEMENT.includes(tag));
    return JSON.stringify([
      [pattern, limb, plane, position, mode, amounts, eachSide, lowering],
      Object.entries(muscles).sort(),
      tags.sort(),
    ]);
  };
  const made = ALL.map((exercise) => ({ movement: movement(exercise), needs: JSON.stringify(exercise.needs) }));
  const alike = made.filter((one) =>
    made.some((other) => other.movement === one.movement && other.needs !== one.needs),
  );
  expect(alike.length).toBeGreaterThan(0);
  expect(alike.length / ALL.length).toBeLessThanOrEqual(0.3);
});

describe("what the number beside an exercise means fits what it needs", () => {
  const STACKS: readonly Equipment[] = [
    ...(["cable", "pull-down machine", "row machine", "leg press", "hack squat machine", "leg curl machine"] as const),
    ...(["leg extension machine", "chest press machine", "chest fly machine", "shoulder press machine"] as const),
    ...(["hip abduction machine", "calf machine"] as const),
  ];
  const IN_HAND: readonly Equipment[] = ["dumbbell", "kettlebell", "weighted ball", "sandbag", "bag", "backpack"];
  const BARS: readonly Equipment[] = ["barbell", "curl bar", "hex bar", "guided-bar rack", "angled bar"];
  const CARRIER: Readonly<Partial<Record<LoadMeaning, readonly Equipment[]>>> = {
    total: [...BARS, "sled", "plates", "hack squat machine", "leg press"],
    "per hand": IN_HAND,
    "one implement": [...IN_HAND, "plates"],
    stack: STACKS,
    "added to body": [...IN_HAND, "weight vest", "dip belt", "ankle weight", "plates"],
    assist: ["assisted pull-up machine"],
    band: ["band"],
  };

  test.each(Object.entries(CARRIER))("%s", (meaning, carriers) => {
    const without = wrong(
      ({ loadMeaning, needs }) =>
        loadMeaning === meaning && !needs.some((group) => group.some((each) => carriers.includes(each))),
    );
    expect(without).toEqual([]);
  });

  test("body only, height and none need nothing that is loaded", () => {
    // A weight that must be there is a load with a number; a bar in a rack may also be a thing to hold on to.
    const loaded: readonly Equipment[] = [
      ...STACKS,
      "dumbbell",
      "kettlebell",
      "weighted ball",
      "dip belt",
      "weight vest",
    ];
    const free: readonly LoadMeaning[] = ["body only", "height", "none"];
    const only = (group: readonly Equipment[]) => group.every((each) => loaded.includes(each));
    expect(wrong(({ loadMeaning, needs }) => free.includes(loadMeaning) && needs.some(only))).toEqual([]);
  });

  test("something is needed whenever there is a number, and nothing of an empty group", () => {
    expect(wrong(({ needs }) => needs.some((group) => group.length === 0))).toEqual([]);
  });
});

describe("shares of body mass", () => {
  const share = (id: string) => CATALOGUE.exercises.get(id)?.bodyShare?.share ?? Number.NaN;

  // Lower leg and foot of the published segment masses do not move with the body; men, then women.
  published("deLeva1996", "share moved in a two-leg squat", [
    ["worked", "table 4, men: 1 − 2 × (0.0433 + 0.0137)", () => share("body-squat"), 0.886, 0.01],
    ["worked", "table 4, women: 1 − 2 × (0.0481 + 0.0129)", () => share("body-squat"), 0.878, 0.01],
  ]);
  published("deLeva1996", "share moved in a one-leg squat", [
    ["worked", "table 4, men: 1 − (0.0433 + 0.0137)", () => share("one-leg-squat-free"), 0.943, 0.01],
    ["worked", "table 4, women: 1 − (0.0481 + 0.0129)", () => share("one-leg-squat-free"), 0.939, 0.01],
  ]);
  published("deLeva1996", "share moved in a one-leg calf raise", [
    ["worked", "table 4, men: 1 − 0.0137", () => share("one-leg-calf-raise"), 0.9863, 0.01],
  ]);
  published("helme2020", "lead-foot share with the rear foot elevated", [
    ["printed", "mean of all loads", () => share("rear-foot-split-squat"), 0.844, 0],
  ]);

  test("lie between a tenth and the whole, and name their source", () => {
    expect(wrong(({ bodyShare }) => bodyShare && !(bodyShare.share >= 0.1 && bodyShare.share <= 1))).toEqual([]);
    expect(wrong(({ bodyShare, sources }) => bodyShare && !sources.includes(bodyShare.source))).toEqual([]);
  });
});

test("a catalogue with the same id twice is refused, by name", () => {
  const one = madeUpExercise({ id: "one" });
  expect(() => assemble([one, madeUpExercise({ id: "two" }), one], [])).toThrow('"one"');
  const ladder = { id: "l", name: "L", start: "one", steps: [] };
  expect(() => assemble([one], [ladder, ladder])).toThrow('"ladder l"');
  expect(assemble([one], [ladder]).exercises.get("one")).toBe(one);
});
