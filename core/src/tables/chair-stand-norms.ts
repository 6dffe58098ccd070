import type { Span } from "../model/index.ts";

/** The middle half of people of an age: 25th to 75th per cent, stands in 30 seconds. */
interface Band {
  readonly from: number;
  readonly to: number;
  readonly men: Span;
  readonly women: Span;
}

const band = (from: number, men: readonly [number, number], women: readonly [number, number]): Band => ({
  from,
  to: from + 4,
  men: { from: men[0], to: men[1] },
  women: { from: women[0], to: women[1] },
});

/**
 * Stands from a chair in 30 seconds, arms crossed, seat 43 cm. Copies disagree in two cells: men 65–69 are also
 * printed as 13–18 and men 85–89 as 8–13; the rows on which two copies agree stand here.
 *
 * @source rikliJones1999
 */
export const CHAIR_STAND_NORMS: readonly Band[] = [
  band(60, [14, 19], [12, 17]),
  band(65, [12, 18], [11, 16]),
  band(70, [12, 17], [10, 15]),
  band(75, [11, 17], [10, 15]),
  band(80, [10, 15], [9, 14]),
  band(85, [8, 14], [8, 13]),
  band(90, [7, 12], [4, 11]),
];

/**
 * The middle half for an age and sex. Fewer stands than its lower end are called below average.
 *
 * @param age years on the day of the test
 * @returns undefined outside 60 to 94
 * @source rikliJones1999
 */
export function chairStandNorm(age: number, sex: "man" | "woman"): Span | undefined {
  const found = CHAIR_STAND_NORMS.find(({ from, to }) => age >= from && age <= to);
  return sex === "man" ? found?.men : found?.women;
}
