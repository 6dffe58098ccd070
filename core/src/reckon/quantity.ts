/** What can be measured, with the units that may be written and how many of the first each is. */
export const DIMENSIONS = {
  mass: { kg: 1, lb: 0.45359237 },
  length: { cm: 1, mm: 0.1, m: 100, in: 2.54, ft: 30.48 },
  distance: { m: 1, km: 1000, mi: 1609.344 },
  speed: { "m/min": 1, "km/h": 1000 / 60, mph: 1609.344 / 60, "m/s": 60 },
  work: { "kgm/min": 1, W: 6 },
  time: { s: 1, min: 60, h: 3600 },
  energy: { kcal: 1, kJ: 1 / 4.184 },
  share: { "%": 1 },
  count: {},
  years: { y: 1 },
  pulse: { bpm: 1 },
} as const satisfies Record<string, Readonly<Record<string, number>>>;
export type Dimension = keyof typeof DIMENSIONS;

/** Dimensions whose number may stand without a unit, since there is only one way to read it. */
const BARE: readonly Dimension[] = ["count", "years", "pulse", "share"];

export interface Quantity {
  /** In the first unit of its dimension. */
  readonly value: number;
  /** As it was written; empty when none was. */
  readonly unit: string;
}

export type QuantityFault = "reckon/unit-missing" | "reckon/unit-unknown" | "reckon/number-form";

/** Up to seven figures before the point and six after it: more is a slip. */
const WRITTEN = /^(\d{1,7}(?:\.\d{1,6})?) ?([a-z%/]*)$/i;
const CLOCK = /^(\d{1,3}):([0-5]\d)$/;

/**
 * A quantity as somebody writes it: `80 kg`, `176lb`, `5.5 mph`, `12:30` for a time, `60 %`.
 *
 * A number without its unit is refused where it could be read in two ways. A decimal comma is refused.
 *
 * @returns the value in the first unit of the dimension, or what is wrong
 * @source intPound1959
 * @example readQuantity("5 ft", "length") //=> { value: 152.4, unit: "ft" }
 */
export function readQuantity(text: string, dimension: Dimension): Quantity | QuantityFault {
  const clock = dimension === "time" ? CLOCK.exec(text) : null;
  if (clock) return { value: 60 * Number(clock[1]) + Number(clock[2]), unit: "min" };
  const written = WRITTEN.exec(text);
  if (!written) return "reckon/number-form";
  const [, number, unit] = written as unknown as [string, string, string];
  const units: Readonly<Record<string, number>> = DIMENSIONS[dimension];
  if (unit === "") return BARE.includes(dimension) ? { value: Number(number), unit: "" } : "reckon/unit-missing";
  const size = Object.hasOwn(units, unit) ? units[unit] : undefined;
  return size === undefined ? "reckon/unit-unknown" : { value: Number(number) * size, unit };
}
