import { solve } from "@stave/core/fit";
import { median, percentile, timeOnce } from "./clock.ts";
import { fitInstance, SHAPES } from "./fit-instances.ts";
import type { Measure } from "./measure.ts";

const PHASES = 200;
const RUNS = 3;
const WARM_UP = 10;

/** How far the slow phases lie from the usual one, and how many are not proven. */
function tail(name: string, shape: (typeof SHAPES)[keyof typeof SHAPES]): Measure {
  return {
    name,
    async run() {
      const times: number[] = [];
      let unproven = 0;
      for (let seed = 1 - WARM_UP; seed <= PHASES; seed++) {
        const task = fitInstance(seed, shape);
        const mine: number[] = [];
        for (let run = 0; run < RUNS; run++) mine.push(await timeOnce(() => solve(task)));
        if (seed < 1) continue;
        times.push(median(mine));
        if (solve(task)?.proven !== true) unproven++;
      }
      const [value, baselineValue] = [percentile(times, 90), median(times)];
      return {
        name,
        value,
        unit: "ms",
        baseline: `its own median, of which this is the 90th per cent; ${unproven} of ${PHASES} unproven`,
        baselineValue,
        ratio: value / baselineValue,
        n: PHASES,
        aim: "at most 4, 0 unproven",
      };
    },
  };
}

export const fit4x8 = tail("fit/4x8", SHAPES["4x8"]);
export const fitLittleKit = tail("fit/little-kit", SHAPES["little-kit"]);
