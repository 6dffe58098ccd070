import { runInThisContext } from "node:vm";
import { CATALOGUE } from "@stave/core/exercises";
import { build } from "esbuild";
import { medianTime, RUNS } from "./clock.ts";
import type { Measure } from "./measure.ts";

/** One load is short; many make a time that a clock can tell. */
const ROUNDS = 20;

/** The whole catalogue from its program text to a look-up, against JSON.parse of the same entries and ladders. */
export const catalogueLoad: Measure = {
  name: "catalogue/load",
  async run() {
    const built = await build({
      stdin: { contents: 'export { CATALOGUE } from "@stave/core/exercises";', resolveDir: process.cwd() },
      bundle: true,
      minify: true,
      write: false,
      format: "iife",
      globalName: "loaded",
    });
    const program = built.outputFiles[0]!.text;
    const json = JSON.stringify({ exercises: [...CATALOGUE.exercises.values()], ladders: CATALOGUE.ladders });
    let round = 0;
    // A comment of its own in every round, so that no compiled code is kept from the round before.
    const load = () => runInThisContext(`${program};loaded.CATALOGUE.exercises.size//${round++}`) as number;
    if (load() !== CATALOGUE.exercises.size) throw new Error("The built catalogue is not the same");
    const rounds = (job: () => unknown) => () => {
      for (let each = 0; each < ROUNDS; each++) job();
    };
    const value = (await medianTime(rounds(load))) / ROUNDS;
    const baselineValue = (await medianTime(rounds(() => JSON.parse(json)))) / ROUNDS;
    return {
      name: "catalogue/load",
      value,
      unit: "ms",
      baseline: "JSON.parse of the same",
      baselineValue,
      ratio: value / baselineValue,
      n: RUNS,
      aim: "at most 2",
    };
  },
};
