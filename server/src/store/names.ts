import { isStorable } from "@stave/core/model";

/** A key of three such names still fits into one index entry of either database. */
const MOST_CHARACTERS = 200;

/** @throws RangeError unless every name can be part of a key, in both databases alike */
export function checkNames(...names: readonly string[]): void {
  for (const name of names) {
    if (!(name.length >= 1 && name.length <= MOST_CHARACTERS && isStorable(name))) {
      throw new RangeError(
        `A name must have 1 to ${MOST_CHARACTERS} characters, none of them NUL or half of a surrogate pair: current value is ${JSON.stringify(name.slice(0, MOST_CHARACTERS))}`,
      );
    }
  }
}

/** @throws RangeError unless it is a whole number of milliseconds that both databases keep exactly */
export function checkInstant(instant: number): void {
  if (!Number.isSafeInteger(instant)) {
    throw new RangeError(`An instant must be whole epoch milliseconds: current value is ${instant}`);
  }
}
