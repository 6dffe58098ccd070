import { type CalendarTask, placeSessions, score } from "@stave/core/calendar";
import loadHighs from "highs";
import { median, medianTime, timeOnce } from "./clock.ts";
import type { Measure } from "./measure.ts";
import { modelOf } from "./schedule-model.ts";

/** Tasks in one run. */
const TASKS = 20;
/** Runs of ours for each task: short ones are disturbed more easily. */
const OWN_RUNS = 25;

/**
 * Ours against HiGHS, a general solver, on its natural model of the same tasks; both must find the same value, level by
 * level. Writing the model is not timed, reading it is. Ours is the median of several runs of each task, HiGHS's one run.
 */
export function scheduleMeasure(name: string, taskOf: (seed: number) => CalendarTask): Measure {
  return {
    name,
    async run() {
      const highs = await loadHighs();
      highs.solve(modelOf(taskOf(0)).text);
      const [ours, theirs]: [number[], number[]] = [[], []];
      for (let seed = 1; seed <= TASKS; seed++) {
        const task = taskOf(seed);
        const model = modelOf(task);
        const found = placeSessions(task);
        let solved: ReturnType<typeof highs.solve> | undefined;
        theirs.push(
          await timeOnce(() => {
            solved = highs.solve(model.text, { mip_rel_gap: 0, mip_abs_gap: 0.5 });
          }),
        );
        const placements = [...model.placements(solved!.Columns as never)].sort((a, b) => a.day - b.day);
        const [mine, other] = [found.value, score(task, placements).value].map((value) => JSON.stringify(value));
        if (solved!.Status !== "Optimal" || mine !== other || !found.proven) {
          throw new Error(`${name}, task ${seed}: ours is ${mine}, HiGHS's ${solved!.Status} ${other}`);
        }
        ours.push(await medianTime(() => placeSessions(task), OWN_RUNS));
      }
      const [value, baselineValue] = [median(ours), median(theirs)];
      return {
        name,
        value,
        unit: "ms",
        baseline: "HiGHS on the natural model",
        baselineValue,
        ratio: baselineValue / value,
        n: TASKS,
        aim: "at least 100",
      };
    },
  };
}
