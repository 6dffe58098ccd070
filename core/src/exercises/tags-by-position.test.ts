import { describe, expect, test } from "vitest";
import type { Equipment, Exercise, LoadMeaning, StressTag } from "../model/index.ts";
import { CATALOGUE } from "./catalogue.ts";

/**
 * What the wording of the grades (guide to the catalogue, 5.1) says of whole groups of entries, whoever graded them: a
 * position, a support or a way of moving that brings at least this grade with it. Exceptions are written out.
 */
const ALL = [...CATALOGUE.exercises.values()];
const SUPPORTS: readonly Equipment[] = ["rail", "counter", "wall", "chair"];
const supported = ({ needs, hands }: Exercise) =>
  hands !== "none" && needs.some((each) => each.some((one) => SUPPORTS.includes(one)));
const needs = ({ needs: groups }: Exercise, what: Equipment) => groups.some((group) => group.includes(what));

interface Rule {
  readonly says: string;
  readonly tag: StressTag;
  readonly least: 1 | 2 | 3;
  readonly of: (exercise: Exercise) => boolean;
  /** Graded lower for a reason that the wording gives. */
  readonly but?: Readonly<Record<string, string>>;
}

const RULES: readonly Rule[] = [
  {
    says: "the whole body hangs from the arms",
    tag: "sh_overhead",
    least: 2,
    of: ({ position, pattern }) => position === "hanging" && pattern === "vertical pull",
    but: { "box-hang": "the feet carry most of it" },
  },
  {
    says: "a grip that tires hangs the body",
    tag: "grip",
    least: 2,
    of: ({ position, pattern }) => position === "hanging" && pattern === "vertical pull",
  },
  { says: "pressed at 45° and more", tag: "sh_overhead", least: 2, of: ({ pattern }) => pattern === "vertical push" },
  {
    says: "lies flat, or the trunk lifts",
    tag: "supine",
    least: 2,
    of: ({ position }) => position === "supine",
    but: {
      "bench-bridge": "shoulders raised",
      "hip-thrust": "shoulders raised",
      "one-leg-hip-thrust": "shoulders raised",
      "floor-to-stand": "lying is left at once",
    },
  },
  { says: "face-down", tag: "prone", least: 1, of: ({ position }) => position === "prone" },
  { says: "half-kneeling on a pad", tag: "kneel", least: 2, of: ({ position }) => position === "half-kneeling" },
  { says: "both kneecaps loaded", tag: "kneel", least: 3, of: ({ position }) => position === "tall-kneeling" },
  {
    says: "hands and knees",
    tag: "kneel",
    least: 1,
    of: ({ position }) => position === "hands and knees",
    but: {
      "knees-off-hold": "knees in the air",
      "knees-off-shoulder-tap": "knees in the air",
      "hands-feet-crawl": "knees in the air",
    },
  },
  {
    says: "must get to the floor and back: on all fours",
    tag: "floor",
    least: 3,
    of: ({ position }) => position === "hands and knees",
  },
  {
    says: "must get to the floor and back: on the side",
    tag: "floor",
    least: 3,
    of: ({ position }) => position === "side-lying",
  },
  {
    says: "half-kneeling is half-way to the floor",
    tag: "floor",
    least: 2,
    of: ({ position }) => position === "half-kneeling" || position === "tall-kneeling",
  },
  {
    says: "free one-leg work",
    tag: "balance",
    least: 2,
    of: (exercise) => exercise.limb === "one leg" && exercise.position === "standing" && !supported(exercise),
    but: { "cable-hip-abduction": "a hand on the frame" },
  },
  {
    says: "one leg, a hand on something firm",
    tag: "balance",
    least: 1,
    of: ({ limb, position }) => limb === "one leg" && position === "standing",
  },
  {
    says: "free split stance",
    tag: "balance",
    least: 2,
    of: (exercise) => exercise.limb === "split stance" && exercise.position === "standing" && !supported(exercise),
  },
  {
    says: "feet leave the floor",
    tag: "impact",
    least: 2,
    of: ({ pattern }) => pattern === "jump",
    but: { "snap-down": "feet stay, or leave it by 3 cm" },
  },
  { says: "load upright while walking", tag: "sp_axial", least: 1, of: ({ pattern }) => pattern === "carry" },
  {
    says: "a bar on the back or front",
    tag: "sp_axial",
    least: 2,
    of: (exercise) => exercise.pattern === "squat" && needs(exercise, "barbell"),
  },
  {
    says: "a bar from the floor or lower than the knee",
    tag: "sp_hold",
    least: 2,
    of: (exercise) => exercise.pattern === "hinge" && (needs(exercise, "barbell") || needs(exercise, "hex bar")),
  },
  {
    says: "thrown or pulled fast",
    tag: "head_quick",
    least: 1,
    of: ({ mode, pattern }) => mode === "ballistic" && pattern !== "jump",
    but: { "push-press": "head and trunk stay upright" },
  },
  {
    says: "hands flat on the floor carry the body",
    tag: "wr_ext",
    least: 2,
    of: ({ pattern, id }) => pattern === "horizontal push" && id.includes("push-up"),
    but: { "wall-push-up": "little mass on the hands", "strap-push-up": "straight wrists on handles" },
  },
  { says: "direct neck load", tag: "neck", least: 3, of: ({ id }) => id.startsWith("neck-") && !id.includes("turn") },
  {
    says: "large muscles with a heavy bar from the floor",
    tag: "pressor",
    least: 2,
    of: (exercise) => exercise.pattern === "hinge" && (needs(exercise, "barbell") || needs(exercise, "hex bar")),
  },
];

describe("every entry has at least the grade that its position or way of moving brings", () => {
  test.each(RULES)("$tag $least: $says", ({ tag, least, of, but = {} }) => {
    const found = ALL.filter(of);
    expect(found.length).toBeGreaterThan(0);
    const under = found.filter(({ stress }) => !((stress[tag] ?? 0) >= least)).map(({ id }) => id);
    expect(under.sort()).toEqual(Object.keys(but).sort());
  });
});

test("an arm that holds or braces is tagged or marked, but for a hand that only steadies", () => {
  const ARM: readonly StressTag[] = ["grip", "wr_ext", "elbow", "sh_overhead", "sh_abd_er", "sh_ext", "sh_ir_elev"];
  const loaded = ALL.filter(
    ({ loadMeaning, hands }) =>
      hands !== "none" && (["per hand", "one implement"] as LoadMeaning[]).includes(loadMeaning),
  );
  const untold = loaded.filter(({ armsUsed, stress }) => !armsUsed && ARM.every((tag) => stress[tag] === undefined));
  // As printed: the seated twist holds a light weight, and lies on the floor all the same.
  expect(untold.map(({ id }) => id)).toEqual(["loaded-twist"]);
});

describe("whatever of its group is there, the number beside it means the same", () => {
  const KINDS: Readonly<Record<string, readonly Equipment[]>> = {
    "in the hand": ["dumbbell", "kettlebell", "weighted ball", "sandbag", "bag", "backpack"],
    bar: ["barbell", "curl bar", "hex bar", "guided-bar rack", "angled bar"],
    stack: ["cable", "pull-down machine", "row machine", "chest press machine", "assisted pull-up machine"],
    band: ["band"],
  };
  test("no group of an entry that has a number mixes bars, hand weights, stacks and bands", () => {
    const free: readonly LoadMeaning[] = ["none", "body only", "height"];
    const mixed = ALL.filter(({ loadMeaning, needs: groups }) => {
      if (free.includes(loadMeaning)) return false;
      return groups.some((group) => {
        const kinds = Object.values(KINDS).filter((kind) => kind.some((each) => group.includes(each)));
        return kinds.length > 1;
      });
    });
    expect(mixed.map(({ id }) => id)).toEqual([]);
  });
});

test("nobody who starts meets the hardest grade of spine, knee, hip or elbow without an easier form before it", () => {
  const HARD: readonly StressTag[] = [
    "sp_flex",
    "sp_ext",
    "sp_rot",
    "sp_hold",
    "knee_deep",
    "hip_deep",
    "elbow",
    "abd_press",
  ];
  const under = new Set(CATALOGUE.ladders.flatMap(({ steps }) => steps.map(({ to }) => to)));
  const open = ALL.filter(({ id, pattern, coachOnly, need, stress }) => {
    if (pattern === "mobility" || pattern === "throw" || coachOnly || under.has(id)) return false;
    return need.count === undefined && HARD.some((tag) => stress[tag] === 3);
  });
  // As our table has it: an overhead extension asks for a free shoulder, and its load can begin at a kilogram.
  expect(open.map(({ id }) => id)).toEqual(["overhead-extension"]);
});

test("every press overhead that lies above the first asks whether the arms get there without pain", () => {
  const press = ALL.filter(({ pattern, stress }) => pattern === "vertical push" && stress.sh_overhead === 3);
  const silent = press.filter(({ coachOnly, need, limb }) => {
    const asks = need.conditions.some((condition) => condition.startsWith("arms reach overhead"));
    return (
      !coachOnly &&
      limb === "two arms" &&
      !asks &&
      !need.conditions.some((each) => each.includes("handstand") || each.includes("blood pressure"))
    );
  });
  expect(silent.map(({ id }) => id)).toEqual([]);
});
