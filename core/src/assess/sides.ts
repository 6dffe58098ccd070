/** Two sides of one test, never averaged. */
export interface Sides {
  readonly left: number;
  readonly right: number;
}

/** The weaker side and how far behind it is. */
export interface SideGap {
  readonly weaker: "left" | "right" | "none";
  /** Per cent of the stronger side, 0 to 100, one decimal. */
  readonly gapPercent: number;
}

function assertSides({ left, right }: Sides): void {
  if (!(left >= 0 && right >= 0 && Number.isFinite(left + right) && left + right > 0)) {
    throw new RangeError(
      `Cannot compare sides as both must be 0 or more and one above 0: current values are ${left} and ${right}`,
    );
  }
}

/**
 * How far one side is behind the other: (stronger − weaker) ÷ stronger. The weaker is trained first; the stronger does
 * no more than the weaker can.
 *
 * @param better "less" for times of a task, where the slower side is the weaker
 * @throws RangeError for negative values, no numbers, or two zeros
 * @source practice
 * @example sideGap({ left: 9, right: 10 }) //=> { weaker: "left", gapPercent: 10 }
 */
export function sideGap(sides: Sides, better: "more" | "less" = "more"): SideGap {
  assertSides(sides);
  const { left, right } = sides;
  const [low, high] = [Math.min(left, right), Math.max(left, right)];
  const lower = left === right ? "none" : left < right ? "left" : "right";
  const other = { left: "right", right: "left", none: "none" } as const;
  return {
    weaker: better === "more" ? lower : other[lower],
    gapPercent: Math.round(((high - low) / high) * 1000) / 10,
  };
}

/** One line of a symmetry list: the injured side as per cent of the other. */
export interface SymmetryLine {
  readonly test: string;
  /** One decimal. */
  readonly percent: number;
  readonly passed: boolean;
}

/**
 * Injured ÷ uninjured side for each test, and whether every one is over the line. All count, not most, and no average
 * is made of them. The decision to return belongs to the medical team.
 *
 * @param over per cent that each must exceed
 * @throws RangeError when an uninjured side is not above 0 or a value is negative
 * @source practice
 */
export function symmetry(
  tests: readonly { readonly test: string; readonly injured: number; readonly uninjured: number }[],
  over = 90,
): { readonly passed: boolean; readonly lines: readonly SymmetryLine[] } {
  const lines = tests.map(({ test, injured, uninjured }) => {
    if (!(uninjured > 0 && injured >= 0 && Number.isFinite(injured))) {
      throw new RangeError(
        `Cannot compare ${test} as the uninjured side must be above 0: current values are ${injured} and ${uninjured}`,
      );
    }
    const share = (injured / uninjured) * 100;
    return { test, percent: Math.round(share * 10) / 10, passed: share > over };
  });
  return { passed: lines.length > 0 && lines.every(({ passed }) => passed), lines };
}
