import { scheduleMeasure } from "./schedule-measure.ts";
import { sixteenWeeksOfSix } from "./schedule-task.ts";

/** Sixteen weeks of six sessions. */
export const schedule16x6 = scheduleMeasure("schedule/16x6", sixteenWeeksOfSix);
