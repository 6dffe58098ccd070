import { type Dose, printDose, type SetDose } from "../model/index.ts";
import { REPS_AT_PERCENT_BOOK } from "../tables/index.ts";
import { type SharedSet, unlikelySets, WIDEST_TIMES } from "./reps-possible.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import { aboutDose, type DosePlace, pathOfDose } from "./run/walk.ts";

type Data = Facts & {
  readonly exercise: string;
  readonly name: string;
  readonly dose: string;
  readonly percent: number;
  /** The first set that asks too much, 1 = first. */
  readonly set: number;
  readonly needed: number;
  readonly fresh: number;
  readonly possible: number;
};

/** The dose with every share lowered to the highest printed one, at or under it, at which all sets can be expected. */
function atSharesThatFit(dose: Dose): Dose | undefined {
  let now = dose;
  for (let bad = unlikelySets(now)[0]; bad !== undefined; bad = unlikelySets(now)[0]) {
    const lower = REPS_AT_PERCENT_BOOK.rows.find((row) => row.percent < bad.percent)?.percent;
    if (lower === undefined) return undefined;
    const was = bad.percent;
    now = { ...now, sets: now.sets.map((set) => (set.percent === was ? { ...set, percent: lower } : set)) };
  }
  return now;
}

function oneFewer(set: SetDose): SetDose | undefined {
  if (set.amount.kind !== "reps" || set.amount.span.to <= 1) return undefined;
  const { from, to } = set.amount.span;
  return { ...set, amount: { kind: "reps", span: { from: Math.max(1, from - 1), to: to - 1 } } };
}

/** The dose with one repetition fewer at a time in every set like the one that asks too much. */
function withRepsThatFit(dose: Dose): Dose | undefined {
  let now = dose;
  for (let bad = unlikelySets(now)[0]; bad !== undefined; bad = unlikelySets(now)[0]) {
    const like = now.sets[bad.set]!;
    const fewer = oneFewer(like);
    if (fewer === undefined) return undefined;
    now = { ...now, sets: now.sets.map((set) => (isLike(set, like) ? fewer : set)) };
  }
  return now;
}

function isLike(a: SetDose, b: SetDose): boolean {
  return JSON.stringify([a.amount, a.percent, a.reserve]) === JSON.stringify([b.amount, b.percent, b.reserve]);
}

function curesFor(place: DosePlace): readonly Cure[] {
  const { dose } = place;
  const at = pathOfDose(place);
  const cure = (id: string, after: Dose | undefined): readonly Cure[] =>
    after === undefined
      ? []
      : [{ id, data: { from: printDose(dose), to: printDose(after) }, changes: [{ op: "set", at, value: after }] }];
  return [...cure("share-that-fits", atSharesThatFit(dose)), ...cure("reps-that-fit", withRepsThatFit(dose))];
}

/** Beyond the widest spread that was measured when fresh, nobody can be expected to. */
function isBeyondAnybody({ needed, fresh }: SharedSet): boolean {
  return !(needed <= fresh * WIDEST_TIMES);
}

/**
 * More repetitions, with those in reserve, than the book's table gives at the asked share of the 1RM, later sets
 * counted. People differ widely around the table, so this warns; it stops only beyond the widest spread measured.
 *
 * The remedies: a share that fits, or repetitions that fit.
 */
export const repsUnlikelyAtShare: Check<"dose/reps-unlikely-at-share", Data> = {
  id: "dose/reps-unlikely-at-share",
  severity: "warn",
  sources: ["nscaEssentialsTable", "cooke2019", "richensCleather2014", "ours"],
  run({ doses, catalogue }) {
    return doses.flatMap((place): readonly Found<Data>[] => {
      const bad = unlikelySets(place.dose);
      const worst = bad.find(isBeyondAnybody) ?? bad[0];
      if (worst === undefined) return [];
      const { exercise, dose } = place;
      const { percent, set, needed, fresh, possible } = worst;
      const name = catalogue.exercises.get(exercise)?.name ?? exercise;
      const figures = { percent, set: set + 1, needed, fresh, possible };
      return [
        {
          at: pathOfDose(place),
          severity: isBeyondAnybody(worst) ? "stop" : "warn",
          data: { ...aboutDose(place), exercise, name, dose: printDose(dose), ...figures },
          cures: () => curesFor(place),
        },
      ];
    });
  },
};
