/** Signs as data, and as drawings for pages and paper. */
export { drawStrokes, type StrokesAsked } from "./draw-strokes.ts";
export type { Drawing, Role, Shape } from "./shape.ts";
export { strokeWidth } from "./stroke-bars.ts";
export { type Palette, PRINTED, STYLED, svgOf } from "./svg.ts";
