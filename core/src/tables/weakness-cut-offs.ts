/**
 * Values at which two published groups look closer at muscle loss in older people. They are a reason to talk to a
 * doctor and never a diagnosis; the groups disagree.
 */
export interface WeaknessCutOff {
  readonly source: "ewgsop2019" | "awgs2019";
  readonly test: "grip" | "gait" | "five chair rises" | "up and go";
  readonly unit: "kg" | "m/s" | "s";
  /** Weak when under (grip, gait) or over (times) the edge; `included` when the edge itself counts. */
  readonly worse: "under" | "over";
  readonly included: boolean;
  readonly men: number;
  readonly women: number;
}

/** @source ewgsop2019, awgs2019 */
export const WEAKNESS_CUT_OFFS: readonly WeaknessCutOff[] = [
  { source: "ewgsop2019", test: "grip", unit: "kg", worse: "under", included: false, men: 27, women: 16 },
  { source: "ewgsop2019", test: "gait", unit: "m/s", worse: "under", included: true, men: 0.8, women: 0.8 },
  { source: "ewgsop2019", test: "five chair rises", unit: "s", worse: "over", included: false, men: 15, women: 15 },
  { source: "ewgsop2019", test: "up and go", unit: "s", worse: "over", included: true, men: 20, women: 20 },
  { source: "awgs2019", test: "grip", unit: "kg", worse: "under", included: false, men: 28, women: 18 },
  { source: "awgs2019", test: "gait", unit: "m/s", worse: "under", included: false, men: 1, women: 1 },
  { source: "awgs2019", test: "five chair rises", unit: "s", worse: "over", included: true, men: 12, women: 12 },
];

/**
 * The groups whose edge a value has crossed.
 *
 * @returns an empty list when none has
 * @throws RangeError when the value is not above 0
 * @source ewgsop2019, awgs2019
 */
export function weaknessBy(
  test: WeaknessCutOff["test"],
  value: number,
  sex: "man" | "woman",
): readonly WeaknessCutOff[] {
  if (!(value > 0)) throw new RangeError(`Cannot judge ${test} as it must be above 0: current value is ${value}`);
  return WEAKNESS_CUT_OFFS.filter((row) => {
    const edge = sex === "man" ? row.men : row.women;
    if (row.test !== test) return false;
    return (row.worse === "under" ? value < edge : value > edge) || (row.included && value === edge);
  });
}
