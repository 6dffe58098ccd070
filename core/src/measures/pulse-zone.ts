import { ageOn, type Day } from "../day.ts";
import { HEART_RATE_EQUATIONS, type HighestPulse, heartRateMax, pulseTarget } from "../equations/index.ts";
import type { Conditioning, Person, PulseZone, Span } from "../model/index.ts";
import { INTENSITY_CUTS } from "../tables/index.ts";

/**
 * Shares of the heart-rate reserve for each effort: easy is the class called light, steady the moderate one and hard the
 * vigorous one. Which word stands for which class is ours. Source: garber2011.
 */
const [LIGHT, MODERATE, VIGOROUS, NEAR_MAX] = INTENSITY_CUTS.from["% reserve"];
export const EFFORT_SHARES: Readonly<Record<Conditioning["effort"], Span>> = {
  easy: { from: LIGHT, to: MODERATE },
  steady: { from: MODERATE, to: VIGOROUS },
  hard: { from: VIGOROUS, to: NEAR_MAX },
};

/** The highest pulse that was measured, else that of the equation of age; undefined where neither may be used. */
function highestOf({ born, pulse }: Person, on: Day): HighestPulse | undefined {
  if (pulse?.highest !== undefined) return { bpm: pulse.highest, measured: true };
  const age = ageOn(born, on);
  const { from, to } = HEART_RATE_EQUATIONS.tanaka.ageY;
  if (pulse === undefined || pulse.slowed || !(age >= from && age <= to)) return undefined;
  return { bpm: heartRateMax("tanaka", age), measured: false };
}

/**
 * The pulse for an effort, from the person's own resting pulse and their highest or the equation of age, by shares of the
 * reserve. Ends are rounded half up to whole beats. `miss` is how far one person in three lies from the equation at
 * the upper end, 0 where the highest was measured.
 *
 * @returns undefined without a resting pulse, with a medicine that slows the heart unless the highest was measured under
 * it, outside the ages of the equation, and where the measured highest is not above the pulse at rest: then talking tells
 * @source karvonen1957
 * @source tanaka2001
 * @example
 * pulseZone(fortyAtRest60Highest180, "steady", on) //=> { from: 108, to: 132, miss: 0 }
 */
export function pulseZone(person: Person, effort: Conditioning["effort"], on: Day): PulseZone | undefined {
  const { pulse } = person;
  const highest = highestOf(person, on);
  if (pulse === undefined || highest === undefined || !(highest.bpm > pulse.rest)) return undefined;
  const target = (share: number) => pulseTarget(highest, pulse.rest, share / 100, pulse.slowed);
  const { from, to } = EFFORT_SHARES[effort];
  const top = target(to);
  return {
    from: Math.floor(target(from).bpm + 0.5),
    to: Math.floor(top.bpm + 0.5),
    miss: Math.ceil(top.high - top.bpm),
  };
}
