export { type DemoRecords, demoRecords } from "./demo-records.ts";
export * from "./demo-stories.ts";
export type { Estimate } from "./estimates.ts";
export { OURS } from "./estimator.ts";
export type { CertaintyFigures } from "./judge-certainty.ts";
export type { OutcomeFigures, WayFigures } from "./judge-ways.ts";
export { type Asked, type Lifter, lifter, repsToFailure, type Written } from "./lifter.ts";
export { type Size, simulateWorld, type WorldFigures } from "./simulate-world.ts";
export { type RepCurve, WORLDS, type World } from "./world.ts";
