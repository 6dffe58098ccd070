const FIRST_MS = 1000;
const LONGEST_MS = 60_000;

/**
 * How long to wait before asking again: doubling from one second to a minute, spread by chance so that phones that lost
 * one server do not all come back at once.
 *
 * @param failures in a row, 1 or more
 * @param chance 0 to 1
 * @returns milliseconds, between half of the wait and the whole
 */
export function backOff(failures: number, chance: number): number {
  const whole = Math.min(LONGEST_MS, FIRST_MS * 2 ** (failures - 1));
  return whole * (0.5 + chance / 2);
}
