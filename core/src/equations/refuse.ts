/**
 * Refuses a value that an equation was not made for; not-a-number is refused too.
 *
 * @param what what is being estimated, for the message
 * @param input what the value is, with its unit
 * @throws RangeError that says what must hold, unless from ≤ value ≤ to
 * @source ours
 * @example
 * refuseOutside("the heart-rate maximum", "age in years", 12, 18, 80) // throws RangeError
 */
export function refuseOutside(what: string, input: string, value: number, from: number, to: number): void {
  if (!(value >= from && value <= to)) {
    throw new RangeError(
      `Cannot estimate ${what} as ${input} must be from ${from} to ${to}: current value is ${value}`,
    );
  }
}

/** Body masses and heights that are taken for real; beyond them a slip of unit is likelier. Ours, no source. */
export const MASS_KG = { from: 30, to: 300 } as const;
export const HEIGHT_CM = { from: 120, to: 230 } as const;

/** @throws RangeError unless body mass is from 30 to 300 kg */
export function refuseMass(what: string, massKg: number): void {
  refuseOutside(what, "body mass in kg", massKg, MASS_KG.from, MASS_KG.to);
}

/** @throws RangeError unless height is from 120 to 230 cm */
export function refuseHeight(what: string, heightCm: number): void {
  refuseOutside(what, "height in cm", heightCm, HEIGHT_CM.from, HEIGHT_CM.to);
}
