/** The contract between server and pages: shapes, their validators, routes. */
export { patchPiece } from "./event-piece.ts";
export * from "./messages.ts";
export * from "./routes.ts";
export type * from "./shapes.ts";
