import { ageOn, type Day } from "../day.ts";
import { distance, gateOf } from "../exercises/index.ts";
import type { Catalogue, ExerciseId, Reason } from "../model/index.ts";
import { chairStandNorm } from "../tables/index.ts";
import { reason, scoreOf, type TestResult } from "./result.ts";
import type { ResultsFile } from "./results-read.ts";
import { ASSESSMENT_TESTS } from "./tests.ts";

/** Where a person starts on a ladder, by a test that is that ladder's own movement. */
export interface StartingRung {
  readonly ladder: string;
  readonly exercise: ExerciseId;
  readonly test: string;
  readonly on: Day;
  readonly because: readonly Reason[];
}

/** What a test under one condition is on a ladder: the form itself, the one below it, and the one its gate may open. */
interface Lead {
  readonly test: string;
  readonly under?: readonly [condition: string, choice: string];
  readonly ladder: string;
  readonly form: ExerciseId;
  readonly easier: ExerciseId;
  readonly harder?: ExerciseId;
}

const LEADS: readonly Lead[] = [
  {
    test: "push-up-toes",
    under: ["from", "toes"],
    ladder: "push-up",
    form: "floor-push-up",
    easier: "push-up-30",
    harder: "push-up-feet-30",
  },
  { test: "push-up-toes", under: ["from", "knees"], ladder: "push-up", form: "knee-push-up", easier: "push-up-60" },
  { test: "push-up-knees", under: ["from", "knees"], ladder: "push-up", form: "knee-push-up", easier: "push-up-60" },
  {
    test: "push-up-knees",
    under: ["from", "toes"],
    ladder: "push-up",
    form: "floor-push-up",
    easier: "push-up-30",
    harder: "push-up-feet-30",
  },
  { test: "front-plank", under: ["from", "toes"], ladder: "front-trunk", form: "forearm-plank", easier: "knee-plank" },
  { test: "front-plank", under: ["from", "knees"], ladder: "front-trunk", form: "knee-plank", easier: "bench-plank" },
  {
    test: "side-plank",
    under: ["from", "feet"],
    ladder: "side-plank",
    form: "side-plank-staggered",
    easier: "side-plank-knees",
  },
  {
    test: "side-plank",
    under: ["from", "knees"],
    ladder: "side-plank",
    form: "side-plank-knees",
    easier: "wall-side-plank",
  },
  { test: "dead-hang", ladder: "pull-up", form: "dead-hang", easier: "box-hang", harder: "hang-blades-down" },
  {
    test: "heel-raise",
    under: ["floor", "flat"],
    ladder: "calf",
    form: "one-leg-calf-raise",
    easier: "calf-raise-two-up",
  },
  {
    test: "heel-raise",
    under: ["floor", "step"],
    ladder: "calf",
    form: "one-leg-calf-raise-step",
    easier: "one-leg-calf-raise",
  },
];

/** Fewer clean repetitions than this are a try; a form is stood on from the first whole set of a try. Ours. */
const LEAST_REPS = 5;
/** The plank that a push-up on the floor asks for, as its condition on the ladder says. */
const PLANK_FOR_FLOOR_S = 30;

function standardOf(test: string, condition: string): string {
  const found = ASSESSMENT_TESTS.find(({ id }) => id === test)?.conditions.find(({ id }) => id === condition);
  return found?.standard ?? "";
}

function leadOf({ test, conditions }: TestResult): Lead | undefined {
  return LEADS.find(
    (lead) =>
      lead.test === test &&
      (lead.under === undefined || (conditions[lead.under[0]] ?? standardOf(test, lead.under[0])) === lead.under[1]),
  );
}

/** The value that decides: the weaker side where there are two, never their mean. */
function deciding({ value, left, right }: TestResult): { readonly value: number; readonly side?: "left" | "right" } {
  if (left === undefined || right === undefined) return { value: value! };
  if (left === right) return { value: left };
  return left < right ? { value: left, side: "left" } : { value: right, side: "right" };
}

function byLead(lead: Lead, result: TestResult, catalogue: Catalogue, plankS: number | undefined): StartingRung {
  const { ladder, form, easier, harder } = lead;
  const { value, side } = deciding(result);
  const exercise = catalogue.exercises.get(form);
  const least = exercise?.hold?.from ?? LEAST_REPS;
  const unit = exercise?.hold === undefined ? "repetitions" : "s";
  const gate = harder === undefined ? undefined : gateOf(catalogue, { from: form, to: harder, branch: "main" });
  const opens = gate?.sets === 1 && gate.amount !== undefined ? gate.amount.value : Number.POSITIVE_INFINITY;
  const floorWithoutPlank = form === "floor-push-up" && plankS !== undefined && !(plankS >= PLANK_FOR_FLOOR_S);
  const said = { ladder, test: result.test, value, unit, ...(side === undefined ? {} : { side }) };
  const standing = (stands: ExerciseId, ...because: readonly Reason[]): StartingRung => {
    const conditions = (catalogue.exercises.get(stands)?.need.conditions ?? []).filter(
      (condition) => !(stands === "floor-push-up" && plankS !== undefined && condition.includes("plank")),
    );
    const open = conditions.length === 0 ? [] : [reason("assess/rung-conditions", { conditions })];
    const rung = reason("assess/rung", { ...said, exercise: stands });
    return { ladder, exercise: stands, test: result.test, on: result.on, because: [rung, ...because, ...open] };
  };
  if (value < least) return standing(easier, reason("assess/rung-below", { exercise: form, least, unit }));
  if (floorWithoutPlank) {
    return standing(easier, reason("assess/rung-plank", { exercise: form, seconds: plankS, least: PLANK_FOR_FLOOR_S }));
  }
  if (harder !== undefined && value >= opens) {
    return standing(harder, reason("assess/rung-gate", { exercise: form, amount: opens, unit }));
  }
  return standing(form);
}

/** The chair stand stands on the squat's ladder by the lower edge of the middle half of the age on that day. */
function byChairStand(result: TestResult, born: Day, sex: ResultsFile["sex"]): StartingRung | Reason {
  const test = ASSESSMENT_TESTS.find(({ id }) => id === result.test)!;
  const { value } = scoreOf(test, result.value!, result.conditions);
  const age = ageOn(born, result.on);
  const ladder = "squat";
  const said = { ladder, test: test.id, value, unit: "repetitions" };
  const standing = (exercise: ExerciseId, ...because: readonly Reason[]): StartingRung => {
    const rung = reason("assess/rung", { ...said, exercise });
    return { ladder, exercise, test: test.id, on: result.on, because: [rung, ...because] };
  };
  if (value < LEAST_REPS) {
    const below = reason("assess/rung-below", { exercise: "sit-to-stand-45", least: LEAST_REPS, unit: "repetitions" });
    return standing("sit-to-stand-high", below);
  }
  const norm = sex === undefined ? undefined : chairStandNorm(age, sex);
  if (norm === undefined) return reason("assess/rung-no-norm", { ladder, test: test.id, age, sex: sex ?? null });
  const edge = reason("assess/rung-edge", { edge: norm.from, unit: "repetitions", source: "rikliJones1999" });
  return standing(value >= norm.from ? "touch-and-go-squat" : "sit-to-stand-45", edge);
}

function chairIsStandard({ conditions }: TestResult): boolean {
  return (conditions["seat"] ?? standardOf("chair-stand-30", "seat")) === standardOf("chair-stand-30", "seat");
}

/**
 * Where a person starts on each ladder that a test of theirs belongs to.
 *
 * A test counts for the form that it is, on the surface it was done on, and for nothing else. The latest result of a
 * ladder decides; of two on one day the harder form. With sides the weaker one decides. Too few for one set stand one form
 * easier; a gate that asks for one set opens the next form; a gate that asks for several sets is not shown by one test.
 * Conditions that a test cannot show are named, for the coach to see. A chair stand needs its printed row of age and sex,
 * and its standard seat.
 *
 * @returns rungs in the order of the tests, one for each ladder, and what could not be judged
 * @source ours, rikliJones1999
 */
export function startingRungs(
  { born, sex, results }: Pick<ResultsFile, "born" | "sex" | "results">,
  catalogue: Catalogue,
): { readonly rungs: readonly StartingRung[]; readonly open: readonly Reason[] } {
  const rungs = new Map<string, StartingRung>();
  const open: Reason[] = [];
  const latest = ASSESSMENT_TESTS.flatMap(({ id }) => {
    const own = results.filter((result) => result.test === id && (id !== "chair-stand-30" || chairIsStandard(result)));
    return own.length === 0 ? [] : [own.reduce((late, now) => (now.on >= late.on ? now : late))];
  });
  const plank = latest.find((result) => result.test === "front-plank" && leadOf(result)?.form === "forearm-plank");
  for (const result of latest) {
    const lead = leadOf(result);
    if (result.test !== "chair-stand-30" && lead === undefined) continue;
    const found = lead === undefined ? byChairStand(result, born, sex) : byLead(lead, result, catalogue, plank?.value);
    if ("code" in found) open.push(found);
    else {
      const before = rungs.get(found.ladder);
      const later = before === undefined || found.on > before.on;
      const harder = found.on === before?.on && depthOf(found, catalogue) > depthOf(before, catalogue);
      if (later || harder) rungs.set(found.ladder, found);
    }
  }
  return { rungs: [...rungs.values()], open };
}

/** Steps from a ladder's start to a form of it. */
function depthOf({ ladder, exercise }: StartingRung, catalogue: Catalogue): number {
  const start = catalogue.ladders.find(({ id }) => id === ladder)?.start;
  return start === undefined ? 0 : (distance(catalogue, start, exercise) ?? 0);
}
