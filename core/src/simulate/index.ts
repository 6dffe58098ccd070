export { type DemoRecords, demoRecords } from "./demo-records.ts";
export * from "./demo-stories.ts";
export { type Asked, type Lifter, lifter, repsToFailure, type Written } from "./lifter.ts";
export { type RepCurve, WORLDS, type World } from "./world.ts";
