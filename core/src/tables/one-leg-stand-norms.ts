/**
 * Mean seconds on one leg with open eyes, by age, and the fewest seconds that several authors use as a floor.
 *
 * @source bohannon2006
 */
export const ONE_LEG_STAND: readonly { readonly from: number; readonly to: number; readonly meanS: number }[] = [
  { from: 60, to: 69, meanS: 27 },
  { from: 70, to: 79, meanS: 17.2 },
  { from: 80, to: 99, meanS: 8.5 },
];
/** @source bohannon2006 */
export const ONE_LEG_FLOOR_S = 5;

/**
 * The mean for an age; it is a middle and no aim.
 *
 * @param age years on the day of the test
 * @returns seconds, undefined outside 60 to 99
 * @source bohannon2006
 */
export function oneLegStandMean(age: number): number | undefined {
  return ONE_LEG_STAND.find(({ from, to }) => age >= from && age <= to)?.meanS;
}
