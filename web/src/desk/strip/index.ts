/** Sessions as strokes, and the same in words. */
export { saySets, sayStrip } from "./say-sets.ts";
export { Strip } from "./strip.tsx";
