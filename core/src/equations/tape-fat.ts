import type { About } from "./about.ts";
import { refuseHeight, refuseOutside } from "./refuse.ts";
import { fatFromDensity } from "./skinfolds.ts";

/** On whom the equations from tape measures were made; errors grow at high fatness. */
export const TAPE_FAT = {
  man: {
    source: "hodgdonFriedl1999",
    who: "men of a navy",
    miss: { kind: "standard error of estimate", from: 3.52, unit: "% fat", source: "hodgdonFriedl1999" },
  },
  woman: {
    source: "hodgdonFriedl1999",
    who: "women of a navy",
    miss: { kind: "standard error of estimate", from: 3.61, unit: "% fat", source: "hodgdonFriedl1999" },
  },
} as const satisfies Record<"man" | "woman", About>;

/** Girths in cm: of men the abdomen at the navel; of women the waist at its narrowest, and the hip. */
export type Girths = { readonly heightCm: number; readonly neckCm: number } & (
  | { readonly sex: "man"; readonly abdomenCm: number }
  | { readonly sex: "woman"; readonly waistCm: number; readonly hipCm: number }
);

const CM_PER_INCH = 2.54;

/** The girth that the equations take the logarithm of. */
function girthOf(girths: Girths): number {
  refuseHeight("per cent of fat", girths.heightCm);
  refuseOutside("per cent of fat", "neck in cm", girths.neckCm, 20, 70);
  if (girths.sex === "man") {
    refuseOutside(
      "per cent of fat",
      "abdomen in cm, which must be over the neck,",
      girths.abdomenCm,
      girths.neckCm + 5,
      220,
    );
    return girths.abdomenCm - girths.neckCm;
  }
  refuseOutside("per cent of fat", "waist in cm, which must be over the neck,", girths.waistCm, girths.neckCm + 5, 220);
  refuseOutside("per cent of fat", "hip in cm", girths.hipCm, 50, 220);
  return girths.waistCm + girths.hipCm - girths.neckCm;
}

/** Nobody lives outside 2 to 70 %: a girth was read wrong. Ours. */
function plausible(fat: number): number {
  refuseOutside("per cent of fat", "what the girths give in %", fat, 2, 70);
  return fat;
}

/**
 * Per cent of fat from tape measures, in the form printed for inches.
 *
 *   men: 86.010 log10(abdomen − neck) − 70.041 log10(height) + 36.76
 *   women: 163.205 log10(waist + hip − neck) − 97.684 log10(height) − 78.387
 *
 * Not under 18, not in pregnancy; a figure to watch and no diagnosis.
 *
 * @param girths centimetres: height 120 to 230, neck 20 to 70, abdomen or waist 5 over the neck to 220, hip 50 to 220
 * @param ageY 18 or more
 * @returns per cent of body mass; standard error 3.52 for men, 3.61 for women
 * @throws RangeError outside the ranges
 * @source hodgdonFriedl1999
 * @example tapeFat({ sex: "man", heightCm: 178, neckCm: 38, abdomenCm: 90 }, 30).toFixed(2) //=> "20.27"
 */
export function tapeFat(girths: Girths, ageY: number): number {
  refuseOutside("per cent of fat", "age in years", ageY, 18, 120);
  const girth = Math.log10(girthOf(girths) / CM_PER_INCH);
  const height = Math.log10(girths.heightCm / CM_PER_INCH);
  return plausible(
    girths.sex === "man" ? 86.01 * girth - 70.041 * height + 36.76 : 163.205 * girth - 97.684 * height - 78.387,
  );
}

/**
 * The same from the earlier form, which gives density in centimetres, and then Siri.
 *
 *   men: 1.032 − 0.191 log10(abdomen − neck) + 0.155 log10(height)
 *   women: 1.296 − 0.350 log10(waist + hip − neck) + 0.221 log10(height)
 *
 * @returns per cent of body mass; standard error 3.52 for men, 3.72 for women
 * @throws RangeError as tapeFat
 * @source hodgdonBeckett1984, siri1961
 * @example tapeFatByDensity({ sex: "man", heightCm: 178, neckCm: 38, abdomenCm: 90 }, 30).toFixed(2) //=> "20.06"
 */
export function tapeFatByDensity(girths: Girths, ageY: number): number {
  refuseOutside("per cent of fat", "age in years", ageY, 18, 120);
  const girth = Math.log10(girthOf(girths));
  const height = Math.log10(girths.heightCm);
  const density = girths.sex === "man" ? 1.032 - 0.191 * girth + 0.155 * height : 1.296 - 0.35 * girth + 0.221 * height;
  return plausible(fatFromDensity("siri", density));
}
