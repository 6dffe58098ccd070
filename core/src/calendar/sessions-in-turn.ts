/**
 * Which sessions does each week hold, when a person trains so many days a week? With days for all of them, every week
 * has them all, and days beyond stay free. With fewer, the sessions come in turn and the next week goes on where the
 * last one stopped, so that none is left out for good.
 *
 * @param keys sessions in their order
 * @param perWeek training days a week; 0 gives empty weeks
 * @throws RangeError unless `perWeek` and `weeks` are whole numbers, 0 or more
 * @example
 * sessionsInTurn(["A", "B", "C"], 2, 3) //=> [["A", "B"], ["C", "A"], ["B", "C"]]
 */
export function sessionsInTurn(
  keys: readonly string[],
  perWeek: number,
  weeks: number,
): readonly (readonly string[])[] {
  for (const [what, value] of Object.entries({ "days a week": perWeek, weeks })) {
    if (!(Number.isSafeInteger(value) && value >= 0)) {
      throw new RangeError(
        `Cannot deal out sessions as ${what} must be a whole number, 0 or more: current value is ${value}`,
      );
    }
  }
  const size = Math.min(perWeek, keys.length);
  return Array.from({ length: weeks }, (_, week) =>
    Array.from({ length: size }, (_, n) => keys[(week * size + n) % keys.length]!),
  );
}
