import type { Dose, Tempo } from "../model/index.ts";

/** Sets of up to about this many repetitions still build muscle when they end near the limit. Source: schoenfeld2017load. */
const LONG_SET = { from: 15, to: 30 } as const;
/** Slow lowering and a pause. A repetition of up to about 8 s builds as much as a quick one. Source: schoenfeld2015tempo. */
const SLOW: Tempo = [3, 1, 1, 0];
const NEAR_THE_LIMIT = { from: 1, to: 2 } as const;

/**
 * The dose when the heaviest load here cannot make the asked repetitions hard: long sets close to the limit, lowered
 * slowly with a pause. It serves size and endurance; it does not keep maximal strength, and the plan says so.
 *
 * A reserve that a clearance asks for stays.
 *
 * @source schoenfeld2017load, schoenfeld2015tempo, ours
 * @example
 * hardenDose(threeSetsOfTen) // 3 × 15–30, tempo 3-1-1-0, 1–2 in reserve
 */
export function hardenDose(dose: Dose): Dose {
  const sets = dose.sets.map((set) => {
    if (set.amount.kind !== "reps") return set;
    const { percent: _, load: __, within: ___, ...kept } = set;
    const reserve = set.reserve !== undefined && set.reserve.from > NEAR_THE_LIMIT.to ? set.reserve : NEAR_THE_LIMIT;
    return { ...kept, amount: { kind: "reps", span: LONG_SET } as const, reserve };
  });
  return { ...dose, sets, tempo: dose.tempo ?? SLOW };
}
