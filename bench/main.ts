/** `npm run bench -- [--json] [--only NAME]`: ratios against a baseline in the same run; never part of the tests. */
import { catalogueLoad } from "./catalogue-load.ts";
import { checkRead } from "./check-read.ts";
import { checkRules } from "./check-rules.ts";
import { medianTime, unitJob } from "./clock.ts";
import { demoCold } from "./demo-cold.ts";
import { eventsDurable, eventsDurableBatch } from "./events-durable.ts";
import { fit4x6, fit4x6Tail } from "./fit-against-highs.ts";
import { fit100000 } from "./fit-cohort.ts";
import { fitHeap } from "./fit-heap.ts";
import { fit4x8, fitLittleKit } from "./fit-tails.ts";
import { floorCold } from "./floor-cold.ts";
import { floorData } from "./floor-data.ts";
import { floorScript } from "./floor-script.ts";
import type { Measure, Result } from "./measure.ts";
import { nextPeople, nextSet } from "./next-dose.ts";
import { schedule1x4 } from "./schedule-1x4.ts";
import { schedule16x6 } from "./schedule-16x6.ts";
import { coverages, forecasts } from "./simulated.ts";

const MEASURES: readonly Measure[] = [
  checkRead,
  checkRules,
  catalogueLoad,
  schedule1x4,
  schedule16x6,
  demoCold,
  eventsDurable,
  eventsDurableBatch,
  floorScript,
  floorData,
  floorCold,
  fit4x6,
  fit4x6Tail,
  fit4x8,
  fitLittleKit,
  fit100000,
  fitHeap,
  nextPeople,
  nextSet,
  ...forecasts,
  ...coverages,
];
/** A machine that changes pace by more than this between the first and the last line tells nothing. */
const MOST_DRIFT = 1.5;

async function main(args: readonly string[]): Promise<number> {
  const only = args.includes("--only") ? args[args.indexOf("--only") + 1] : undefined;
  const chosen = MEASURES.filter(({ name }) => only === undefined || name === only || name.startsWith(`${only}/`));
  if (chosen.length === 0) {
    console.error(`No measure is called ${only}. There are: ${MEASURES.map(({ name }) => name).join(", ")}`);
    return 2;
  }
  const before = await medianTime(unitJob);
  const results: Result[] = [];
  for (const { run } of chosen) results.push(await run());
  const after = await medianTime(unitJob);
  if (args.includes("--json")) console.log(JSON.stringify(results, undefined, 2));
  else {
    for (const { name, value, unit, baseline, baselineValue, ratio, n, aim, note } of results) {
      const [ours, theirs] = [value, baselineValue].map((number) => number.toFixed(2));
      console.log(
        `${name}: ${ours} ${unit}; ${baseline}: ${theirs} ${unit}; ratio ${ratio.toFixed(3)}, ${unit === "%" ? "n" : "median of"} ${n}${aim === undefined ? "" : `; aim: ${aim}`}${note === undefined ? "" : `; ${note}`}`,
      );
    }
  }
  const drift = Math.max(before, after) / Math.min(before, after);
  console.error(`unit: ${before.toFixed(1)} ms before, ${after.toFixed(1)} ms after`);
  if (!(drift <= MOST_DRIFT)) {
    console.error(
      `The machine changed pace by ${drift.toFixed(2)} times; at most ${MOST_DRIFT} is trusted. Run it again when it is idle.`,
    );
    return 1;
  }
  return 0;
}

process.exit(await main(process.argv.slice(2)));
