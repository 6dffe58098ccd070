export type * from "./shapes.ts";
