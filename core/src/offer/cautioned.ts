import { type Exercise, type Grade, type Lane, laneOf, type Reason, type StressTag } from "../model/index.ts";
import type { Clearance } from "./clearance.ts";
import type { CutDose } from "./cut-dose.ts";
import { gradesOf } from "./grade.ts";
import { reason } from "./reasons.ts";

/** What the statements say of a form as such, whatever its dose: lanes, filters, lowering. */
export function setAsideByFilters(exercise: Exercise, clearance: Clearance): readonly Reason[] {
  const why: Reason[] = [];
  const { pattern, alsoCounts } = exercise;
  const lane = laneOf(pattern);
  const also = alsoCounts === undefined ? undefined : laneOf(alsoCounts);
  if (lane !== undefined) addWithheld(why, lane, clearance);
  if (also !== undefined && also !== lane) addWithheld(why, also, clearance);
  const { seatedOnly, noArms, noLoweringOnly } = clearance;
  if (seatedOnly.length > 0 && !exercise.seated) why.push(reason("offer/seated-only", { from: seatedOnly }));
  if (noArms.length > 0 && exercise.armsUsed) why.push(reason("offer/arms-used", { from: noArms }));
  if (noLoweringOnly.length > 0 && exercise.lowering) why.push(reason("offer/lowering-only", { from: noLoweringOnly }));
  if (!clearance.wheelchair && needsWheelchair(exercise)) why.push(reason("offer/wheelchair"));
  return why;
}

function addWithheld(why: Reason[], lane: Lane, { withheld }: Clearance): void {
  const from = withheld[lane];
  if (from !== undefined) why.push(reason("offer/lane-withheld", { lane, from }));
}

function needsWheelchair({ needs }: Exercise): boolean {
  return needs.some((group) => group.every((what) => what === "wheelchair"));
}

/** Ceilings are made in the order of all tags. */
function cappedTags(ceilings: Clearance["ceilings"]): readonly StressTag[] {
  return Object.keys(ceilings) as StressTag[];
}

/** A form at a cut dose against ceilings; what has no ceiling is not graded. */
export function underCeilings(
  exercise: Exercise,
  { dose, facts }: Pick<CutDose, "dose" | "facts">,
  ceilings: Clearance["ceilings"],
): ReturnType<typeof againstCeilings> {
  return againstCeilings(gradesOf(exercise, dose, facts, cappedTags(ceilings)), ceilings);
}

/** Grades against ceilings: what passes a ceiling is never offered, what stands on one (from 1 up) is watched. */
export function againstCeilings(
  grades: Readonly<Partial<Record<StressTag, Grade>>>,
  ceilings: Clearance["ceilings"],
): { readonly why: readonly Reason[]; readonly watch: readonly StressTag[] } {
  const why: Reason[] = [];
  const watch: StressTag[] = [];
  for (const tag of cappedTags(ceilings)) {
    const grade = grades[tag] ?? 0;
    const ceiling = ceilings[tag]!;
    if (grade === 0) continue;
    if (grade <= ceiling.grade) {
      if (grade === ceiling.grade) watch.push(tag);
      continue;
    }
    const passed = ceiling.from.filter((share) => grade > share.ceiling);
    const cannot = passed.find(({ by }) => by === "cannot");
    if (cannot !== undefined) why.push(reason("offer/cannot", { tag, grade, ceiling: cannot.ceiling }));
    const from = passed
      .filter(({ by }) => by !== "cannot")
      .map(({ by, ceiling: each, who }) => ({ by, ceiling: each, ...(who === undefined ? {} : { who }) }));
    if (from.length > 0) why.push(reason("offer/ceiling", { tag, grade, ceiling: from[0]!.ceiling, from }));
  }
  return { why, watch };
}
