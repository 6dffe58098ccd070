import { ageOn, type Day } from "../day.ts";
import type { Reason } from "../model/index.ts";
import { chairStandNorm, oneLegStandMean, pushUpClass, weaknessBy } from "../tables/index.ts";
import { reason } from "./result.ts";

const WEAKNESS = {
  grip: "grip",
  "usual-walk": "gait",
  "five-rises": "five chair rises",
  "up-and-go": "up and go",
} as const;
const WEAKNESS_UNITS = { grip: "kg", "usual-walk": "m/s", "five-rises": "s", "up-and-go": "s" } as const;
/** The cut-offs were made for older people. Both groups begin at 60 or 65. */
const OLDER_FROM = 60;

/**
 * Where a score stands among people of the age on the day of the test. The age of that day is used for ever, also when
 * it is looked at later. Tests without an open norm say nothing.
 *
 * @param sex undefined when the person did not say: then norms that need it are not used, and that is said
 * @source rikliJones1999, bohannon2006, csepPushUps, ewgsop2019, awgs2019
 */
export function normOf(
  test: string,
  value: number,
  born: Day,
  on: Day,
  sex: "man" | "woman" | undefined,
): readonly Reason[] {
  const age = ageOn(born, on);
  if (test === "one-leg-stand") {
    const mean = oneLegStandMean(age);
    return mean === undefined
      ? [reason("assess/no-norm", { test, age })]
      : [reason("assess/mean", { test, mean, unit: "s", source: "bohannon2006" })];
  }
  if (!(test in WEAKNESS) && test !== "chair-stand-30" && !test.startsWith("push-up-")) return [];
  if (sex === undefined) return [reason("assess/sex-unknown", { test })];
  if (test === "chair-stand-30") return chairStand(value, age, sex);
  if (test.startsWith("push-up-")) {
    const own = test === (sex === "man" ? "push-up-toes" : "push-up-knees");
    const found = own ? pushUpClass(value, age, sex) : undefined;
    return found === undefined
      ? [reason("assess/no-norm", { test, age })]
      : [reason("assess/class", { test, class: found, source: "csepPushUps" })];
  }
  if (!(age >= OLDER_FROM)) return [];
  const name = test as keyof typeof WEAKNESS;
  return weaknessBy(WEAKNESS[name], value, sex).map(({ source, men, women }) =>
    reason("assess/talk-to-doctor", { test, edge: sex === "man" ? men : women, unit: WEAKNESS_UNITS[name], source }),
  );
}

function chairStand(value: number, age: number, sex: "man" | "woman"): readonly Reason[] {
  const test = "chair-stand-30";
  const middle = chairStandNorm(age, sex);
  if (middle === undefined) return [reason("assess/no-norm", { test, age })];
  const said = { test, ...middle, unit: "repetitions", source: "rikliJones1999" };
  return [reason(value < middle.from ? "assess/below-average" : "assess/middle-half", said)];
}
