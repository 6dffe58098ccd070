import type { Stroke } from "../model/index.ts";
import type { Drawing, Shape } from "./shape.ts";
import { strokeBars, strokeSpan } from "./stroke-bars.ts";

/** Between two sets, and between two lots of sets. */
const BETWEEN = 5;
const APART = 16;
/** Left and right of all strokes. */
const MARGIN = 4;
/** Room under the base line for words. */
const WORDS = 14;
/** The upper end of the asked range stands at this share of the height, so that more than asked is seen. */
const ASKED_AT = 0.8;

export interface StrokesAsked {
  /** Pixels from the top to the base line. */
  readonly height: number;
  /**
   * `all`: one scale of repetitions, and one of seconds, for all sets: a lane of one movement over time.
   * `each`: a scale for each lot: a session with its movements side by side.
   */
  readonly scale: "all" | "each";
  /** The word under a set that hurt; without it the words stand elsewhere. */
  readonly hurtWord?: string;
}

/** True when any set of the lot has sides; then all are drawn with two. */
function isSided(lot: readonly Stroke[]): boolean {
  return lot.some(({ done }) => done !== undefined && !("both" in done));
}

/** The amount that stands at the upper end of an asked range, by repetitions and by seconds. */
function most(strokes: readonly Stroke[], hold: boolean): number {
  return Math.max(1, ...strokes.filter((stroke) => stroke.hold === hold).map(({ asked }) => asked.to));
}

/** Two thin rules at the ends of the range that was asked, under the sets it was asked of. */
function rules(
  lot: readonly Stroke[],
  ends: readonly (readonly [number, number])[],
  at: (stroke: Stroke, amount: number) => number,
): Shape[] {
  const drawn: Shape[] = [];
  for (let first = 0; first < lot.length; ) {
    const { asked, hold } = lot[first]!;
    let last = first;
    const same = ({ asked: other, hold: held }: Stroke) =>
      other.from === asked.from && other.to === asked.to && held === hold;
    while (last + 1 < lot.length && same(lot[last + 1]!)) last++;
    for (const amount of new Set([asked.from, asked.to])) {
      if (amount > 0) {
        drawn.push({
          kind: "line",
          x1: ends[first]![0] - MARGIN,
          x2: ends[last]![1] + MARGIN,
          y: at(lot[first]!, amount) + 0.5,
          role: "rule",
        });
      }
    }
    first = last + 1;
  }
  return drawn;
}

/**
 * Draws sets as strokes on one base line. Height is what was done against what was asked, width is the load against
 * what can be lifted now; solid is done, outline is asked, dashed is still to come, a dot is missed, half filled is
 * done with no number said; a flat cap is a hold, two side by side are left and right; an outline in the correction
 * colour means that it hurt.
 *
 * @param lots sets that belong together: one movement of a session, or one session of a movement
 * @returns a drawing `height` px high and as wide as it needs, 14 px higher where words stand below the base line;
 * more than 1.25 times what was asked reaches the top and no higher
 */
export function drawStrokes(lots: readonly (readonly Stroke[])[], { height, scale, hurtWord }: StrokesAsked): Drawing {
  // Bars end where the base line begins, on whole pixels.
  const base = height - 1;
  const all = lots.flat();
  const shapes: Shape[] = [];
  let x = MARGIN;
  for (const lot of lots) {
    const sided = isSided(lot);
    const within = scale === "all" ? all : lot;
    const tops = { reps: most(within, false), hold: most(within, true) };
    const heightOf = (stroke: Stroke, amount: number) =>
      Math.min(base, Math.max(0, Math.round((amount / (stroke.hold ? tops.hold : tops.reps)) * ASKED_AT * base)));
    const ends: [number, number][] = [];
    for (const stroke of lot) {
      if (ends.length > 0) x += BETWEEN;
      ends.push([x, x + strokeSpan(stroke, sided)]);
      x += strokeSpan(stroke, sided);
    }
    shapes.push(...rules(lot, ends, (stroke, amount) => base - heightOf(stroke, amount)));
    lot.forEach((stroke, index) => {
      const [left, right] = ends[index]!;
      shapes.push(...strokeBars(stroke, sided, left, { base, of: (amount) => heightOf(stroke, amount) }));
      if (stroke.hurt && hurtWord !== undefined) {
        shapes.push({ kind: "word", x: (left + right) / 2, y: height + WORDS - 3, word: hurtWord, role: "correction" });
      }
    });
    x += APART;
  }
  const width = lots.length === 0 ? 2 * MARGIN : x - APART + MARGIN;
  shapes.push({ kind: "line", x1: 0, x2: width, y: base + 0.5, role: "ink" });
  const worded = shapes.some(({ kind }) => kind === "word");
  return { width, height: worded ? height + WORDS : height, shapes };
}
