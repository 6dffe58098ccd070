import {
  canonicalJson,
  type Dose,
  type Exercise,
  type Patch,
  type Person,
  type PlanSlot,
  type Reason,
  type Span,
} from "../model/index.ts";
import { runWalkDose } from "../tables/index.ts";
import { type Load, massOf } from "../units.ts";
import { nextLoad } from "./next-load.ts";
import { plain, reason } from "./reasons.ts";

/** The range of repetitions that a dose asks for in its first set; undefined for anything else. */
export function rangeOf({ sets }: Dose): Span | undefined {
  const amount = sets[0]?.amount;
  return amount?.kind === "reps" ? amount.span : undefined;
}

/**
 * What a patch does, as a reason to be said.
 *
 * @param slot as it is asked without the patch; undefined when it is no longer asked
 */
export function titleOf(
  patch: Patch,
  slot: PlanSlot | undefined,
  exercise: Exercise | undefined,
  person: Person,
): Reason {
  const id = slot?.exercise ?? null;
  switch (patch.change) {
    case "load":
      return reason("progress/go-to-load", {
        exercise: patch.exercise ?? id,
        to: plain(patch.load),
        from: plain(slot?.load),
        percent: percentOf(exercise, person, slot?.load, patch.load) ?? null,
      });
    case "reps":
      return doseTitle(patch.exercise ?? id, slot?.dose, patch.dose);
    case "exercise":
      return reason("progress/use-form", { exercise: patch.exercise, from: id });
    case "pause":
      return reason("progress/pause", { exercise: id, until: patch.until ?? null });
    case "resume":
      return reason("progress/resume", { exercise: id });
    case "light week": {
      const { week, instead = null, lighter = false } = patch;
      return reason("progress/light-week", { week, instead, lighter });
    }
    case "full week":
      return reason("progress/full-week", { week: patch.week });
    case "run-walk":
      return runTitle(patch.level);
  }
}

/** What a level of running and walking in turn asks for. */
function runTitle(level: number): Reason {
  const { sets, restS = 0 } = runWalkDose(level);
  const amount = sets[0]!.amount;
  const runS = amount.kind === "time" ? amount.span.to : 0;
  return reason("progress/run-level", { level, bouts: sets.length, runS, walkS: restS });
}

/** What a dose does beside the one that is asked: the first thing that differs is said. */
function doseTitle(exercise: string | null, now: Dose | undefined, next: Dose): Reason {
  const [from, to] = [now && rangeOf(now), rangeOf(next)];
  const [first] = next.sets;
  const loads = new Set(next.sets.map(({ load }) => load && massOf(load)));
  const amount = amountOf(next);
  if (loads.size > 1) return reason("progress/try-set", { exercise, load: plain(first!.load), amount });
  if (now !== undefined && first?.load !== undefined && next.sets.length < now.sets.length) {
    const reserve = first.reserve?.from ?? null;
    return reason("progress/begin-again", { exercise, sets: next.sets.length, load: plain(first.load), reserve });
  }
  if (from !== undefined && to !== undefined && to.to > from.to)
    return reason("progress/widen-range", { exercise, from: { ...from }, to: { ...to } });
  if (now !== undefined && next.tempo !== undefined && next.tempo.join() !== now.tempo?.join())
    return reason("progress/slow-down", { exercise, tempo: [...next.tempo] });
  if (
    now !== undefined &&
    next.sets.length === now.sets.length + 1 &&
    canonicalJson(next.sets[0]) === canonicalJson(now.sets[0])
  )
    return reason("progress/add-set", { exercise, from: now.sets.length, to: next.sets.length });
  return reason("progress/set-dose", { exercise, sets: next.sets.length, amount });
}

function percentOf(exercise: Exercise | undefined, person: Person, from: Load | undefined, to: Load) {
  return exercise === undefined || from === undefined ? undefined : nextLoad(exercise, person, [to], from)?.percent;
}

/** The amount of the first set as plain data: its kind and its range, or the kind alone. */
function amountOf({ sets }: Dose) {
  const amount = sets[0]!.amount;
  return amount.kind === "most" ? { kind: amount.kind } : { kind: amount.kind, ...amount.span };
}
