import { runInThisContext } from "node:vm";
import { CATALOGUE } from "@stave/core/exercises";
import { build } from "esbuild";
import { medianTime, RUNS } from "./clock.ts";
import type { Measure } from "./measure.ts";

/** One load is short; many make a time that a clock can tell. */
const ROUNDS = 20;

/** One form of every ladder, which is more than a plan has of most: what a command or a page asks for. */
const ASKED = CATALOGUE.ladders.map(({ start }) => start);

/** The catalogue from its program text to the look-ups of a plan, against JSON.parse of the same entries and ladders. */
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
    const look = `${JSON.stringify(ASKED)}.map(id=>loaded.CATALOGUE.exercises.get(id).name).join()`;
    const load = () => runInThisContext(`${program};${look}//${round++}`) as string;
    const names = ASKED.map((id) => CATALOGUE.exercises.get(id)!.name).join();
    if (load() !== names) throw new Error("The built catalogue is not the same");
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
