import type { Dose, Phase, SetDose } from "../model/index.ts";

/** One more in reserve. "As many as possible" means none in reserve, so it becomes one; what was not said stays unsaid. */
function lighter(set: SetDose): SetDose {
  if (set.reserve !== undefined) return { ...set, reserve: { from: set.reserve.from + 1, to: set.reserve.to + 1 } };
  return set.amount.kind === "most" ? { ...set, reserve: { from: 1, to: 1 } } : set;
}

/**
 * The dose of a light week: the first half of the sets, rounded up, each with one more repetition in reserve. Rest and
 * tempo stay.
 *
 * @source ours
 * @example
 * lightDose(threeSetsOfTenTwoInReserve) // two sets of ten, three in reserve
 */
export function lightDose(dose: Dose): Dose {
  return { ...dose, sets: dose.sets.slice(0, Math.ceil(dose.sets.length / 2)).map(lighter) };
}

/** @param week week of the phase, 1 = first */
export function isLight(phase: Phase, week: number): boolean {
  return phase.light?.includes(week) ?? false;
}
