import type { SourceId } from "../sources.ts";

/**
 * Heel raises on one leg until no more are possible, on a slope of 10° to a beat of 60 a minute, by decade of age. Restated;
 * restatements differ by 1.
 *
 * @source hebertLosier2017
 */
export const HEEL_RAISE_NORMS: {
  readonly source: SourceId;
  readonly rows: readonly { readonly decade: number; readonly man: number; readonly woman: number }[];
} = {
  source: "hebertLosier2017",
  rows: [
    { decade: 20, man: 37, woman: 30 },
    { decade: 30, man: 32, woman: 27 },
    { decade: 40, man: 28, woman: 24 },
    { decade: 50, man: 23, woman: 21 },
    { decade: 60, man: 19, woman: 19 },
    { decade: 70, man: 14, woman: 16 },
    { decade: 80, man: 10, woman: 13 },
  ],
};

/**
 * The usual number of one-leg heel raises at an age. A common target of 25 does not fit older people.
 *
 * @param ageY 20 to 89
 * @returns undefined for an age that was not tabulated
 * @source hebertLosier2017
 * @example usualHeelRaises("woman", 52) //=> 21
 */
export function usualHeelRaises(sex: "man" | "woman", ageY: number): number | undefined {
  return HEEL_RAISE_NORMS.rows.find(({ decade }) => ageY >= decade && ageY < decade + 10)?.[sex];
}
