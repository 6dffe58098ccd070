import { type Estimate, ratioOf } from "./estimates.ts";
import type { Foretold } from "./forecasts.ts";

/** What was said of changes over six weeks, against what had changed. */
export interface ChangeFigures {
  /** How often it was asked. */
  readonly asked: number;
  /** Of those who rose by less than one per cent, the share that was told to have gained. Left out without any. */
  readonly falseGains?: Estimate;
  /** Of those who rose by five per cent or more, the share that was told to have gained. */
  readonly gainsFound?: Estimate;
}

/** Below the first nobody gained, above the second somebody did; between them neither word would be wrong. Ours. */
const NO_GAIN = Math.log(1.01);
const GAIN = Math.log(1.05);

/** Silence and "unclear" count as no gain told. */
export function judgeChanges(told: readonly Foretold[], seed: number): ChangeFigures {
  const changes = told.flatMap(({ person, change }) => (change === undefined ? [] : [{ person, ...change }]));
  const among = (belongs: (rose: number) => boolean) => {
    const sums = new Map<number, [number, number]>();
    for (const { person, told: said, rose } of changes) {
      if (!belongs(rose)) continue;
      const [gains, all] = sums.get(person) ?? [0, 0];
      sums.set(person, [gains + Number(said === "gain"), all + 1]);
    }
    return ratioOf([...sums.values()], seed);
  };
  const falseGains = among((rose) => rose < NO_GAIN);
  const gainsFound = among((rose) => rose >= GAIN);
  return {
    asked: changes.length,
    ...(falseGains === undefined ? {} : { falseGains }),
    ...(gainsFound === undefined ? {} : { gainsFound }),
  };
}
