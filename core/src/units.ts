declare const unit: unique symbol;
type Brand<T, Name extends string> = T & { readonly [unit]: Name };

/** Mass as a whole number of 10-nanogram units, so that kilograms and pounds are both exact. */
export type Mass = Brand<number, "mass">;
/** Whole seconds. */
export type Seconds = Brand<number, "seconds">;
/** Metres. */
export type Metres = Brand<number, "metres">;
/** A share between 0 and 1, for example of body mass or of the one-repetition maximum. */
export type Share = Brand<number, "share">;
/** Quarter-sets: sets × 4, whole, so that sums never depend on the order of adding. */
export type Quarters = Brand<number, "quarters">;

export type MassUnit = "kg" | "lb";

/** A load as somebody wrote or lifted it. The unit stays with it for ever and is never converted to and fro. */
export interface Load {
  readonly value: number;
  readonly unit: MassUnit;
}

const PER_GRAM = 100_000_000;
/** 0.001 lb in 10-nanogram units: 1 lb = 0.45359237 kg exactly. Source: intPound1959. */
const PER_MILLI_POUND = 45_359_237;
const MAX_MASS = 50_000 * 1000 * PER_GRAM;

/**
 * Exact mass of a load.
 *
 * @param load value in its own unit, 0 to 50,000, at most three decimals (more are rounded to the third)
 * @returns whole 10-nanogram units
 * @throws RangeError when the value is negative, not a number or over 50,000 kg
 * @source intPound1959
 * @example
 * massOf({ value: 25, unit: "lb" }) //=> 1133980925000
 */
export function massOf(load: Load): Mass {
  // Adding 0 turns −0, which would print as another number, into 0.
  const thousandths = Math.round(load.value * 1000) + 0;
  const mass = load.unit === "kg" ? thousandths * PER_GRAM : thousandths * PER_MILLI_POUND;
  if (!(load.value >= 0 && mass <= MAX_MASS)) {
    throw new RangeError(
      `Cannot weigh a load as it must be from 0 to 50,000 kg: current value is ${load.value} ${load.unit}`,
    );
  }
  return mass as Mass;
}

/** @example kg(12.5) //=> 1250000000000 */
export function kg(value: number): Mass {
  return massOf({ value, unit: "kg" });
}

/** @example lb(10) //=> 453592370000 */
export function lb(value: number): Mass {
  return massOf({ value, unit: "lb" });
}

/** @returns kilograms, not rounded */
export function inKg(mass: Mass): number {
  return mass / (1000 * PER_GRAM);
}

/** @returns pounds, not rounded */
export function inLb(mass: Mass): number {
  return mass / (1000 * PER_MILLI_POUND);
}

/** @returns whole grams, for stored plans */
export function inGrams(mass: Mass): number {
  return Math.round(mass / PER_GRAM);
}

/**
 * A mass as a load in the wanted unit, for people to read. Exact when the mass came from a load in that unit. Pounds
 * read as kilograms and back may be a thousandth off, which is why a load keeps the unit it was lifted in.
 *
 * @returns the load, rounded to a thousandth of its unit
 * @example
 * asLoad(lb(45), "kg") //=> { value: 20.412, unit: "kg" }
 */
export function asLoad(mass: Mass, unit: MassUnit): Load {
  return { value: Math.round(mass / (unit === "kg" ? PER_GRAM : PER_MILLI_POUND)) / 1000, unit };
}

/** @throws RangeError unless a whole number, 0 or more */
export function seconds(value: number): Seconds {
  if (!(Number.isInteger(value) && value >= 0)) {
    throw new RangeError(`Cannot take seconds as they must be a whole number, 0 or more: current value is ${value}`);
  }
  return value as Seconds;
}

/** @throws RangeError unless 0 or more and finite */
export function metres(value: number): Metres {
  if (!(value >= 0 && Number.isFinite(value))) {
    throw new RangeError(`Cannot take metres as they must be 0 or more: current value is ${value}`);
  }
  return value as Metres;
}

/** @throws RangeError outside 0 to 1 */
export function share(value: number): Share {
  if (!(value >= 0 && value <= 1)) {
    throw new RangeError(`Cannot take a share as it must be from 0 to 1: current value is ${value}`);
  }
  return value as Share;
}

/**
 * @param sets sets, 0 or more, a multiple of a quarter
 * @throws RangeError otherwise: a third of a set rounded here would be a sum that nobody asked for
 */
export function quarters(sets: number): Quarters {
  const whole = sets * 4;
  if (!(Number.isInteger(whole) && whole >= 0)) {
    throw new RangeError(
      `Cannot count sets as they must be a multiple of a quarter, 0 or more: current value is ${sets}`,
    );
  }
  return whole as Quarters;
}

/** @returns sets, for people to read */
export function inSets(value: Quarters): number {
  return value / 4;
}
