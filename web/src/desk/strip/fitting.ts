import type { Stroke } from "@stave/core/model";
import { type Drawing, drawStrokes } from "@stave/core/sign";

/**
 * The last sessions that have room in so many pixels, and what is asked next behind them. At least the last session
 * and what is asked next are always there.
 */
export function fittingStrokes(
  past: readonly (readonly Stroke[])[],
  next: readonly Stroke[],
  width: number,
  height: number,
): Drawing {
  const behind = next.length > 0 ? [next] : [];
  const draw = (from: number) => drawStrokes([...past.slice(from), ...behind], { height, scale: "all" });
  let from = Math.max(0, past.length - 1);
  let best = draw(from);
  while (from > 0) {
    const wider = draw(from - 1);
    if (wider.width > width) break;
    from -= 1;
    best = wider;
  }
  return best;
}
