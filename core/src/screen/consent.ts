import { ageOn, type Day } from "../day.ts";

/** What a person may agree to, one by one. None of them is bound to another. */
export const PURPOSES = [
  "keep my training record",
  "use my health answers",
  "share with my clinician",
  "guide me by touch",
  "photos",
  "news and offers",
  "learn from many people",
] as const;
export type Purpose = (typeof PURPOSES)[number];

/** One statement about one purpose; the latest counts. */
export interface Consent {
  readonly purpose: Purpose;
  readonly on: Day;
  readonly given: boolean;
  /** Who spoke: the person, or a named parent or guardian. */
  readonly by: { readonly who: "self" } | { readonly who: "guardian"; readonly name: string };
}

/** Under this age a parent or guardian speaks. It is set by local law, 13 to 16 in Europe; the country is named. */
export interface ConsentAge {
  readonly country: string;
  readonly age: number;
}

/** Where no country is named, the highest age that a country of Europe has for it. */
export const STRICTEST_AGE: ConsentAge = { country: "not named", age: 16 };

export const CONSENT_STATES = ["given", "withdrawn", "never asked", "needs a guardian"] as const;
export type ConsentState = (typeof CONSENT_STATES)[number];

/** @returns what is agreed to on a day, purpose by purpose */
export function consentsOn(
  file: { readonly consents: readonly Consent[]; readonly born: Day; readonly consentAge?: ConsentAge },
  on: Day,
): readonly { readonly purpose: Purpose; readonly state: ConsentState }[] {
  const { consents, born, consentAge = STRICTEST_AGE } = file;
  return PURPOSES.map((purpose) => ({ purpose, state: consentFor(purpose, consents, born, on, consentAge) }));
}

/**
 * Whether a purpose is agreed to on a day. Statements of a day not yet come do not count; of two on one day the later
 * in the list does. What a child gave alone does not count, what a child withdraws does.
 *
 * @throws RangeError when the age of consent is not from 13 to 18
 */
export function consentFor(
  purpose: Purpose,
  consents: readonly Consent[],
  born: Day,
  on: Day,
  local: ConsentAge,
): ConsentState {
  if (!(local.age >= 13 && local.age <= 18)) {
    throw new RangeError(`Cannot judge consent as its age must be from 13 to 18: current value is ${local.age}`);
  }
  const said = consents.filter((consent) => consent.purpose === purpose && consent.on <= on);
  const last = said.reduce<Consent | undefined>(
    (late, now) => (late === undefined || now.on >= late.on ? now : late),
    undefined,
  );
  if (last === undefined) return "never asked";
  if (!last.given) return "withdrawn";
  return last.by.who === "self" && ageOn(born, last.on) < local.age ? "needs a guardian" : "given";
}
