import { breach, type FitTask, score, solve } from "@stave/core/fit";
import { fitModel } from "@stave/core/testing";
import loadHighs from "highs";
import { median, percentile, timeOnce } from "./clock.ts";
import { fitInstance, SHAPES } from "./fit-instances.ts";
import type { Measure } from "./measure.ts";

/** Phases in one run. Ours is timed three times each and the median taken; the general solver, which is slow, once. */
const PHASES = 200;
const OURS = 3;
const WARM_UP = 10;

interface Times {
  readonly ours: readonly number[];
  readonly theirs: readonly number[];
  readonly proven: number;
}

/** What HiGHS needs for the same phase. It is told the must points, and the text of its model is made beforehand. */
async function byHighs(highs: Awaited<ReturnType<typeof loadHighs>>, task: FitTask, must: number) {
  const model = fitModel(task, { most: "want", must });
  let want = Number.NaN;
  const took = await timeOnce(() => {
    const { Status, ObjectiveValue } = highs.solve(model, { mip_rel_gap: 0, mip_abs_gap: 0.5 });
    if (Status === "Optimal") want = Math.round(ObjectiveValue);
  });
  return { took, want };
}

let measured: Promise<Times> | undefined;

/** Both solvers on the same seeded phases of 4 sessions of 6 slots from 250 forms, and whether they agree. */
async function measure(): Promise<Times> {
  const highs = await loadHighs();
  const [ours, theirs]: [number[], number[]] = [[], []];
  let proven = 0;
  for (let seed = 1 - WARM_UP; seed <= PHASES; seed++) {
    const task = fitInstance(seed, SHAPES["4x6"]);
    const times: number[] = [];
    for (let run = 0; run < OURS; run++) times.push(await timeOnce(() => solve(task)));
    if (seed < 1) continue;
    const found = solve(task)!;
    const { must, want } = score(task, found.choice);
    const other = await byHighs(highs, task, must);
    if (breach(task, found.choice) !== undefined || must !== found.must || (found.proven && want !== other.want))
      throw new Error(
        `Phase ${seed}: ours is ${must} must and ${want} want points, the general solver's ${other.want}`,
      );
    if (found.proven) proven++;
    ours.push(median(times));
    theirs.push(other.took);
  }
  return { ours, theirs, proven };
}

function against(name: string, of: (times: readonly number[]) => number, aim: string): Measure {
  return {
    name,
    async run() {
      measured ??= measure();
      const { ours, theirs, proven } = await measured;
      const [value, baselineValue] = [of(ours), of(theirs)];
      const baseline = `HiGHS on the natural model, told the must points; proven ${proven} of ${PHASES}, all of them equal`;
      return { name, value, unit: "ms", baseline, baselineValue, ratio: baselineValue / value, n: PHASES, aim };
    },
  };
}

/** Median over phases. */
export const fit4x6 = against("fit/4x6", median, "at least 10");
/** The ninetieth of a hundred phases. */
export const fit4x6Tail = against("fit/4x6/p90", (times) => percentile(times, 90), "at least 20");
