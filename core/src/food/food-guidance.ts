import { ACTIVITY_FACTORS, type ActivityLevel, dailyEnergy, restingEnergy } from "../equations/index.ts";
import type { Span } from "../model/index.ts";
import { proteinGrams } from "../tables/index.ts";

/** What somebody states, or leaves unanswered: an unanswered question is read the safe way. */
export type Stated = "yes" | "no" | "not answered";

export const AIMS = ["keep", "lose", "gain"] as const;
export type Aim = (typeof AIMS)[number];

export interface FoodFacts {
  readonly sex: "man" | "woman";
  readonly massKg: number;
  readonly heightCm: number;
  readonly ageY: number;
  readonly life: ActivityLevel;
  readonly aim: Aim;
  /** Pregnant, birth within 12 months or breast-feeding. */
  readonly pregnancy: Stated;
  /** An eating disorder, now or before. */
  readonly eatingDisorder: Stated;
  readonly kidneyDisease: Stated;
  /** Diabetes that is treated. */
  readonly diabetes: Stated;
}

/** Why somebody is sent on. */
export const REFERRALS = [
  "under 19",
  "over 78, where the equation was not made",
  "pregnancy, birth within 12 months or breast-feeding",
  "an eating disorder, now or before",
  "kidney disease",
  "diabetes under treatment",
  "underweight",
  "less energy than a body at rest takes",
] as const;
export type Referral = (typeof REFERRALS)[number];

/**
 * Guidance in ranges. `daily` is what a body takes in a day, `eat` what to eat for the aim; both in kcal with the error of
 * the equation. `floorKcal` is never gone under. Protein is in grams a day and a meal.
 */
export interface FoodGuidance {
  readonly daily: Span & { readonly value: number };
  readonly eat: Span;
  readonly floorKcal: number;
  readonly protein: Span;
  readonly proteinAMealG: number;
  /** Kilograms a week that body mass should not fall faster than. */
  readonly mostLossKg: number;
}

export type FoodAnswer =
  | { readonly ok: true; readonly value: FoodGuidance }
  | { readonly ok: false; readonly refer: readonly Referral[]; readonly unanswered: readonly string[] };

/** Ages of the equation of resting energy. Source: mifflin1990. Adults begin at 18; 18 has no equation and is sent on. */
const OLDEST = 78;
const EQUATION_FROM = 19;
/** Body mass index under which a body is called underweight. Source: whoBmi. */
const UNDERWEIGHT = 18.5;
/** How far over and under the measured figure the equation was in people with obesity. Source: mifflinEvidence. */
const MISS = { over: 1.09, under: 0.79 } as const;
/** The factor of a way of life alone may miss by so much. Source: faoWhoUnu2001. */
const FACTOR_MISS = 0.08;
/**
 * Kilocalories a day less or more than the body takes. The public guide's deficit is 500 to 1000 (acsm2001); the milder
 * half of it is given here, and as much more for gaining. Ours.
 */
const STEP: Span = { from: 250, to: 500 };
/** Under 800 kcal a day is for medical supervision (acsm2001); nobody is given less than 1200 here, as is common practice. */
const LEAST_KCAL = 1200;
/** Grams of protein for each kilogram a day, and a meal. Sources: acsm2016, jager2017. */
const PROTEIN: Span = { from: 1.2, to: 2 };
const PROTEIN_A_MEAL = 0.25;
/** Body mass index up to which body mass counts for protein, so that fat asks for none. Ours. */
const COUNTED_INDEX = 30;
/** Body mass should not fall faster than 1 % and 1 kg a week. Sources: acsm2001, ours. */
const MOST_LOSS = { percent: 1, kg: 1 } as const;

function index({ massKg, heightCm }: FoodFacts): number {
  return massKg / (heightCm / 100) ** 2;
}

function referrals(facts: FoodFacts): readonly Referral[] {
  const { ageY, pregnancy, eatingDisorder, kidneyDisease, diabetes, sex } = facts;
  return [
    ...(ageY < EQUATION_FROM ? (["under 19"] as const) : []),
    ...(ageY > OLDEST ? (["over 78, where the equation was not made"] as const) : []),
    ...(sex === "woman" && pregnancy === "yes"
      ? (["pregnancy, birth within 12 months or breast-feeding"] as const)
      : []),
    ...(eatingDisorder === "yes" ? (["an eating disorder, now or before"] as const) : []),
    ...(kidneyDisease === "yes" ? (["kidney disease"] as const) : []),
    ...(diabetes === "yes" ? (["diabetes under treatment"] as const) : []),
    ...(index(facts) < UNDERWEIGHT ? (["underweight"] as const) : []),
  ];
}

function unanswered({ sex, pregnancy, eatingDisorder, kidneyDisease, diabetes }: FoodFacts): readonly string[] {
  return [
    ...(sex === "woman" && pregnancy === "not answered" ? ["pregnancy"] : []),
    ...(eatingDisorder === "not answered" ? ["eating disorder"] : []),
    ...(kidneyDisease === "not answered" ? ["kidney disease"] : []),
    ...(diabetes === "not answered" ? ["diabetes"] : []),
  ];
}

/** What to eat for the aim, never under the floor; undefined where even the milder step would go under it. */
function eatFor(aim: Aim, daily: number, floorKcal: number): Span | undefined {
  if (aim === "keep") return { from: Math.max(daily * (1 - FACTOR_MISS), floorKcal), to: daily * (1 + FACTOR_MISS) };
  if (aim === "gain") return { from: daily + STEP.from, to: daily + STEP.to };
  if (daily - STEP.from < floorKcal) return undefined;
  return { from: Math.max(daily - STEP.to, floorKcal), to: daily - STEP.from };
}

/**
 * General guidance on energy and protein for a healthy adult, or whom to ask instead.
 *
 *   daily = resting (Mifflin) × factor of the way of life
 *   eat = daily ± 8 % to keep; 250 to 500 kcal less to lose, never under the body at rest nor 1200 kcal; as much more to gain
 *   protein 1.2 to 2.0 g a day and 0.25 g a meal for each kilogram, counted up to a body mass index of 30
 *
 * Nobody under 19, over 78, pregnant or soon after birth, with an eating disorder, kidney disease, treated diabetes or
 * underweight is given figures: a registered dietitian or a doctor is asked. What is not answered is read the safe way.
 * Meals for an illness are a dietitian's work in any case.
 *
 * @throws RangeError outside the body measures of the equations
 * @source mifflin1990, mifflinEvidence, faoWhoUnu2001, acsm2001, acsm2016, jager2017
 */
export function foodGuidance(facts: FoodFacts): FoodAnswer {
  const { massKg, heightCm, ageY, sex, life, aim } = facts;
  const [refer, open] = [referrals(facts), unanswered(facts)];
  if (refer.length > 0 || open.length > 0) return { ok: false, refer, unanswered: open };
  const rest = restingEnergy("mifflin", { sex, massKg, heightCm, ageY });
  const value = dailyEnergy(rest, ACTIVITY_FACTORS[life]);
  const floorKcal = Math.max(rest, LEAST_KCAL);
  const eat = eatFor(aim, value, floorKcal);
  if (eat === undefined) return { ok: false, refer: ["less energy than a body at rest takes"], unanswered: [] };
  const counted = Math.min(massKg, COUNTED_INDEX * (heightCm / 100) ** 2);
  return {
    ok: true,
    value: {
      daily: { value, from: (value / MISS.over) * (1 - FACTOR_MISS), to: (value / MISS.under) * (1 + FACTOR_MISS) },
      eat,
      floorKcal,
      protein: { from: proteinGrams(counted, PROTEIN.from), to: proteinGrams(counted, PROTEIN.to) },
      proteinAMealG: proteinGrams(counted, PROTEIN_A_MEAL),
      mostLossKg: Math.min(MOST_LOSS.kg, (massKg * MOST_LOSS.percent) / 100),
    },
  };
}
