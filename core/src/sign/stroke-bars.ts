import type { Stroke, StrokeAmount } from "../model/index.ts";
import type { Shape } from "./shape.ts";

/** Narrowest and widest stroke, in pixels. Source: our own choice, the sign's definition. */
const NARROWEST = 2;
const WIDEST = 10;
/** Between the sides of one set. */
const SPLIT = 2;
/** How far a hold's flat cap reaches over its stroke at either side, and how thick it is. */
const CAP = 2;
/** Room between a stroke and the outline that says that it hurt. */
const CLEAR = 1;
const HURT_WEIGHT = 1.5;

/** Heights above the base line, in pixels. */
export interface Heights {
  readonly base: number;
  /** @returns pixels above the base line for repetitions or seconds */
  readonly of: (amount: number) => number;
}

/**
 * How wide a stroke is: 2 to 10 px by load as a share of what can be lifted now, in whole pixels. A load that cannot
 * be judged gets the middle, 6 px; words beside the sign say so.
 *
 * @param share 0 to 1; outside that, the nearest end
 */
export function strokeWidth(share: number | undefined): number {
  const known = share !== undefined && share >= 0 ? Math.min(1, share) : share === undefined ? 0.5 : 0;
  return NARROWEST + Math.round((WIDEST - NARROWEST) * known);
}

/** A side of a set that was done gives its number; a side nobody spoke of gives undefined. */
function sidesOf({ done }: Stroke): readonly StrokeAmount[] {
  if (done === undefined) return [undefined];
  return "both" in done ? [done.both] : [done.left, done.right];
}

/** @returns pixels that a stroke takes from its left to its right end */
export function strokeSpan(stroke: Stroke, sided: boolean): number {
  const width = strokeWidth(stroke.share);
  return sided ? 2 * width + SPLIT : width;
}

/** One side of a set. */
function bars(stroke: Stroke, amount: StrokeAmount, x: number, { base, of }: Heights): readonly Shape[] {
  const width = strokeWidth(stroke.share);
  const bar = (height: number, look: "solid" | "outline" | "dashed"): Shape => ({
    kind: "bar",
    x,
    y: base - height,
    width,
    height,
    fill: look === "solid" ? "ink" : "none",
    outline: look === "solid" ? "none" : look === "dashed" ? "edge" : "ink",
    dashed: look === "dashed",
    weight: look === "solid" ? 0 : 1,
  });
  const cap = (height: number, look: "solid" | "dashed"): readonly Shape[] =>
    stroke.hold
      ? [
          {
            kind: "bar",
            x: x - CAP,
            y: base - height,
            width: width + 2 * CAP,
            height: CAP,
            fill: look === "solid" ? "ink" : "edge",
            outline: "none",
            dashed: false,
            weight: 0,
          },
        ]
      : [];
  const asked = Math.max(1, of(stroke.asked.to));
  switch (stroke.state) {
    case "missed":
      return [{ kind: "dot", x: x + width / 2, y: base - 1.5, radius: 1.5, role: "ink" }];
    case "asked":
      return [bar(asked, "outline"), ...cap(asked, "solid")];
    case "to come":
      return [bar(asked, "dashed"), ...cap(asked, "dashed")];
    case "done": {
      // Done, and no number was said: the outline of what was asked, filled halfway, so that it is never a reading.
      if (amount === undefined)
        return [bar(Math.round(asked / 2), "solid"), bar(asked, "outline"), ...cap(asked, "solid")];
      const height = Math.max(1, of(amount));
      return [bar(height, "solid"), ...cap(height, "solid")];
    }
  }
}

/** The outline in the correction colour, around all that was drawn of a set. */
function hurtOutline(drawn: readonly Shape[], base: number): Shape {
  const boxes = drawn.flatMap((shape) =>
    shape.kind === "bar"
      ? [{ left: shape.x, right: shape.x + shape.width, top: shape.y }]
      : shape.kind === "dot"
        ? [{ left: shape.x - shape.radius, right: shape.x + shape.radius, top: shape.y - shape.radius }]
        : [],
  );
  const out = CLEAR + HURT_WEIGHT;
  const left = Math.min(...boxes.map((box) => box.left)) - out;
  const top = Math.min(...boxes.map((box) => box.top)) - out;
  const right = Math.max(...boxes.map((box) => box.right)) + out;
  return {
    kind: "bar",
    x: left,
    y: top,
    width: right - left,
    height: base - top,
    fill: "none",
    outline: "correction",
    dashed: false,
    weight: HURT_WEIGHT,
  };
}

/**
 * The shapes of one set, its left end at `x`.
 *
 * @param sided whether left and right are drawn apart; a set not done yet then shows what is asked of either
 */
export function strokeBars(stroke: Stroke, sided: boolean, x: number, heights: Heights): readonly Shape[] {
  const known = sidesOf(stroke);
  const sides = sided && known.length === 1 ? [known[0], known[0]] : known;
  const step = strokeWidth(stroke.share) + SPLIT;
  const drawn = sides.flatMap((amount, side) => bars(stroke, amount, x + side * step, heights));
  return stroke.hurt ? [...drawn, hurtOutline(drawn, heights.base)] : drawn;
}
