import { gzipSync } from "node:zlib";
import { Gym } from "../web/src/floor/testing/gym.ts";
import type { Measure } from "./measure.ts";

const KB = 1000;

/** What a phone fetches of a plan, gzipped, against the same as it is spelled: one person with sessions of 22 sets. */
export const floorData: Measure = {
  name: "floor/data",
  async run() {
    const gym = await Gym.open();
    try {
      const bytes = Buffer.from(JSON.stringify(await gym.bundle(await gym.token())));
      const value = gzipSync(bytes, { level: 9 }).length / KB;
      const baselineValue = bytes.length / KB;
      return {
        name: "floor/data",
        value,
        unit: "kB",
        baseline: "the same, not compressed",
        baselineValue,
        ratio: value / baselineValue,
        n: 1,
        aim: "at most 30 kB",
      };
    } finally {
      await gym.end();
    }
  },
};
