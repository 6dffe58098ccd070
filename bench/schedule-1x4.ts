import { scheduleMeasure } from "./schedule-measure.ts";
import { weekOfFour } from "./schedule-task.ts";

/** One week of four sessions. */
export const schedule1x4 = scheduleMeasure("schedule/1x4", weekOfFour);
