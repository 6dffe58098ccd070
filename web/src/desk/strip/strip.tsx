import type { Stroke } from "@stave/core/model";
import { STYLED, svgOf } from "@stave/core/sign";
import { useMemo } from "react";
import { fittingStrokes } from "./fitting.ts";
import { sayStrip } from "./say-sets.ts";

interface Props {
  readonly past: readonly { readonly day: string; readonly strokes: readonly Stroke[] }[];
  readonly next: readonly Stroke[];
  /** Pixels; the last sessions that have room are drawn. */
  readonly width: number;
  readonly height: number;
  readonly className?: string | undefined;
}

/** The last sessions of one movement as strokes, and what is asked next behind them. */
export function Strip({ past, next, width, height, className }: Props) {
  const svg = useMemo(() => {
    const lots = past.map(({ strokes }) => strokes);
    return svgOf(fittingStrokes(lots, next, width, height), STYLED, sayStrip(past, next));
  }, [past, next, width, height]);
  // biome-ignore lint/security/noDangerouslySetInnerHtml: made by core/sign, which escapes every word in it
  return <div className={className} dangerouslySetInnerHTML={{ __html: svg }} />;
}
