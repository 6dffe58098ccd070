import type { Dose, Patch, SetDose } from "../model/index.ts";
import type { Load } from "../units.ts";
import type { DoseState } from "./dose-state.ts";
import { rangeOf } from "./titles.ts";

/** Seconds for lowering, pause, lifting, pause, where a load is to count for more. Ours, no source. */
const SLOW = [4, 1, 1, 0] as const;
/** Repetitions asked of one set with a load that is a large step. Source: open case of the raise with 5 kg; ours. */
const TRIED = { from: 6, to: 8 } as const;

/**
 * What to do instead where the next load is a large step, in order: lower slowly, one set more where the week's growth
 * allows it, then one set with the next load, at a few repetitions, while the others stay. That set is left out where only a
 * share of a best that nobody knows is allowed.
 *
 * @source ours
 */
export function smallerSteps(state: DoseState, next: Load): readonly Patch[] {
  const { slot, oneMoreSet, shareAtMost } = state;
  const { dose, load } = slot;
  const asPatch = (changed: Dose): Patch => ({
    slot: slot.key,
    change: "reps",
    dose: changed,
    exercise: slot.exercise,
  });
  const range = rangeOf(dose);
  const last = dose.sets.at(-1);
  if (range === undefined || last === undefined || load === undefined) return [];
  const slow = dose.tempo?.[0] === SLOW[0] ? [] : [asPatch({ ...dose, tempo: SLOW })];
  const more = oneMoreSet?.ok === true ? [asPatch({ ...dose, sets: [...dose.sets, last] })] : [];
  const withLoad = (set: SetDose, each: Load): SetDose => ({ ...set, load: each });
  const tried: SetDose = withLoad({ ...last, amount: { kind: "reps", span: TRIED } }, next);
  const test = asPatch({ ...dose, sets: [tried, ...dose.sets.slice(1).map((set) => withLoad(set, load))] });
  return [...slow, ...more, ...(dose.sets.length > 1 && shareAtMost === undefined ? [test] : [])];
}
