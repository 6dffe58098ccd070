import { atAStretch, conditioningDose } from "../measures/index.ts";
import type { Catalogue, Conditioning, Dose, Exercise, ExerciseId, Reason, RunWalk, WarmUp } from "../model/index.ts";
import type { Admit } from "../offer/index.ts";
import type { FitContext } from "./candidates.ts";
import { doseFor } from "./dose-for.ts";
import { reason } from "./reasons.ts";

/** A warm-up or conditioning item for one person. */
export interface EasyItem {
  readonly exercise: Exercise;
  readonly dose: Dose;
  readonly effort?: Effort;
  readonly why: readonly Reason[];
}

export type Effort = Conditioning["effort"];

/**
 * The first form that this person may do: the coach's own, then the coach's alternatives, then any of its pattern in
 * the order of fewest stresses.
 *
 * @param taken what the session has already, which does not stand in for another
 * @returns undefined when none may be done; the reasons why the coach's own was set aside stand in `why` otherwise
 */
export function easyItem(
  context: FitContext,
  admit: Admit,
  asked: {
    readonly do: ExerciseId;
    readonly dose: Dose;
    readonly or?: readonly ExerciseId[];
    readonly effort?: Effort;
  },
  taken: ReadonlySet<ExerciseId> = new Set(),
): EasyItem | undefined {
  const own = context.catalogue.exercises.get(asked.do);
  const why: Reason[] = [];
  for (const exercise of easyForms(asked, context.catalogue)) {
    if (exercise !== own && taken.has(exercise.id)) continue;
    const admission = admit(exercise, doseFor(exercise, asked.dose), asked.effort);
    if (admission.ok)
      return {
        exercise,
        dose: admission.dose,
        why: exercise === own ? admission.notes : [instead(asked.do, exercise.id, why), ...admission.notes],
      };
    if (exercise === own) why.push(...admission.why);
  }
  return undefined;
}

/** @returns the forms that may be thought of for an easy item, in the order in which they are tried */
export function easyForms(
  asked: { readonly do: ExerciseId; readonly or?: readonly ExerciseId[] },
  catalogue: Catalogue,
): readonly Exercise[] {
  const own = catalogue.exercises.get(asked.do);
  const named = [asked.do, ...(asked.or ?? [])].flatMap((id) => catalogue.exercises.get(id) ?? []);
  const load = (exercise: Exercise) => Object.values(exercise.stress).reduce<number>((sum, grade) => sum + grade, 0);
  const others = [...catalogue.exercises.values()]
    .filter((exercise) => own !== undefined && exercise.pattern === own.pattern && exercise.amounts === own.amounts)
    .sort((a, b) => load(a) - load(b) || (a.id < b.id ? -1 : 1));
  return [...named, ...others];
}

function instead(first: ExerciseId, exercise: ExerciseId, why: readonly Reason[]): Reason {
  return reason("fit/instead", { first, exercise, why: why.map(({ code, data }) => ({ code, data })) });
}

/** The easy items of a warm-up, none standing in twice; lighter sets that lead up to a slot are left to the slot. */
export function easyWarmUp(
  context: FitContext,
  admit: Admit,
  warmup: readonly WarmUp[] | undefined,
): readonly EasyItem[] {
  const items = (warmup ?? []).flatMap((item) => ("do" in item ? [item] : []));
  const taken = new Set(items.map((item) => item.do));
  return items.flatMap((asked) => {
    const item = easyItem(context, admit, asked, taken);
    if (item === undefined) return [];
    taken.add(item.exercise.id);
    return [item];
  });
}

/** Conditioning for one person. Where another form takes the place of a run, it is done at a stretch. */
export function afterWork(context: FitContext, admit: Admit, asked: Conditioning): EasyItem | undefined {
  const dose = conditioningDose(asked);
  const item = easyItem(context, admit, { ...asked, dose });
  if (item === undefined || !("runWalk" in asked) || item.exercise.id === asked.do) return item;
  const admission = admit(item.exercise, atAStretch(dose), asked.effort);
  return { ...item, dose: admission.ok ? admission.dose : atAStretch(item.dose) };
}

/** Whether what a person does is the run that was asked, and not another form in its place. */
export function isRun(asked: Conditioning, { exercise }: Pick<EasyItem, "exercise">): asked is RunWalk {
  return "runWalk" in asked && exercise.id === asked.do;
}

/** The parts of a conditioning block's time that fit may give: all, half, none; of a run half the bouts. */
export function conditioningDoses(
  item: Conditioning,
  dose: Dose,
): readonly { readonly part: "all" | "half" | "none"; readonly dose?: Dose }[] {
  if (dose.sets.length > 1 && "runWalk" in item) {
    const half = dose.sets.slice(0, Math.ceil(dose.sets.length / 2));
    return [{ part: "all", dose }, { part: "half", dose: { ...dose, sets: half } }, { part: "none" }];
  }
  const halves = dose.sets.map((set) =>
    set.amount.kind === "time"
      ? {
          ...set,
          amount: {
            kind: "time",
            span: { from: halfMinutes(set.amount.span.from), to: halfMinutes(set.amount.span.to) },
          } as const,
        }
      : set,
  );
  const timed = dose.sets.some((set) => set.amount.kind === "time");
  return [
    { part: "all", dose },
    ...(timed ? [{ part: "half", dose: { ...dose, sets: halves } } as const] : []),
    { part: "none" },
  ];
}

function halfMinutes(seconds: number): number {
  return Math.max(60, Math.ceil(seconds / 120) * 60);
}
