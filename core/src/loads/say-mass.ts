import { asLoad, type Load, type Mass, type MassUnit, massOf } from "../units.ts";

/**
 * A mass as the load that people read: in the wanted unit where that says it to a thousandth, else in the other unit.
 * A mass that mixes kilograms and pounds may fit neither; it is then rounded up, never said lighter than it is.
 *
 * @example
 * sayMass(lb(45), "kg") //=> { value: 45, unit: "lb" }
 */
export function sayMass(mass: Mass, unit: MassUnit): Load {
  const own = asLoad(mass, unit);
  if (massOf(own) === mass) return own;
  const other = asLoad(mass, unit === "kg" ? "lb" : "kg");
  if (massOf(other) === mass) return other;
  return massOf(own) > mass ? own : { value: Math.round(own.value * 1000 + 1) / 1000, unit };
}
