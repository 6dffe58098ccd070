import type { SourceId } from "../sources.ts";

/** Repetitions of each class as printed, best first; "over" is the class above the first band. */
export interface PushUpBands {
  readonly ageY: { readonly from: number; readonly to: number };
  readonly over: number;
  readonly good: readonly [number, number];
  readonly aboveAverage: readonly [number, number];
  readonly average: readonly [number, number];
  readonly belowAverage: readonly [number, number];
  readonly poor: readonly [number, number];
}

function bands(from: number, to: number, over: number, ...pairs: readonly number[]): PushUpBands {
  const pair = (i: number): readonly [number, number] => [pairs[2 * i]!, pairs[2 * i + 1]!];
  return {
    ageY: { from, to },
    over,
    good: pair(0),
    aboveAverage: pair(1),
    average: pair(2),
    belowAverage: pair(3),
    poor: pair(4),
  };
}

/**
 * Another table of push-ups: one restatement whole, a second agrees in four of seven bands and says the test lasts one
 * minute. Five bands overlap by one or lie against the next as printed, and are left so: it is for reading and never
 * classes anybody here. A man of 30 to 39 with 30 is excellent in PUSH_UP_NORMS and above average here.
 *
 * @source golding1986
 */
export const PUSH_UP_BANDS: {
  readonly source: SourceId;
  readonly men: readonly PushUpBands[];
  readonly women: readonly PushUpBands[];
} = {
  source: "golding1986",
  men: [
    bands(17, 19, 56, 47, 56, 35, 46, 19, 34, 11, 18, 4, 10),
    bands(20, 29, 47, 39, 47, 30, 39, 17, 29, 10, 16, 4, 9),
    bands(30, 39, 41, 34, 41, 25, 33, 13, 24, 8, 12, 2, 7),
    bands(40, 49, 34, 28, 34, 21, 28, 11, 20, 6, 10, 1, 5),
    bands(50, 59, 31, 25, 31, 18, 24, 9, 17, 5, 8, 1, 4),
    bands(60, 65, 30, 24, 30, 17, 23, 6, 16, 3, 5, 1, 2),
  ],
  women: [
    bands(17, 19, 35, 27, 35, 21, 27, 11, 20, 6, 10, 2, 5),
    bands(20, 29, 36, 30, 36, 23, 29, 12, 22, 7, 11, 2, 6),
    bands(30, 39, 37, 30, 37, 22, 30, 10, 21, 5, 9, 1, 4),
    bands(40, 49, 31, 25, 31, 18, 24, 8, 17, 4, 7, 1, 3),
    bands(50, 59, 25, 21, 25, 15, 20, 7, 14, 3, 6, 1, 2),
    bands(60, 65, 23, 19, 23, 13, 18, 5, 12, 2, 4, 1, 1),
  ],
};
