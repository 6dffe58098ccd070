/** Age bands with the least count of each class above the lowest: fair, good, very good, excellent. */
interface Band {
  readonly from: number;
  readonly to: number;
  readonly men: readonly [number, number, number, number];
  readonly women: readonly [number, number, number, number];
}

export const PUSH_UP_CLASSES = ["needs improvement", "fair", "good", "very good", "excellent"] as const;
export type PushUpClass = (typeof PUSH_UP_CLASSES)[number];

/**
 * Push-ups without a time limit, in a row until form goes: men from the toes, women from the knees. Another protocol
 * has another table; the two are never mixed.
 *
 * @source csepPushUps
 */
export const PUSH_UP_NORMS: readonly Band[] = [
  { from: 15, to: 19, men: [18, 23, 29, 39], women: [12, 18, 25, 33] },
  { from: 20, to: 29, men: [17, 22, 29, 36], women: [10, 15, 21, 30] },
  { from: 30, to: 39, men: [12, 17, 22, 30], women: [8, 13, 20, 27] },
  { from: 40, to: 49, men: [10, 13, 17, 25], women: [5, 11, 15, 24] },
  { from: 50, to: 59, men: [7, 10, 13, 21], women: [2, 7, 11, 21] },
  { from: 60, to: 69, men: [5, 8, 11, 18], women: [2, 5, 12, 17] },
];

/**
 * The class of a count of push-ups.
 *
 * @param count whole repetitions, 0 or more
 * @param age years on the day of the test, 15 to 69
 * @returns undefined outside the ages of the table
 * @throws RangeError when the count is not whole or negative
 * @source csepPushUps
 */
export function pushUpClass(count: number, age: number, sex: "man" | "woman"): PushUpClass | undefined {
  if (!(Number.isInteger(count) && count >= 0)) {
    throw new RangeError(`Cannot class push-ups as they must be whole, 0 or more: current value is ${count}`);
  }
  const band = PUSH_UP_NORMS.find(({ from, to }) => age >= from && age <= to);
  if (band === undefined) return undefined;
  const least = sex === "man" ? band.men : band.women;
  return PUSH_UP_CLASSES[least.filter((edge) => count >= edge).length]!;
}
