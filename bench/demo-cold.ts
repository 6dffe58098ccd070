import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { medianTime, RUNS, unitJob } from "./clock.ts";
import type { Measure } from "./measure.ts";

/** The whole demo in a new process, documents written, in multiples of the unit job. */
export const demoCold: Measure = {
  name: "demo/cold",
  async run() {
    const folder = mkdtempSync(join(tmpdir(), "stave-bench-"));
    try {
      const value = await medianTime(() =>
        execFileSync(process.execPath, ["server/dist/stave.js", "demo", "--out", join(folder, "out")], {
          stdio: "ignore",
        }),
      );
      const baselineValue = await medianTime(unitJob);
      return {
        name: "demo/cold",
        value,
        unit: "ms",
        baseline: "unit job",
        baselineValue,
        ratio: value / baselineValue,
        n: RUNS,
      };
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  },
};
