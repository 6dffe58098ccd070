import { type Estimate, ratioOf } from "./estimates.ts";

/** Something that was said with a certainty, a share of 1, and whether it came. */
export interface Said {
  readonly person: number;
  readonly chance: number;
  readonly happened: boolean;
}

/** One of the three levels at which certainty is held against what happened. */
export interface CertaintyFigures {
  /** A share of 1, and the range of certainties that are counted to it. */
  readonly level: number;
  readonly from: number;
  readonly to: number;
  /** Mean of what was said. */
  readonly said: number;
  /** How often it came true. */
  readonly happened: Estimate;
  readonly cases: number;
}

const LEVELS = [
  { level: 0.7, from: 0.6, to: 0.775 },
  { level: 0.85, from: 0.775, to: 0.9 },
  { level: 0.95, from: 0.9, to: 1 },
] as const;

/** @returns the levels near which something was said; people are drawn again, with all that was said of each */
export function judgeCertainty(all: readonly Said[], seed: number): readonly CertaintyFigures[] {
  return LEVELS.flatMap(({ level, from, to }) => {
    const near = all.filter(({ chance }) => chance >= from && (chance < to || to === 1));
    const sums = new Map<number, [number, number]>();
    for (const { person, happened } of near) {
      const [came, cases] = sums.get(person) ?? [0, 0];
      sums.set(person, [came + Number(happened), cases + 1]);
    }
    const happened = ratioOf([...sums.values()], seed);
    if (happened === undefined) return [];
    const said = near.reduce((sum, { chance }) => sum + chance, 0) / near.length;
    return [{ level, from, to, said, happened, cases: near.length }];
  });
}
