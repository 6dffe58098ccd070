import { refuseHeight, refuseMass, refuseOutside } from "./refuse.ts";

/** Classes of the body mass index of adults. */
export const BMI_CLASSES = [
  { class: "severe thinness", from: 0 },
  { class: "moderate thinness", from: 16 },
  { class: "mild thinness", from: 17 },
  { class: "normal", from: 18.5 },
  { class: "pre-obese", from: 25 },
  { class: "obese class I", from: 30 },
  { class: "obese class II", from: 35 },
  { class: "obese class III", from: 40 },
] as const;
export type BmiClass = (typeof BMI_CLASSES)[number]["class"];

/** Further points at which public health acts in Asian populations; observed risk there begins between 22 and 25. */
export const BMI_ASIAN_POINTS = [23, 27.5, 32.5, 37.5] as const;

/**
 * Body mass index.
 *
 *   mass / height²
 *
 * Adults only: children have curves of their own. It says little of pregnant and of very muscular people, and nothing of
 * what the mass is made of.
 *
 * @param massKg 30 to 300 kg
 * @param heightCm 120 to 230 cm
 * @param ageY 18 or more
 * @returns kg/m², not rounded, and its class
 * @throws RangeError outside the ranges
 * @source whoBmi
 * @example bodyMassIndex(70, 175, 40).class //=> "normal"
 */
export function bodyMassIndex(
  massKg: number,
  heightCm: number,
  ageY: number,
): { readonly value: number; readonly class: BmiClass } {
  refuseOutside("the body mass index", "age in years", ageY, 18, 120);
  refuseMass("the body mass index", massKg);
  refuseHeight("the body mass index", heightCm);
  const value = massKg / (heightCm / 100) ** 2;
  return { value, class: BMI_CLASSES.findLast(({ from }) => value >= from)!.class };
}

export type WaistRisk = "not increased" | "increased" | "substantially increased";

const WAIST_CM = { man: [94, 102], woman: [80, 88] } as const;
const WAIST_HIP = { man: 0.9, woman: 0.85 } as const;

/**
 * The health risk that goes with a waist, by the general cut-offs: men over 94 and 102 cm, women over 80 and 88. Groups
 * differ: 90 for men of South Asian and Chinese origin, and for Japanese people two tables disagree. Measured midway
 * between the lowest rib and the hip bone.
 *
 * @param waistCm 40 to 220 cm
 * @throws RangeError outside the range
 * @source whoWaist2008
 * @example waistRisk("man", 103) //=> "substantially increased"
 */
export function waistRisk(sex: "man" | "woman", waistCm: number): WaistRisk {
  refuseOutside("the risk that goes with a waist", "waist in cm", waistCm, 40, 220);
  const [first, second] = WAIST_CM[sex];
  return waistCm > second ? "substantially increased" : waistCm > first ? "increased" : "not increased";
}

/**
 * Waist over hip, and the risk that goes with it: men 0.90 and more, women 0.85 and more. Other pages print 0.95 and 0.80.
 *
 * @param waistCm 40 to 220 cm
 * @param hipCm 50 to 220 cm
 * @throws RangeError outside the ranges
 * @source whoWaist2008
 * @example waistHip("woman", 85, 100) //=> { ratio: 0.85, risk: "substantially increased" }
 */
export function waistHip(
  sex: "man" | "woman",
  waistCm: number,
  hipCm: number,
): { readonly ratio: number; readonly risk: WaistRisk } {
  refuseOutside("waist over hip", "waist in cm", waistCm, 40, 220);
  refuseOutside("waist over hip", "hip in cm", hipCm, 50, 220);
  const ratio = waistCm / hipCm;
  return { ratio, risk: ratio >= WAIST_HIP[sex] ? "substantially increased" : "not increased" };
}
